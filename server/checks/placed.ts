/** What the checks of counts ask of places and of rings. */
import { lookUp } from "../plan";
import type { Part, Ring, Worked } from "../worked";
import type { Cure } from "./check";

/** The lines that place a thing, in the plan and in its assemblies. */
export const isPlaced = (name: string, { placing }: Worked): boolean => placing.linesOf(name).length > 0;

/** Whether a line that could not be read may have placed it. */
export const mayBePlaced = (name: string, { loaded, scope }: Worked): boolean =>
  loaded.files.some(({ tree }) =>
    tree.entries.some(
      (e) =>
        e.kind === "unknown" &&
        e.keyword.text === "place" &&
        lookUp(scope, e.name?.text ?? "")?.name === name,
    ),
  );

/** Whether some line places a part, by itself or in a ring. */
export const standsByALine = (part: string, worked: Worked): boolean =>
  [part, ...ringsWith(part, worked).map((r) => r.name)].some(
    (name) => isPlaced(name, worked) || mayBePlaced(name, worked),
  );

/** The rings that a part stands in. */
export const ringsWith = (part: string, { rings }: Worked): readonly Ring[] =>
  rings.filter((r) => r.members.some((m) => m.part === part));

/** Writing another number for a part's own, or leaving it out; left and right pieces that are typed too are left alone. */
export function countCures(part: Part, to: number, { loaded }: Worked): Cure[] {
  const { entry, at } = part.declared;
  const count = entry.kind === "part" ? entry.count : undefined;
  if (count?.kind !== "literal" || part.hands) return [];
  const { start, end } = count;
  const text = loaded.files.find((f) => f.file === at.file)?.tree.text ?? "";
  const blanks = /^\s*/.exec(text.slice(end))![0].length;
  return [
    { says: "write", slots: { to }, edits: [{ file: at.file, start, end, text: String(to) }] },
    { says: "drop", slots: {}, edits: [{ file: at.file, start, end: end + blanks, text: "" }] },
  ];
}
