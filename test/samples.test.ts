/** The samples: no problem of any class, and between them every noun, verb, clause and literal of this version. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { clauseForm, ENTRY_FORMS } from "../grammar/forms";
import { parse } from "../grammar/parser";
import { Literal, tokenize, VOCABULARY } from "../grammar/tokens";
import { bundled } from "../server/exchange";
import { diskReader } from "../server/lsp/disk";
import { evaluate } from "../server/service";

const FOLDER = join(__dirname, "../samples");
const SAMPLES = readdirSync(FOLDER)
  .filter((f) => f.endsWith(".sawbuck"))
  .map((name) => ({ name, file: join(FOLDER, name), text: readFileSync(join(FOLDER, name), "utf8") }));

test.each(SAMPLES)("$name has no problem", ({ file, text }) => {
  const { problems } = evaluate(file, text, diskReader);
  expect(problems.map((p) => `${p.code}: ${p.says}`)).toEqual([]);
});

describe("between them they use", () => {
  const [sample] = SAMPLES.filter(({ name }) => name === "tree-seat.sawbuck");
  // What encloses others is written by the program.
  const made = bundled(sample!.file, sample!.text, diskReader);
  const trees = [...SAMPLES.map((s) => s.text), "text" in made ? made.text : ""].map((text) => parse(text));
  const entries = trees.flatMap((t) =>
    t.entries
      .flatMap((e) => (e.kind === "assembly" ? [e, ...e.body] : [e]))
      .map((entry) => ({ entry, text: t.text })),
  );

  test.each(ENTRY_FORMS.map((e) => [e.word, e] as const))("%s, with all it can say", (word, form) => {
    const own = entries.filter((e) => e.entry.kind === word);
    expect(own.length).toBeGreaterThan(0);
    const said = own.flatMap(({ entry, text }) =>
      entry.clauses.map((c) => {
        const words = text.slice(c.start, c.end).split(/\s+/);
        return clauseForm(word, (at) => words[at])?.opens.join(" ") ?? "";
      }),
    );
    const missing = form.clauses.map((c) => c.opens.join(" ")).filter((opens) => !said.includes(opens));
    expect(missing).toEqual([]);
  });

  test("every form of literal", () => {
    const kinds = VOCABULARY.filter((t) => t.CATEGORIES?.includes(Literal)).map((t) => t.name);
    const used = new Set(SAMPLES.flatMap((s) => tokenize(s.text).tokens.map((t) => t.tokenType.name)));
    expect(kinds.length).toBeGreaterThan(6);
    expect(kinds.filter((k) => !used.has(k))).toEqual([]);
  });
});
