/**
 * Labels under a drawing, each on a leader down from its place: as flags beside straight leaders while that stays
 * shallow; where they crowd, upright on bent leaders; and when even those are too many, one after the other in lines.
 */
import { INNER, type Item, type Layer, line, shortened, THIN, TYPE, text, textWidth } from "./display";
import { fanOut } from "./fan";
import { type PlacedFlag, placeFlags } from "./flags";

export interface Hanging {
  readonly x: number;
  /** Where on the page the leader begins. */
  readonly from: number;
  readonly words: string;
  readonly bold: boolean;
  /** A running mark's leader begins at its tick, a label's with a dot in its piece. */
  readonly layer: Layer & ("mark" | "label");
  readonly piece?: string;
}

export interface Hung {
  readonly leaders: readonly Item[];
  readonly labels: readonly Item[];
  /** Where the lowest label ends. */
  readonly bottom: number;
}

/** Hangs them from `top` down on a page of that width; a label longer than half the page is shortened. */
export function hangLabels(hangings: readonly Hanging[], top: number, pageWidth: number): Hung {
  const sorted = hangings
    .map((hanging) => ({ ...hanging, words: shortened(hanging.words, TYPE, pageWidth / 2, hanging.bold) }))
    .filter(({ words }) => words !== "")
    .sort((a, b) => a.x - b.x);
  const flags = placeFlags(
    sorted.map(({ x, words, bold }) => ({ x, width: PAD + textWidth(words, TYPE, bold) + GAP })),
    pageWidth,
  );
  if (flags?.every(({ row }) => row < DEEPEST)) return asFlags(sorted, flags, top);
  const places = fanOut(
    sorted.map(({ x }) => x),
    ROW,
    ROW / 2,
    pageWidth - ROW / 2,
  );
  return places ? fanned(sorted, places, top) : inLines(sorted, top, pageWidth);
}

/** Between leader and label, and beyond the label. */
const PAD = 0.8;
const GAP = 0.7;
const ROW = 4.7;
const DOT = 0.01;
/** Rows of flags; more are hard to follow. */
const DEEPEST = 7;

function asFlags(hangings: readonly Hanging[], placed: readonly PlacedFlag[], top: number): Hung {
  const feet = placed.map(({ row }) => top + (row + 1) * ROW);
  const labels = hangings.map((hanging, i) => {
    const [left, y] = [placed[i]!.side === "left", feet[i]! - 1];
    return labelAt(hanging, left ? hanging.x - PAD : hanging.x + PAD, y, { anchor: left ? "end" : "start" });
  });
  const leaders = hangings.flatMap((hanging, i) => leaderOf(hanging, [[hanging.x, feet[i]! - 0.6]]));
  return { leaders, labels, bottom: Math.max(top, ...feet) };
}

function fanned(hangings: readonly Hanging[], places: readonly number[], top: number): Hung {
  const farthest = Math.max(0, ...hangings.map(({ x }, i) => Math.abs(x - places[i]!)));
  const foot = top + Math.min(16, Math.max(3, farthest * 0.4));
  const leaders = hangings.flatMap((hanging, i) =>
    leaderOf(hanging, [
      [hanging.x, top],
      [places[i]!, foot],
    ]),
  );
  const labels = hangings.map((hanging, i) =>
    labelAt(hanging, places[i]! + MIDDLE * TYPE, foot + PAD, { anchor: "end", upright: true }),
  );
  const longest = Math.max(...hangings.map(({ words, bold }) => textWidth(words, TYPE, bold)));
  return { leaders, labels, bottom: foot + PAD + longest };
}

/** Half the height of a letter over its baseline, as a share of the type. */
const MIDDLE = 0.29;

function inLines(hangings: readonly Hanging[], top: number, pageWidth: number): Hung {
  let [x, y] = [GAP, top + ROW];
  const labels = hangings.map((hanging) => {
    const width = textWidth(hanging.words, TYPE, hanging.bold);
    if (x + width > pageWidth) [x, y] = [GAP, y + ROW];
    const label = labelAt(hanging, x, y - 1, { anchor: "start" });
    x += width + 4 * GAP;
    return label;
  });
  return { leaders: [], labels, bottom: y };
}

function labelAt(
  { words, bold, layer, piece }: Hanging,
  x: number,
  y: number,
  style: { readonly anchor: "start" | "end"; readonly upright?: boolean },
): Item {
  return text(layer, x, y, words, { bold, halo: true, ...style, ...(piece !== undefined && { piece }) });
}

/** Straight down to the drawing's foot and through these points. */
function leaderOf(
  { x, from, layer, piece }: Hanging,
  through: readonly (readonly [number, number])[],
): readonly Item[] {
  const owner = piece === undefined ? {} : { piece };
  const leader = { ...line("leader", layer === "mark" ? INNER : THIN, [x, from], ...through), ...owner };
  if (layer === "mark") return [leader];
  return [{ ...line("leader", 1, [x - DOT, from], [x + DOT, from]), ...owner }, leader];
}
