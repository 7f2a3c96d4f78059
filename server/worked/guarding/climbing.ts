/** What a child could climb beside a guard. Millimetres. */
import type { At, Loaded } from "../../plan";
import type { Box } from "../boxes";
import type { Settings } from "../settings";
import type { Space } from "../space";
import { type Foothold, footholdsIn } from "./footholds";
import { FOOTHOLDS } from "./sizes";
import type { Soil } from "./soil";

export interface Climb {
  /** Where the plan says that it stands near a guard. */
  readonly at: At;
  readonly lowest: Foothold;
  readonly highest: Foothold;
  /** Names of the parts and the boxes that have a foothold, in the order of their lowest. */
  readonly things: readonly string[];
  /** All of them are as high as one: how far that must go up or down to be none. */
  readonly oneLevel: { readonly up: number; readonly down: number } | undefined;
}

/** Undefined where the plan stands near no guard, or nothing of it has a foothold there. */
export function climbOf(
  loaded: Loaded,
  settings: Settings,
  space: Space,
  soils: readonly Soil[],
): Climb | undefined {
  const at = settings.nearGuard ? saidIn(loaded) : undefined;
  if (!at || !space.bounds) return undefined;
  const footholds = footholdsIn(space, soils);
  const [lowest] = footholds;
  if (!lowest) return undefined;
  const highest = footholds.reduce((a, b) => (b.to > a.to + SAME ? b : a));
  const level = highest.to - lowest.from <= SAME;
  return {
    at,
    lowest,
    highest,
    things: [...new Set(footholds.map((f) => nameOf(f, space)))],
    oneLevel: level ? { up: FOOTHOLDS.high - lowest.from, down: lowest.from - FOOTHOLDS.low } : undefined,
  };
}

const nameOf = ({ piece, box }: Foothold, space: Space): string =>
  piece === undefined ? box!.name : space.pieces[piece]!.part;

/** Heights that differ by less, in mm, are one: 1/64". */
const SAME = 0.4;

/** The clause that says so. */
function saidIn({ files }: Loaded): At | undefined {
  const { file, tree } = files[0]!;
  const plan = tree.entries.find((e) => e.kind === "plan");
  const clause = plan?.clauses.find((c) => c.kind === "near" && c.what === "guard");
  return clause && { file, start: clause.start, end: clause.end };
}

/** Boxes whose fill may be a foothold, since it is not known how high it ends. */
export function unknownFills(boxes: readonly Box[], soils: readonly Soil[]): Box[] {
  return boxes.filter(
    (box) => box.fill && box.fill.name !== "water" && !soils.some((soil) => soil.box === box),
  );
}
