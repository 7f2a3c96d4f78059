/** A plan read with a shop file of the reader's own, where boards are called otherwise: what is asked, and the ways out. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Edit, problemText } from "../server/checks";
import { quickFixes } from "../server/features/actions-cures";
import { load, type Reader } from "../server/plan";
import { type Evaluated, evaluate } from "../server/service";

type Files = Readonly<Record<string, string>>;

const THEIRS = `stock heart-2x4 of 2x4, species western-redcedar, heartwood, sold 8' $13.20
stock ground-4x4 of 4x4, species hem-fir, treated
sheet ply, plywood 23/32", species douglas-fir
`;
const PLAN = `plan Seat
shop theirs.sawbuck
bring rails.sawbuck
part slat 3 of heart-2x4, length 30" - thickness of heart-2x4
must thickness of heart-2x4 at least 1"
accept never-used on heart-2x4 because it is here
built 2026-05-09
  used 2x4 instead of heart-2x4
`;
const RAILS = 'part rail 2 of heart-2x4, length 20"\n';
const FIR = "stock fir-2x4 of 2x4, species douglas-fir, sold 8' $5\n";
const CEDAR = "stock cedar-2x4 of 2x4, species western-redcedar, heartwood, sold 8' $9\n";
const yard = (mine: string, others: Files = {}): Files => ({
  "plan.sawbuck": PLAN,
  "theirs.sawbuck": THEIRS,
  "rails.sawbuck": RAILS,
  "mine.sawbuck": mine,
  ...others,
});

const readerOf =
  (files: Files, asked: string[] = []): Reader =>
  (path) => {
    asked.push(path);
    const text = Object.hasOwn(files, path) ? files[path] : undefined;
    return text === undefined ? { file: path, refused: "there is no such file" } : { file: path, text };
  };
const opened = (files: Files, asked: string[] = []): Evaluated =>
  evaluate("plan.sawbuck", files["plan.sawbuck"]!, readerOf(files, asked), { shop: "mine.sawbuck" });

const unknown = (e: Evaluated) => e.problems.filter(({ code }) => code === "unknown-name");
const grave = (e: Evaluated): string[] =>
  e.problems.flatMap((p) => (p.class === "error" || p.class === "hazard" ? [p.code] : [])).sort();

function cured(files: Files, edits: readonly Edit[]): Files {
  const after: Record<string, string> = { ...files };
  for (const { file, start, end, text } of [...edits].sort((a, b) => b.start - a.start))
    after[file] = after[file]!.slice(0, start) + text + after[file]!.slice(end);
  return after;
}

const told = (e: Evaluated): string[] =>
  unknown(e).flatMap((p) =>
    (["en", "fr"] as const).flatMap((language) => [
      problemText(p.code, p, e.worked.settings.display, language),
      ...p.cures.map((c) => `- ${problemText(p.code, c, e.worked.settings.display, language)}`),
    ]),
  );

describe("a board that is just the same", () => {
  const files = yard(FIR + CEDAR);

  test("is asked about once for the lines that use it, in both languages", () => {
    expect(told(opened(files))).toMatchInlineSnapshot(`
      [
        "Your shop has no “heart-2x4”. In the plan's own shop file it is a 2x4, western-redcedar, heartwood. Is it “cedar-2x4” here?",
        "- Write “cedar-2x4” wherever “heart-2x4” stands",
        "Votre atelier n’a pas de « heart-2x4 ». Dans le fichier d’atelier du plan, c’est un 2x4, western-redcedar, bois de cœur. Est-ce « cedar-2x4 » chez vous ?",
        "- Écrivez « cedar-2x4 » partout où est écrit « heart-2x4 »",
        "Your shop has no “heart-2x4”. In the plan's own shop file it is a 2x4, western-redcedar, heartwood. Is it “cedar-2x4” here?",
        "- Write “cedar-2x4” wherever “heart-2x4” stands",
        "Votre atelier n’a pas de « heart-2x4 ». Dans le fichier d’atelier du plan, c’est un 2x4, western-redcedar, bois de cœur. Est-ce « cedar-2x4 » chez vous ?",
        "- Écrivez « cedar-2x4 » partout où est écrit « heart-2x4 »",
      ]
    `);
  });

  test("is put in its place everywhere, in what the plan brings too, by the preferred fix", () => {
    const e = opened(files);
    const preferred = quickFixes({ ...e, text: PLAN }, unknown(e), "en").filter((fix) => fix.preferred);
    expect(preferred.map(({ title }) => title)).toEqual(["Write “cedar-2x4” wherever “heart-2x4” stands"]);
    const change = preferred[0]!.change()!;
    const after = cured(files, "edits" in change ? change.edits! : []);
    expect(after).toEqual({
      ...files,
      "plan.sawbuck": PLAN.replaceAll("heart-2x4", "cedar-2x4"),
      "rails.sawbuck": RAILS.replaceAll("heart-2x4", "cedar-2x4"),
    });
    expect(unknown(opened(after))).toEqual([]);
  });
});

describe("boards that come near", () => {
  const files = yard(FIR);

  test("are told with what differs, in both languages", () => {
    expect(told(opened(files))).toMatchInlineSnapshot(`
      [
        "Your shop has no “heart-2x4”. In the plan's own shop file it is a 2x4, western-redcedar, heartwood. Nothing here is just that; nearest is “fir-2x4” (douglas-fir, not heartwood).",
        "- Write “fir-2x4” wherever “heart-2x4” stands, though it differs: douglas-fir, not heartwood",
        "- Give your own shop file a line for “heart-2x4”",
        "Votre atelier n’a pas de « heart-2x4 ». Dans le fichier d’atelier du plan, c’est un 2x4, western-redcedar, bois de cœur. Rien chez vous n’est exactement cela ; le plus proche est « fir-2x4 » (douglas-fir, pas du bois de cœur).",
        "- Écrivez « fir-2x4 » partout où est écrit « heart-2x4 », malgré la différence : douglas-fir, pas du bois de cœur",
        "- Donnez à « heart-2x4 » sa ligne dans votre propre fichier d’atelier",
        "Your shop has no “heart-2x4”. In the plan's own shop file it is a 2x4, western-redcedar, heartwood. Nothing here is just that; nearest is “fir-2x4” (douglas-fir, not heartwood).",
        "- Give your own shop file a line for “heart-2x4”",
        "Votre atelier n’a pas de « heart-2x4 ». Dans le fichier d’atelier du plan, c’est un 2x4, western-redcedar, bois de cœur. Rien chez vous n’est exactement cela ; le plus proche est « fir-2x4 » (douglas-fir, pas du bois de cœur).",
        "- Donnez à « heart-2x4 » sa ligne dans votre propre fichier d’atelier",
      ]
    `);
  });

  test("are never preferred, and leave what was built and what is accepted as it is", () => {
    const e = opened(files);
    const fixes = quickFixes({ ...e, text: PLAN }, unknown(e), "en");
    expect(fixes.map(({ preferred }) => preferred)).toEqual([false]);
    const change = fixes[0]!.change()!;
    const after = cured(files, "edits" in change ? change.edits! : []);
    expect(after["plan.sawbuck"]).toBe(
      PLAN.replace(
        'of heart-2x4, length 30" - thickness of heart-2x4',
        'of fir-2x4, length 30" - thickness of fir-2x4',
      ).replace("must thickness of heart-2x4", "must thickness of fir-2x4"),
    );
    expect(after["rails.sawbuck"]).toBe(RAILS.replace("heart-2x4", "fir-2x4"));
  });
});

test("a name that no shop has is told as ever, and so is any where the plan's own shop cannot be read", () => {
  const lost = opened(yard(FIR, { "theirs.sawbuck": undefined as unknown as string }));
  expect(told(lost).filter((text) => /^Your shop/.test(text))).toEqual([]);
  expect(told(lost)[0]).toBe("Nothing here is called “heart-2x4”; a stock or a sheet is wanted.");
  const nowhere = opened(yard(FIR, { "theirs.sawbuck": "stock other of 2x4\n" }));
  expect(told(nowhere)[0]).toBe("Nothing here is called “heart-2x4”; a stock or a sheet is wanted.");
});

test("with the plan's own shop, nothing is asked", () => {
  const files = yard(FIR);
  const e = evaluate("plan.sawbuck", PLAN, readerOf(files), {});
  expect(unknown(e)).toEqual([]);
  expect(e.worked.loaded.replaced).toBeUndefined();
});

test("the plan's own shop is read only where a name is found nowhere", () => {
  const asked: string[] = [];
  const known = PLAN.replaceAll("heart-2x4", "fir-2x4");
  const rails = { "plan.sawbuck": known, "rails.sawbuck": RAILS.replace("heart", "fir") };
  opened(yard(FIR, rails), asked);
  expect(asked).not.toContain("theirs.sawbuck");
  opened(yard(FIR), asked);
  expect(asked.filter((path) => path === "theirs.sawbuck")).toHaveLength(1);
});

test("it declares nothing", () => {
  const loaded = load("plan.sawbuck", PLAN, readerOf(yard(FIR)), { shop: "mine.sawbuck" });
  expect(loaded.files.map(({ file }) => file)).toEqual(["plan.sawbuck", "rails.sawbuck", "mine.sawbuck"]);
  expect(opened(yard(FIR)).worked.scope.declared.has("ground-4x4")).toBe(false);
});

test("one that the plan's own text encloses is looked up there", () => {
  const rails = PLAN.replaceAll(/bring.*\n/g, "");
  const text = `${rails}\nenclosed theirs.sawbuck\n${THEIRS}`;
  const e = opened({ "plan.sawbuck": text, "mine.sawbuck": CEDAR });
  expect(told(e)[0]).toMatch(/^Your shop has no “heart-2x4”.*Is it “cedar-2x4” here\?$/);
});

/** 4. Applying a cure removes its problem and adds no error and no hazard; these boards are all sold as long as is asked. */
test("for any two shops, a way out takes its own problem away and adds none", () => {
  const SIZES = ["of 2x4", "of 1x4", 'of 1x4, measured 5/8" x 3-7/16"', 'actual 1-1/2" x 3-1/2"'];
  const stock = fc
    .tuple(
      fc.constantFrom(...SIZES),
      fc.constantFrom("", ", species western-redcedar", ", species douglas-fir"),
      fc.subarray([", treated", ", heartwood", ", rough"]),
    )
    .map(([size, species, conditions]) => `${size}${species}${conditions.join("")}, sold 8' $5`);
  const shop = (prefix: string) =>
    fc
      .array(stock, { minLength: 1, maxLength: 5 })
      .map((all) =>
        all.map((one, i) => `stock ${prefix}-${"abcde"[i]}${/^actual/.test(one) ? ", " : " "}${one}\n`),
      );
  let tried = 0;
  fc.assert(
    fc.property(shop("theirs"), shop("mine"), (theirs, mine) => {
      const uses = theirs.map((_, i) => `part p-${"abcde"[i]} 2 of theirs-${"abcde"[i]}, length 20"\n`);
      const files = yard(mine.join(""), {
        "plan.sawbuck": `plan x\n  indoors\nshop theirs.sawbuck\nbring rails.sawbuck\n${uses.join("")}`,
        "theirs.sawbuck": theirs.join(""),
        "rails.sawbuck": 'part rail 2 of theirs-a, length 20"\n',
      });
      const before = opened(files);
      expect(unknown(before).map(({ about }) => about[0])).toEqual(
        theirs.map((_, i) => `theirs-${"abcde"[i]}`),
      );
      for (const problem of unknown(before))
        for (const { edits } of problem.cures.filter((cure) => cure.edits.length > 0)) {
          tried++;
          const after = opened(cured(files, edits));
          expect(unknown(after).map(({ about }) => about)).toEqual(
            unknown(before)
              .filter((other) => other !== problem)
              .map(({ about }) => about),
          );
          const left = grave(before);
          left.splice(left.indexOf("unknown-name"), 1);
          expect(grave(after)).toEqual(left);
        }
    }),
    { numRuns: 60 },
  );
  expect(tried).toBeGreaterThan(20);
});
