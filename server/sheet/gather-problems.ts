/** What is told of a plan's problems, and of what was not looked at: of the sheet, what `check` needs. */
import { type Judged, type Problem, problemText } from "../checks";
import { type Display, quantityText } from "../units";
import type { Worked } from "../worked";
import type { Place, SheetData, SheetProblem } from "./data";
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

/** Of one problem, what a program can use: the words it is told of, and the cures that can be written into the plan. */
export interface Details {
  readonly spot: string;
  readonly fixes: readonly {
    readonly says: string;
    readonly edits: readonly { readonly place: Place; readonly text: string }[];
  }[];
}

/** In the order of the report: the problems, then those that are accepted. */
export function detailsOf(plan: Worked, judged: Judged, words: SheetWords): Details[] {
  const { settings, loaded } = plan;
  const texts = new Map(loaded.files.map((f) => [f.file, f.tree.text]));
  const place = placer(loaded.files, (file) => file);
  return [...judged.problems, ...judged.accepted.map(({ problem }) => problem)].map((p) => ({
    spot: (texts.get(p.at.file) ?? "").slice(p.at.start, p.at.end),
    fixes: p.cures.flatMap((cure) => {
      const edits = cure.edits.map(({ text, ...at }) => ({ place: place(at), text }));
      const says = problemText(p.code, cure, settings.display, words.messages);
      return edits.length > 0 ? [{ says, edits }] : [];
    }),
  }));
}
