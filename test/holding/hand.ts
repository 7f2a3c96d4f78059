/**
 * What the tests of holding count with by hand, in inches and pounds: sections, woods and formulas written out here from
 * their sources, and a view of what was worked out in the same units. Nothing here calls what is tested.
 */
import type { Holding, Worked } from "../../server/worked";
import { run } from "../checks/plans";

/** Newtons in a pound, millimetres in an inch, N/mm2 in a psi. */
export const LB = 0.45359237 * 9.80665;
export const IN = 25.4;

/** lb/cuft of spruce-pine-fir at 12%: 62.4 G / (1 + 0.009 G M) (1 + M/100), G 0.42. */
const SPF = ((62.4 * 0.42) / (1 + 0.009 * 0.42 * 12)) * 1.12;
/** Pounds of a board of spruce-pine-fir. */
export const weighs = (length: number, broad: number, thick: number): number =>
  (length * broad * thick * SPF) / 1728;

/** Section modulus and second moment of area, `deep` the way it bends. */
export const modulus = (wide: number, deep: number): number => (wide * deep ** 2) / 6;
export const inertia = (wide: number, deep: number): number => (wide * deep ** 3) / 12;

/** SPF No. 2 (NDS Supplement, Table 4A): Fb 875, E 1.4e6; C_F by width; C_fu laid flat. psi. */
export const GRADED = {
  "2x4": { edge: 875 * 1.5, flat: 875 * 1.5 * 1.1 },
  "2x6": { edge: 875 * 1.3, flat: 875 * 1.3 * 1.15 },
  "2x8": { edge: 875 * 1.2, flat: 875 * 1.2 * 1.15 },
  E: 1.4e6,
  shear: 135,
} as const;

/**
 * Boards under 2" of SPF: its weakest wood is Engelmann spruce, 4,700 psi green (Wood Handbook, Table 5-3), brought down by
 * ASTM D245: (1 - 1.645 x 0.16) / 2.1 x 0.45 x 1.25 = 0.19735. Its limpest is subalpine fir, 1.29e6 psi.
 */
export const THIN = { flat: ((4700 * (1 - 1.645 * 0.16)) / 2.1) * 0.45 * 1.25, E: 1.29e6 } as const;

export interface Seen {
  readonly worked: Worked;
  readonly holding: Holding;
  readonly codes: readonly string[];
  /** The pieces of a part, in the order of the plan. */
  readonly all: (part: string) => SeenPiece[];
  readonly one: (part: string, n?: number) => SeenPiece;
  /** Pounds on each foot, by part: what stays, and what comes and goes. */
  readonly feet: (part: string) => { readonly steady: number; readonly moving: number }[];
  readonly joint: (starts: string) => SeenJoint;
}

type HeldPiece = Holding["pieces"][number];

/** In inches, pounds, and pounds of bending times inches. */
export interface SeenPiece {
  readonly held: HeldPiece;
  readonly own: number;
  readonly fill: number;
  readonly said: number;
  readonly passed: number;
  readonly moving: number;
  /** What stays and what comes and goes: the greatest moment of each. */
  readonly moment: number;
  readonly coming: number;
  readonly uses: number;
  readonly limit: number;
  readonly sag: number;
  readonly sagLimit: number;
  readonly sagUses: number;
  readonly links: readonly {
    readonly by: string;
    readonly how: string;
    readonly steady: number;
    readonly moving: number;
  }[];
}

export interface SeenJoint {
  readonly way: string;
  readonly from: string;
  readonly screws: number;
  readonly asked: number;
  readonly holds: number;
  readonly uses: number;
  /** One of them. */
  readonly across: number;
  readonly pulled: number;
  readonly bite: number;
}

export function see(text: string): Seen {
  const { worked, problems } = run(text);
  const { holding, space } = worked;
  const part = (i: number): string => (i < 0 ? "floor" : space.pieces[i]!.part);
  const all = (name: string): SeenPiece[] =>
    holding.pieces.filter((p) => part(p.piece) === name).map((p) => seen(p, part));
  return {
    worked,
    holding,
    codes: [...new Set(problems.map((p) => p.code))],
    all,
    one: (name, n = 0) => all(name)[n]!,
    feet: (name) =>
      holding.feet
        .filter((f) => part(f.piece) === name)
        .map(({ steady, moving }) => ({ steady: steady / LB, moving: moving / LB })),
    joint: (starts) => {
      const held = holding.joints.find((j) => j.joint.title.startsWith(starts));
      if (!held) throw new Error(`nothing is asked of ${starts}`);
      return {
        way: held.demand.way,
        from: held.demand.from,
        screws: held.screws,
        asked: held.asked / LB,
        holds: held.holds / LB,
        uses: held.uses,
        across: held.grip.across / LB,
        pulled: held.grip.pulled / LB,
        bite: held.grip.bite / IN,
      };
    },
  };
}

function seen(held: HeldPiece, part: (i: number) => string): SeenPiece {
  const { weighs: w, moving, bends, links } = held.carried;
  const { strain, sag } = held.judged ?? {};
  return {
    held,
    own: w.own / LB,
    fill: w.fill / LB,
    said: w.said / LB,
    passed: w.passed / LB,
    moving: moving / LB,
    moment: (bends?.steady.moment.size ?? 0) / LB / IN,
    coming: (bends?.coming.moment ?? 0) / LB / IN,
    uses: strain?.uses ?? Number.NaN,
    limit: (strain?.limit ?? Number.NaN) / LB / IN,
    sag: (sag?.size ?? Number.NaN) / IN,
    sagLimit: (sag?.limit ?? Number.NaN) / IN,
    sagUses: sag?.uses ?? Number.NaN,
    links: links.map(({ link, steady, moving: comes }) => ({
      by: part(link.by),
      how: link.how,
      steady: steady / LB,
      moving: comes / LB,
    })),
  };
}

/** The weights of all pieces with what is filled in and said, against what stands on the feet, pounds. */
export function balance({ holding }: Seen): { readonly put: number; readonly feet: number } {
  const put = holding.pieces.reduce((sum, { carried: { weighs: w } }) => sum + w.own + w.fill + w.said, 0);
  const feet = holding.feet.reduce((sum, f) => sum + f.steady, 0);
  return { put: put / LB, feet: feet / LB };
}

/** Where a rising function passes 0 between two numbers. */
export function crossing(f: (x: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let i = 0; i < 200; i++) {
    const middle = (low + high) / 2;
    if (f(middle) < 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
