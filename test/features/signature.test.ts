/** The forms of the entry being typed, with the place of the cursor marked by ⟦ ⟧. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { signatureAt } from "../../server/features/signature";
import { isPart, PARTS_IN_USE } from "../../server/features/signature-forms";
import { SIGNATURE_WORDS } from "../../server/features/signature-words";
import { anyText, RUNS } from "../property/plans";
import { atCaret, worked } from "./plans";

function shown(marked: string, language: "en" | "fr" = "en"): string | undefined {
  const { plan, offset } = atCaret(marked);
  const found = signatureAt(plan, offset, language);
  if (!found) return undefined;
  const { label, parameters } = found.signatures[found.active]!;
  const at = found.parameter === undefined ? undefined : parameters[found.parameter];
  return at ? `${label.slice(0, at.start)}⟦${label.slice(at.start, at.end)}⟧${label.slice(at.end)}` : label;
}

const first = (text: string | undefined): string | undefined => text?.split(", ").slice(0, 2).join(", ");

describe("while an entry is typed", () => {
  test.each([
    ["part ‸", "part ⟦name⟧ how many of stock, length"],
    ["part leg ‸", "part name ⟦how many⟧ of stock, length"],
    ["part leg 4 of ‸", "part name how many of ⟦stock⟧, length"],
    ["part leg 4 of 2x4, length ‸", "part name how many of stock, ⟦length length between which points⟧"],
    [
      'part leg 4 of 2x4, notch 1" x 1" at 3‸',
      "part name how many of stock, ⟦notch length x length at length from left⟧",
    ],
    ["fasten ‸", 'fasten ⟦first⟧ through what lies between into last, 2 #8 x 1-5/8" at each crossing'],
    ["fasten a into ‸", 'fasten first through what lies between into ⟦last⟧, 2 #8 x 1-5/8" at each crossing'],
    [
      "fasten a into b, ‸",
      "fasten first through what lies between into last, ⟦how many size at each crossing⟧",
    ],
    ['fasten a into b, 6" on ‸', "fasten first through what lies between into last, ⟦length on center⟧"],
    [
      'fasten a into b, 2 #8 x 2" along ‸',
      "fasten first through what lies between into last, ⟦how many size along it⟧",
    ],
    ["place leg upright, flush with ‸", "place thing how it lies, ⟦flush with side of thing⟧"],
    ["assembly g\n  place leg upright, on ‸", "place thing how it lies, ⟦on thing⟧"],
  ])("%s", (marked, label) => {
    expect(first(shown(marked))).toBe(label);
  });

  test("a clause tells its sentence and its example", () => {
    const { plan, offset } = atCaret("part leg 4 of 2x4, width ‸");
    const found = signatureAt(plan, offset, "fr")!;
    expect(found.signatures[0]!.parameters[found.parameter!]!.documentation).toBe(
      'La planche est délignée à cette largeur.\n\n```sawbuck\nwidth 2-1/2"\n```',
    );
  });

  test("of a function, its values", () => {
    expect(shown('measure m = min(3", ‸')).toBe("min(a, ⟦b⟧, …)");
    expect(shown("measure m = diagonal(‸")).toBe("diagonal(⟦a⟧, b)");
    expect(shown('measure m = round 3" to ‸')).toBe('round a to ⟦1/16"⟧');
    expect(shown("measure m = sin(‸")).toBe("sin(⟦angle⟧)");
  });
});

test.each([
  "‸",
  "par‸",
  "part leg 4 of 2x4\n‸",
  'part leg 4 of 2x4, length 3"\n  ‸',
  "# a part ‸",
  "note Water it ‸",
  "plan Salad ‸",
  "step Oil the ‸",
  "nonsense ‸",
])("nothing at %j", (marked) => {
  expect(shown(marked)).toBeUndefined();
});

test("every place of a form has words in both languages", () => {
  for (const part of PARTS_IN_USE) expect([part, isPart(part, SIGNATURE_WORDS.fr)]).toEqual([part, true]);
});

test("of any text: no failure, and every stretch lies inside its label", () => {
  fc.assert(
    fc.property(anyText, fc.nat(), (text, n) => {
      const found = signatureAt(worked(text), n % (text.length + 2), "fr");
      for (const { label, parameters } of found?.signatures ?? [])
        for (const { start, end } of parameters) {
          expect(start).toBeLessThanOrEqual(end);
          expect(end).toBeLessThanOrEqual(label.length);
        }
      if (found) expect(found.active).toBeLessThan(found.signatures.length);
    }),
    { numRuns: Math.min(RUNS, 300) },
  );
});
