/** Which measures over all a view shows, and where: below and to the left, or along the block's lower silhouette. */
import { type Bounds, boundsOf } from "../../solid/contact";
import type { Vec3 } from "../../solid/vector";
import type { View } from "../../solid/view";
import { laid } from "../../solid/view-flat";
import type { Box, Point } from "../display";
import type { Measure } from "./dimensions";
import { type Fit, onPaper } from "./paper";
import { heading } from "./plane";

export type LengthWords = (mm: number) => string;

/** Width below and height to the left; `below` and `left` are how far out they stand, in mm of paper. */
export function straightMeasures(
  box: Box,
  { scale }: Fit,
  words: LengthWords,
  off: { readonly below: number; readonly left: number },
): readonly Measure[] {
  const from: Point = [box.left, box.bottom];
  return [
    {
      from,
      to: [box.right, box.bottom],
      out: [0, 1],
      off: off.below,
      words: words((box.right - box.left) * scale),
    },
    {
      from,
      to: [box.left, box.top],
      out: [-1, 0],
      off: off.left,
      words: words((box.bottom - box.top) * scale),
    },
  ];
}

/** Where the measures of a turned view stand out to, in mm of paper; the height stands on one side of the object. */
export interface TurnedOffs {
  readonly below: number;
  readonly left: number;
  readonly right: number;
}

/** Width and depth along the edges of the block at the lower silhouette, the height along the upright at its side. */
export function turnedMeasures(
  corners: readonly Vec3[],
  view: View,
  fit: Fit,
  words: LengthWords,
  off: TurnedOffs,
): readonly Measure[] {
  const bounds = boundsOf(corners);
  const { least, most } = bounds;
  const block = blockOf(bounds, view, fit);
  const { low, outX, outY, corner } = block;
  const upright = uprightOf(block, bounds, corners);
  const [foot, head] = [corner(upright.x, upright.y, least[2]), corner(upright.x, upright.y, most[2])];
  const out: Point = upright.x === block.farX ? [-outX[0], -outX[1]] : [-outY[0], -outY[1]];
  const aside = out[0] > 0 ? off.right : off.left;
  return [
    {
      from: low,
      to: corner(block.farX, block.nearY, least[2]),
      out: outY,
      off: off.below,
      words: words(most[0] - least[0]),
    },
    {
      from: low,
      to: corner(block.nearX, block.farY, least[2]),
      out: outX,
      off: off.below,
      words: words(most[1] - least[1]),
    },
    {
      from: foot,
      to: head,
      out,
      off: aside / Math.max(0.3, Math.abs(out[0])),
      words: words(most[2] - least[2]),
    },
  ];
}

interface Block {
  readonly nearX: number;
  readonly farX: number;
  readonly nearY: number;
  readonly farY: number;
  /** A corner on the page. */
  readonly corner: (x: number, y: number, z: number) => Point;
  readonly low: Point;
  /** Directions on the page towards the viewer, along the depth's and the width's extension lines. */
  readonly outX: Point;
  readonly outY: Point;
}

function blockOf({ least, most }: Bounds, view: View, fit: Fit): Block {
  const corner = (x: number, y: number, z: number): Point => onPaper(fit, laid([x, y, z], view));
  const [nearX, farX] = view.toViewer[0] > 0 ? [most[0], least[0]] : [least[0], most[0]];
  const [nearY, farY] = view.toViewer[1] > 0 ? [most[1], least[1]] : [least[1], most[1]];
  const ahead = (x: number, y: number): Point => {
    const [right, up] = laid([x, y, 0], view);
    return heading([0, 0], [right, -up]);
  };
  const outX = ahead(nearX < farX ? -1 : 1, 0);
  const outY = ahead(0, nearY < farY ? -1 : 1);
  return { nearX, farX, nearY, farY, corner, low: corner(nearX, nearY, least[2]), outX, outY };
}

/** The upright at the silhouette whose ends lie nearer to wood: to the right where it is the same. */
function uprightOf({ nearX, farX, nearY, farY, corner }: Block, bounds: Bounds, corners: readonly Vec3[]) {
  const far = (x: number, y: number): number =>
    [bounds.least[2], bounds.most[2]].reduce(
      (sum, z) => sum + Math.min(...corners.map((p) => Math.hypot(p[0] - x, p[1] - y, p[2] - z))),
      0,
    );
  const sides = [
    { x: farX, y: nearY },
    { x: nearX, y: farY },
  ] as const;
  const [right, left] =
    corner(sides[0].x, sides[0].y, 0)[0] > corner(sides[1].x, sides[1].y, 0)[0]
      ? sides
      : [sides[1], sides[0]];
  return far(left.x, left.y) < far(right.x, right.y) - 1 ? left : right;
}
