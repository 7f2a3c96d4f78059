/** Drawings with their captions, at their true scale where the page has the room. */
import type { Drawing } from "../display";
import type { Figure } from "../document";
import type { Setting } from "./blocks";
import { paintDrawing } from "./drawing";
import { linesOf } from "./lines";
import { MM, STRONG } from "./paper";
import type { Tag } from "./pen";
import { beside, type Flow, type Frame, pile, row, type Slab } from "./slab";

/** The caption, tied to its drawing. Nothing for a drawing without a size. */
export function figureFlows(figure: Figure, frame: Frame, parent: Tag, setting: Setting): readonly Flow[] {
  const drawing = figure.drawing();
  if (!(drawing.width > 0 && drawing.height > 0)) return [];
  return [{ together: slabsOfFigure(figure, drawing, frame, parent, setting) }];
}

/** As many side by side as the width takes, their upper edges level; those in a row stay together. Loose: what follows may fill the page before a row that the next one begins with. */
export function figureRows(
  figures: readonly Figure[],
  frame: Frame,
  parent: Tag,
  setting: Setting,
  loose = false,
): readonly Flow[] {
  const rows: { readonly figure: Figure; readonly drawing: Drawing; readonly left: number }[][] = [];
  let used = 0;
  for (const figure of figures) {
    const drawing = figure.drawing();
    if (!(drawing.width > 0 && drawing.height > 0)) continue;
    const width = Math.min(frame.width, drawing.width * MM);
    const last = rows.at(-1);
    if (last !== undefined && used + BETWEEN + width <= frame.width) {
      last.push({ figure, drawing, left: frame.left + used + BETWEEN });
      used += BETWEEN + width;
    } else {
      rows.push([{ figure, drawing, left: frame.left }]);
      used = width;
    }
  }
  return rows.map((row) => ({
    loose,
    together: [
      beside(
        row.map(({ figure, drawing, left }) => {
          const width = Math.min(frame.width, drawing.width * MM);
          return pile(slabsOfFigure(figure, drawing, { left, width }, parent, setting));
        }),
      ),
    ],
  }));
}

const BETWEEN = 6 * MM;

/** A figure that may stand beside text: how wide it is in points, and its slabs. */
export interface Small {
  readonly width: number;
  readonly slabs: (frame: Frame, parent: Tag) => readonly Slab[];
}

/** Nothing for one that takes more than this share of the width: beside it text would have too short lines. */
export function smallFigure(
  figure: Figure,
  frame: Frame,
  setting: Setting,
  share = LARGEST_SHARE,
): Small | undefined {
  const drawing = figure.drawing();
  const width = drawing.width * MM;
  if (!(width > 0 && drawing.height > 0) || width > frame.width * share) return undefined;
  return { width, slabs: (place, parent) => slabsOfFigure(figure, drawing, place, parent, setting) };
}

const LARGEST_SHARE = 0.55;

function slabsOfFigure(
  figure: Figure,
  drawing: Drawing,
  frame: Frame,
  parent: Tag,
  { pen, room }: Setting,
): readonly Slab[] {
  const caption = linesOf(figure.caption, STRONG, frame.width, pen.letters);
  const above: Slab[] =
    caption.length === 0
      ? []
      : [
          row([{ ...frame, lines: caption, tag: pen.tag("P", parent) }], {
            before: 2.5 * MM,
            after: 0.5 * MM,
            tied: true,
          }),
        ];
  const taken = above.reduce((sum, { height, after }) => sum + height + after, 0);
  const most = Math.max(room - taken, room / 2);
  const [width, height] = [drawing.width * MM, drawing.height * MM];
  const scale = Math.min(1, frame.width / width, most / height);
  // Boards begin at one edge, so that their marks can be compared; the rest stands in the middle.
  const left = figure.toScale ? frame.left : frame.left + (frame.width - width * scale) / 2;
  const tag = pen.tag("Figure", parent, { alt: drawing.title });
  const picture: Slab = {
    height: height * scale,
    before: above.length > 0 ? 0 : 2.5 * MM,
    after: (figure.toScale ? 2.5 : 4) * MM,
    paint: (ink, top) => {
      ink.bounds(tag, left, top, width * scale, height * scale);
      ink.content(tag, () => paintDrawing(ink, drawing, left, top, scale));
    },
  };
  return [...above, picture];
}
