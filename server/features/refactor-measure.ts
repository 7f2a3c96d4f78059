/** Giving a measurement a name: a measure line of its own, and the name where the value stood. */

import { applied } from "../../grammar/format";
import { asLine, commentsAbove, linesOf } from "../../grammar/lines";
import type { Entry, Span, Tree } from "../../grammar/tree";
import type { Edit, Language } from "../checks";
import { ifKnown } from "../plan";
import { order } from "../units";
import type { Action, Change } from "./actions";
import { ACTION_WORDS } from "./actions-words";
import type { Checked } from "./checked";
import {
  entriesOf,
  inParentheses,
  type Reading,
  type Standing,
  saysSame,
  valuesIn,
  wholeOf,
} from "./expressions-in";
import { measureName } from "./measure-names";

export function nameMeasures(plan: Checked, range: Span, language: Language): Action[] {
  const words = ACTION_WORDS[language];
  const tree = plan.worked.loaded.files[0]?.tree;
  const found = tree && standingIn(plan.text, tree, range);
  if (!tree || !found || !mayBeNamed(found)) return [];
  const name = measureName(plan.worked, found);
  const { start, end } = wholeOf(plan.text, found.expression);
  const value = plan.text.slice(start, end);
  if (/[\r\n]/.test(value)) return [];
  const single = withName(plan, tree, [found], name, value);
  if (!single) return [];
  const list: Action[] = [
    {
      id: `name ${start} ${end}`,
      title: words.nameMeasure(value, name),
      kind: "refactor.extract.measure",
      preferred: false,
      problems: [],
      change: () => single,
    },
  ];
  const alike = sameValues(plan, tree, found);
  const all = alike.length > 1 ? withName(plan, tree, alike, name, value) : undefined;
  if (!all) return list;
  return [
    ...list,
    {
      id: `name everywhere ${start} ${end}`,
      title: words.nameEverywhere(value, name, alike.length),
      kind: "refactor.extract.measure",
      preferred: false,
      problems: [],
      change: () => all,
    },
  ];
}

/** The literal that the cursor is on, or the value that is selected, with or without the parentheses round it. */
function standingIn(text: string, tree: Tree, range: Span): Standing | undefined {
  const values = entriesOf(tree)
    .filter((e) => e.start <= range.end && range.start <= e.end)
    .flatMap(valuesIn);
  if (range.start === range.end)
    return values.find(
      ({ expression: e }) => e.kind === "literal" && e.start <= range.start && range.start <= e.end,
    );
  const picked = text.slice(range.start, range.end);
  const start = range.start + (picked.length - picked.trimStart().length);
  const end = range.start + picked.trimEnd().length;
  return values.find(({ expression }) => {
    const whole = wholeOf(text, expression);
    const round = inParentheses(text, whole);
    return [whole, round].some((s) => s?.start === start && s.end === end);
  });
}

/** What is a name already, a whole measure, or a value that is no measurement of the thing is left as it is. */
function mayBeNamed({ entry, expression: e, within, role }: Standing): boolean {
  if (e.kind === "name") return false;
  if (e.kind === "literal" && (e.form === "section" || e.form === "screw" || /^0+$/.test(e.text)))
    return false;
  if (entry.kind === "measure" && entry.value === e) return false;
  // What a step takes is printed as it is written.
  if (entry.kind === "step" || /^plan (units|language)/.test(role)) return false;
  return within.length > 0;
}

/** All literals of that value that are for the same, itself among them. */
function sameValues({ file, worked }: Checked, tree: Tree, found: Standing): Standing[] {
  const { expression: own, inSum } = found;
  // The 2 of one sum is seldom that of another.
  if (own.kind !== "literal" || (own.form === "number" && inSum)) return [];
  const value = ifKnown(worked.evaluate(own, file));
  if (!value) return [];
  return entriesOf(tree)
    .flatMap(valuesIn)
    .filter(({ expression: e, role }) => {
      if (e.kind !== "literal" || e.form !== (found.expression as typeof e).form || role !== found.role)
        return false;
      const other = ifKnown(worked.evaluate(e, file));
      return other !== undefined && order(other, value) === 0;
    });
}

/** The change, in the first way of writing it in which the rest of the text says what it said; undefined where none does. */
function withName(
  { file, text }: Checked,
  tree: Tree,
  places: readonly Standing[],
  name: string,
  value: string,
): Change | undefined {
  const line = lineFor(text, tree, places[0]!.entry, `measure ${name} = ${value}`);
  const named = new Map([[name, places[0]!.expression]]);
  const isNew = (e: Entry): boolean => e.kind === "measure" && e.name.text === name;
  const ways: readonly ((whole: Span) => Edit)[] = [
    (whole) => ({ file, ...(inParentheses(text, whole) ?? whole), text: name }),
    (whole) => ({ file, ...whole, text: name }),
    (whole) => ({ file, ...whole, text: `(${name})` }),
  ];
  for (const way of ways) {
    const edits = [{ file, ...line }, ...places.map((p) => way(wholeOf(text, p.expression)))];
    const after = applied(text, edits);
    const is: Reading = { values: named, without: isNew, lengths: "measured" };
    if (saysSame(tree, { lengths: "measured" }, after, is)) return { edits, named: namedAt(edits, name) };
  }
  return undefined;
}

/** Where the name stands in the text as it is then, in the place that was asked about. */
function namedAt([line, use]: readonly Edit[], name: string): number {
  const moved = line!.start <= use!.start ? line!.text.length - (line!.end - line!.start) : 0;
  return use!.start + moved + use!.text.indexOf(name);
}

/** Under the last of the plan's measures; else before the entry, above the notes to it; under a line that opens the plan. */
function lineFor(
  text: string,
  tree: Tree,
  entry: Entry,
  line: string,
): { start: number; end: number; text: string } {
  const last = tree.entries.findLast((e) => e.kind === "measure");
  const own = tree.entries.find((e) => e.start <= entry.start && entry.start <= e.end) ?? entry;
  const opens = own.kind === "plan" || own.kind === "shop" || own.kind === "bring";
  const at = last
    ? linesOf(text, last).end
    : opens
      ? linesOf(text, own).end
      : commentsAbove(text, linesOf(text, own).start);
  return { start: at, end: at, text: asLine(text, at, line) };
}
