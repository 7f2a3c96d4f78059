/** A quick fix for every cure that changes the text, and which of them is taken where nobody chooses. */
import { type Cure, type Language, type Problem, problemText } from "../checks";
import type { Action } from "./actions";
import type { Checked } from "./checked";

export function quickFixes(plan: Checked, problems: readonly Problem[], language: Language): Action[] {
  const { display } = plan.worked.settings;
  const list = new Map<string, Action>();
  for (const problem of problems) {
    const preferred = preferredCure(problem);
    for (const [i, cure] of problem.cures.entries()) {
      if (!mayChange(cure)) continue;
      const title = problemText(problem.code, cure, display, language);
      // Two problems that one change mends are offered once.
      const same = isLazy(cure) ? `${idOf(problem)} ${i}` : JSON.stringify([title, cure.edits]);
      const before = list.get(same);
      list.set(same, {
        id: before?.id ?? `cure ${idOf(problem)} ${i} ${cure.says}`,
        title,
        kind: "quickfix",
        preferred: (before?.preferred ?? false) || cure === preferred,
        problems: [...(before?.problems ?? []), problem],
        ...(isLazy(cure) && { slow: true }),
        change: () => (cure.edits.length > 0 ? { edits: cure.edits } : undefined),
      });
    }
  }
  return [...list.values()];
}

/** A problem by its code and place. */
export const idOf = ({ code, says, at }: Problem): string =>
  `${code} ${says} ${at.file} ${at.start} ${at.end}`;

/** Whether the edits are worked out only when they are read. */
export const isLazy = (cure: Cure): boolean =>
  Object.getOwnPropertyDescriptor(cure, "edits")?.get !== undefined;

/** Whether a cure is more than told. */
export const mayChange = (cure: Cure): boolean => isLazy(cure) || cure.edits.length > 0;

/**
 * The one cure that may be taken without choosing: the first told, where it alone changes the text, or where the others
 * that do are known to be second to it. None where several are as likely meant: one name or another, inches or
 * millimetres, one of two places that dispute, a gap made narrower or wider.
 */
export function preferredCure({ code, cures }: Problem): Cure | undefined {
  const first = cures[0];
  if (!first || !mayChange(first) || CHOSEN.has(code)) return undefined;
  if (ASKED.has(first.says)) return undefined;
  const changing = cures.filter(mayChange);
  return changing.length === 1 || FIRST_OF_SEVERAL.get(code) === first.says ? first : undefined;
}

/** A line that nothing uses may be missed elsewhere, and what is accepted is for a person to say. */
const CHOSEN = new Set(["never-used", "cannot-accept"]);

/** For a person to say: a board that is not just the same as what the plan means, one of several screws that fit. */
const ASKED = new Set(["instead", "fits"]);

/** Of these the first is the plain way, and what else is offered comes to the same or takes more. */
const FIRST_OF_SEVERAL: ReadonlyMap<string, string> = new Map([
  ["cut-never-placed", "write"],
  ["placed-never-cut", "write"],
  ["screw-pokes-through", "usual"],
]);
