/** The sheet's own words in each language: complete, set as the language is, and saying the same of every sample. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { CONDITIONS, FILLS, WOODS } from "../../server/checks/french/names";
import { frenchPiece } from "../../server/checks/french/pieces";
import { DESCRIBED, OWN_NAMES } from "../../server/checks/french/sources";
import { diskReader } from "../../server/lsp/disk";
import {
  drawingsOf,
  drawingText,
  type Evaluated,
  evaluate,
  sameScene,
  sceneIn,
  sheetDocument,
  sheetOf,
  writeSheet,
} from "../../server/service";
import type { SheetData } from "../../server/sheet/data";
import { type Block, type Run, runsOf, type SheetDocument, type Words } from "../../server/sheet/document";
import { sheetBody } from "../../server/sheet/html";
import { ENGLISH, SHEET_LANGUAGES, wordsIn } from "../../server/sheet/words";
import { CARE, CAUTIONS, RULES, TOOLS } from "../../server/sheet/words/french-trade";
import {
  allRows,
  boltHole,
  careRows,
  cautionRows,
  clearanceHole,
  drainHoles,
  fillNames,
  flatHead,
  nailHole,
  pilotHole,
  speciesNames,
  tools,
} from "../../server/trade";
import { AREA, exactly, fraction, LENGTH, money, moneyText, quantityText, roughly } from "../../server/units";
import { made } from "./made-document";
import { leavesOf, textsOf, wanted } from "./words-args";

const FRENCH = wordsIn("fr");
const SAMPLES = join(__dirname, "../../samples");
const NAMES = readdirSync(SAMPLES).filter((f) => f.endsWith(".sawbuck"));
const sample = (name: string): Evaluated => {
  const file = join(SAMPLES, name);
  return evaluate(file, readFileSync(file, "utf8"), diskReader);
};
const base = (file: string): string => file.split(/[\\/]/).at(-1)!;

const OTHER: Block = {
  kind: "paragraph",
  style: "plain",
  words: [{ text: "told in English", language: "en" }],
};

describe("the French words", () => {
  it("are as many as the English ones, each a text or a function as there", () => {
    const shape = (words: object) => leavesOf(words).map(({ path, value }) => `${path}: ${typeof value}`);
    expect(shape(FRENCH).sort()).toEqual(shape(ENGLISH).sort());
  });

  it("differ from the English ones but for a few", () => {
    const byPath = (words: typeof ENGLISH) => {
      const paths = new Map<string, ReturnType<typeof textsOf>>();
      for (const one of textsOf(words)) paths.set(one.path, [...(paths.get(one.path) ?? []), one]);
      return paths;
    };
    const english = byPath(ENGLISH);
    const same = [...byPath(FRENCH)].flatMap(([path, texts]) =>
      texts.filter(({ text }, i) => text !== "" && english.get(path)?.[i]?.text === text),
    );
    expect([...new Set(same.map(({ path }) => path))].sort()).toEqual(SAME);
  });

  it("hold what they are given, in both languages", () => {
    for (const { path, args, text } of [...textsOf(ENGLISH), ...textsOf(FRENCH)])
      for (const part of wanted(args)) expect(text, path).toContain(part);
  });

  it("are set with curved apostrophes, and with blanks that hold before two-part marks and inside quotes", () => {
    const wrong = textsOf(FRENCH).filter(({ text }) =>
      /[ ][:;?!»%]|[^\s\u00a0/][:;?!»](?!\d)|« |'/.test(text.replace(/§\w?|https?:/g, "")),
    );
    expect(wrong.map(({ path, text }) => `${path}: ${text}`)).toEqual([]);
  });

  it("know singular and plural, and zero as singular", () => {
    expect([0, 1, 2].map(FRENCH.pieces)).toEqual(["0 pièce", "1 pièce", "2 pièces"]);
    expect(FRENCH.screwsInAll(1, 1)).toBe("1 vis à 1 croisement");
    expect(FRENCH.wood.layouts.spares(2)).toBe("2 pièces de rechange comptées aussi");
  });
});

/** What English and French write alike: words that are the same in both, and texts that are put in as they are. */
const SAME = [
  ...[
    "book.columns.plan",
    "book.of",
    "book.title",
    "book.under",
    "budget",
    "by",
    "changes.fields.note",
    "changes.note",
    "changes.was",
    "drawings.size",
    "headings.notes",
    "inBox",
    "plan.facts.budget",
  ],
  ...["plan.facts.licence", "total", "unitsTo", "work.finishedWith", "work.lifts", "work.time"],
];

describe("the trade's tables in French", () => {
  it("have every tool, with a way round where English has one", () => {
    for (const { value } of tools) {
      expect(TOOLS[value.key].name, value.key).not.toBe("");
      expect(TOOLS[value.key].instead !== "", value.key).toBe(value.instead !== "");
    }
  });

  it("have every caution and every piece of care, and none that is gone", () => {
    expect(Object.keys(CAUTIONS).sort()).toEqual(cautionRows.map(({ key }) => key).sort());
    expect(Object.keys(CARE).sort()).toEqual(careRows.map(({ key }) => key).sort());
  });

  it("have every rule for a hole", () => {
    const rules = new Set([drainHoles.key, flatHead.key]);
    for (let gravity = 0.3; gravity < 0.9; gravity += 0.05)
      for (const system of ["inches", "millimetres"] as const)
        for (const gauge of [undefined, 2, 4, 5, 6, 8, 10, 12, 14, 16]) {
          const screw = { gauge, diameter: 4 };
          for (const hole of [
            pilotHole(screw, gravity, system),
            clearanceHole(screw, gravity, system),
            nailHole(3, gravity, system),
            boltHole(8, system),
          ])
            rules.add(hole.rule);
        }
    expect([...rules].filter((rule) => RULES[rule] === undefined)).toEqual([]);
  });

  it("have every document and table, or cite it by its own name", () => {
    const cited = allRows().flatMap(({ source: { document, table } }) => [
      document,
      ...(table ? [table] : []),
    ]);
    const untold = cited.filter((text) => DESCRIBED[text] === undefined && !OWN_NAMES.includes(text));
    expect([...new Set(untold)]).toEqual([]);
  });

  it("have everyone who reproduced a document, but those that are called by an address", () => {
    const told = allRows().flatMap(({ source: { via } }) => (via === undefined ? [] : [via]));
    const english = /^(?:an?|the) |\b(?:pages?|tables?|categor\w+|sizes?)\b(?!\.)/;
    expect([...new Set(told)].filter((via) => DESCRIBED[via] === undefined && english.test(via))).toEqual([]);
  });

  it("have every wood, fill and condition", () => {
    expect(Object.keys(WOODS).sort()).toEqual([...speciesNames()].sort());
    expect(Object.keys(FILLS).sort()).toEqual([...fillNames()].sort());
    expect(Object.keys(CONDITIONS).sort()).toEqual(
      ["heartwood", "painted", "rough", "treated", "untreated"].sort(),
    );
  });
});

describe("numbers in French", () => {
  const inches = { ...sample("salad-trough.sawbuck").worked.settings.display, numbers: FRENCH.numbers };

  it("have a comma, units with a blank that holds, and the currency behind", () => {
    expect(quantityText(roughly(AREA, 929_030), inches)).toBe("10\u00a0pi²");
    expect(quantityText(roughly(AREA, 938_320), inches)).toBe("10,1\u00a0pi²");
    expect(moneyText(exactly(money("$"), fraction.rational(-740, 100)), inches)).toBe("-7,40\u00a0$");
  });

  it("are those of the tape for lengths", () => {
    expect(quantityText(roughly(LENGTH, 25.4 * 3.5), inches)).toBe('3-1/2"');
    const tenths = {
      system: "millimetres",
      mark: fraction.rational(1, 10),
      numbers: FRENCH.numbers,
    } as const;
    expect(quantityText(roughly(LENGTH, 12.5), tenths)).toBe("12,5 mm");
  });
});

describe("pieces in French", () => {
  it.each([
    ["leg / front left", "leg / avant gauche"],
    ["side / in front of legs / 1", "side / devant legs / 1"],
    [
      "copy 2 / end-floor / behind front left leg 2",
      "exemplaire 2 / end-floor / derrière leg avant gauche 2",
    ],
    ["slat / between front slats and back slats 2 / 3", "slat / entre slats avant et slats arrière 2 / 3"],
    ["brace / bottom left to top right", "brace / de bas gauche à haut droite"],
    ["cheek / behind low-board / mirrored", "cheek / derrière low-board / en miroir"],
    [
      "foot / on floor 2 / mirrored left to right and up and down",
      "foot / sur le sol 2 / en miroir de gauche à droite et de haut en bas",
    ],
    ["bar / near left of posts", "bar / près du côté gauche de posts"],
    ["spare / leg / 1", "rechange / leg / 1"],
    ["leg / 3", "leg / 3"],
  ])("%s is %s", (id, french) => {
    expect(frenchPiece(id)).toBe(french);
  });
});

describe.each(NAMES)("%s", (name) => {
  const evaluated = sample(name);
  const [english, french] = SHEET_LANGUAGES.map((language) => sheetOf(evaluated, base, language));

  it("keeps no English word of the sheet's own in French", () => {
    for (const reader of ["builder", "stations", "learners"] as const) {
      const drawings = drawingsOf(evaluated, "fr");
      const document = sheetDocument(french!, { drawings, reader, language: "fr" });
      const typed = typedIn(evaluated, english!);
      const left = textsIn(document)
        .map((text) =>
          typed.reduce((rest, own) => rest.replaceAll(own, ""), text.replace(/\{\w+\}|«[^»]*»|`[^`]*`/g, "")),
        )
        .filter((text) => STOPS.test(text));
      expect([...new Set(left)]).toEqual([]);
    }
  });

  it("has the same numbers in French", () => {
    expect(numbersIn(french)).toEqual(numbersIn(english));
  });

  it("is drawn anew in French, in the same lines", () => {
    const [one, other] = [sceneIn(evaluated), sceneIn(evaluated, "fr")];
    expect(sameScene(one, other)).toBe(false);
    expect(sameScene(other, sceneIn(evaluated, "fr"))).toBe(true);
    const paths = (language: "en" | "fr") =>
      drawingsOf(evaluated, language).map(({ drawing: { items } }) =>
        items.filter(({ layer }) => layer === "face" || layer === "edge"),
      );
    expect(paths("fr")).toEqual(paths("en"));
  });
});

describe("a French sheet", () => {
  it.each(["salad-trough", "reading-shelf"])("of %s reads as it should", async (name) => {
    const text = writeSheet(sheetOf(sample(`${name}.sawbuck`), base, "fr"), "text", { language: "fr" });
    await expect(text).toMatchFileSnapshot(`snapshots/${name}.fr.txt.snap`);
  });

  it("tells browsers its language, and that of what is told in another", () => {
    const evaluated = sample("salad-trough.sawbuck");
    const body = sheetBody(sheetDocument(sheetOf(evaluated, base, "fr"), { language: "fr" }));
    expect(body).toMatch(/^<main class="sheet" lang="fr"/);
    expect(body).not.toContain('lang="en"');
    expect(body).toContain("le bois de bout boit 3 fois ce que boit une face");
    const other = sheetBody({ ...made, sections: [{ name: "one", heading: "One", blocks: [OTHER] }] });
    expect(other).toContain('<span lang="en">told in English</span>');
    expect(sheetBody(sheetDocument(sheetOf(evaluated, base)))).not.toContain('lang="fr"');
  });

  it("says in French why there is no drawing", () => {
    const nothing = evaluate("p.sawbuck", "plan A stool\n", diskReader);
    expect(drawingText(nothing, "turned", "", "fr")).toEqual({ refused: FRENCH.drawings.noPieces });
  });
});

/** English words of the sheet that are no French ones; names with hyphens are a plan's. */
const STOPS = new RegExp(
  `(?<![\\w-])(${[
    ..."the and of with each from into not is are for this that which its at by as".split(" "),
    ..."cut screw screws board boards sheet sheets hole holes length width wide deep high edge where".split(
      " ",
    ),
    ..."left right pieces piece spare waste offcut keep memory practice common pilot clearance".split(" "),
    ..."miter bevel both point points hand inches millimetres lb/cuft sqft cuft psf gal tools".split(" "),
  ].join("|")})(?![\\w-])`,
  "i",
);

/** All that a reader of the document sees, but for words that are marked as being of another language. */
function textsIn(document: SheetDocument): string[] {
  const texts: string[] = [];
  const seen = new Set<unknown>();
  const own = (words: Words) => runsOf(words).filter(({ language }: Run) => language === undefined);
  const take = (value: unknown, key = ""): void => {
    if (typeof value === "string") {
      if (!CODES.has(key)) texts.push(value);
    } else if (typeof value === "function") {
      if (key === "drawing") take(value());
      if (key === "letters") for (const line of value(80)) texts.push(line);
    } else if (Array.isArray(value)) {
      if (value.some((one) => typeof one === "object" && one && "language" in one))
        for (const { text } of own(value as Words)) texts.push(text);
      else for (const one of value) take(one, key);
    } else if (typeof value === "object" && value !== null && !seen.has(value)) {
      seen.add(value);
      for (const [inner, one] of Object.entries(value))
        if (inner !== "words" || key !== "document") take(one, inner);
    }
  };
  const { sections, title, under } = document;
  take({ sections, title, under });
  return texts;
}

/** Fields that are no words: names of styles, identities. */
const CODES: ReadonlySet<string> = new Set(
  "kind name style fit layer fill anchor id piece key of weight strokes places parts links".split(" "),
);

/** What the plan itself says, longest first: titles, notes, reasons, rules, whose limits, expressions for lengths. */
function typedIn(
  { worked: { settings, loaded, finishes } }: Evaluated,
  { cutList, musts, accepted, boards, panels, built }: SheetData,
): string[] {
  const { title, anchoredTo, writtenBy, licence, floorLimit, footLimit, shares, tools: has } = settings;
  const titles = loaded.files.flatMap(({ tree }) =>
    tree.entries.flatMap((entry) => ("title" in entry ? [entry.title.text] : [])),
  );
  return [
    ...[title, anchoredTo, writtenBy, licence, floorLimit?.by ?? "", footLimit?.by ?? "", ...titles],
    ...shares.map(({ what }) => what),
    ...finishes.flatMap(({ tins }) => tins.map(({ text }) => text)),
    ...(has?.has ?? []),
    ...cutList.flatMap(({ rows }) => rows.map(({ rule }) => rule)),
    ...musts.flatMap(({ rule, because }) => [rule, because]),
    ...accepted.map((problem) => problem.accepted ?? ""),
    ...built.flatMap(({ by, changed, wear }) => [by, ...changed, ...wear.map(({ words }) => words)]),
    ...[...boards, ...panels].map(({ onHandAfter }) => onHandAfter),
  ]
    .filter((text) => text !== "")
    .sort((a, b) => b.length - a.length);
}

/** Numbers of a sheet's data as they are, and those within its texts, however they are written. */
function numbersIn(value: unknown): unknown {
  if (typeof value === "string")
    return [
      ...value
        .replace(/(?<=[a-z])[23²³]/g, "")
        .replace(/(\d),(?=\d)/g, "$1.")
        .matchAll(/\d+(?:\.\d+)?/g),
    ]
      .map(([number]) => number)
      .sort();
  if (Array.isArray(value)) return value.map(numbersIn);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, numbersIn(inner)]));
}
