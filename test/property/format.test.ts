/** What the layout of a text must always hold, whatever the text: nothing is lost, nothing is said otherwise, and once is enough. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { applied, format } from "../../grammar/format";
import { parse } from "../../grammar/parser";
import { endOf, tokenize } from "../../grammar/tokens";
import { formatLines, formatOnNewLine } from "../../server/features/format";
import { worked } from "../features/plans";
import { anyText, madePlan, SAMPLES, SOME } from "./plans";

const laidOut = (text: string): string => applied(text, format(parse(text)));

/** The tree and what is complained about, without where anything stands; what was not read in any white space. */
const meaning = (text: string): string => {
  const { entries, complaints } = parse(text);
  return JSON.stringify([entries, complaints], (key, value) => {
    if (key === "start" || key === "end") return undefined;
    return value?.kind === "broken" ? { ...value, text: value.text.replace(/\s+/g, " ") } : value;
  });
};
const words = (text: string) => {
  const { tokens, comments } = tokenize(text);
  return { tokens: tokens.map((t) => t.image), comments: comments.map((c) => c.image.trimEnd()) };
};

/** White space put in wherever there is some, and some lines begun elsewhere. */
const blanks = fc.constantFrom(
  " ",
  "  ",
  "\t",
  " \t",
  "\u00a0",
  "\n",
  "\r\n",
  "\n\n",
  "\r",
  " \n  ",
  "\n# a note\n",
);
const spaced: fc.Arbitrary<string> = fc
  .tuple(anyText, fc.array(fc.tuple(fc.nat(), blanks), { maxLength: 12 }))
  .map(([text, put]) => put.reduce((t, [at, b]) => insert(t, at, b), text));
const insert = (text: string, at: number, blank: string): string => {
  const gaps = [...text.matchAll(/\s|$/g)].map((m) => m.index);
  const here = gaps[at % gaps.length]!;
  return text.slice(0, here) + blank + text.slice(here);
};

describe("any text", () => {
  test("keeps every word, every comment and all that it means, and is laid out at once for good", () => {
    fc.assert(
      fc.property(spaced, (text) => {
        const better = laidOut(text);
        expect(words(better)).toEqual(words(text));
        expect(meaning(better)).toBe(meaning(text));
        expect(format(parse(better))).toEqual([]);
      }),
      { numRuns: SOME },
    );
  });

  test("is changed in white space alone, by edits in order that do not overlap", () => {
    fc.assert(
      fc.property(spaced, (text) => {
        let last = 0;
        for (const { start, end, text: put } of format(parse(text))) {
          expect(start).toBeGreaterThanOrEqual(last);
          expect(end).toBeGreaterThanOrEqual(start);
          expect(end).toBeLessThanOrEqual(text.length);
          expect(text.slice(start, end) + put).toMatch(/^[\s\uFEFF]*$/);
          // No edit parts the two marks of a line break, which an editor could not do.
          for (const at of [start, end]) expect(text.slice(at - 1, at + 1)).not.toBe("\r\n");
          last = end;
        }
      }),
      { numRuns: SOME },
    );
  });

  test("keeps each line on which something could not be read as it is", () => {
    fc.assert(
      fc.property(spaced, (text) => {
        const lines = laidOut(text).split(/\r\n|\r|\n/);
        for (const { start, code } of parse(text).complaints) {
          if (code === "not-text" || code === "too-big") continue;
          const line = `${text} `.slice(0, start).split(/\r\n|\r|\n/).length - 1;
          expect(lines).toContain(text.replace(/^\uFEFF/, "").split(/\r\n|\r|\n/)[line]);
        }
      }),
      { numRuns: SOME },
    );
  });

  test("loses nothing where a few of its lines are laid out, or a line is ended", () => {
    const pressed = fc.tuple(spaced, fc.nat(), fc.nat(80));
    fc.assert(
      fc.property(pressed, ([text, at, length]) => {
        const start = at % (text.length + 1);
        const plan = worked(text);
        const some = applied(text, formatLines(plan, [{ start, end: start + length }]));
        expect(words(some)).toEqual(words(text));
        expect(meaning(some)).toBe(meaning(text));
        // An editor holds a text with one kind of line break.
        const held = text.replace(/\r\n?/g, "\n");
        const cut = at % (held.length + 1);
        const ended = `${held.slice(0, cut)}\n${held.slice(cut)}`;
        const after = applied(ended, formatOnNewLine(ended, cut + 1));
        expect(after.replace(/[\s\uFEFF]/g, "")).toBe(ended.replace(/[\s\uFEFF]/g, ""));
        expect(after.split(/\r\n|\r|\n/).length).toBe(ended.split(/\r\n|\r|\n/).length);
        expect(parse(after).complaints.length).toBeLessThanOrEqual(parse(ended).complaints.length);
      }),
      { numRuns: SOME },
    );
  });
});

describe("a plan", () => {
  test("has the same problems once it is laid out", () => {
    const told = (text: string) => worked(text).problems.map((p) => [p.code, p.says]);
    fc.assert(
      fc.property(fc.oneof(madePlan, spaced), (text) => {
        expect(told(laidOut(text))).toEqual(told(text));
      }),
      { numRuns: Math.ceil(SOME / 5) },
    );
  });

  test("comes back from any white space between its words", () => {
    fc.assert(
      fc.property(fc.constantFrom(...SAMPLES), fc.infiniteStream(fc.nat(1000)), (sample, dice) => {
        const shuffled = shuffle(sample, () => dice.next().value!);
        expect(laidOut(shuffled)).toBe(sample);
      }),
      { numRuns: Math.ceil(SOME / 5) },
    );
  });

  test("comes back from the line breaks of other systems with its own kind of them", () => {
    for (const sample of SAMPLES) {
      const wild = shuffle(sample, () => 2).replaceAll("\n", "\r\n");
      expect(laidOut(wild)).toBe(sample.replaceAll("\n", "\r\n"));
    }
  });
});

/** Another white space in each gap of a text that is laid out; line breaks stay, and so does whether a line goes on. */
function shuffle(text: string, roll: () => number): string {
  const { tokens, comments } = tokenize(text);
  const items = [...tokens, ...comments].sort((a, b) => a.startOffset - b.startOffset);
  const one = (...choice: string[]): string => choice[roll() % choice.length]!;
  let out = one("", "\n", " \n\t\n");
  let end = 0;
  for (const [i, item] of items.entries()) {
    const gap = text.slice(end, item.startOffset);
    const before = items[i - 1];
    if (gap.includes("\n")) {
      const empty = gap.indexOf("\n") === gap.lastIndexOf("\n") ? "" : one("\n", "\n \n", "\n\n\n");
      const indent = gap.endsWith(" ") ? one(" ", "\t", "     ", "  ") : "";
      out += `${one("", " ", "\t ")}\n${empty}${indent}`;
    } else if (gap !== "") {
      const glued = /^[=+*]$/.test(before?.image ?? "") || /^[=+*]$/.test(item.image);
      out += glued ? one("", " ", "  ", "\t") : one(" ", "  ", "\t", "\u00a0 ");
    } else if (before && /^[,)(]$/.test(item.image)) out += one("", " ", "\t");
    else if (before?.image === "(") out += one("", " ");
    out += item.image;
    end = endOf(item);
  }
  return out + one("", "\n", " \n\n\t");
}
