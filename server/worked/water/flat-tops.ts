/** Plywood that lies level with nothing over it, outdoors: rain stands on it. */
import { type Declared, ifKnown } from "../../plan";
import { runOff } from "../../trade";
import { floorsOf } from "../choose";
import type { Piece } from "../pieces";
import type { WaterInput } from "./path";

export interface FlatTop {
  readonly part: string;
  /** Its placed pieces that lie so, by their places among all. */
  readonly pieces: readonly number[];
  /** mm: its shorter side as it lies, and how far it must fall over that. */
  readonly across: number;
  readonly fall: number;
}

/** Panels with a side shorter than this, in mm, are let be: 6". */
const SMALL = 152.4;
/** As much of a panel as must be under something for it to be sheltered. */
const SHELTERED = 0.5;

export function flatTopsOf(input: WaterInput): FlatTop[] {
  const { settings, space, boxes, scope } = input;
  if (settings.place !== "outdoors") return [];
  const inBoxes = new Set(boxes.flatMap((box) => floorsOf(box.declared, space, scope)));
  return [...input.parts.values()].flatMap((part): FlatTop[] => {
    const declared = part.material?.declared;
    if (!isPlywood(declared)) return [];
    const pieces = (space.named.get(part.name) ?? []).filter(
      (i) => !inBoxes.has(i) && isLevel(space.pieces[i]!) && !isSheltered(i, input),
    );
    const [length, width] = [ifKnown(part.cut)?.overall, ifKnown(part.width)?.approx];
    const across = Math.min(length ?? 0, width ?? 0);
    if (pieces.length === 0 || across < SMALL) return [];
    return [{ part: part.name, pieces, across, fall: across * runOff.value }];
  });
}

const isPlywood = (declared: Declared | undefined): boolean =>
  declared?.entry.kind === "sheet" && declared.entry.clauses.some((c) => c.kind === "plywood");

/** Cosine of the fall that lets rain run off, less what arithmetic leaves. */
const RUNS_OFF = Math.cos(Math.atan(runOff.value)) + 1e-9;
const isLevel = ({ pose }: Piece): boolean => Math.abs(pose.thickness[2]) > RUNS_OFF;

/** Whether as much as that of it lies under other pieces, seen from above by the blocks round them. */
function isSheltered(i: number, { space }: WaterInput): boolean {
  const { least, most } = space.pieces[i]!.bounds;
  const high = space.bounds?.most[2] ?? most[2];
  const above = space.grid.near({ least: [least[0], least[1], most[2]], most: [most[0], most[1], high] }, 0);
  let covered = 0;
  for (const j of above) {
    const other = space.pieces[j]!.bounds;
    if (j === i || other.least[2] < most[2] - 1) continue;
    const over = (k: 0 | 1): number =>
      Math.max(0, Math.min(most[k], other.most[k]) - Math.max(least[k], other.least[k]));
    covered += over(0) * over(1);
  }
  return covered >= SHELTERED * (most[0] - least[0]) * (most[1] - least[1]);
}
