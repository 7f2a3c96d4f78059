/** Finding what any plan declares by a few letters of its name. */
import { parse } from "../../grammar/parser";
import type { Span } from "../../grammar/tree";
import { isDeclaration } from "../plan";
import type { PlanSymbol } from "./symbols";

export interface FoundSymbol {
  readonly name: string;
  readonly kind: PlanSymbol["kind"];
  readonly range: Span;
  /** The title of the plan that it stands in; empty where there is none. */
  readonly within: string;
}

/** What the text of a file declares and whose name has the letters asked for, in that order, small or capital; all of it for none. */
export function symbolsMatching(text: string, asked: string): FoundSymbol[] {
  const { entries } = parse(text);
  const plan = entries.find((e) => e.kind === "plan");
  const title = plan?.kind === "plan" ? plan.title.text : "";
  return entries.flatMap((entry): FoundSymbol[] => {
    if (entry.kind === "plan") {
      const { text, start, end } = entry.title;
      return text !== "" && has(text, asked)
        ? [{ name: text, kind: "plan", range: { start, end }, within: "" }]
        : [];
    }
    if (!isDeclaration(entry) || entry.name.text === "" || !has(entry.name.text, asked)) return [];
    const { text, start, end } = entry.name;
    return [{ name: text, kind: entry.kind, range: { start, end }, within: title }];
  });
}

function has(name: string, asked: string): boolean {
  const letters = [...name.toLowerCase()];
  let from = 0;
  for (const letter of asked.toLowerCase().replace(/\s/g, "")) {
    const at = letters.indexOf(letter, from);
    if (at < 0) return false;
    from = at + 1;
  }
  return true;
}
