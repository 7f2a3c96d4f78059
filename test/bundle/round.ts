/** Plans and what they bring, in memory, and their sheets in all formats. */
import { posix } from "node:path";
import { expect } from "vitest";
import { parse } from "../../grammar/parser";
import { bundled } from "../../server/exchange";
import { partsOf, type Reader } from "../../server/plan";
import {
  drawingsOf,
  type Evaluated,
  evaluate,
  sheetDocument,
  sheetOf,
  writeSheet,
  writeTable,
} from "../../server/service";
import { tables } from "../../server/sheet/csv";

export type Files = Readonly<Record<string, string>>;

export const among =
  (files: Files): Reader =>
  (path, from) => {
    const file = posix.join(posix.dirname(from), path);
    const text = files[file];
    return text === undefined ? { file, refused: "there is no such file" } : { file, text };
  };

/** Everything that is written of a plan, and its problems. */
export function written(e: Evaluated): Record<string, string> {
  const sheet = sheetOf(e);
  const drawings = drawingsOf(e);
  return {
    text: writeSheet(sheet, "text"),
    json: writeSheet(sheet, "json"),
    markdown: writeSheet(sheet, "markdown"),
    html: writeSheet(sheet, "html", { drawings }),
    french: writeSheet(sheetOf(e, undefined, "fr"), "json", { language: "fr" }),
    learners: JSON.stringify(sheetDocument(sheet, { reader: "learners" })),
    ...Object.fromEntries(tables.map((table) => [table, writeTable(sheet, table)])),
  };
}

export function bundleOf(plan: string, files: Files): string {
  const made = bundled(plan, files[plan]!, among(files));
  if ("refused" in made) throw new Error(made.refused);
  return made.text;
}

/** The same files, each as its bundle has it. */
export function asShared(plan: string, bundle: string): Files {
  const shared: Record<string, string> = {};
  for (const { path, begins, tree } of partsOf(parse(bundle)))
    shared[path === "" ? plan : posix.join(posix.dirname(plan), path)] = tree.text.slice(begins);
  return shared;
}

/** The bundle alone gives what the files in it give. */
export function expectSameSheet(plan: string, files: Files): string {
  const bundle = bundleOf(plan, files);
  const apart = asShared(plan, bundle);
  const alone = evaluate(plan, bundle, among({}));
  expect(written(alone)).toEqual(written(evaluate(plan, apart[plan]!, among(apart))));
  expect(bundleOf(plan, { [plan]: bundle })).toBe(bundle);
  return bundle;
}
