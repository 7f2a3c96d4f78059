/** The place line of a piece: inside an assembly the assembly's own, else that of the plan. */
import type { At } from "../plan";
import type { Piece, Worked } from "../worked";

export function lineOf({ placing }: Worked, { part, owners, line, at }: Piece): At {
  for (const name of [part, ...owners.map((o) => o.name)]) {
    const found = placing.linesOf(name).find(({ key }) => key === line);
    if (!found) continue;
    const { keyword, subject } = found.entry;
    return { file: found.context.file, start: keyword.start, end: subject.end };
  }
  return at;
}
