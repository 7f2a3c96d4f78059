/** No text, table, JSON or hover of any plan says NaN, Infinity or undefined, however its numbers were changed. */
import { basename } from "node:path";
import { describe, expect, it } from "vitest";
import { hoverAt } from "../../server/features/hover";
import { diskReader } from "../../server/lsp/disk";
import { type Evaluated, evaluate, sheetOf, writeSheet, writeTable } from "../../server/service";
import { tables } from "../../server/sheet/csv";
import { SHEET_LANGUAGES } from "../../server/sheet/words";
import { ALL, PLANS } from "./samples";

const NOT_FINITE = /\bNaN\b|\bInfinity\b|\bundefined\b|\[object /;
/** Nobody reads a number like 1e+21; only JSON may write one so. */
const NOT_READ = /\d(?:\.\d+)?e\+\d/;

/** What a plan gives rise to: its sheet in each language, its tables, its JSON, hovers over each line's words. */
function textsOf(evaluated: Evaluated): {
  readonly read: readonly string[];
  readonly json: readonly string[];
} {
  const sheets = SHEET_LANGUAGES.map((language) => ({
    language,
    sheet: sheetOf(evaluated, (file) => basename(file), language),
  }));
  const hovers = spotsIn(evaluated.text).flatMap((at) => hoverAt(evaluated, at)?.markdown ?? []);
  return {
    read: [
      ...sheets.map(({ sheet, language }) => writeSheet(sheet, "text", { language })),
      ...tables.map((table) => writeTable(sheets[0]!.sheet, table)),
      ...hovers,
    ],
    json: sheets.map(({ sheet }) => writeSheet(sheet, "json")),
  };
}

/** The first two words of each line, and every fifth after that. */
function spotsIn(text: string): number[] {
  let n = 0;
  return [...text.matchAll(/(?<=^[ \t]*|[ \t])\S/gm)].flatMap(({ index }) => {
    const first = text.lastIndexOf("\n", index) >= index - 12;
    n += 1;
    return first || n % 5 === 0 ? [index] : [];
  });
}

function wrongIn(evaluated: Evaluated): string[] {
  const { read, json } = textsOf(evaluated);
  const found = (texts: readonly string[], wrong: RegExp): string[] =>
    texts.flatMap((text) => {
      const at = wrong.exec(text)?.index;
      return at === undefined ? [] : [text.slice(Math.max(0, at - 80), at + 80)];
    });
  return [...found([...read, ...json], NOT_FINITE), ...found(read, NOT_READ)];
}

describe("nothing endless or missing is told", () => {
  it.each(ALL)("of $name", ({ evaluated }) => {
    expect(wrongIn(evaluated())).toEqual([]);
  });

  it.each(PLANS)("of $name with numbers changed and lines left out", ({ name, evaluated }) => {
    const { file, text } = evaluated();
    // Beside two sheets and the tables there are hovers.
    expect(textsOf(evaluated()).read.length).toBeGreaterThan(SHEET_LANGUAGES.length + tables.length + 20);
    const random = randoms(name.length * 7919 + text.length);
    const each = Math.ceil(MUTANTS / PLANS.length);
    for (let n = 0; n < each; n++) {
      const changed = mutant(text, random);
      const wrong = wrongIn(evaluate(file, changed.text, diskReader));
      expect(wrong, changed.what).toEqual([]);
    }
  });
});

const MUTANTS = 200;

/** The same numbers on every run: from 0 up to 1. */
function randoms(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

const INSTEAD = ["0", "-3", "1000000", "0.001", "99999999999999999999"] as const;

/** A number of the text as another one, or a line less. */
function mutant(text: string, random: () => number): { readonly text: string; readonly what: string } {
  if (random() < 0.3) {
    const lines = text.split("\n");
    const drop = Math.floor(random() * lines.length);
    return { text: lines.filter((_, i) => i !== drop).join("\n"), what: `without: ${lines[drop]}` };
  }
  const numbers = [...text.matchAll(/(?<![\w#-])\d+(?:\.\d+)?(?![\w/])/g)];
  const picked = numbers[Math.floor(random() * numbers.length)]!;
  const put = INSTEAD[Math.floor(random() * INSTEAD.length)]!;
  const { index } = picked;
  const line = text.slice(text.lastIndexOf("\n", index) + 1, text.indexOf("\n", index));
  return {
    text: `${text.slice(0, index)}${put}${text.slice(index + picked[0].length)}`,
    what: `${put} for ${picked[0]} in: ${line}`,
  };
}
