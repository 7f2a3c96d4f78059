/** The French texts: complete, with the same slots as the English ones, and free of English but for words of the plan. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { ENTRY_FORMS } from "../../grammar/forms";
import { CHECKS, type Problem, problemText, type Says, type Slot, uncheckedText } from "../../server/checks";
import { CODES } from "../../server/checks/codes";
import { FRENCH, FRENCH_TONGUE } from "../../server/checks/french";
import { FRENCH_UNCHECKED } from "../../server/checks/french/unchecked";
import { PHRASES } from "../../server/checks/phrases";
import type { Language, Template } from "../../server/checks/telling";
import { UNCHECKED } from "../../server/checks/unchecked-words";
import { fillNames, speciesNames } from "../../server/trade";
import type { Display } from "../../server/units";
import { type Case, planOf, textIn } from "./cases";

/** The plans of every code, from all files of cases. */
const CASES: Record<string, Case[]> = {};
for (const name of readdirSync(__dirname).sort()) {
  const kind = /^cases-(.*)\.ts$/.exec(name)?.[1];
  if (!kind) continue;
  const lists = (await import(`./cases-${kind}.ts`)) as Record<string, Record<string, readonly Case[]>>;
  for (const [code, list] of Object.values(lists).flatMap((l) => Object.entries(l)))
    CASES[code] = [...(CASES[code] ?? []), ...list];
}

const formsOf = (t: Template): readonly string[] => (typeof t === "string" ? [t] : [t.one, t.other]);
/** The names of a template's slots. English alone asks for an article of a word before it. */
const slotsOf = (t: Template): string[] =>
  [
    ...new Set(
      formsOf(t).flatMap((form) =>
        [...form.matchAll(/\{([a-zA-Z0-9-]+)\}/g)]
          .map((m) => m[1]!.charAt(0).toLowerCase() + m[1]!.slice(1))
          .filter((name) => name !== "a"),
      ),
    ),
  ].sort();

/** Every text of both languages, by a name for it. */
const PAIRS: readonly (readonly [name: string, english: Template, french: Template | undefined])[] = [
  ...CHECKS.flatMap(({ code, templates }) =>
    Object.entries(templates).map(([says, t]) => [`${code} ${says}`, t, FRENCH[code]?.[says]] as const),
  ),
  ...[...PHRASES].map(([key, t]) => [key, t, FRENCH_TONGUE.phrase(key)] as const),
  ...Object.entries(UNCHECKED).map(
    ([key, t]) => [key, t, FRENCH_UNCHECKED[key as keyof typeof UNCHECKED]] as const,
  ),
];

/** Texts that leave a slot out in French, each with the reason. */
const OTHER_SLOTS: Readonly<Record<string, string>> = {
  "so many go": "the sentence it ends has named the kind already, and its plural would not be regular",
};

describe("the tables", () => {
  test("have a French text for every English one, and none besides", () => {
    expect(PAIRS.flatMap(([name, , french]) => (french === undefined ? [name] : []))).toEqual([]);
    const more = Object.entries(FRENCH).flatMap(([code, templates]) =>
      Object.keys(templates)
        .filter((says) => !CHECKS.some((c) => c.code === code && says in c.templates))
        .map((says) => `${code} ${says}`),
    );
    expect(more).toEqual([]);
  });

  test("have the same slots", () => {
    const other = PAIRS.filter(([, en, fr]) => fr && slotsOf(en).join() !== slotsOf(fr).join());
    expect(other.map(([name]) => name)).toEqual(Object.keys(OTHER_SLOTS));
  });

  test("are set as French is", () => {
    const wrong = /(?:^|[^\u00a0])[:;?!»](?=\s|$)|«(?!\u00a0)| [:;?!»]|« |\p{L}'\p{L}|[“”]/u;
    const texts = PAIRS.flatMap(([name, , fr]) => formsOf(fr ?? "").map((form) => [name, form] as const));
    expect(texts.filter(([, form]) => wrong.test(form))).toEqual([]);
  });

  test("never call anything right", () => {
    const texts = PAIRS.flatMap(([, , fr]) => formsOf(fr ?? ""));
    expect(
      texts.filter((form) => /\bOK\b|\bsûre?s?\b|sans danger|sécurité|conforme|valid/i.test(form)),
    ).toEqual([]);
  });
});

/** Everything said of a plan's problems, by code. */
interface Told {
  readonly code: string;
  readonly says: Says;
  readonly display: Display;
  readonly plan: string;
}

const told: Told[] = [];
const notChecked: { readonly what: Says; readonly why: Says }[] = [];
const snapshot: string[] = [];
for (const code of CODES) {
  snapshot.push(`== ${code}`);
  for (const c of CASES[code] ?? []) {
    const own = typeof c === "string" || c.shop === undefined ? "" : (c.files?.[c.shop] ?? "");
    const plan = textIn(c, "inches") + own;
    const { problems, worked } = planOf(c, "inches");
    notChecked.push(...worked.unchecked);
    const { display } = worked.settings;
    for (const p of problems.filter((one) => one.code === code)) {
      snapshot.push(shown(p, display));
      for (const says of [p, ...p.related, ...p.assumed, ...p.cures])
        told.push({ code, says, display, plan });
    }
  }
}

function shown(p: Problem, display: Display): string {
  const say = (says: Says) => problemText(p.code, says, display, "fr");
  return [
    say(p),
    ...p.related.map((r) => `  voir : ${say(r)}`),
    ...p.assumed.map((a) => `  admis : ${say(a)}`),
    ...p.cures.map((c) => `  remède : ${say(c)}`),
  ].join("\n");
}

const textOf = ({ code, says, display }: Told, language: Language) =>
  problemText(code, says, display, language);

/** What fills a text from the plan, through what is said inside of it. */
function plainIn(slot: Slot): string[] {
  if (typeof slot === "string") return [slot];
  if (typeof slot !== "object" || "dim" in slot || "full" in slot) return [];
  if ("says" in slot) return Object.values(slot.slots).flatMap(plainIn);
  return ("all" in slot ? slot.all : "any" in slot ? slot.any : slot.row).flatMap(plainIn);
}

/** That of a problem's text, from the slots it names. */
function usedIn({ code, says }: Pick<Told, "code" | "says">): string[] {
  const names = slotsOf(CHECKS.find((c) => c.code === code)!.templates[says.says]!);
  return Object.entries(says.slots).flatMap(([name, slot]) => (names.includes(name) ? plainIn(slot) : []));
}

const wordsIn = (text: string): string[] => text.match(/\p{L}{2,}/gu) ?? [];

/** The same with everything from the plan, and every value, left blank. */
function blank(slot: Slot): Slot {
  if (typeof slot === "string") return slot === "" ? "" : "¤";
  if (typeof slot !== "object" || "dim" in slot) return slot;
  if ("full" in slot) return slot;
  if ("says" in slot) return blankSays(slot);
  if ("row" in slot) return { row: slot.row.map(blank), by: slot.by };
  return "all" in slot ? { all: slot.all.map(blank) } : { any: slot.any.map(blank) };
}
const blankSays = ({ says, slots }: Says): Says => ({
  says,
  slots: Object.fromEntries(Object.entries(slots).map(([name, slot]) => [name, blank(slot)])),
});

function saidIn(slot: Slot): string[] {
  if (typeof slot !== "object" || "dim" in slot || "full" in slot) return [];
  if ("says" in slot) return [slot.says, ...Object.values(slot.slots).flatMap(saidIn)];
  return ("all" in slot ? slot.all : "any" in slot ? slot.any : slot.row).flatMap(saidIn);
}

/** Words that are not French as well, as are plan, part, long, face and about. */
const ENGLISH =
  /\b(?:the|of|and|is|are|it|its|this|that|in|out|to|at|by|with|from|for|but|not|no|one|each|only|than|too|where|which|how|many|more|less|wide|deep|high|thick|piece|pieces|parts|board|boards|screw|screws|length|width|edge|end|side|left|right|front|back|top|bottom|up|down|half|enough|taken|says?|floor|box|ring|measure|write|make|move|use|stands?|over|under|between|an)\b/i;
const withoutPlanWords = (text: string): string => text.replace(/«[^»]*»/g, "");

const figures = (text: string): string[] => (text.match(/\d+(?:[./-]\d+)*/g) ?? []).sort();

/** The texts of the files that work a plan out. */
const ROOM = join(__dirname, "../../server/worked");
const WORKED = readdirSync(ROOM, { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".ts"))
  .map((name) => readFileSync(join(ROOM, name), "utf8"));

describe("problems in French", () => {
  test("every code is shown", () => {
    expect(CODES.filter((code) => !told.some((t) => t.code === code))).toEqual([]);
  });

  test("as a whole", async () => {
    await expect(`${snapshot.join("\n")}\n`).toMatchFileSnapshot("snapshots/french.txt");
  });

  test("no slot stays empty", () => {
    const texts = told.map((t) => textOf(t, "fr"));
    expect(texts.filter((text) => /\{[a-zA-Z-]+\}|undefined|\[object/.test(text))).toEqual([]);
  });

  test("the same figures as in English", () => {
    const other = told.filter((t) => figures(textOf(t, "fr")).join() !== figures(textOf(t, "en")).join());
    expect(other.map((t) => [textOf(t, "en"), textOf(t, "fr")])).toEqual([]);
  });

  test("the same names and words of the plan as in English", () => {
    const lost = told.flatMap((t) => {
      const [english, french] = [textOf(t, "en"), textOf(t, "fr")];
      return usedIn(t)
        .filter((word) => word !== "" && english.includes(word) && !french.includes(word))
        .map((word) => `${t.code} ${t.says.says}: ${word}`);
    });
    expect(lost).toEqual([]);
  });

  test("no English between them", () => {
    const blanked = told.map((t) => textOf({ ...t, says: blankSays(t.says) }, "fr"));
    expect([...new Set(blanked)].filter((text) => ENGLISH.test(withoutPlanWords(text)))).toEqual([]);
  });

  test("what a line wants has its French, wherever it is named", () => {
    const asking = WORKED.filter((file) =>
      /\b(?:positiveLength|wholeNumber|expect|declaredThing|read\.length|read\.quantity)\(|\bwants(?::| =)/.test(
        file,
      ),
    );
    const keys = asking.flatMap((file) =>
      [...file.matchAll(/"((?:an?|the|this|how|what) [^"]+)"/g)].map((m) => m[1]!),
    );
    const wanted = [...new Set(keys)].filter((key) => FRENCH_TONGUE.phrase(key) === undefined);
    // A number too large is told by how it is written.
    expect(wanted).toEqual(["the number"]);
  });

  test("all that is said inside of them has its French", () => {
    const keys = new Set(told.flatMap((t) => Object.values(t.says.slots).flatMap(saidIn)));
    expect([...keys].filter((key) => FRENCH_TONGUE.phrase(key) === undefined)).toEqual([]);
  });

  test("what is put in as it stands comes from the plan or its language, or is no words", () => {
    const language = wordsIn(JSON.stringify([...ENTRY_FORMS, CODES, fillNames(), speciesNames()]));
    const foreign = told.flatMap(({ code, says, plan }) => {
      const known = new Set([...language, ...wordsIn(plan)]);
      const strange = (text: string) => wordsIn(text).some((w) => !known.has(w) && !known.has(`${w}s`));
      return usedIn({ code, says })
        .filter(strange)
        .map((text) => `${code} ${says.says}: ${text}`);
    });
    // Documents are cited by their own titles; a file may lie behind the one that the plan names.
    expect(
      [...new Set(foreign)].filter(
        (one) =>
          !/^(?:box-over-load volume|(?:too-weak|slat-sags|side-bows) assumed|roots-cramped source|in-a-circle files):/.test(
            one,
          ),
      ),
    ).toEqual([]);
  });
});

describe("the not-checked list in French", () => {
  test("every key is in its table", () => {
    const keys = new Set(notChecked.flatMap(({ what, why }) => [what.says, why.says]));
    expect([...keys].filter((key) => !(key in UNCHECKED))).toEqual([]);
  });

  test("so is every key that the program's own text names", () => {
    const keys = [...WORKED.join("\n").matchAll(/\bunknown\(\s*"\w+",\s*"([^"]+)"|\badd\(\s*"([^"]+)"/g)].map(
      (m) => m[1] ?? m[2]!,
    );
    expect(keys.length).toBeGreaterThan(25);
    expect(keys.filter((key) => !(key in UNCHECKED))).toEqual([]);
  });

  test("no slot stays empty, and no English stands between the plan's words", () => {
    const texts = notChecked
      .map(({ what, why }) => uncheckedText({ what: blankSays(what), why: blankSays(why) }, "fr"))
      .flatMap(({ what, why }) => [what, why]);
    expect(
      [...new Set(texts)].filter((t) => /\{[a-zA-Z-]+\}/.test(t) || ENGLISH.test(withoutPlanWords(t))),
    ).toEqual([]);
  });
});
