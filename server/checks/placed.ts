/** The lines that place a thing, those inside assemblies too: what the checks of counts ask of places not yet worked out. */
import type { Entry } from "../../grammar/tree";
import { lookUp } from "../plan";
import type { Worked } from "../worked";

/** The place lines whose subject is that thing. */
export const placeLines = (name: string, worked: Worked): (Entry & { kind: "place" })[] =>
  allPlaces(worked).filter((e) => lookUp(worked.scope, e.subject.name.text)?.name === name);

/** Whether places may use a thing more than once: several lines, a pattern of it, or a line inside an assembly. */
export function placedOften(name: string, worked: Worked): boolean {
  const lines = placeLines(name, worked);
  return (
    lines.length > 1 ||
    lines.some((line) => line.clauses.some((c) => SEVERAL.includes(c.kind)) || inAssembly(line, worked))
  );
}

const SEVERAL: readonly string[] = ["repeat", "corners", "spacing", "spread", "mirrored"];

const allPlaces = ({ loaded }: Worked): (Entry & { kind: "place" })[] =>
  loaded.files
    .flatMap(({ tree }) => tree.entries.flatMap((e) => (e.kind === "assembly" ? [...e.body] : [e])))
    .filter((e) => e.kind === "place");

const inAssembly = (line: Entry, { loaded }: Worked): boolean =>
  loaded.files.some(({ tree }) => tree.entries.some((e) => e.kind === "assembly" && e.body.includes(line)));
