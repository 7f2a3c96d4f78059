/**
 * The built thing as a line drawing on paper: from a fixed side, to a standard scale, with balloons for the rows of the
 * cut list and its measures over all. Depends on the pieces alone: the same pieces give the same drawing.
 */
import { boundsOf } from "../../solid/contact";
import type { Steps } from "../../solid/steps";
import { type Picture, picturesOf, type View } from "../../solid/view";
import { laid } from "../../solid/view-flat";
import { type Box, boxOf, type Drawing, type Item } from "../display";
import { type DrawingWords, ENGLISH } from "../words";
import { GUTTER, type Gutter, placeBalloons } from "./balloons";
import { drawMeasure, type Measure } from "./dimensions";
import { marksOf } from "./marked";
import { type LengthWords, straightMeasures, turnedMeasures } from "./overall";
import { fitsPage, MARGIN, NOTHING, PAGE_WIDTH, pageOf } from "./page";
import { type Fit, ONE_LINE, paths } from "./paper";
import type { DrawnPiece } from "./pieces";
import { around, type Stroke, sidesOf } from "./plane";
import { nextScale, type System, standardScale, unbroken } from "./scale";
import { type DrawnScrew, screwItems } from "./screws";
import { sightOf } from "./spots";
import { marksInWords } from "./title";
import { highest, type Side, viewOf } from "./views";

export interface DrawingOptions {
  /** What is drawn: `trough`, or the name of one assembly. */
  readonly name: string;
  /** A length in mm as the plan writes it. */
  readonly words: LengthWords;
  /** What is written on it; unsaid, in English. */
  readonly says?: DrawingWords;
  /** Which standard scales. */
  readonly system: System;
  /** Hidden lines, dashed; in straight views only. */
  readonly hidden?: boolean;
  /** Shown as small crosses where their heads are seen. */
  readonly screws?: readonly DrawnScrew[];
  /** So many mm of wood at least are one of paper, so that drawings side by side are of one scale. */
  readonly scale?: number;
  /** mm of paper that the object may be high; each side has its own where this is not said. */
  readonly highest?: number;
}

/** The pieces seen from one side. */
export function drawView(pieces: readonly DrawnPiece[], side: Side, options: DrawingOptions): Steps<Drawing> {
  const view = viewOf(side);
  const straight = side !== "turned";
  const says = options.says ?? ENGLISH.drawings;
  const room = { left: GUTTER + (straight ? DIMENSION : 0), right: GUTTER + (straight ? 0 : DIMENSION) };
  const layout: Layout = {
    pieces,
    view,
    room: {
      width: PAGE_WIDTH - 2 * MARGIN - room.left - room.right,
      height: options.highest ?? highest(side),
    },
    system: options.system,
    says,
    scale: options.scale ?? 0,
    hidden: straight && (options.hidden ?? false),
    gutters: straight ? ["left", "right", "top", "bottom"] : ["left", "right", "top"],
    extra: (fit) => screwItems(options.screws ?? [], pieces, view, fit),
    measures: (box, fit, used) => {
      const off = (gutter: Gutter): number => (used.has(gutter) ? GUTTER + NEAR : DIMENSION);
      if (straight)
        return straightMeasures(box, fit, options.words, { below: off("bottom"), left: off("left") });
      const corners = pieces.flatMap(({ cells }) => cells.flatMap((c) => c.vertices));
      const offs = { below: DIMENSION, left: off("left"), right: off("right") };
      return turnedMeasures(corners, view, fit, options.words, offs);
    },
  };
  return laidOut(layout, (scale) => {
    const seen = says.seen[side];
    const title = `${options.name} ${seen}, ${says.scale(scale)}`;
    const caption = `${seen}, ${unbroken(says.scale(scale))}`;
    return { title: titleOf(pieces, title, options.words, says), caption };
  });
}

/** What one kind of drawing asks of the page. */
export interface Layout {
  readonly pieces: readonly DrawnPiece[];
  readonly view: View;
  /** mm of paper for the object. */
  readonly room: { readonly width: number; readonly height: number };
  readonly system: System;
  readonly says: DrawingWords;
  /** The least scale. */
  readonly scale: number;
  readonly hidden: boolean;
  /** Where balloons may stand; none for a drawing without balloons. */
  readonly gutters: readonly Gutter[];
  /** More lines of the object itself. */
  readonly extra: (fit: Fit) => readonly Item[];
  readonly measures: (box: Box, fit: Fit, used: ReadonlySet<Gutter>) => readonly Measure[];
}

type Wording = (scale: number) => { readonly title: string; readonly caption: string };

/** The layout on a page, in the largest standard scale in which all of it fits. */
export function* laidOut(layout: Layout, wording: Wording): Steps<Drawing> {
  const { pieces, view, room, system, says } = layout;
  const points = pieces.flatMap(({ cells }) => cells.flatMap((c) => c.vertices.map((v) => laid(v, view))));
  if (points.length === 0) return pageOf(wording(1).title, NOTHING, [says.nothing]);
  const { least, most } = boundsOf(points);
  const extent = { width: most[0] - least[0], height: most[1] - least[1] };
  let scale = Math.max(layout.scale, standardScale(extent.width, extent.height, room, system));
  const pictureWithin = yield* picturesOf(pieces, view, layout.hidden);
  for (;;) {
    const fit: Fit = { scale, left: least[0], top: most[1] };
    const box: Box = { left: 0, top: 0, right: extent.width / scale, bottom: extent.height / scale };
    const picture = yield* pictureWithin(ONE_LINE * scale);
    yield;
    const { shown, unseen } = yield* shownOf(layout, picture, fit, box);
    if (fitsPage(shown) || scale > extent.width) {
      const { title, caption } = wording(scale);
      const missing = unseen.length > 0 ? [says.unseen(unseen.join(", "))] : [];
      return { ...pageOf([title, ...missing].join(". "), shown, [caption, ...missing]), scale };
    }
    scale = nextScale(scale, system);
  }
}

function* shownOf(layout: Layout, picture: Picture, fit: Fit, box: Box) {
  const { pieces, gutters, measures } = layout;
  const lines = paths(picture, fit);
  yield;
  const extra = layout.extra(fit);
  const object = [...lines, ...extra];
  // A way along which a piece was moved may lead out past all pieces.
  const taken = around([box, ...extra.map(boxOf)]);
  yield;
  const drawn = (used: ReadonlySet<Gutter>): readonly Item[] => measures(box, fit, used).flatMap(drawMeasure);
  if (gutters.length === 0) return { shown: { object, box: taken, about: drawn(new Set()) }, unseen: [] };
  const { marked, unseen } = marksOf(pieces, yield* sightOf(picture.faces, fit, box));
  yield;
  const balloons = placeBalloons(marked, box, gutters, strokesOf(drawn(new Set(gutters))));
  return { shown: { object, box: taken, about: [...drawn(balloons.used), ...balloons.items] }, unseen };
}

/** Lines as they are, and the boxes of texts. */
const strokesOf = (items: readonly Item[]): readonly Stroke[] =>
  items.flatMap((item) =>
    item.kind === "text" ? sidesOf(boxOf(item)) : item.strokes.map(([a, b]): Stroke => [a!, b!]),
  );

/** What is shown, how large the built thing is, and what its marks mean. */
export function titleOf(
  pieces: readonly DrawnPiece[],
  what: string,
  words: LengthWords,
  says: DrawingWords,
): string {
  if (pieces.length === 0) return what;
  const { least, most } = boundsOf(
    pieces.flatMap(({ cells }) => cells.flatMap((c) => [c.bounds.least, c.bounds.most])),
  );
  const [width, depth, height] = ([0, 1, 2] as const).map((k) => words(most[k] - least[k]));
  return [what, says.overAll(width!, depth!, height!), marksInWords(pieces, says)].join(". ");
}

/** mm of paper from the object to the line of a measure, and from a balloon. */
const DIMENSION = 9;
const NEAR = 3.5;
