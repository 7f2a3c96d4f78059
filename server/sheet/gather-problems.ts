/** What is told of a plan's problems, and of what was not looked at: of the sheet, what `check` needs. */
import { type Judged, type Problem, problemText } from "../checks";
import { type Display, quantityText } from "../units";
import type { Worked } from "../worked";
import type { SheetData, SheetProblem } from "./data";
import { baseUnit, placer } from "./marks";
import { leftOpen } from "./not-checked";
import type { SheetWords } from "./words";

export type Report = Pick<SheetData, "file" | "title" | "problems" | "accepted" | "notChecked">;

/** `display`: how problems write their numbers, whatever the language of the rest. */
export function reportOf(
  plan: Worked,
  judged: Judged,
  named: (file: string) => string,
  words: SheetWords,
  display: Display = plan.settings.display,
): Report {
  const { settings, loaded } = plan;
  const place = placer(loaded.files, named);
  const text = (p: Problem, says: Parameters<typeof problemText>[1]): string =>
    problemText(p.code, says, display, words.messages);
  const problem = (p: Problem, accepted?: string): SheetProblem => ({
    code: p.code,
    class: p.class,
    message: text(p, p),
    place: place(p.at),
    numbers: p.numbers.map((n) => ({
      name: n.name,
      value: n.value.approx,
      unit: baseUnit(n.value),
      text: quantityText(n.value, display),
      source: n.source,
    })),
    related: p.related.map((r) => ({ message: text(p, r), place: place(r.at) })),
    assumed: p.assumed.map((a) => text(p, a)),
    cures: p.cures.map((c) => text(p, c)),
    ...(accepted !== undefined && { accepted }),
  });
  return {
    file: named(loaded.files[0]!.file),
    title: settings.title || words.plan.untitled,
    problems: judged.problems.map((p) => problem(p)),
    accepted: judged.accepted.map((a) => problem(a.problem, a.because)),
    notChecked: leftOpen(plan, words).map(({ what, why, at }) => ({
      what,
      why,
      ...(at && { place: place(at) }),
    })),
  };
}
