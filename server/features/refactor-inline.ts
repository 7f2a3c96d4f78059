/** Writing a measure's value where its name stands, and taking its line out. */

import { applied } from "../../grammar/format";
import type { Entry, Span } from "../../grammar/tree";
import type { Edit, Language } from "../checks";
import { entryOut } from "../checks/writing";
import { eachExpression, usesOf } from "../plan";
import type { Action, Change } from "./actions";
import { ACTION_WORDS } from "./actions-words";
import { standingAt } from "./at";
import type { Checked } from "./checked";
import { entriesOf, inParentheses, saysSame, valuesIn, wholeOf } from "./expressions-in";
import { declaredAs } from "./values";

type Measure = Extract<Entry, { kind: "measure" }>;

export function inlineMeasure(plan: Checked, range: Span, language: Language): Action[] {
  const words = ACTION_WORDS[language];
  const { worked, file, text } = plan;
  const tree = worked.loaded.files[0]?.tree;
  if (!tree) return [];
  const { spot } = standingAt(tree, range.start);
  if ((spot.is !== "declared" && spot.is !== "use") || range.end > spot.span.end) return [];
  const declared = declaredAs(worked, spot.span.text);
  if (declared?.entry.kind !== "measure" || declared.name !== spot.span.text) return [];
  const { name, entry } = declared;
  const value = entry.value && wholeOf(text, entry.value);
  const written = declared.at.file === file && value ? text.slice(value.start, value.end) : "";
  const action = (more: Pick<Action, "change"> & { readonly refused?: string }): Action[] => [
    {
      id: `inline ${name}`,
      title: written && written.length <= LONGEST ? words.inline(name, written) : words.inlinePlain(name),
      kind: "refactor.inline.measure",
      preferred: false,
      problems: [],
      ...more,
    },
  ];
  const why = whyNot(plan, entry, declared.at.file, words);
  const change = why === undefined ? inlined(plan, entry) : undefined;
  return change
    ? action({ change: () => change })
    : action({ refused: why ?? words.otherMeaning, change: () => undefined });
}

/** Longest value told in a title. */
const LONGEST = 40;

type Words = (typeof ACTION_WORDS)[Language];

function whyNot({ worked, file }: Checked, entry: Measure, from: string, words: Words): string | undefined {
  const name = entry.name.text;
  const lastName = (path: string): string => path.split(/[\\/]/).pop()!;
  if (from !== file) return words.inOtherFile(name, lastName(from));
  if (!entry.value) return words.hasNoValue(name);
  if (entry.clauses.length > 0) return words.hasBounds(name);
  const [main, ...others] = worked.loaded.files;
  if (main!.tree.complaints.length > 0) return words.notReadable;
  let itself = false;
  eachExpression(entry.value, (e) => {
    itself ||= e.kind === "name" && e.name.text === name;
  });
  if (itself) return words.valueOfItself(name);
  const uses = (e: Entry): boolean => usesOf(e).some((u) => u.name.text === name);
  const elsewhere = others.find(({ tree }) => tree.entries.some(uses));
  if (elsewhere) return words.usedElsewhere(name, lastName(elsewhere.file));
  for (const line of ["accept", "built"] as const)
    if (main!.tree.entries.some((e) => e.kind === line && uses(e))) return words.usedInWords(name, line);
  return main!.tree.entries.some(uses) ? undefined : words.usedNowhere(name);
}

/** The change, with as few parentheses as leave the rest of the text saying what it said; undefined where it cannot. */
function inlined({ worked, file, text }: Checked, entry: Measure): Change | undefined {
  const tree = worked.loaded.files[0]!.tree;
  const value = entry.value!;
  const whole = wholeOf(text, value);
  const written = text.slice(whole.start, whole.end).replace(/\s*[\r\n]\s*/g, " ");
  const places = entriesOf(tree)
    .flatMap(valuesIn)
    .filter(({ expression: e }) => e.kind === "name" && e.name.text === entry.name.text);
  const isSum = value.kind === "sum" || value.kind === "negative" || value.kind === "round";
  const line = entryOut(file, entry, worked);
  const ways: readonly ((place: Span, inSum: boolean) => string)[] = [
    (_, inSum) => (isSum && inSum ? `(${written})` : written),
    (place) => (inParentheses(text, place) ? written : `(${written})`),
  ];
  for (const way of ways) {
    const uses = places.map(({ expression: { start, end }, inSum }): Edit => {
      const round = isSum && inSum && inParentheses(text, { start, end });
      return { file, start, end, text: round ? written : way({ start, end }, inSum) };
    });
    const edits = [line, ...uses];
    const was = {
      values: new Map([[entry.name.text, value]]),
      without: (e: Entry) => e.kind === "measure" && e.name.text === entry.name.text,
    };
    if (saysSame(tree, was, applied(text, edits), {})) return { edits };
  }
  return undefined;
}
