/** The built thing from a straight side, without balloons, with lines for what is to be measured on it. */

import type { Steps } from "../../solid/steps";
import type { Vec3 } from "../../solid/vector";
import type { View } from "../../solid/view";
import { laid } from "../../solid/view-flat";
import type { Box, Drawing, Point } from "../display";
import { ENGLISH } from "../words";
import type { Measure } from "./dimensions";
import { type DrawingOptions, laidOut } from "./draw";
import { MARGIN, PAGE_WIDTH } from "./page";
import { type Fit, onPaper } from "./paper";
import type { DrawnPiece } from "./pieces";
import { unbroken } from "./scale";
import { highest, type Side, viewOf } from "./views";

/** Along 0 to the right, 1 to the back, 2 up, in mm of wood; with what stands in the line. */
export interface ToMeasure {
  readonly axis: 0 | 1 | 2;
  readonly from: number;
  readonly to: number;
  readonly words: string;
}

/** Lines across stand below the thing, upright ones to its left, the shorter ones nearer; those seen end on are left out. */
export function drawMeasured(
  pieces: readonly DrawnPiece[],
  side: Exclude<Side, "turned">,
  lines: readonly ToMeasure[],
  options: Pick<DrawingOptions, "name" | "says" | "system">,
): Steps<Drawing> {
  const view = viewOf(side);
  const says = options.says ?? ENGLISH.drawings;
  const shown = lines.filter(({ axis }) => Math.abs(laid(along(axis, 1), view)[2]) < 0.5);
  const upright = shown.filter(({ axis }) => isUpright(axis, view));
  const across = shown.filter((line) => !upright.includes(line));
  const room = {
    width: PAGE_WIDTH - 2 * MARGIN - FIRST - STEP * upright.length,
    height: highest(side),
  };
  const layout = {
    pieces,
    view,
    room,
    system: options.system,
    says,
    scale: 0,
    hidden: false,
    gutters: [],
    extra: () => [],
    measures: (box: Box, fit: Fit) => [
      ...stacked(across, view, fit, box),
      ...stacked(upright, view, fit, box),
    ],
  };
  return laidOut(layout, (scale) => {
    const caption = `${says.seen[side]}, ${unbroken(says.scale(scale))}`;
    return { title: `${options.name} ${caption}`, caption };
  });
}

function stacked(lines: readonly ToMeasure[], view: View, fit: Fit, box: Box): Measure[] {
  const reach = ({ from, to }: ToMeasure): number => Math.abs(to - from);
  return [...lines]
    .sort((a, b) => reach(a) - reach(b))
    .map(({ axis, from, to, words }, i) => {
      const [a, b] = [from, to].map((at) => onPaper(fit, laid(along(axis, at), view))) as [Point, Point];
      const off = FIRST + i * STEP;
      return isUpright(axis, view)
        ? { from: [box.left, a[1]], to: [box.left, b[1]], out: [-1, 0], off, words }
        : { from: [a[0], box.bottom], to: [b[0], box.bottom], out: [0, 1], off, words };
    });
}

const isUpright = (axis: 0 | 1 | 2, view: View): boolean => Math.abs(laid(along(axis, 1), view)[1]) > 0.5;

const along = (axis: 0 | 1 | 2, at: number): Vec3 => [
  axis === 0 ? at : 0,
  axis === 1 ? at : 0,
  axis === 2 ? at : 0,
];

/** mm of paper from the object to the first line, and from line to line: room to write in. */
const FIRST = 9;
const STEP = 9;
