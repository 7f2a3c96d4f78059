/** Mending many problems at once: all of one code, or all that are about spelling alone. */
import { nearest } from "../../grammar/near";
import { checkOf, type Edit, type Language, type Problem } from "../checks";
import type { Action } from "./actions";
import { isLazy, preferredCure } from "./actions-cures";
import { pageTitle } from "./actions-titles";
import { ACTION_WORDS } from "./actions-words";
import type { Checked } from "./checked";

/** For each code met here of which the file has several problems with a plain cure. */
export function mendAlls(plan: Checked, here: readonly Problem[], language: Language): Action[] {
  const codes = [...new Set(here.filter(hasPlainCure).map((p) => p.code))];
  return codes.flatMap((code): Action[] => {
    const all = together(plan, (p) => p.code === code && hasPlainCure(p));
    const check = checkOf(code);
    if (all.problems.length < 2 || !check) return [];
    return [
      {
        id: `all ${code}`,
        title: ACTION_WORDS[language].mendAll(all.problems.length, pageTitle(check, language)),
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
  const all = together(plan, (p) => isSpelling(p, plan));
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

/** The cures of all those problems that do not get into each other's way: of two that do, the first in the text. */
function together(
  { file, problems }: Checked,
  which: (p: Problem) => boolean,
): { readonly problems: readonly Problem[]; readonly edits: readonly Edit[] } {
  const taken: Problem[] = [];
  const edits: Edit[] = [];
  for (const problem of problems) {
    if (problem.at.file !== file || !which(problem)) continue;
    const own = preferredCure(problem)?.edits ?? [];
    if (own.some((e) => e.file !== file)) continue;
    const news = own.filter((e) => !edits.some((other) => isSame(e, other)));
    if (news.some((e) => edits.some((other) => meet(e, other)))) continue;
    taken.push(problem);
    edits.push(...news);
  }
  return { problems: taken, edits };
}

const isSame = (a: Edit, b: Edit): boolean => a.start === b.start && a.end === b.end && a.text === b.text;
/** Also where they only touch: what comes first is then not told. */
const meet = (a: Edit, b: Edit): boolean => a.start <= b.end && b.start <= a.end;

/** A cure that can be taken with others of its kind: lines that are moved get into each other's way. */
function hasPlainCure(problem: Problem): boolean {
  const cure = preferredCure(problem);
  return cure !== undefined && !isLazy(cure) && cure.says !== "move";
}

/** The problems, by what they say, whose cure only writes the same in the language's own spelling. */
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
  ["unknown-name", ["near"]],
]);

function isSpelling(problem: Problem, plan: Checked): boolean {
  if (!SPELLING.get(problem.code)?.includes(problem.says) || !hasPlainCure(problem)) return false;
  const written = plan.text.slice(problem.at.start, problem.at.end);
  const [edit] = preferredCure(problem)!.edits;
  switch (problem.code) {
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
      if (problem.says !== "small-letters" && plan.text.split(written).length > 2) return false;
      return !plan.worked.scope.declared.has(edit!.text) || !declaresAt(plan, problem);
    default:
      return true;
  }
}

/** Whether the name that a problem is about is the one its own line gives. */
const declaresAt = ({ worked }: Checked, { at }: Problem): boolean =>
  worked.loaded.files[0]!.tree.entries.some(
    (e) =>
      e.start <= at.start &&
      at.end <= e.end &&
      "name" in e &&
      e.name !== undefined &&
      e.name.start === at.start,
  );
