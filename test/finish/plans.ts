/** Samples and small plans for the tests of finish and liner. */
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { uncheckedText } from "../../server/checks";
import { load } from "../../server/plan";
import { evaluate } from "../../server/service";
import { SIXTEENTHS } from "../../server/units";
import { type Assumption, assumedWords, type Unchecked, type Worked, work } from "../../server/worked";

const SAMPLES = resolve(__dirname, "../../samples");

export const sample = (name: string): Worked =>
  work(
    load(name, readFileSync(resolve(SAMPLES, name), "utf8"), (path) => ({
      file: path,
      text: readFileSync(resolve(SAMPLES, path), "utf8"),
    })),
  );

/** The not-checked list in words. */
export const notChecked = ({ unchecked }: Pick<Worked, "unchecked">) =>
  unchecked.map((u) => uncheckedText(u));

/** The codes of a plan's problems, each once, and its not-checked list. */
export function allProblems(text: string): {
  readonly codes: readonly string[];
  readonly unchecked: readonly Unchecked[];
} {
  const { problems, worked } = evaluate("plan.sawbuck", text, (path) => ({
    file: path,
    refused: "there is no such file",
  }));
  return { codes: [...new Set(problems.map((p) => p.code))].sort(), unchecked: worked.unchecked };
}

/** What was taken for granted, in words. */
export const taken = ({ assumed }: { readonly assumed: readonly Assumption[] }): string =>
  assumed.map((one) => assumedWords(one, SIXTEENTHS)).join("\n");
