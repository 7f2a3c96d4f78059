/** Letting a warning or a hazard stand: a line that the person ends with the reason. Never taken without choosing. */

import { asLine, linesOf } from "../../grammar/lines";
import type { Entry } from "../../grammar/tree";
import type { Language, Problem } from "../checks";
import type { Action, Change } from "./actions";
import { idOf } from "./actions-cures";
import { ACTION_WORDS } from "./actions-words";
import type { Checked } from "./checked";
import { placeOf } from "./diagnostics";

export function acceptances(plan: Checked, problems: readonly Problem[], language: Language): Action[] {
  const words = ACTION_WORDS[language];
  const list = new Map<string, Action>();
  for (const problem of problems) {
    if (problem.class !== "warning" && problem.class !== "hazard") continue;
    // What is wrong with such a line is mended there.
    if (problem.code === "cannot-accept") continue;
    const said = lineFor(plan, problem);
    const entry = entryAt(plan, placeOf(plan, problem).start);
    const key = `${said} ${entry?.start}`;
    const before = list.get(key);
    list.set(key, {
      id: before?.id ?? `accept ${idOf(problem)}`,
      title: problem.class === "hazard" ? words.acceptHazard(said) : words.accept(said),
      kind: "quickfix",
      preferred: false,
      problems: [...(before?.problems ?? []), problem],
      change: () => added(plan, entry, said),
    });
  }
  return [...list.values()];
}

/** `accept CODE on THING because `, of the first thing by which it can be told; of the whole plan where there is none. */
function lineFor({ worked }: Checked, problem: Problem): string {
  const on = problem.about.find((name) => worked.scope.declared.has(name) || /^[\d/]+x\d+$/.test(name));
  return `accept ${problem.code}${on === undefined ? "" : ` on ${on}`} because `;
}

/** The line at the left edge in whose lines that place is. */
const entryAt = ({ worked }: Checked, offset: number): Entry | undefined =>
  worked.loaded.files[0]?.tree.entries.find((e) => e.start <= offset && offset <= e.end);

/** Under the line concerned, else at the end. */
function added({ file, text }: Checked, entry: Entry | undefined, line: string): Change {
  const at = entry ? linesOf(text, entry).end : text.length;
  const put = asLine(text, at, line);
  return {
    edits: [{ file, start: at, end: at, text: put }],
    typing: put.indexOf(line) + line.length,
  };
}
