/**
 * A board drawn as it lies on the bench: outline with its length to scale, a tape along the lower edge with a running
 * mark at each cut, the pieces named inside, waste crossed out, bad wood hatched, the kerf shown on the waste side.
 */
import type { SheetBoard } from "./data";
import {
  type Box,
  type Drawing,
  INNER,
  type Item,
  line,
  lines,
  OUTLINE,
  type Point,
  rectangle,
  THIN,
  TYPE,
  text,
  textWidth,
  widthFor,
} from "./display";
import { type Hanging, hangLabels } from "./hanging";
import { withMark } from "./parts/names";
import { type Mark, marksOf, type Rest, restsOf } from "./stretches";
import { crossed, hatched } from "./strokes";
import { type DrawingWords, ENGLISH } from "./words";

export interface BoardView {
  /** mm of paper for one mm of wood; `boardScale` fits the longest board to the page. */
  readonly scale: number;
  /** What the tape shows. */
  readonly system: "inches" | "millimetres";
  /** What is written on it; unsaid, in English. */
  readonly says?: DrawingWords;
}

/** The widest a drawing is, in mm: the text of an A4 page with margins of 15 mm. */
export const PAGE_WIDTH = 180;

/** The scale at which the longest of these boards takes the width of the page. */
export function boardScale(boards: readonly SheetBoard[]): number {
  const longest = Math.max(0, ...boards.map((board) => finite(board.length.mm)));
  return longest > 0 ? (PAGE_WIDTH - 2 * MARGIN) / longest : 1;
}

/** The board as a page of its own, as wide and as high as it and its labels need. */
export function drawBoard(board: SheetBoard, view: BoardView): Drawing {
  const { says = ENGLISH.drawings } = view;
  const length = Math.max(0, finite(board.length.mm));
  const at = (mm: number) =>
    Math.min(PAGE_WIDTH - MARGIN, MARGIN + Math.min(length, Math.max(0, finite(mm))) * view.scale);
  const stretch = (from: number, to: number): Box => ({
    left: at(from),
    right: at(Math.max(from, to)),
    top: TOP,
    bottom: FOOT,
  });
  const rests = restsOf(board);
  const names = [
    ...board.cuts.map((cut) => ({
      ...stretch(cut.from.mm, cut.to.mm),
      lines: [withMark(cut), cut.length.text],
      plain: [cut.label, cut.length.text],
      piece: cut.piece,
    })),
    ...rests.flatMap(({ from, to, named }) =>
      named ? [{ ...stretch(from, to), lines: [says.rest(named.name), says.keep(named.length.text)] }] : [],
    ),
  ];
  const marks = marksOf(board);
  const written = names.map(nameInside);
  const outside = names.filter((_, i) => written[i]!.length === 0);
  const hung = hangLabels(
    [
      ...marks.map((mark) => ({
        x: at(mark.mm),
        from: TAPE_FOOT,
        words: mark.text,
        bold: true,
        layer: "mark" as const,
      })),
      ...inRuns(outside).map((run) => nameOutside(run, says)),
    ],
    TAPE_FOOT + 0.4,
    PAGE_WIDTH,
  );
  const items: Item[] = [
    ...board.cuts.map((cut) => ({
      ...rectangle("piece", 0, stretch(cut.from.mm, cut.to.mm), "paper"),
      piece: cut.piece,
    })),
    ...rests.flatMap(({ from, to, kind }) => {
      if (kind === "bad") return hatched("bad", stretch(from, to), 1.6);
      return kind === "waste" ? crossed("waste", stretch(from, to)) : [];
    }),
    ...sawLines(board, rests, at),
    rectangle("wood", OUTLINE, stretch(0, length), "none"),
    tape(length, at, view),
    ...marks.flatMap((mark) => markStrokes(at(mark.mm), mark.waste)),
    ...hung.leaders,
    ...written.flat(),
    ...hung.labels,
  ];
  return {
    title: titleOf(board, says),
    width: Math.min(PAGE_WIDTH, widthFor(items, MARGIN)),
    height: hung.bottom + 1,
    items,
  };
}

const MARGIN = 2;
/** The board's upper and lower edge on the page, and where the tape ends below it. */
const TOP = 3.6;
const FOOT = TOP + 12.6;
const TAPE_FOOT = FOOT + 3;
/** Lines nearer than this on paper are drawn as one. */
const ONE_LINE = 0.35;
/** A double's noise on a length, in mm of wood. */
const NOISE = 0.01;

/** A mark's tick, and the short double line that says on which side of it the saw runs. */
function markStrokes(x: number, waste: Mark["waste"]): readonly Item[] {
  const tick = line("mark", OUTLINE, [x, FOOT], [x, TAPE_FOOT]);
  if (waste === null) return [tick];
  const off = waste === "right" ? 0.9 : -0.9;
  return [
    tick,
    lines(
      "kerf",
      INNER,
      [x, x + off].map((place) => [
        [place, TOP - 2.6],
        [place, TOP],
      ]),
    ),
  ];
}

function sawLines(board: SheetBoard, rests: readonly Rest[], at: (mm: number) => number): readonly Item[] {
  const places = [
    ...board.cuts.map((cut) => cut.to.mm),
    ...board.cuts.map((cut) => cut.from.mm),
    ...rests.flatMap(({ from, to }) => [from, to]),
  ];
  const drawn = [at(0), at(board.length.mm)];
  return places.map(at).flatMap((x) => {
    if (drawn.some((other) => Math.abs(other - x) < ONE_LINE)) return [];
    drawn.push(x);
    return [line("cut", INNER, [x, TOP], [x, FOOT])];
  });
}

function tape(length: number, at: (mm: number) => number, { scale, system }: BoardView): Item {
  const [small, large] = system === "inches" ? [25.4, 12] : [10, 10];
  const thin = [1, 2, 5, 10].find((n) => small * n * scale >= 1.2) ?? 20;
  const strokes: Point[][] = [
    [
      [at(0), TAPE_FOOT],
      [at(length), TAPE_FOOT],
    ],
  ];
  for (let n = 1; n * small < length - NOISE && n < 2000; n++) {
    const depth = n % large === 0 ? 2.2 : n % thin === 0 ? 1.1 : 0;
    const x = at(n * small);
    if (depth > 0)
      strokes.push([
        [x, FOOT],
        [x, FOOT + depth],
      ]);
  }
  return lines("tape", THIN, strokes);
}

interface Name extends Box {
  readonly lines: readonly string[];
  /** Without the mark, for where it has no room. */
  readonly plain?: readonly string[];
  readonly piece?: string;
}

/** The mark, name and length in the piece, one under the other, or nothing when they do not fit. */
function nameInside({ left, right, lines, plain, piece }: Name): readonly Item[] {
  const middle = (left + right) / 2;
  const fits = (words: string): boolean => textWidth(words, TYPE) <= right - left - 1.6;
  const shown = [lines, ...(plain ? [plain] : [])].find((all) => all.every(fits)) ?? [];
  return shown.map((words, i) =>
    text("label", middle, FOOT - 7.5 + i * 4.9, words, {
      anchor: "middle",
      halo: true,
      ...(piece && { piece }),
    }),
  );
}

interface Run {
  readonly first: Name;
  readonly last: Name;
  readonly count: number;
}

/** Neighbours with the same name and length share one label. */
function inRuns(names: readonly Name[]): readonly Run[] {
  const runs: Run[] = [];
  for (const name of names) {
    const run = runs.at(-1);
    if (run && run.last.lines.join("\n") === name.lines.join("\n") && name.left - run.last.right < 1)
      runs[runs.length - 1] = { ...run, last: name, count: run.count + 1 };
    else runs.push({ first: name, last: name, count: 1 });
  }
  return runs;
}

/** A run's leader comes down from its outer end, so that its label hangs below the marks of the run and not among them. */
function nameOutside({ first, last, count }: Run, says: DrawingWords): Hanging {
  const { left, right, lines, piece } = first.left < PAGE_WIDTH / 2 ? first : last;
  const label = lines.join(" ");
  const words = count > 1 ? says.inARow(label, count) : label;
  return {
    x: (left + right) / 2,
    from: FOOT - 2,
    words,
    bold: false,
    layer: "label",
    ...(piece && { piece }),
  };
}

function titleOf(board: SheetBoard, says: DrawingWords): string {
  const cuts = board.cuts.map((cut) => says.piece(cut.label, cut.length.text, cut.to.text));
  const rests = board.rests.map(({ name, length }) => says.restToKeep(name, length.text));
  return says.holds(board.label, [...cuts, ...rests]);
}

function finite(mm: number): number {
  return Number.isFinite(mm) ? mm : 0;
}
