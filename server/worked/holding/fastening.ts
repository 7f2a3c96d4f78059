/** What one screw, nail or bolt of a joint holds between two pieces: across its length, and pulled out. Newtons, millimetres. */
import { adjusted } from "../../strength/fastener";
import { lateral, type YieldMode } from "../../strength/lateral";
import { MM_PER_INCH, MPA_PER_PSI } from "../../strength/units";
import { headPullThrough, nailWithdrawal, screwWithdrawal } from "../../strength/withdrawal";
import {
  bendingYieldOf,
  boltYield,
  endGrainLateral,
  endGrainWithdrawal,
  fasteningGravity,
  headWidth,
  leastPenetration,
  metricRoot,
  screwGauge,
  species,
  threadShare,
  toeFactors,
  wetService,
} from "../../trade";
import type { Joint } from "../joints";
import type { Part } from "../parts";
import type { Piece } from "../pieces";
import { faceName } from "../screw-facts";
import type { Passed, PlacedScrew } from "../screw-way";

/** Of one fastener, before what its load's duration gives or takes; 0 where it claims nothing. */
export interface Grip {
  readonly across: number;
  readonly pulled: number;
  /** It goes so deep into the second piece, and must go this deep to claim anything. */
  readonly bite: number;
  readonly least: number;
  /** How that came about; undefined where nothing is claimed. */
  readonly steps: GripSteps | undefined;
}

/** What the tables hold before a screw is wet, in end grain or at a slant, with the factors for these. Newtons. */
export interface GripSteps {
  /** mm: of the first piece. */
  readonly side: number;
  /** Oven-dry gravity of the first piece and of the second. */
  readonly gravities: readonly [side: number, main: number];
  readonly mode: YieldMode | undefined;
  readonly across: number;
  /** Its thread in the second piece, and its head in the first. */
  readonly thread: number | undefined;
  readonly head: number | undefined;
  readonly factors: Readonly<Record<"across" | "pulled", GripFactors>>;
}

export interface GripFactors {
  readonly wet: number;
  readonly endGrain: number;
  readonly toe: number;
}

type Kind = "screw" | "nail" | "bolt";

/** Works grips out, those of one joint that go alike once. */
export class Grips {
  private readonly done = new Map<Joint, { readonly way: Way; readonly grip: Grip | undefined }[]>();

  constructor(
    private readonly pieces: readonly Piece[],
    private readonly parts: ReadonlyMap<string, Part>,
    private readonly wet: (piece: number) => boolean,
  ) {}

  /** Undefined where the wood of a piece has no gravity in the tables, or the fastener no known strength. */
  of(joint: Joint, screw: PlacedScrew, piece: number, by: number): Grip | undefined {
    const { size } = joint;
    if (!size) return undefined;
    const [a, b] = [pass(screw, piece), pass(screw, by)];
    // A screw that misses one of them holds nothing there; another problem tells of it.
    if (!a || !b) return NOTHING;
    const [near, far] = a.enters <= b.enters ? [a, b] : [b, a];
    const length = size.length.approx;
    const kind = kindOf(joint);
    const side = near.leaves - Math.max(0, near.enters);
    const bite = Math.max(0, (kind === "bolt" ? far.leaves : Math.min(far.leaves, length)) - far.enters);
    const way: Way = {
      side,
      bite,
      end: faceName(far.sides[0]) === "end",
      gs: this.gravity(near.piece),
      gm: this.gravity(far.piece),
      wet: this.wet(near.piece) || this.wet(far.piece),
    };
    const known = this.done.get(joint) ?? [];
    const before = known.find((one) => isAlike(one.way, way));
    if (before) return before.grip;
    const grip = gripOf(joint, kind, way);
    this.done.set(joint, [...known, { way, grip }]);
    return grip;
  }

  private gravity(piece: number): number | undefined {
    return gravityOf(this.parts.get(this.pieces[piece]!.part));
  }
}

/** Oven-dry gravity that fasteners count on. */
export function gravityOf(part: Part | undefined): number | undefined {
  const wood = part?.material && species(part.material.wood.name);
  return wood && fasteningGravity(wood)?.gravity;
}

const NOTHING: Grip = { across: 0, pulled: 0, bite: 0, least: 0, steps: undefined };

const pass = ({ passes }: PlacedScrew, piece: number): Passed | undefined =>
  passes.find((p) => p.piece === piece);

function kindOf({ fastener }: Joint): Kind {
  const kind = fastener?.kind ?? "screw";
  return /\bbolts?\b/.test(kind) ? "bolt" : /\b(?:nails?|pins?)\b/.test(kind) ? "nail" : "screw";
}

interface Way {
  readonly side: number;
  readonly bite: number;
  readonly end: boolean;
  readonly gs: number | undefined;
  readonly gm: number | undefined;
  readonly wet: boolean;
}

const isAlike = (a: Way, b: Way): boolean =>
  Math.abs(a.side - b.side) < SAME &&
  Math.abs(a.bite - b.bite) < SAME &&
  a.end === b.end &&
  a.gs === b.gs &&
  a.gm === b.gm &&
  a.wet === b.wet;

function gripOf(joint: Joint, kind: Kind, { side, bite, end, gs, gm, wet }: Way): Grip | undefined {
  const { diameter, gauge } = joint.size!;
  const full = diameter.approx;
  const { root, yieldMpa } = metalOf(kind, full, gauge);
  if (gs === undefined || gm === undefined || yieldMpa === undefined) return undefined;
  const least = kind === "bolt" ? 0 : leastPenetration.value * full;
  if (bite < least - SAME) return { ...NOTHING, bite, least };
  const toe = joint.angle.approx >= TOE;
  const reference = lateral({
    diameterMm: root,
    fullDiameterMm: full,
    sideThickMm: side,
    // A hair less than the least is the least.
    penetrationMm: Math.max(bite, least),
    gravitySide: gs,
    gravityMain: gm,
    yieldMpa,
    fastener: kind,
  });
  if (!reference) return undefined;
  const service = kind === "nail" ? wetService.nailWithdrawal : wetService.threadWithdrawal;
  const factors = {
    across: {
      wet: wet ? wetService.lateral.value.wet : 1,
      endGrain: end ? endGrainLateral.value : 1,
      toe: toe ? toeFactors.lateral.value : 1,
    },
    // A bolt is pulled by its head alone.
    pulled:
      kind === "bolt"
        ? AS_IT_IS
        : {
            wet: wet ? service.value.wet : 1,
            endGrain: end ? endGrainWithdrawal.value : 1,
            toe: toe ? toeFactors.withdrawal.value : 1,
          },
  };
  const head = headPullThrough(gs, headWidth(full), side);
  const thread = threadHolds(joint, kind, bite, gm);
  const pulls = thread === undefined ? head : Math.min(thread, head ?? thread);
  const across = adjusted(reference.newtons, factors.across);
  const pulled = pulls === undefined ? undefined : adjusted(pulls, factors.pulled);
  if (across === undefined || pulled === undefined) return undefined;
  const { mode, newtons } = reference;
  const steps = { side, gravities: [gs, gm] as const, mode, across: newtons, thread, head, factors };
  return { across, pulled, bite, least, steps };
}

const AS_IT_IS: GripFactors = { wet: 1, endGrain: 1, toe: 1 };

/** What pulls a screw or a nail out of the last piece; undefined of a bolt, which goes through. */
function threadHolds(joint: Joint, kind: Kind, bite: number, gm: number): number | undefined {
  if (kind === "bolt") return undefined;
  const { length, diameter } = joint.size!;
  const full = diameter.approx;
  const thread = joint.fastener?.thread?.approx ?? threadShare.value * length.approx;
  return kind === "nail"
    ? (nailWithdrawal(gm, full) ?? 0) * bite
    : (screwWithdrawal(gm, full) ?? 0) * Math.min(bite, thread);
}

/** mm */
const SAME = 1e-6;
/** Driven at this slant or more, in degrees off square, it is a toe screw. */
const TOE = 25;

/** What the yield equations count on, mm and N/mm2. */
function metalOf(
  kind: Kind,
  full: number,
  gauge: number | undefined,
): { readonly root: number; readonly yieldMpa: number | undefined } {
  const psi = kind === "bolt" ? boltYield.value : bendingYieldOf(full / MM_PER_INCH)?.value.psi;
  const yieldMpa = psi === undefined ? undefined : psi * MPA_PER_PSI;
  if (kind !== "screw") return { root: full, yieldMpa };
  const row = gauge === undefined ? undefined : screwGauge(gauge);
  return { root: row ? Number(row.root.value) * MM_PER_INCH : metricRoot.value * full, yieldMpa };
}
