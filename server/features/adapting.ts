/**
 * A plan adapted to another place or other wood: measures and lengths that are set, and a board that another takes the
 * place of. The changes are changes of its texts, so that what comes of them is a plan like any other.
 */
import { applied } from "../../grammar/format";
import { parse } from "../../grammar/parser";
import type { Entry, Expression, Span } from "../../grammar/tree";
import {
  type At,
  type Declared,
  holderOf,
  type Loaded,
  lookUp,
  occurrencesIn,
  type Scope,
  scopeOf,
} from "../plan";
import { wholeOf } from "./expressions-in";

/** What is wished for, as it was typed. */
export type Wish =
  /** `rim-height`, or `length of leg`. */
  | { readonly kind: "set"; readonly what: string; readonly value: string }
  /** Every use of a board or a sheet, by its name or its section. */
  | { readonly kind: "swap"; readonly old: string; readonly new: string };

export interface TextChange extends Span {
  readonly file: string;
  readonly text: string;
}

/** What would have to be wished for that the plan were as it was built: what came out otherwise, each thing once. */
export function wishesOf({ clauses }: Entry & { readonly kind: "built" }, scope: Scope): Wish[] {
  const wishes = clauses.flatMap((clause): Wish[] => {
    if (clause.kind === "made of") return [{ kind: "swap", old: clause.planned.text, new: clause.used.text }];
    return clause.kind === "came out"
      ? [{ kind: "set", what: setBy(clause.what, scope), value: clause.value.text }]
      : [];
  });
  const about = (wish: Wish): string =>
    wish.kind === "set" ? `set ${wish.what}` : `swap ${plain(wish.old)}`;
  return wishes.filter((wish, i) => wishes.findIndex((other) => about(other) === about(wish)) === i);
}

/** A measure by its name, or the `length of` a part. */
function setBy(what: Expression, scope: Scope): string {
  if (what.kind === "name") return what.name.text;
  if (what.kind !== "property") return "";
  const thing = what.of.where.length > 0 ? undefined : lookUp(scope, what.of.name.text)?.name;
  const words = [...what.of.where, what.of.name].map(({ text }) => text).join(" ");
  return `${what.property.text} of ${thing ?? words}`;
}

/** The texts of a plan that are others then, by their files; in words why it cannot be done. */
export function adaptedTexts(
  loaded: Loaded,
  wishes: readonly Wish[],
): ReadonlyMap<string, string> | { readonly refused: string } {
  const changes = textChanges(loaded, wishes);
  if ("refused" in changes) return changes;
  const main = loaded.files[0]!.file;
  const whole = (file: string): string =>
    file === main ? loaded.whole.text : loaded.files.find((one) => one.file === file)!.tree.text;
  return new Map(
    [...new Set(changes.map(({ file }) => file))].map((file) => [
      file,
      applied(
        whole(file),
        changes.filter((change) => change.file === file),
      ),
    ]),
  );
}

/** The changes themselves, each place once. */
export function textChanges(
  loaded: Loaded,
  wishes: readonly Wish[],
): TextChange[] | { readonly refused: string } {
  const changes: TextChange[] = [];
  for (const wish of wishes) {
    const made = wish.kind === "set" ? set(loaded, wish) : swap(loaded, wish);
    if ("refused" in made) return made;
    changes.push(...made);
  }
  const seen = new Map<string, TextChange>();
  for (const change of changes) {
    const place = `${change.file}\n${change.start}`;
    const other = seen.get(place);
    if (other && other.text !== change.text)
      return { refused: `two values are given for one place: “${other.text}” and “${change.text}”` };
    seen.set(place, change);
  }
  return [...seen.values()];
}

type Changes = TextChange[] | { readonly refused: string };

function set(loaded: Loaded, { what, value }: Wish & { kind: "set" }): Changes {
  const text = value.trim();
  if (!isValue(text)) return { refused: `“${value}” is no value such as 28" or rim-height - 2"` };
  const scope = scopeOf(loaded);
  const [, part] = /^length of (\S+)$/.exec(what) ?? [];
  const declared = scope.declared.get(part ?? what);
  const [, side, of] = /^(width|depth|height) of (space|way in)$/.exec(what) ?? [];
  if (side !== undefined && !declared) return setSide(loaded, side as keyof typeof SIDES, of!, text);
  if (!declared)
    return { refused: notThere(part ?? what, part ? "part" : "measure", [...scope.declared.values()]) };
  const expression = part ? lengthOf(declared.entry) : measured(declared.entry);
  if (!expression)
    return {
      refused: part
        ? `the line of “${part}” says no length, which follows from something else`
        : `“${what}” is ${a(declared.kind)}; what can be set are measures, and the length of a part`,
    };
  return [change(loaded, declared.at, expression, text)];
}

const SIDES = { width: "wide", depth: "deep", height: "high" } as const;

/** Of the place the thing stands in, or of the way to it. */
function setSide(loaded: Loaded, side: keyof typeof SIDES, of: string, text: string): Changes {
  const { file, tree } = loaded.files[0]!;
  const plan = tree.entries.find((entry) => entry.kind === "plan");
  for (const clause of plan?.clauses ?? [])
    if ((clause.kind === "space" || clause.kind === "way in") && clause.kind === of)
      for (const extent of clause.extents)
        if (extent.side === SIDES[side]) return [change(loaded, { file, ...extent }, extent.value, text)];
  return { refused: `the plan says no ${side} of its ${of}` };
}

const measured = (entry: Entry): Expression | undefined =>
  entry.kind === "measure" ? entry.value : undefined;

function lengthOf(entry: Entry): Expression | undefined {
  if (entry.kind !== "part") return undefined;
  for (const clause of entry.clauses) if (clause.kind === "length") return clause.value;
  return undefined;
}

function swap(loaded: Loaded, wish: Wish & { kind: "swap" }): Changes {
  const [old, now] = [plain(wish.old), plain(wish.new)];
  const scope = scopeOf(loaded);
  const there = lookUp(scope, now);
  if (there ? there.kind !== "stock" && there.kind !== "sheet" : !SECTION.test(now))
    return {
      refused: there
        ? `“${now}” is ${a(there.kind)}, and no board or sheet`
        : notThere(now, "stock", [...scope.declared.values()]),
    };
  const found = occurrencesIn(loaded, scope).filter(
    ({ at, text, declares, declared }) =>
      !declares &&
      !isOfBuilt(loaded, at) &&
      plain(text) === old &&
      (declared === undefined || declared.kind === "stock" || declared.kind === "sheet"),
  );
  if (found.length === 0) return { refused: `nothing is made of “${old}”` };
  return found.map(({ at }) => ({ file: holderOf(at.file), start: at.start, end: at.end, text: now }));
}

/** What was built stays told as it was. */
const isOfBuilt = ({ files }: Loaded, at: At): boolean =>
  files
    .find((one) => one.file === at.file)!
    .tree.entries.some((e) => e.kind === "built" && e.start <= at.start && at.end <= e.end);

const plain = (name: string): string => name.trim().replace("×", "x");
const SECTION = /^\d+(?:\/\d+)?x\d+$/;

function change({ files }: Loaded, { file }: At, expression: Expression, text: string): TextChange {
  const whole = files.find((one) => one.file === file)!.tree.text;
  return { file: holderOf(file), ...wholeOf(whole, expression), text };
}

/** Whether a text reads as one value and nothing else. */
function isValue(text: string): boolean {
  if (text === "" || /[\r\n,#]/.test(text)) return false;
  const tree = parse(`measure a = ${text}\n`);
  const [entry, second] = tree.entries;
  return tree.complaints.length === 0 && !second && entry?.kind === "measure" && entry.clauses.length === 0;
}

function notThere(name: string, kind: Declared["kind"], declared: readonly Declared[]): string {
  const names = declared.filter((one) => one.kind === kind).map((one) => one.name);
  const told = names.slice(0, MOST_NAMES).join(", ") + (names.length > MOST_NAMES ? " …" : "");
  return `no ${kind} is called “${name}”${told === "" ? "" : `; there are ${told}`}`;
}
const MOST_NAMES = 12;

const a = (kind: string): string => (/^[aeiou]/.test(kind) ? `an ${kind}` : `a ${kind}`);
