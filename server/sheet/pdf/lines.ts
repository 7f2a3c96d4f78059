/** Words to lines of at most a width: broken at blanks, and inside a word only where it is longer than a line. */
import { runsOf, type Tick, type Words, type WriterWords } from "../document";
import { asSeen, isReversed } from "./direction";
import { type Letters, spaced } from "./letters";
import { BLANK, BODY, BOX, BOX_STEP, LEADING, SMALL, type Style } from "./paper";

/** A stretch of a line: type of one style, a line to write on, or a box to tick, with what is said of the two. */
export interface Fragment {
  readonly kind: "text" | "blank" | "box";
  readonly text: string;
  readonly style: Style;
  readonly width: number;
}

export interface Line {
  readonly fragments: readonly Fragment[];
  /** Without a blank at its end. */
  readonly width: number;
  readonly height: number;
  /** The largest type on it. */
  readonly size: number;
}

/** The lines of some words in a style; none for none. */
export function linesOf(words: Words, style: Style, width: number, letters: Letters): readonly Line[] {
  const lines: Line[] = [];
  let line: Word[] = [];
  let taken = 0;
  const end = () => {
    if (line.length > 0) lines.push(lineOf(line, style));
    line = [];
    taken = 0;
  };
  for (const word of wordsOf(words, style, letters)) {
    if (taken + word.width > width) end();
    const parts = word.width > width ? cut(word, width, letters) : [word];
    for (const [i, part] of parts.entries()) {
      if (i > 0) end();
      line.push(part);
      taken += part.width + part.blank;
    }
  }
  end();
  return lines;
}

/** How wide the words are on one line, and the widest of what is not broken. */
export function widthsOf(words: Words, style: Style, letters: Letters): { most: number; least: number } {
  let [most, least, blank] = [0, 0, 0];
  for (const word of wordsOf(words, style, letters)) {
    most += blank + word.width;
    blank = word.blank;
    least = Math.max(least, word.width);
  }
  return { most, least };
}

/** Boxes to tick, as many on a line as there is room for. */
export function boxLines(ticks: readonly Tick[], width: number, words: WriterWords): readonly Line[] {
  const boxes = ticks.map(
    ({ what, done }): Fragment => ({
      kind: "box",
      text: words.tick(what, done),
      style: BODY,
      width: BOX_STEP,
    }),
  );
  const each = Math.max(1, Math.floor((width + BOX_STEP - BOX) / BOX_STEP + 1e-6));
  return Array.from({ length: Math.ceil(boxes.length / each) }, (_, i) => {
    const fragments = boxes.slice(i * each, (i + 1) * each);
    return { fragments, width: boxesWidth(fragments.length), height: BODY.size * LEADING, size: BODY.size };
  });
}

/** Width of so many boxes in a row. */
export const boxesWidth = (count: number): number => (count === 0 ? 0 : (count - 1) * BOX_STEP + BOX);

export const heightOf = (lines: readonly Line[]): number =>
  lines.reduce((sum, { height }) => sum + height, 0);

/** What is not broken: one word, in as many styles as it has, with the width of the blank behind it. */
interface Word {
  readonly parts: readonly Fragment[];
  readonly width: number;
  readonly blank: number;
}

function wordsOf(words: Words, style: Style, letters: Letters): readonly Word[] {
  const found: Word[] = [];
  let parts: Fragment[] = [];
  const end = (blank: number) => {
    if (parts.length > 0) found.push({ parts, width: widthOf(parts), blank });
    parts = [];
  };
  for (const run of runsOf(words)) {
    if (run.style === "blank") {
      parts.push({ kind: "blank", text: spaced(run.text).trim(), style, width: BLANK });
      continue;
    }
    const own = styleOf(run.style, style);
    const blank = letters.width(" ", own);
    for (const [i, text] of spaced(run.text).split(BREAKS).entries()) {
      if (i > 0) end(blank);
      if (text !== "") parts.push({ kind: "text", text, style: own, width: letters.width(text, own) });
    }
  }
  end(0);
  return found;
}

/** A blank, but for the one in a length such as `1220 mm`; `1-3/4"` has none. */
const BREAKS = /(?<!\d) | (?!mm\b)/;

const widthOf = (parts: readonly Fragment[]): number => parts.reduce((sum, { width }) => sum + width, 0);

function styleOf(style: "strong" | "small" | undefined, base: Style): Style {
  if (style === "strong") return { ...base, bold: true };
  return style === "small" ? { ...base, size: Math.min(base.size, SMALL.size) } : base;
}

function lineOf(words: readonly Word[], { size }: Style): Line {
  const fragments: Fragment[] = [];
  let width = 0;
  words.forEach(({ parts, blank }, i) => {
    parts.forEach((part, n) => {
      const ends = n === parts.length - 1 && blank > 0;
      const spoken = ends && part.kind === "text" && !isReversed(part.text);
      const full = spoken ? { ...part, text: `${part.text} `, width: part.width + blank } : part;
      const last = fragments.at(-1);
      if (last && canJoin(last, full))
        fragments[fragments.length - 1] = {
          ...last,
          text: last.text + full.text,
          width: last.width + full.width,
        };
      else fragments.push(full);
      if (ends && !spoken)
        fragments.push({ kind: "text", text: " ", style: { size, bold: false }, width: blank });
      width += part.width;
    });
    if (i < words.length - 1) width += blank;
  });
  return { fragments: asSeen(fragments), width, height: size * LEADING, size };
}

/** Type of one style, set as one. */
function canJoin(a: Fragment, b: Fragment): boolean {
  if (a.kind !== "text" || b.kind !== "text" || isReversed(a.text) || isReversed(b.text)) return false;
  return a.style.size === b.style.size && a.style.bold === b.style.bold;
}

/** A word longer than a line, in pieces of at most a line; a letter is not parted from the marks on it. */
function cut({ parts, blank }: Word, width: number, letters: Letters): readonly Word[] {
  const pieces: Fragment[][] = [[]];
  let taken = 0;
  const next = () => {
    if (taken > 0) pieces.push([]);
    taken = 0;
  };
  for (const part of parts) {
    if (part.kind !== "text") {
      const fitted = { ...part, width: Math.min(part.width, width) };
      if (taken + fitted.width > width) next();
      pieces.at(-1)!.push(fitted);
      taken += fitted.width;
      continue;
    }
    let text = "";
    let from = taken;
    const keep = () => {
      if (text !== "") pieces.at(-1)!.push({ ...part, text, width: taken - from });
      text = "";
    };
    for (const [letter] of part.text.matchAll(/\P{M}\p{M}*|\p{M}/gu)) {
      const more = letters.width(letter, part.style);
      if (taken + more > width) {
        keep();
        next();
        from = 0;
      }
      text += letter;
      taken += more;
    }
    keep();
  }
  return pieces.map((piece, i) => ({
    parts: piece,
    width: widthOf(piece),
    blank: i === pieces.length - 1 ? blank : 0,
  }));
}
