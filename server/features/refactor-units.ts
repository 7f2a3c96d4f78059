/** Writing lengths in the other system: one, those selected, or all of the plan. */

import { applied } from "../../grammar/format";
import { lineEnd, lineStop } from "../../grammar/lines";
import type { Entry, Expression, Span, Tree } from "../../grammar/tree";
import type { Edit, Language } from "../checks";
import type { Action, Change } from "./actions";
import { ACTION_WORDS } from "./actions-words";
import type { Checked } from "./checked";
import { entriesOf, type Reading, saysSame, valuesIn } from "./expressions-in";
import { type Rewritten, rewritten, type System, systemOf } from "./length-forms";

type Length = Extract<Expression, { kind: "literal" }>;
type PlanEntry = Entry & { readonly kind: "plan" };

export function rewriteUnits(plan: Checked, range: Span, language: Language): Action[] {
  const tree = plan.worked.loaded.files[0]?.tree;
  if (!tree) return [];
  const here = lengthsOf(tree).filter((l) => l.start <= range.end && range.start <= l.end);
  const [only] = here;
  const selected =
    here.length === 1 && only
      ? one(plan, tree, only, language)
      : SYSTEMS.flatMap((to) => several(plan, tree, here, to, language));
  const head = tree.entries.find((e): e is PlanEntry => e.kind === "plan");
  const inHead = head && head.start <= range.start && range.end <= head.end;
  return [...selected, ...(inHead ? whole(plan, tree, head, language) : [])];
}

const SYSTEMS: readonly System[] = ["inches", "millimetres"];
const otherOf = (system: System): System => (system === "inches" ? "millimetres" : "inches");

/** All typed lengths but the finest mark of the tape, and plywood, whose number is a name. */
const lengthsOf = (tree: Tree): Length[] =>
  entriesOf(tree)
    .flatMap(valuesIn)
    .filter(({ role }) => !/^plan units|plywood/.test(role))
    .flatMap(({ expression: e }) => (e.kind === "literal" && e.form === "length" ? [e] : []));

function one(plan: Checked, tree: Tree, length: Length, language: Language): Action[] {
  const from = systemOf(length.text);
  const to = from && rewritten(length.text, otherOf(from), plan.worked.settings.display);
  if (!to) return [];
  const title = ACTION_WORDS[language].show(length.text, to.text, !to.exact);
  return offered(plan, tree, `units ${length.start}`, title, [[length, to]]);
}

function several(
  plan: Checked,
  tree: Tree,
  lengths: readonly Length[],
  to: System,
  language: Language,
): Action[] {
  const others = lengths.filter((l) => systemOf(l.text) === otherOf(to));
  const done = others.flatMap((l): [Length, Rewritten][] => {
    const written = rewritten(l.text, to, plan.worked.settings.display);
    return written ? [[l, written]] : [];
  });
  if (done.length === 0) return [];
  const exact = done.every(([, { exact }]) => exact);
  const title = ACTION_WORDS[language].showAll(done.length, to, !exact);
  return offered(plan, tree, `units selected ${to}`, title, done);
}

function offered(
  plan: Checked,
  tree: Tree,
  id: string,
  title: string,
  done: readonly (readonly [Length, Rewritten])[],
): Action[] {
  const lengths = done.every(([, { exact }]) => exact) ? "measured" : "any";
  const change = checked(plan, tree, done.map(overwritten(plan)), { lengths });
  if (!change) return [];
  return [
    { id, title, kind: "refactor.rewrite.units", preferred: false, problems: [], change: () => change },
  ];
}

const overwritten =
  ({ file }: Checked) =>
  ([{ start, end }, { text }]: readonly [Length, Rewritten]): Edit => ({ file, start, end, text });

/** The change, if the text says the same with it. */
const checked = (
  { text }: Checked,
  tree: Tree,
  edits: readonly Edit[],
  reading: Reading,
): Change | undefined => (saysSame(tree, reading, applied(text, edits), reading) ? { edits } : undefined);

/** Everything, and the line that says how lengths are shown. Nothing is rounded: what would have to be stays, or stops it. */
function whole(plan: Checked, tree: Tree, head: PlanEntry, language: Language): Action[] {
  const words = ACTION_WORDS[language];
  const { display } = plan.worked.settings;
  const to = otherOf(display.system);
  const others = lengthsOf(tree).filter((l) => systemOf(l.text) === display.system);
  const done = others.map((l) => [l, rewritten(l.text, to, display)] as const);
  const exact = done.flatMap(([l, r]): [Length, Rewritten][] => (r?.exact ? [[l, r]] : []));
  const off = done.find(([, r]) => !r?.exact)?.[0];
  const stops = to === "inches" && off ? words.notOnTape(off.text) : undefined;
  const why = tree.complaints.length > 0 ? words.notReadable : stops;
  const edits = [...exact.map(overwritten(plan)), unitsSaid(plan, head, to)];
  const change =
    why === undefined
      ? checked(plan, tree, edits, { lengths: "measured", without: (e) => e.kind === "plan" })
      : undefined;
  return [
    {
      id: `units plan ${to}`,
      title: words.showPlan(to),
      kind: "refactor.rewrite.units",
      preferred: false,
      problems: [],
      ...(!change && { refused: why ?? words.otherMeaning }),
      change: () => change,
    },
  ];
}

/** `units millimetres` in place of what the plan says, else under its first line. */
function unitsSaid({ file, text }: Checked, head: PlanEntry, to: System): Edit {
  const said = head.clauses.find((c) => c.kind === "units");
  if (said) return { file, start: said.start, end: said.end, text: `units ${to}` };
  const at = lineStop(text, head.start);
  return { file, start: at, end: at, text: `${lineEnd(text)}  units ${to}` };
}
