/**
 * What the things of a plan carry beside what they can bear: of each part the board that uses the most, the walls, the
 * joints, the feet, and what each thing that stands free takes before it tips over. For the sheet and for hovers; checks
 * word the same numbers where they are too much. Newtons and millimetres.
 */
import { STANDARD_GRAVITY } from "../../strength/units";
import type { Standing } from "../tipping";
import { leastSteady, type Try } from "../tipping/judge";
import { marginFor } from "../tipping/limits";
import type { Worked } from "../work";
import type { HeldJoint } from "./demands";
import type { Foot, HeldPiece, HeldWall, NoPath } from "./index";
import type { Judged } from "./judging";

/** What uses the most of a board: its strength, or how far it may bend. */
export interface Verdict {
  readonly by: "bending" | "shear" | "sag";
  /** What it carries, and what it could of that. */
  readonly force: number;
  readonly bears: number;
  readonly uses: number;
  /** How far it bends, and may; mm, where that is what counts. */
  readonly sag: { readonly size: number; readonly limit: number } | undefined;
  readonly state: "within" | "too weak" | "bends too far";
}

/** Of a board that carries something; undefined where it does not bend or no strength is known. */
export function verdictOn(held: HeldPiece): Verdict | undefined {
  const { judged, carried } = held;
  if (!judged) return undefined;
  const all = loadOn(held);
  return verdict(judged, judged.strain.lasting ? all - carried.moving : all, all);
}

/** Of a wall, against what wet fill presses on it while its drain is blocked, or, where it is sag that counts, drained. */
export function verdictOnWall({ judged, work: { loads } }: HeldWall): Verdict | undefined {
  const pressed = (load: typeof loads.blocked): number =>
    "from" in load ? ((load.start + load.end) / 2) * (load.to - load.from) : load.force;
  return judged && verdict(judged, pressed(loads.blocked), pressed(loads.drained));
}

function verdict({ strain, sag }: Judged, strains: number, sags: number): Verdict {
  // What breaks is told before what bends too far.
  if (strain.uses > 1 || strain.uses >= sag.uses) {
    const { uses, what } = strain;
    const state = uses > 1 ? "too weak" : "within";
    return { by: what, force: strains, bears: borne(strains, uses), uses, sag: undefined, state };
  }
  const { uses } = sag;
  const state = uses > 1 ? "bends too far" : "within";
  return { by: "sag", force: sags, bears: borne(sags, uses), uses, sag, state };
}

const borne = (force: number, uses: number): number => (uses > 0 ? force / uses : 0);

/** Newtons that stand on a piece in all. */
export const loadOn = ({ carried: { weighs, moving } }: HeldPiece): number =>
  weighs.own + weighs.fill + weighs.said + weighs.passed + moving;

/** The board of a part that uses the most, of so many that carry something. */
export interface BoardLine {
  readonly held: HeldPiece;
  readonly count: number;
  /** Undefined where no strength is known for it. */
  readonly verdict: Verdict | undefined;
}

export interface WallLine {
  readonly wall: HeldWall;
  readonly count: number;
  /** Undefined where no strength is known, or it is held in too few places. */
  readonly verdict: Verdict | undefined;
}

/** Boards that carry more than themselves and bend under it. */
export function boardLines({ holding, space }: Pick<Worked, "holding" | "space">): BoardLine[] {
  const bent = holding.pieces.filter((held) => held.carried.bends && carriesMore(held));
  return worst(bent, (held) => space.pieces[held.piece]!.part, verdictOn).map(({ one, ...line }) => ({
    held: one,
    ...line,
  }));
}

/** Something beside its own weight. */
export const carriesMore = ({ carried: { weighs, moving } }: HeldPiece): boolean =>
  weighs.fill + weighs.said + weighs.passed + moving > 0;

export function wallLines({ holding, space }: Pick<Worked, "holding" | "space">): WallLine[] {
  const key = ({ work }: HeldWall): string => `${space.pieces[work.piece]!.part}\n${work.box.name}`;
  return worst(holding.walls, key, verdictOnWall).map(({ one, ...line }) => ({ wall: one, ...line }));
}

function worst<T>(
  all: readonly T[],
  keyOf: (one: T) => string,
  verdictOf: (one: T) => Verdict | undefined,
): { readonly one: T; readonly count: number; readonly verdict: Verdict | undefined }[] {
  const groups = new Map<string, { one: T; count: number; verdict: Verdict | undefined }>();
  for (const one of all) {
    const key = keyOf(one);
    const verdict = verdictOf(one);
    const group = groups.get(key);
    if (!group) groups.set(key, { one, count: 1, verdict });
    else {
      group.count += 1;
      if ((verdict?.uses ?? -1) > (group.verdict?.uses ?? -1) * (1 + HAIR))
        Object.assign(group, { one, verdict });
    }
  }
  return [...groups.values()];
}

/** Of alike boards the first is told. */
const HAIR = 1e-9;

/** What a thing that stands free takes at the least before it tips over, against what it must stand. */
export interface SteadyLine {
  readonly thing: Standing;
  /** Undefined where it was not tried. */
  readonly least: Try | undefined;
  /** Newtons: what it must stand, the margin in it, and what just tips it. */
  readonly wanted: number;
  readonly takes: number;
}

export const steadyLines = ({ standing, settings }: Pick<Worked, "standing" | "settings">): SteadyLine[] =>
  standing.map((thing): SteadyLine => {
    const { stance, untried } = thing;
    const least = stance && !untried ? leastSteady(stance, settings.nearChildren) : undefined;
    const takes = (least?.force ?? 0) * STANDARD_GRAVITY;
    return { thing, least, wanted: takes * (least?.uses ?? 0), takes };
  });

export interface FootLine {
  readonly foot: Foot;
  readonly count: number;
  readonly presses: number;
  /** What the plan gives as the limit of one foot. */
  readonly limit: number | undefined;
}

/** The foot that presses hardest. */
export function footLine({ holding, settings }: Pick<Worked, "holding" | "settings">): FootLine | undefined {
  const presses = ({ steady, moving }: Foot): number => steady + moving;
  const [first, ...others] = holding.feet;
  if (!first) return undefined;
  const foot = others.reduce((most, f) => (presses(f) > presses(most) * (1 + HAIR) ? f : most), first);
  const limit = settings.footLimit && settings.footLimit.value.approx * STANDARD_GRAVITY;
  return { foot, count: holding.feet.length, presses: presses(foot), limit };
}

export interface Ledger {
  readonly boards: readonly BoardLine[];
  readonly walls: readonly WallLine[];
  readonly joints: readonly HeldJoint[];
  readonly unknownJoints: Worked["holding"]["unknownJoints"];
  readonly noPath: readonly NoPath[];
  readonly foot: FootLine | undefined;
  readonly steady: readonly SteadyLine[];
}

/** Nothing of a plan in which nothing is carried: no fill, no load said, nothing that is sat on, no limit of a foot. */
export function ledgerOf(
  worked: Pick<Worked, "holding" | "space" | "settings" | "standing">,
): Ledger | undefined {
  const { holding, settings } = worked;
  const carried = holding.pieces.some(
    ({ carried: { weighs, moving } }) => weighs.fill > 0 || weighs.said > 0 || moving > 0,
  );
  const limited = settings.footLimit !== undefined && holding.feet.length > 0;
  if (!carried && !limited && holding.walls.length === 0) return undefined;
  return {
    boards: boardLines(worked),
    walls: wallLines(worked),
    joints: holding.joints,
    unknownJoints: holding.unknownJoints,
    noPath: holding.noPath,
    foot: footLine(worked),
    steady: steadyLines(worked),
  };
}

/** What a joint's screws hold is told as nothing below this, in newtons. */
export const claimsNothing = ({ holds }: HeldJoint): boolean => !(holds > 0);

/** How many times over a thing must stand what tips it. */
export const marginOf = ({ settings }: Pick<Worked, "settings">): number => marginFor(settings.nearChildren);
