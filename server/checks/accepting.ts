/** Which problems an `accept … because …` line is about. */
import type { Worked } from "../worked";
import type { Problem } from "./check";

type Line = Worked["accepted"][number];

/** Whether an accept line with a reason is about this problem: its code, and the thing it is accepted on, if it says one. */
export function accepts(line: Line, problem: Pick<Problem, "code" | "about">): boolean {
  if (line.code !== problem.code || line.because === "") return false;
  return (
    line.on === "" ||
    problem.about.some((name) => name === line.on || `${name}s` === line.on || `${name}es` === line.on)
  );
}

/** The reason a problem stands with; undefined when nothing accepts it. An error is never accepted. */
export function reasonFor(problem: Problem, worked: Worked): string | undefined {
  if (problem.class === "error") return undefined;
  return worked.accepted.find((line) => accepts(line, problem))?.because;
}
