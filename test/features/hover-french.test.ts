/** Hovers in French: word for word of some plans, and over all samples complete, set as French is, and with the same figures. */
import { readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { describe, expect, test } from "vitest";
import { CHECKS, type Language, titleOf } from "../../server/checks";
import { TITLES } from "../../server/checks/french/titles";
import { hoverAt } from "../../server/features/hover";
import { RANGES } from "../../server/features/hover-texts/box";
import { diskReader } from "../../server/lsp/disk";
import { type Evaluated, evaluate } from "../../server/service";
import { fill, fillNames } from "../../server/trade";
import { atCaret, fixture, worked } from "./plans";

const files = { "shop.sawbuck": fixture("shop") };

interface Told {
  readonly on: string;
  readonly english: string;
  readonly french: string;
}

/** All hovers of a plan in both languages, in the order of its text, each of a place once. */
function toldOf(plan: Evaluated): Told[] {
  const { text } = plan;
  const told: Told[] = [];
  let last = "";
  for (let offset = 0; offset <= text.length; offset++) {
    const [english, french] = [hoverAt(plan, offset, "en"), hoverAt(plan, offset, "fr")];
    expect(french?.range, `${plan.file} ${offset}`).toEqual(english?.range);
    if (!english || !french) continue;
    const { start, end } = french.range;
    const key = `${start} ${french.markdown}`;
    if (key !== last) {
      const line = text.slice(0, start).split("\n").length;
      const on = `${basename(plan.file)}, line ${line}: ${text.slice(start, end)}`;
      told.push({ on, english: english.markdown, french: french.markdown });
    }
    last = key;
  }
  return told;
}

const SAMPLES = join(__dirname, "../../samples");
const plansIn = (folder: string): Evaluated[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".sawbuck"))
    .map((name) => {
      const file = join(folder, name);
      return evaluate(file, readFileSync(file, "utf8"), diskReader);
    });

const FIXTURES = ["inches", "metric", "gaps", "placed", "finished", "carried", "shop"];
const PLANS: readonly Evaluated[] = [
  ...plansIn(SAMPLES),
  ...plansIn(join(SAMPLES, "mistakes")),
  ...FIXTURES.map((name) => worked(fixture(name), files)),
];
const TOLD: readonly { readonly plan: Evaluated; readonly told: readonly Told[] }[] = PLANS.map((plan) => ({
  plan,
  told: toldOf(plan),
}));

const hover = (marked: string, language: Language = "fr"): string => {
  const { plan, offset } = atCaret(marked, files);
  return hoverAt(plan, offset, language)?.markdown ?? "";
};

/** Without plan text: blocks and spans of code. */
const withoutCode = (markdown: string): string =>
  markdown.replace(/```[\s\S]*?```/g, "").replace(/(`+)[\s\S]*?\1/g, "");

describe("every hover in French", () => {
  test.each(FIXTURES)("of the plan %s", async (name) => {
    const told = toldOf(worked(fixture(name), files));
    const text = told.map(({ on, french }) => `===== ${on}\n\n${french}\n`).join("\n");
    await expect(text).toMatchFileSnapshot(`snapshots/hover-${name}-fr.txt`);
  });
});

describe("in all samples, mistakes and fixtures", () => {
  test("no line of a French hover is the English one", () => {
    const UNITS = /\b(?:mm|cm|sqft|m2|cuft|gal|qt|lb|kg|psf|kPa|lb\/cuft|kg\/m3|min)\b/g;
    const same = TOLD.flatMap(({ told }) =>
      told.flatMap(({ on, english, french }) => {
        const lines = new Set(withoutCode(english).split("\n"));
        return withoutCode(french)
          .split("\n")
          .filter((line) => lines.has(line) && /\p{L}{2}/u.test(line.replace(UNITS, "")))
          .map((line) => `${on}: ${line}`);
      }),
    );
    expect(same).toEqual([]);
  });

  test("no English word is left but those of the plan", () => {
    const left = TOLD.flatMap(({ plan, told }) => {
      const { scope, coats } = plan.worked;
      const names = [...scope.declared.keys(), ...coats.flatMap(({ things }) => things)].sort(
        (a, b) => b.length - a.length,
      );
      const own = new RegExp(`(?<![\\p{L}-])(?:${names.join("|")})s?(?![\\p{L}-])`, "gu");
      return told.flatMap(({ on, french }) => {
        const words = withoutCode(french)
          .replace(/«[^»]*»|^\*\*[^*]*\*\*/gmu, "")
          .replace(own, "");
        const found = ENGLISH.exec(words);
        return found
          ? [`${on}: ${found[0]} in ${words.slice(Math.max(0, found.index - 40), found.index + 40)}`]
          : [];
      });
    });
    expect(left).toEqual([]);
  });

  test("the same figures, but of pages and of sentences that are not a translation", () => {
    const OTHER = /: (?:near a guard|moisture)$/;
    const figures = (text: string): string =>
      (
        text
          .replace(/(?<=\d),(?=\d)/g, ".")
          .replace(/(?<=\b(?:mm|cm|m|in))[23]\b/g, "")
          .match(/\d+(?:[./-]\d+)*/g) ?? []
      )
        .sort()
        .join(" ");
    const other = TOLD.flatMap(({ told }) =>
      told
        .filter(({ on, french }) => !OTHER.test(on) && !french.includes("Sa page, qui est en anglais"))
        .filter(({ english, french }) => figures(english) !== figures(french))
        .map(({ on, english, french }) => [on, figures(english), figures(french)]),
    );
    expect(other).toEqual([]);
  });

  test("set as French is", () => {
    const wrong =
      /(?<!\p{L})(?:de|que) (?=[aeiouàâéèêëîïôœù])(?!a²)|(?:^|[^\u00a0])[:;?!»](?=\s|$)|«(?!\u00a0)| [:;?!%»]|« |\p{L}'\p{L}|[“”]/mu;
    const texts = TOLD.flatMap(({ told }) =>
      told.map(({ on, french }) => [on, withoutCode(french)] as const),
    );
    expect(texts.filter(([, text]) => wrong.test(text))).toEqual([]);
  });

  test("no blank stays empty", () => {
    const texts = TOLD.flatMap(({ told }) => told.map(({ french }) => french));
    expect(texts.filter((text) => /undefined|\[object|NaN/.test(text))).toEqual([]);
  });
});

/** Words that are not French as well, as are plan, part, long, face and about. */
const ENGLISH =
  /(?<!\p{L})(?:the|of|and|is|are|it|its|this|that|in|out|to|at|by|with|from|for|but|not|no|one|each|only|than|too|where|which|how|many|more|less|wide|deep|high|thick|piece|pieces|parts|board|boards|screw|screws|length|width|edge|end|side|left|right|front|back|top|bottom|up|down|half|enough|taken|says?|floor|box|ring|measure|write|make|move|use|stands?|over|under|between|an)(?!\p{L})/iu;

describe("what a French hover tells", () => {
  test("a rounded length says so in French, also where it is worked out", () => {
    const told = hover('measure a = 20" / 3\nmeasure ‸b = a + 1"');
    expect(told).toContain('`a + 1" = environ 6.667" + 1" = environ 7.667"`');
    expect(told).not.toContain("about");
  });

  test("a code by its headline, and that its page is in English", () => {
    expect(hover('part leg 4 of 2x4, length 3"\naccept off-the-‸tape because x')).toBe(
      `**off-the-tape** (conseil)\u00a0: Une longueur entre deux traits du mètre\n\nSa page, qui est en anglais, en dit plus.`,
    );
  });

  test("a panel by its capacity, and feet against the limit that was typed", () => {
    const all = (name: string): string =>
      TOLD.filter(({ plan }) => basename(plan.file) === name)
        .flatMap(({ told }) => told.map(({ french }) => french))
        .join("\n");
    expect(all("potting-bench.sawbuck")).toMatch(
      /Flexion sur \S+\u00a0: M \S+ lb-po sur \S+ lb-po admis\u00a0: panneau de \S+", \S+ lb-po par pied de largeur x /,
    );
    expect(all("foot-over-load.sawbuck")).toContain(
      "sont la limite que vous avez écrite pour un pied, part prise\u00a0: ",
    );
  });

  test("what every published figure of a fill holds for", () => {
    const ranges = fillNames().flatMap((name) => {
      const { dry, moist, saturated } = fill(name)!;
      return [dry, moist, saturated].flatMap((row) => (row?.range ? [row.range] : []));
    });
    const plain = /^[\d.]+ to [\d.]+$/;
    expect(ranges.filter((range) => !plain.test(range) && !(range in RANGES))).toEqual([]);
  });
});

test("every problem has its headline in French", () => {
  expect(Object.keys(TITLES).sort()).toEqual(CHECKS.map(({ code }) => code).sort());
  expect(CHECKS.filter((check) => titleOf(check, "fr") === check.title)).toEqual([]);
  expect(new Set(Object.values(TITLES)).size).toBe(CHECKS.length);
});
