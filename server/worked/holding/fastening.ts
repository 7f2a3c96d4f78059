/** What one screw, lag screw, nail or bolt of a joint holds between two pieces: across its length, and pulled out. Newtons, millimetres. */
import { adjusted } from "../../strength/fastener";
import { lateral, type YieldMode } from "../../strength/lateral";
import { MM_PER_INCH, MPA_PER_PSI } from "../../strength/units";
import {
  headPullThrough,
  lagWithdrawal,
  nailWithdrawal,
  screwWithdrawal,
  stainlessNailWithdrawal,
} from "../../strength/withdrawal";
import {
  bendingYieldOf,
  boltYield,
  endGrainLateral,
  endGrainWithdrawal,
  fasteningGravity,
  headWidth,
  lagEndGrainWithdrawal,
  lagPenetration,
  lagSize,
  lagThread,
  leastPenetration,
  metricRoot,
  screwGauge,
  species,
  threadShare,
  toeFactors,
  wetService,
} from "../../trade";
import type { Joint } from "../joints";
import { size } from "../materials";
import { sortOf } from "../operations";
import type { Part } from "../parts";
import type { Piece } from "../pieces";
import { faceName } from "../screw-facts";
import type { Passed, PlacedScrew } from "../screw-way";
import { isLag } from "../screws";

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

type Kind = "screw" | "lag" | "nail" | "bolt";

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

const kindOf = (joint: Joint): Kind => (isLag(joint) ? "lag" : sortOf(joint));

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
  const metal = metalOf(kind, full, gauge);
  if (gs === undefined || gm === undefined || !metal) return undefined;
  const { root, yieldMpa, tip } = metal;
  const least = leastOf(kind) * full + tip;
  if (bite < least - SAME) return { ...NOTHING, bite, least };
  const toe = joint.angle.approx >= TOE;
  const reference = lateral({
    diameterMm: root,
    fullDiameterMm: full,
    sideThickMm: side,
    // A hair less than the least is the least.
    penetrationMm: Math.max(bite, least) - tip,
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
            endGrain: end ? (kind === "lag" ? lagEndGrainWithdrawal : endGrainWithdrawal).value : 1,
            toe: toe ? toeFactors.withdrawal.value : 1,
          },
  };
  const head = headPullThrough(gs, headWidth(full), side);
  const thread = threadHolds(joint, kind, bite, tip, gm);
  const pulls = thread === undefined ? head : Math.min(thread, head ?? thread);
  const across = adjusted(reference.newtons, factors.across);
  const pulled = pulls === undefined ? undefined : adjusted(pulls, factors.pulled);
  if (across === undefined || pulled === undefined) return undefined;
  const { mode, newtons } = reference;
  const steps = { side, gravities: [gs, gm] as const, mode, across: newtons, thread, head, factors };
  return { across, pulled, bite, least, steps };
}

const AS_IT_IS: GripFactors = { wet: 1, endGrain: 1, toe: 1 };

/** How deep the second piece must hold it, in shank diameters, the tip of a lag screw left out. */
const leastOf = (kind: Kind): number =>
  kind === "bolt" ? 0 : kind === "lag" ? lagPenetration.value.least : leastPenetration.value;

/** What pulls it out of the last piece, the tip of a lag screw left out; undefined of a bolt, which goes through. */
function threadHolds(joint: Joint, kind: Kind, bite: number, tip: number, gm: number): number | undefined {
  const { length, diameter } = joint.size!;
  const full = diameter.approx;
  const said = joint.fastener?.thread?.approx;
  switch (kind) {
    case "bolt":
      return undefined;
    case "nail": {
      const pull = joint.fastener?.coating === "stainless" ? stainlessNailWithdrawal : nailWithdrawal;
      return (pull(gm, full) ?? 0) * bite;
    }
    case "lag": {
      const thread = said ?? lagThread(length.approx / MM_PER_INCH) * MM_PER_INCH;
      return (lagWithdrawal(gm, full) ?? 0) * Math.max(0, Math.min(bite, thread) - tip);
    }
    case "screw":
      return (screwWithdrawal(gm, full) ?? 0) * Math.min(bite, said ?? threadShare.value * length.approx);
  }
}

/** mm */
const SAME = 1e-6;
/** Driven at this slant or more, in degrees off square, it is a toe screw. */
const TOE = 25;

/** mm and N/mm2. */
interface Metal {
  /** What the yield equations count on. */
  readonly root: number;
  readonly yieldMpa: number;
  /** The taper of a lag screw, which holds nothing. */
  readonly tip: number;
}

const tapeMm = (inches: string): number => size(inches, "in").approx;

/** Undefined of a lag screw of a size that no table has, and of other shanks thicker than any of it. */
function metalOf(kind: Kind, full: number, gauge: number | undefined): Metal | undefined {
  const inches = full / MM_PER_INCH;
  const bends = kind === "bolt" ? undefined : bendingYieldOf(inches)?.value.psi;
  const psi = bends ?? (kind === "bolt" || kind === "lag" ? boltYield.value : undefined);
  if (psi === undefined) return undefined;
  const yieldMpa = psi * MPA_PER_PSI;
  if (kind === "lag") {
    const lag = lagSize(inches)?.value;
    return lag && { root: tapeMm(lag.root), tip: tapeMm(lag.tip), yieldMpa };
  }
  if (kind !== "screw") return { root: full, tip: 0, yieldMpa };
  const row = gauge === undefined ? undefined : screwGauge(gauge);
  return { root: row ? tapeMm(row.root.value) : metricRoot.value * full, tip: 0, yieldMpa };
}
