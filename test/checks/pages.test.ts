/** Every problem has its page: what it means, a plan that has it, and the same mended. */
import { describe, expect, test } from "vitest";
import { CHECKS } from "../../server/checks";
import { CODES } from "../../server/checks/codes";
import { blocksOf, codesOf } from "./plans";

/** A plan of more than a million characters is no example for a page. */
const WITHOUT_EXAMPLE = ["too-big"];

test("codes are unique and in alphabetical order", () => {
  expect(CHECKS.map((c) => c.code)).toEqual([...CODES]);
  expect([...CODES]).toEqual([...new Set(CODES)].sort());
});

describe.each(CHECKS.map((c) => [c.code, c] as const))("%s", (code, check) => {
  test("has a headline and a page of some sentences", () => {
    expect(check.title).toMatch(/^[A-Z].*[^.]$/);
    expect(check.page.length).toBeGreaterThan(120);
    expect(check.page).not.toMatch(/token|parser|undefined|null|\bOK\b|\bsafe\b|\bpass(es)?\b/i);
  });

  test.skipIf(WITHOUT_EXAMPLE.includes(code))(
    "its first plan has the problem and no other, its second has none",
    () => {
      const [wrong, mended, ...more] = blocksOf(check.page);
      expect(more).toEqual([]);
      expect(codesOf(wrong!)).toEqual([code]);
      expect(codesOf(mended!)).toEqual([]);
    },
  );
});
