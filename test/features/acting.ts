/** Actions asked for at a place of a plan that is marked by ‸, or by ⟦ and ⟧ round what is selected, and taken. */

import { applied } from "../../grammar/format";
import { type Action, actionsAt, type Wanted } from "../../server/features/actions";
import type { Reader } from "../../server/plan";
import { type Evaluated, evaluate } from "../../server/service";
import { memory, PLAN, unmarked } from "./plans";

export type Files = Readonly<Record<string, string>>;

export interface Offered {
  readonly plan: Evaluated;
  readonly actions: readonly Action[];
  readonly titles: readonly string[];
  readonly read: Reader;
}

export interface Asking {
  readonly files?: Files;
  readonly wanted?: Partial<Wanted>;
  readonly language?: "en" | "fr";
}

export function offered(marked: string, { files = {}, wanted, language }: Asking = {}): Offered {
  const caret = marked.indexOf("‸");
  const { text, ranges } =
    caret < 0 ? unmarked(marked) : { text: marked.replace("‸", ""), ranges: [{ start: caret, end: caret }] };
  const read = memory(files);
  const plan = evaluate(PLAN, text, read);
  const actions = actionsAt(
    plan,
    { range: ranges[0]!, only: undefined, invoked: true, read, makesFiles: true, ...wanted },
    language,
  );
  return { plan, actions, titles: actions.map((a) => a.title), read };
}

/** What is offered of that kind and those below it. */
export const ofKind = (marked: string, kind: string, asking: Asking = {}): Offered =>
  offered(marked, { ...asking, wanted: { ...asking.wanted, only: [kind] } });

/** The texts of all files once an action is taken, by name; those that are made too. */
export function taken({ plan }: Pick<Offered, "plan">, action: Action): Record<string, string> {
  const change = action.change();
  if (!change) throw new Error(`“${action.title}” changes nothing`);
  const texts = new Map(plan.worked.loaded.files.map((f) => [f.file, f.tree.text]));
  if (change.makes) texts.set(change.makes.file, change.makes.text);
  for (const file of new Set(change.edits.map((e) => e.file))) {
    const text = texts.get(file);
    if (text === undefined) throw new Error(`${file} is no file of the plan`);
    texts.set(
      file,
      applied(
        text,
        change.edits.filter((e) => e.file === file),
      ),
    );
  }
  return Object.fromEntries(texts);
}

/** The plan's own text once the first action whose title has that in it is taken. */
export function afterTaking(list: Offered, title: string): string {
  const action = list.actions.find((a) => a.title.includes(title));
  if (!action) throw new Error(`“${title}” is not among ${list.titles.join(" | ")}`);
  return taken(list, action)[PLAN]!;
}

/** The lines that differ, those of before with a minus, those of after with a plus. */
export function differences(before: string, now: string): string[] {
  const [old, young] = [before.split("\n"), now.split("\n")];
  let head = 0;
  while (head < old.length && head < young.length && old[head] === young[head]) head++;
  let tail = 0;
  while (
    tail < old.length - head &&
    tail < young.length - head &&
    old[old.length - 1 - tail] === young[young.length - 1 - tail]
  )
    tail++;
  return [
    ...old.slice(head, old.length - tail).map((l) => `- ${l}`),
    ...young.slice(head, young.length - tail).map((l) => `+ ${l}`),
  ];
}
