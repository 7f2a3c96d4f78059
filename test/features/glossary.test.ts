/** The words of the trade: complete in both languages, short, found where they stand, and told of the right things. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { TERMS, termAt, termCalled } from "../../server/features/glossary";
import { hoverAt } from "../../server/features/hover";
import { leastBiteShare, section } from "../../server/trade";
import { madePlan, SOME } from "../property/plans";
import { atCaret, unmarked, worked } from "./plans";

const LANGUAGES = ["en", "fr"] as const;

/** What a hover at ‸ tells, and on which words. */
function told(marked: string, language: "en" | "fr" = "en") {
  const { plan, offset } = atCaret(marked);
  const hover = hoverAt(plan, offset, language);
  return hover && { ...hover, on: plan.text.slice(hover.range.start, hover.range.end) };
}

describe.each(LANGUAGES)("every term in %s", (language) => {
  test.each(TERMS.map((t) => [t.key, t] as const))("%s", (_, term) => {
    const says = term.says[language];
    expect(says.length).toBeLessThanOrEqual(240);
    expect(says).toMatch(/^[^.]+\. [^.]+(?:\.\d+[^.]*)?\.$/);
    expect(term.words[language].every((w) => w.trim() === w && w !== "")).toBe(true);
    if (language === "fr") expect(says).not.toMatch(/['] |[^\u00a0][:;?!%»]|«[^\u00a0]/);
  });

  test("all of them", async () => {
    const all = TERMS.map(
      ({ key, words, says, drawing }) =>
        `${words[language].join(", ")}  [${key}, drawing ${drawing}]\n  ${says[language]}\n`,
    );
    await expect(all.join("\n")).toMatchFileSnapshot(`snapshots/glossary-${language}.txt`);
  });
});

test("no two terms share a key or a spelling", () => {
  const keys = TERMS.map((t) => t.key);
  expect(new Set(keys).size).toBe(keys.length);
  for (const language of LANGUAGES) {
    const spellings = TERMS.flatMap((t) => t.words[language]);
    expect(spellings.filter((s, i) => spellings.indexOf(s) !== i)).toEqual([]);
  }
});

test("a 2x4 is what PS 20 says of one that is dressed dry", () => {
  const { thickness, width } = section("2x4", "ps20-dry")!;
  expect(termCalled("nominal")!.says.en).toContain(`${thickness}" x ${width}"`);
});

test("half of a screw is what belongs into the last piece", () => {
  expect(leastBiteShare.value).toBe(1 / 2);
  expect(termCalled("bite")!.says.en).toContain("half of the screw");
});

describe("a word of the trade", () => {
  test.each([
    ['part a of 1x4, length 9", ends ⟦mite‸red⟧ 45°', "miter"],
    ['part a of 1x4, length 9" ⟦long ‸point⟧ to long point', "long point"],
    ["fasten a face into b ⟦e‸dge⟧", "edge"],
    ['place a flat, on floor, 3 across, 16" ⟦on cen‸ter⟧', "on center"],
    ["# the ⟦KERF‸⟧ comes off, and a knot", "kerf"],
    ["# un bon ⟦avant-‸trou⟧ évite la fente", "pilot hole"],
    ["note Square it by its ⟦diag‸onals⟧ first", "diagonal"],
    ["step Drill the ⟦pilot h‸oles⟧ of all rails", "pilot hole"],
    ["mostly unread ⟦not‸ch⟧", "notch"],
  ])("is told on its own words: %s", (marked, called) => {
    const { ranges } = unmarked(marked.replace("‸", ""));
    const hover = told(marked.replace(/[⟦⟧]/g, ""))!;
    expect(hover.range).toEqual(ranges[0]);
    expect(hover.markdown).toMatch(new RegExp(`^\\*\\*${called}\\*\\*: `));
    expect(hover.picture?.of).toBe("term");
  });

  test.each([
    ["a common word in a comment", "# the e‸nd of it, flat and tight"],
    ["a common word in a note", "note It ends fl‸at on its face"],
    ["a part of another word", "# kerf‸ed-in"],
    ["a name that only holds it", 'part cap-‸miter of nothing, length 3"'],
    ["a file", "shop ker‸f.sawbuck"],
  ])("is not told in %s", (_, marked) => {
    expect(told(marked)?.picture?.of).not.toBe("term");
    expect(told(marked)?.markdown ?? "").not.toMatch(/^\*\*(?:end|flat|kerf|miter)\*\*: /);
  });

  test("below what is said of a clause, never in its place", () => {
    const { markdown, on } = told('plan x\n  ke‸rf 1/8"')!;
    expect(on).toBe("kerf");
    expect(markdown).toMatch(/^\*\*kerf\*\*: The width of wood[\s\S]+\n\nA saw leaves a slot/);
  });

  test("on a part of that name comes after the part, behind a rule, and nowhere else", () => {
    const plan = (text: string) => told(text)!;
    const declared = plan('part led‸ger 2 of 1x4, length 9"\nfasten ledger into ledger');
    expect(declared.markdown).toMatch(/^\*\*ledger\*\*, a part[\s\S]+\n\n---\n\n\*\*ledger\*\*: A ledger is/);
    expect(declared.picture).toMatchObject({ of: "part", part: "ledger" });
    expect(plan('part ledger 2 of 1x4, length 9"\nfasten led‸ger into ledger').markdown).not.toContain("---");
    expect(plan('part e‸nd 2 of 1x4, length 9"').markdown).not.toContain("---");
    expect(plan('part ledger-‸2 2 of 1x4, length 9"').markdown).not.toContain("---");
  });

  test.each([
    ["stock ‸2x4, sold 8' $4", "the name is the size before"],
    ['plan x\n  units inches to 1/1‸6"', "finest lines of the tape"],
    ["plan x\n  floor limit 58 p‸sf by her", "pounds on every square foot"],
    ['part a of 1x4, length 9", ends mitered 4‸5°', "A saw counts angles"],
    ['fastener s, #‸8 x 2" screw', "higher one is a thicker screw"],
  ])("of a literal's part: %s", (marked, sentence) => {
    expect(told(marked)!.markdown).toContain(sentence);
  });

  test("speaks French where that is asked", () => {
    const hover = told('part a of 1x4, length 9", ends mite‸red 45°', "fr")!;
    expect(hover.markdown).toMatch(/^\*\*onglet\*\*\u00a0: Un onglet est/);
    expect(hover.picture?.title).toBe("onglet");
  });

  test("of a fastener on hand no nails are to be pulled", () => {
    expect(told('fastener s, #8 x 2" screw, on ha‸nd 40')!.markdown).not.toContain("nail");
    expect(told('stock 1x4, on ha‸nd 3 of 40"')!.markdown).toContain("nail");
  });
});

describe("an operator", () => {
  const rule = (value: string): string => `measure rim = 30"\nmeasure t = 3/4"\nmeasure a = ${value}`;
  test.each([
    ["⟦rim ‸- 2 * t⟧", '**28-1/2" (724 mm)**'],
    ["rim - ⟦2 ‸* t⟧", '**1-1/2" (38 mm)**'],
    ["⟦(rim - t) ‸* 2⟧", '**58-1/2" (1486 mm)**'],
    ["⟦max(rim‸, t)⟧", '**30" (762 mm)**'],
    ['⟦round rim / 7 ‸to 1/16"⟧', '**4-5/16" (110 mm)**'],
  ])("tells the whole of what it joins: %s", (value, sentence) => {
    const marked = rule(value.replace("‸ ", " ‸"));
    const { text, ranges } = unmarked(marked.replace("‸", ""));
    const offset = marked.replace(/[⟦⟧]/g, "").indexOf("‸");
    const hover = hoverAt(worked(text), offset)!;
    expect(text.slice(hover.range.start, hover.range.end)).toBe(text.slice(ranges[0]!.start, ranges[0]!.end));
    expect(hover.markdown.startsWith(sentence)).toBe(true);
  });

  test("just behind a name tells of the name", () => {
    expect(told(rule("rim‸ - 2 * t"))!.markdown).toContain("**rim**, a measure");
  });

  test("with a mistake in it says so", () => {
    expect(told(rule("rim ‸- 2 * sun"))!.markdown).toContain("not worked out");
  });
});

describe("anywhere in any text", () => {
  const inside = (text: string, offset: number): void => {
    const hover = hoverAt(worked(text), offset, "fr");
    if (!hover) return;
    const { start, end } = hover.range;
    expect(0 <= start && start <= offset && offset <= end && end <= text.length).toBe(true);
    expect(start).toBeLessThan(end);
  };

  test("a hover's range is inside of the text and holds the offset", () => {
    fc.assert(
      fc.property(
        fc.oneof(madePlan, fc.string({ unit: "binary" })),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (text, share) => inside(text, Math.floor(share * text.length)),
      ),
      { numRuns: SOME },
    );
  });

  test("a term found is one of its spellings", () => {
    const word = fc.constantFrom(
      ...TERMS.flatMap((t) => [...t.words.en, ...t.words.fr]),
      "İ",
      "\n",
      "\r",
      "𝕏",
      "-",
      "’",
    );
    fc.assert(
      fc.property(
        fc.array(fc.tuple(word, fc.constantFrom(" ", "", "  ", "\n", ", "))),
        fc.nat(400),
        (parts, at) => {
          const text = parts.flat().join("");
          const offset = Math.min(at, text.length);
          const found = termAt(text, offset, "plan");
          if (!found) return;
          const said = text.slice(found.start, found.end).replace(/\s+/g, " ").toLowerCase();
          expect(found.term.words.en.map((w) => w.toLowerCase())).toContain(said.replaceAll("'", "’"));
          expect(found.start <= offset && offset <= found.end).toBe(true);
        },
      ),
      { numRuns: SOME },
    );
  });
});
