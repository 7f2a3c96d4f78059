/** Problems as an editor lists them. */
import { describe, expect, test } from "vitest";
import { diagnosticsOf, MOST_DIAGNOSTICS } from "../../server/features/diagnostics";
import { worked } from "./plans";

const SHOP = "shop.sawbuck";

describe("a problem", () => {
  test("is its headline, then what was taken for granted, then the ways out", () => {
    // A 1-1/4" screw through two 1/2" boards comes out 1/4" proud (common practice).
    const text = `stock thin, actual 1/2" x 4", sold 8' $3
part a 1 of thin, length 12"
part b 1 of thin, length 12"
fasten a into b, 2 #8 x 1-1/4" in all
`;
    const found = diagnosticsOf(worked(text)).find((d) => d.code === "screw-pokes-through");
    const lines = found?.message.split("\n") ?? [];
    expect(lines[0]).toContain('1/4"');
    expect(lines.filter((l) => l.startsWith("Taken for granted: ")).length).toBeGreaterThan(0);
    expect(lines.filter((l) => l.startsWith("Cure: "))).toEqual(found?.cures.map((c) => `Cure: ${c}`));
    expect(text.slice(found?.range.start, found?.range.end)).toContain('#8 x 1-1/4"');
  });

  test("that could hurt someone says hazard first", () => {
    const found = diagnosticsOf(
      worked(`plan x
  floor limit 11 psf by the engineer of an invented hall
box tub, inside 40" x 20" x 18", outline 44" x 24", filled with soil, weighs 30 lb empty
`),
    );
    const hazard = found.find((d) => d.code === "box-over-load");
    expect(hazard?.class).toBe("hazard");
    expect(hazard?.message).toMatch(/^Hazard: /);
  });

  test("in another file stands at the line that names it, with the file, its line and its place", () => {
    const shop = "# stock\nstock post of 2x4, sold 8' $4, lenght 3\n";
    const text = `plan x\nshop ${SHOP}\npart leg 4 of post, length 9"\n`;
    const [found] = diagnosticsOf(worked(text, { [SHOP]: shop }));
    expect(found?.message).toMatch(/^In shop\.sawbuck, line 2: /);
    expect(text.slice(found?.range.start, found?.range.end)).toBe(SHOP);
    expect(found?.related[0]?.at).toMatchObject({ file: SHOP, start: shop.indexOf("lenght") });
  });

  test("of the hints in another file nothing is said", () => {
    const shop = 'stock post of 2x4, actual 1.4001" x 3"\n';
    const own = diagnosticsOf(worked(`shop ${SHOP}\npart leg 4 of post, length 9"\n`, { [SHOP]: shop }));
    expect(own.filter((d) => d.class === "hint" && d.message.startsWith("In "))).toEqual([]);
  });
});

describe("very many problems", () => {
  const plan = (n: number) => worked("prat\n".repeat(n));

  test("are told up to a limit, and the last says how many are left", () => {
    const found = diagnosticsOf(plan(MOST_DIAGNOSTICS + 234));
    expect(found).toHaveLength(MOST_DIAGNOSTICS + 1);
    expect(found[MOST_DIAGNOSTICS]?.message).toMatch(/^234 more problems are not listed here/);
    expect(found[MOST_DIAGNOSTICS]?.range.start).toBe(MOST_DIAGNOSTICS * "prat\n".length);
  });

  test("at the limit itself are all told", () => {
    const found = diagnosticsOf(plan(MOST_DIAGNOSTICS));
    expect(found).toHaveLength(MOST_DIAGNOSTICS);
    expect(found.some((d) => d.message.includes("not listed"))).toBe(false);
  });
});
