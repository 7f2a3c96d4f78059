/**
 * A sheet of plywood as it lies on the floor, length across the page, to scale: pieces as rectangles with their name and
 * size, what is left over hatched. Labels stand along the piece that has no room across; what fits nowhere hangs below.
 */
import { PAGE_WIDTH } from "./board-drawing";
import type { Marked, SheetPanel } from "./data";
import {
  type Box,
  type Drawing,
  INNER,
  type Item,
  OUTLINE,
  rectangle,
  TYPE,
  text,
  textWidth,
  widthFor,
} from "./display";
import { type Hanging, hangLabels } from "./hanging";
import { withMark } from "./parts/names";
import { hatched } from "./strokes";
import { type DrawingWords, ENGLISH } from "./words";

export interface PanelView {
  /** mm of paper for one mm of wood; `panelScale` fits the longest sheet to the page. */
  readonly scale: number;
  /** What is written on it; unsaid, in English. */
  readonly says?: DrawingWords;
}

/** The scale at which all these sheets fit a page, in width and in height. */
export function panelScale(sheets: readonly SheetPanel[]): number {
  const longest = Math.max(0, ...sheets.map(({ length }) => positive(length.mm)));
  const widest = Math.max(0, ...sheets.map(({ width }) => positive(width.mm)));
  const scale = Math.min((PAGE_WIDTH - 2 * EDGE) / longest, HIGHEST / widest);
  return Number.isFinite(scale) ? scale : 1;
}

/** The sheet as a page of its own, as wide and as high as it and its labels need. */
export function drawPanel(panel: SheetPanel, { scale, says = ENGLISH.drawings }: PanelView): Drawing {
  const [length, width] = [positive(panel.length.mm), positive(panel.width.mm)];
  const sheet: Box = { left: EDGE, top: EDGE, right: EDGE + length * scale, bottom: EDGE + width * scale };
  const place = (at: Pick<SheetPanel["cuts"][number], "x" | "y">, along: Marked, across: Marked): Box => {
    const x = (mm: number) => EDGE + Math.min(length, positive(mm)) * scale;
    const y = (mm: number) => sheet.bottom - Math.min(width, positive(mm)) * scale;
    return {
      left: x(at.x),
      right: x(at.x + positive(along.mm)),
      top: y(at.y + positive(across.mm)),
      bottom: y(at.y),
    };
  };
  const pieces = panel.cuts.map(
    (cut): Piece => ({
      ...place(cut, cut.length, cut.width),
      piece: cut.piece,
      lines: [withMark(cut), says.size(cut.length.text, cut.width.text)],
    }),
  );
  const rests = panel.rests.map(
    (rest): Piece => ({
      ...place(rest, rest.length, rest.width ?? panel.width),
      piece: "",
      lines: [says.rest(rest.name), says.keep(says.size(rest.length.text, rest.width?.text ?? ""))],
    }),
  );
  const leaders = outside(pieces.filter((piece) => fitOf(piece) === undefined));
  const inside = [...pieces, ...rests].flatMap((piece) => labelInside(piece, leaders));
  const hung = hangLabels(leaders, sheet.bottom + 1, PAGE_WIDTH);
  const items: Item[] = [
    ...hatched("waste", sheet, 3),
    ...pieces.map((box) => ({ ...rectangle("piece", INNER, box, "paper"), piece: box.piece })),
    ...rests.map((box) => rectangle("cut", INNER, box, "none")),
    rectangle("wood", OUTLINE, sheet, "none"),
    ...hung.leaders,
    ...inside,
    ...hung.labels,
  ];
  return {
    title: titleOf(panel, says),
    width: Math.min(PAGE_WIDTH, widthFor(items, EDGE)),
    height: Math.max(sheet.bottom, hung.bottom) + 1,
    items,
  };
}

const EDGE = 2;
/** A sheet is drawn no higher than this, so that it fits a printed page with its labels. */
const HIGHEST = 190;
const ROOM = 1.6;
const LEADING = 4.9;

interface Piece extends Box {
  /** Empty for a rest. */
  readonly piece: string;
  readonly lines: readonly [name: string, size: string];
}

interface Fit {
  readonly words: readonly string[];
  /** Along the piece from foot to head, for a narrow one. */
  readonly upright: boolean;
}

/** Across, along, or on one line along a narrow piece; undefined when there is no room. */
function fitOf({ left, right, top, bottom, lines }: Piece): Fit | undefined {
  const [width, height] = [right - left, bottom - top];
  return [[...lines], [lines.join(", ")]]
    .flatMap((words) => [false, true].map((upright) => ({ words, upright })))
    .find(({ words, upright }) => {
      const [along, across] = upright ? [height, width] : [width, height];
      return words.length * LEADING + 0.4 <= across && lengthOf(words) <= along - ROOM;
    });
}

function lengthOf(words: readonly string[]): number {
  return Math.max(...words.map((w) => textWidth(w, TYPE)));
}

/** The label in its piece: in the middle, or beside it where fewer leaders from other pieces run through. */
function labelInside(box: Piece, leaders: readonly Hanging[]): readonly Item[] {
  const fit = fitOf(box);
  if (fit === undefined) return [];
  const { words, upright } = fit;
  const { left, right, top, bottom, piece } = box;
  const y = (top + bottom) / 2;
  const width = upright ? words.length * LEADING : lengthOf(words);
  const met = (x: number) =>
    leaders.filter((leader) => leader.from < bottom && Math.abs(leader.x - x) < width / 2 + 0.8).length;
  const play = right - left - width - ROOM;
  const places = [...SHARES, 0, 1].map((share) => {
    return left + ROOM / 2 + width / 2 + share * Math.max(0, play);
  });
  const x = places.reduce((best, place) => (met(place) < met(best) ? place : best));
  const style = { anchor: "middle", ...(piece !== "" && { piece }), halo: true, upright } as const;
  return words.map((w, i) => {
    const drop = 1.4 + (i - (words.length - 1) / 2) * LEADING;
    return upright ? text("label", x + drop, y, w, style) : text("label", x, y + drop, w, style);
  });
}

/** Leaders down from the pieces: from their middles, or beside them where another already runs. */
function outside(pieces: readonly Piece[]): readonly Hanging[] {
  const taken: number[] = [];
  return pieces.map(({ left, right, top, bottom, lines, piece }) => {
    const places = SHARES.map((share) => left + share * (right - left));
    const x = places.find((place) => taken.every((other) => Math.abs(other - place) >= 2.5)) ?? places[0]!;
    taken.push(x);
    return { x, from: (top + bottom) / 2, words: lines.join(", "), bold: false, layer: "label", piece };
  });
}

/** Where along a piece, the best places first. */
const SHARES = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9];

function titleOf(panel: SheetPanel, says: DrawingWords): string {
  const pieces = panel.cuts.map((cut) => `${cut.label} ${says.size(cut.length.text, cut.width.text)}`);
  const rests = panel.rests.map(({ name, length, width }) =>
    says.restToKeep(name, says.size(length.text, width?.text ?? "")),
  );
  return says.holds(`${panel.label}, ${says.size(panel.length.text, panel.width.text)}`, [
    ...pieces,
    ...rests,
  ]);
}

function positive(mm: number): number {
  return Number.isFinite(mm) ? Math.max(0, mm) : 0;
}
