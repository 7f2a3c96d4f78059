/**
 * Giving something another name, in every file that names it, plurals too. Whether that would clash is not guessed: all
 * plans concerned are read again with the new name, and each name in them must mean what it meant.
 */

import { applied } from "../../grammar/format";
import { parse } from "../../grammar/parser";
import type { Entry, Span } from "../../grammar/tree";
import { baseName, type Edit, type Language, phraseText, problemText } from "../checks";
import {
  type At,
  type Declared,
  holderOf,
  type Occurrence,
  occurrencesIn,
  partsOf,
  pluralOf,
  scopeOf,
} from "../plan";
import type { Display } from "../units";
import { kindWord } from "../worked";
import { standingAt } from "./at";
import type { Checked } from "./checked";
import { declaredBy } from "./definition";
import { type Root, sameIn } from "./references";
import { RENAME_WORDS } from "./rename-words";

export interface Refused {
  readonly refused: string;
}

/** What is renamed at an offset: the word there, the thing, and its own name, which a plural is not. */
export interface Renamable {
  readonly range: Span;
  readonly declared: Declared;
}

/** In words why nothing can be renamed there. */
export function renamable(plan: Checked, offset: number, language: Language = "en"): Renamable | Refused {
  const words = RENAME_WORDS[language];
  const { worked } = plan;
  const standing = standingAt(worked.loaded.whole, offset);
  const { spot } = standing;
  if (spot.is !== "use" && spot.is !== "declared") return { refused: words.noName };
  const { start, end, text } = spot.span;
  const declared = declaredBy(plan, standing);
  if (!declared) return { refused: /^\d/.test(text) ? words.size(text) : words.undeclared(text) };
  if (/^\d/.test(declared.name)) return { refused: words.size(declared.name) };
  return { range: { start, end }, declared };
}

/** The changes in the files of one plan; they may lie in files that other plans name too. */
export function renamed(root: Root, target: Declared, to: string): Edit[] {
  const same = sameIn(root, target);
  if (!same) return [];
  return occurrencesIn(root.loaded, root.scope)
    .filter(({ declared }) => declared === same)
    .map(({ at, text }) => ({
      ...at,
      file: holderOf(at.file),
      text: text === target.name ? to : pluralOf(to),
    }));
}

/** Why a name cannot be given at all; undefined where it can. */
export function badName(to: string, plan: Checked, language: Language = "en"): string | undefined {
  const { entries, complaints } = parse(`part ${to} 1 of 2x4\n`);
  const [entry] = entries;
  const { display } = plan.worked.settings;
  const complaint = complaints.find(({ code }) => code === "bad-name");
  if (complaint) return problemText(complaint.code, complaint, display, language);
  return entry?.kind === "part" && entry.name.text === to
    ? undefined
    : RENAME_WORDS[language].form(to.replace(/\s+/g, " "));
}

/** Why a plan would suffer from all changes made together; undefined where each name in it goes on to mean what it means. */
export function suffers(
  root: Root,
  edits: readonly Edit[],
  target: Declared,
  to: string,
  display: Display,
  language: Language = "en",
): string | undefined {
  const words = RENAME_WORDS[language];
  const { files } = root.loaded;
  const touched = files.filter(({ file }) => edits.some((e) => e.file === holderOf(file)));
  if (touched.length === 0) return undefined;
  const placed = ({ file, start }: At): readonly [string, number] => [
    baseName(file),
    lineOf(root, file, start),
  ];
  if (bringsUnread(root)) return words.lost(target.name);
  const twice = root.scope.twice.find(({ first }) => first.name === target.name);
  if (twice) return words.twice(target.name, ...placed(twice.second.at));
  const taken = root.scope.declared.get(to);
  if (taken) {
    const kind = phraseText(kindWord(taken.kind), display, language);
    return words.taken(to, kind, ...placed(taken.at));
  }
  const after = withEdits(root, edits);
  const garbled = files.find(
    ({ tree }, i) => formOf(tree.entries) !== formOf(after.loaded.files[i]!.tree.entries),
  );
  if (garbled) return words.unreadable(to, baseName(garbled.file));
  const [old, now] = [meanings(root), meanings(after)];
  const other = old.findIndex((meaning, i) => meaning.means !== now[i]?.means);
  const found = old[other] ?? (old.length === now.length ? undefined : old[0]);
  return found && words.meansElse(now[other]?.of.text ?? to, ...placed(found.of.at));
}

/** Whether a file that it brings, and that may use any of its names, could not be read. A shop file uses none. */
const bringsUnread = ({ loaded }: Root): boolean =>
  loaded.faults.some(
    ({ kind, at }) =>
      kind === "not-found" &&
      loaded.files.some(
        ({ file, tree }) =>
          file === at.file && tree.entries.some((e) => e.kind === "bring" && e.path.start === at.start),
      ),
  );

/** The same plan, its texts changed. */
function withEdits({ loaded }: Root, edits: readonly Edit[]): Root {
  const of = (file: string) => edits.filter((e) => e.file === file);
  const holder = loaded.files[0]?.file ?? "";
  const own = of(holder);
  const whole = own.length === 0 ? loaded.whole : parse(applied(loaded.whole.text, own));
  const parts = own.length === 0 ? [] : partsOf(whole);
  const files = loaded.files.map((one) => {
    const part = holderOf(one.file) === holder && parts.find(({ path }) => path === (one.path ?? ""));
    if (part) return { ...one, tree: part.tree, begins: part.begins };
    const others = one.file === holder ? [] : of(one.file);
    return others.length === 0 ? one : { ...one, tree: parse(applied(one.tree.text, others)) };
  });
  const after = { ...loaded, files, whole };
  return { loaded: after, scope: scopeOf(after) };
}

/** Each name with what it means: how many names stand before the one that declares it; undefined for nothing. */
function meanings(root: Root): { readonly of: Occurrence; readonly means: string | undefined }[] {
  const all = occurrencesIn(root.loaded, root.scope);
  const declarations = new Map<Declared, string>();
  all.forEach(({ at, declared, declares }, i) => {
    if (declares && declared && declared.at.file === at.file && declared.at.start === at.start)
      declarations.set(declared, String(i));
  });
  return all.map((of) => ({ of, means: of.declared && declarations.get(of.declared) }));
}

/** What a text says but for its names: which entries and clauses it has. */
const formOf = (entries: readonly Entry[]): string =>
  entries
    .map((e) => {
      const body = e.kind === "assembly" ? `{${formOf(e.body)}}` : "";
      return `${e.kind}(${e.clauses.map((c) => c.kind).join(",")})${body}`;
    })
    .join(" ");

function lineOf({ loaded }: Root, file: string, offset: number): number {
  const text = loaded.files.find((f) => f.file === file)?.tree.text ?? "";
  return text.slice(0, offset).split(/\r\n|\r|\n/).length;
}
