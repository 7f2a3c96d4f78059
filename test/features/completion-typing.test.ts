import { describe, expect, test } from "vitest";
import { ENTRY_FORMS, type EntryForm } from "../../grammar/forms";
import { parse } from "../../grammar/parser";
import { Comma, Length, Literal, Numeral, ScrewSize, tokenize, Words } from "../../grammar/tokens";
import { completionsAt } from "../../server/features/completion";
import { SAMPLES } from "../property/plans";
import { atCaret, fixture, worked } from "./plans";

const FILES = { "shop.sawbuck": fixture("shop") };

/** Declares every name that an example uses. */
const BASE = `shop shop.sawbuck
measure rim-height = 30"
stock 2x4, sold 8' $4.20
fill potting-mix, saturated 75 lb/cuft
part leg 4 of 2x4, length 28"
part side 2 of 1x6, length 30"
part end 2 of 1x6, length 12"
part seat 1 of 1x6, length 30"
part slat 4 of 1x4, length 12"
part rail 2 of 1x4, length 30"
part ledger 2 of 1x4, length 30"
part post 2 of 2x4, length 30"
part shelf 1 of 1x6, length 30"
part rafter 2 of 2x4, length 30"
part board 6 of 1x4, length 10", ends mitered 30°
part floor-board 6 of 1x4, length 10"
box trough, inside 44" x 14" x 16"
place leg upright, wide face front, on floor, at each corner of 30" x 12"
place seat across, flat, on legs, flush with left of legs, flush with front of legs
place post upright, on floor, 40" from left, 0 from front
place side across, on edge, in front of legs, flush with left of legs, flush with top of legs
`;

/** What stands before a clause's example: the head, and clauses that it needs. */
const before = ({ word, example }: EntryForm): string => {
  if (word === "tools") return "tools\n  ";
  if (word === "place") return "place rail ";
  return `${example.split(/[\n,]/)[0]}, `;
};
/** As in `place rail upright, …`: a comma stands before every clause but the first. */
const examples = ENTRY_FORMS.flatMap((entry) => [
  { entry: entry.word, head: "", example: entry.example },
  ...entry.clauses.map(({ example }) => ({ entry: entry.word, head: before(entry), example })),
]);

/** The words of a text, where each begins and whether completion must know it: all but numbers and what is new or to people. */
function wordsOf(text: string) {
  return tokenize(text).tokens.map((t) => ({
    at: t.startOffset,
    word: t.image,
    known:
      t.tokenType !== Words &&
      t.tokenType !== Numeral &&
      t.tokenType !== Length &&
      t.tokenType !== Comma &&
      t.tokenType !== ScrewSize &&
      !(t.tokenType.CATEGORIES?.includes(Literal) && !/x/.test(t.image)) &&
      /^[\dA-Za-z]/.test(t.image),
  }));
}

/** Words of examples that are new names or free words. */
const FREE = new Set(["x", "waterproof-glue", "drill", "2026-05-09"]);
const isFree = (entry: string, i: number, word: string, line: string): boolean =>
  (i === 1 && /^(measure|stock|sheet|roll|fastener|finish|fill|part|assembly|ring|box)$/.test(entry)) ||
  FREE.has(word) ||
  // The plan has its shop already.
  (entry === "shop" && i === 0) ||
  (word === "people" && line.includes("of which")) ||
  line.includes("has drill");

test("typing the examples by completion alone: at the start of each word it is offered", () => {
  const missed: string[] = [];
  let asked = 0;
  for (const { entry, head, example } of examples) {
    const line = head + example;
    wordsOf(line).forEach(({ at, word, known }, i) => {
      if (at < head.length || !known || isFree(entry, i, word, line)) return;
      const text = BASE + line.slice(0, at);
      const list = completionsAt(worked(text, FILES), text.length).map((c) => c.label);
      asked++;
      const found = list.some((l) => l === word || l.startsWith(`${word} `) || l.split(/[ (]/)[0] === word);
      if (!found) missed.push(`${line.slice(0, at)}‸${word}`);
    });
  }
  expect(asked).toBeGreaterThan(300);
  expect(missed).toEqual([]);
});

test("typing them letter by letter never fails, and every range holds the cursor", () => {
  for (const { head, example } of examples.filter((_, i) => i % 12 === 0)) {
    const line = head + example;
    for (let n = 0; n <= line.length; n++) {
      const text = `part leg 4 of 2x4, length 28"\n${line.slice(0, n)}`;
      for (const { range } of completionsAt(worked(text), text.length, "fr")) {
        expect(range.end).toBe(text.length);
        expect(range.start).toBeLessThanOrEqual(text.length);
      }
    }
  }
});

/** Clauses behind which somebody's own words are wanted, which nothing can offer. */
const TO_PEOPLE = new Set(["anchored to", "written by", "licence", "changed"]);

describe("taking an offer", () => {
  test("at the end of a clause leaves every entry readable, unless more is needed behind it", () => {
    const ends = SAMPLES.flatMap((text) =>
      [...text.matchAll(/[^\s,#](?=,|\r?$)/gm)].map((m) => ({ text, at: m.index + 1 })),
    );
    let taken = 0;
    for (const { text, at } of ends.filter((_, i) => i % 9 === 0)) {
      const plan = worked(text, FILES);
      const had = parse(text).complaints.length;
      for (const c of completionsAt(plan, at)) {
        if (c.goesOn || c.snippet !== undefined || c.kind === "entry" || TO_PEOPLE.has(c.label)) continue;
        taken++;
        const after = text.slice(0, c.range.start) + c.insertText + text.slice(c.range.end);
        const now = parse(after).complaints.map((p) => p.says);
        expect([c.label, text.slice(Math.max(0, at - 40), at), ...now.slice(had)]).toHaveLength(2);
      }
    }
    expect(taken).toBeGreaterThan(1000);
  });

  test("behind a comma leaves every entry readable too", () => {
    const plan = atCaret(`${BASE}place rail across, flat, ‸`, FILES);
    for (const c of completionsAt(plan.plan, plan.offset)) {
      if (c.goesOn) continue;
      const after = plan.plan.text.slice(0, c.range.start) + c.insertText;
      expect([c.label, ...parse(after).complaints.map((p) => p.says)]).toEqual([c.label]);
    }
  });
});
