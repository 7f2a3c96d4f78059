/** Mending many problems at once: all of one code, or all that are about spelling alone. */
import { nearest } from "../../grammar/near";
import type { Span } from "../../grammar/tree";
import { checkOf, type Edit, type Language, type Problem, titleOf } from "../checks";
import { holderOf } from "../plan";
import type { Action } from "./actions";
import { isLazy, preferredCure } from "./actions-cures";
import { ACTION_WORDS } from "./actions-words";
import type { Checked } from "./checked";
import { MOST_DIAGNOSTICS, toldOf } from "./diagnostics";

/** For each code met here of which the file has several problems with a plain cure. */
export function mendAlls(plan: Checked, here: readonly Problem[], language: Language): Action[] {
  const codes = [...new Set(here.filter(hasPlainCure).map((p) => p.code))];
  if (codes.length === 0) return [];
  const told = toldHere(plan);
  return codes.flatMap((code): Action[] => {
    const alike = told.filter((p) => p.code === code);
    const all = together(plan.file, alike.filter(hasPlainCure));
    const check = checkOf(code);
    if (all.problems.length < 2 || !check) return [];
    return [
      {
        id: `all ${code}`,
        title: ACTION_WORDS[language].mendAll(all.problems.length, alike.length, titleOf(check, language)),
        kind: "quickfix",
        preferred: false,
        problems: all.problems,
        change: () => ({ edits: all.edits }),
      },
    ];
  });
}

/** All that is misspelt, in one go; what an editor may do when a file is saved. */
export function mendSpelling(plan: Checked, language: Language): Action[] {
  const names = namesIn(plan);
  const all = together(
    plan.file,
    toldHere(plan).filter((p) => isSpelling(p, plan, names)),
  );
  if (all.problems.length === 0) return [];
  return [
    {
      id: "spelling",
      title: ACTION_WORDS[language].mendSpelling(all.problems.length),
      kind: "source.fixAll.sawbuck",
      preferred: false,
      problems: all.problems,
      change: () => ({ edits: all.edits }),
    },
  ];
}

/** The problems that are told, of the plan's own file. */
const toldHere = (plan: Checked): readonly Problem[] =>
  toldOf(plan)
    .slice(0, MOST_DIAGNOSTICS)
    .filter((p) => holderOf(p.at.file) === plan.file);

/** The cures of those problems that do not get into each other's way: of two that do, that of the problem told first. */
function together(
  file: string,
  problems: readonly Problem[],
): { readonly problems: readonly Problem[]; readonly edits: readonly Edit[] } {
  const taken: Problem[] = [];
  /** In the order of the text. */
  const edits: Edit[] = [];
  for (const problem of problems) {
    const own = preferredCure(problem)?.edits ?? [];
    if (own.some((e) => e.file !== file)) continue;
    const met = own.map((e) => ({ e, others: meeting(e, edits) }));
    const news = met.filter(({ e, others }) => !others.some((other) => isSame(e, other)));
    if (news.some(({ others }) => others.length > 0)) continue;
    taken.push(problem);
    for (const { e } of news) edits.splice(placeFor(e, edits), 0, e);
  }
  return { problems: taken, edits };
}

/** Those that an edit meets, also where they only touch: what comes first is then not told. */
function meeting(edit: Edit, edits: readonly Edit[]): Edit[] {
  const found: Edit[] = [];
  const behind = placeFor({ start: edit.end, end: Number.POSITIVE_INFINITY }, edits);
  for (let i = behind - 1; i >= 0 && edits[i]!.end >= edit.start; i--) found.push(edits[i]!);
  return found;
}

/** Behind all that begin before an edit, or with it and end no later: nearly always the last place. */
function placeFor({ start, end }: Span, edits: readonly Edit[]): number {
  let [low, high] = [0, edits.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    const other = edits[middle]!;
    if (other.start < start || (other.start === start && other.end <= end)) low = middle + 1;
    else high = middle;
  }
  return low;
}

const isSame = (a: Edit, b: Edit): boolean => a.start === b.start && a.end === b.end && a.text === b.text;

/** A cure that can be taken with others of its kind: lines that are moved get into each other's way. */
function hasPlainCure(problem: Problem): boolean {
  const cure = preferredCure(problem);
  return cure !== undefined && !isLazy(cure) && cure.says !== "move";
}

/**
 * The problems, by what they say, whose cure only writes the same in the language's own spelling. No misspelt name is
 * among them: the one name near it may be another thing's, while its own is still to be written.
 */
export const SPELLING: ReadonlyMap<string, readonly string[]> = new Map([
  ["bad-name", ["name-form", "small-letters", "name-blank"]],
  ["bad-number", ["comma-number", "blank-unit", "mixed-number", "money-behind"]],
  ["indented-alone", ["indented", "indented-entry"]],
  [
    "not-understood",
    [
      "clause-near",
      "word-near",
      "small-letters",
      "comma-missing",
      "word-extra",
      "comma-extra",
      "comma-last",
      "and-joins",
      "of-missing",
      "equals-missing",
    ],
  ],
  [
    "stray-character",
    [
      "mark-extra",
      "semicolon-comma",
      "equals-wanted",
      "mark-before",
      "marks-around",
      "two-marks",
      "note-blank",
    ],
  ],
  ["unknown-entry", ["near", "small-letters", "note-form", "goes-on"]],
]);

/** What is asked of the names of a plan, worked out once for all its problems. */
interface Names {
  /** Where the lines that give a name write it. */
  readonly given: ReadonlySet<number>;
  /** Whether something is written more than once. */
  readonly isRepeated: (written: string) => boolean;
}

function namesIn({ worked, text }: Checked): Names {
  const { entries } = worked.loaded.files[0]!.tree;
  const repeated = new Map<string, boolean>();
  return {
    given: new Set(entries.flatMap((e) => ("name" in e && e.name ? [e.name.start] : []))),
    isRepeated: (written) => {
      const known = repeated.get(written) ?? text.indexOf(written) !== text.lastIndexOf(written);
      repeated.set(written, known);
      return known;
    },
  };
}

function isSpelling(problem: Problem, plan: Checked, names: Names): boolean {
  if (!SPELLING.get(problem.code)?.includes(problem.says) || !hasPlainCure(problem)) return false;
  const written = plan.text.slice(problem.at.start, problem.at.end);
  const [edit] = preferredCure(problem)!.edits;
  switch (problem.code) {
    // A figure that is taken out, or another put in its place, was meant for something.
    case "not-understood":
      return figures(plan.text.slice(edit!.start, edit!.end)) === figures(edit!.text);
    // 1,500 may be fifteen hundred or one and a half; a mark left over may have been meant for inches.
    case "bad-number":
      return !/\d,\d{3}(?!\d)/.test(written);
    case "stray-character":
      return problem.says !== "mark-extra" || !/["'″′”’“‘„]/.test(written);
    // `screw` for fastener is another word, not a misspelt one.
    case "unknown-entry":
      return problem.says !== "near" || nearest(written, [edit!.text]).length > 0;
    // Two things would then have one name, or what names it elsewhere would name nothing.
    case "bad-name":
      if (problem.says !== "small-letters" && names.isRepeated(written)) return false;
      return !plan.worked.scope.declared.has(edit!.text) || !names.given.has(problem.at.start);
    default:
      return true;
  }
}

const figures = (text: string): string => (text.match(/\p{N}+/gu) ?? []).join(" ");
