import { asSays, nameIn, type Told } from "../plan";
import type { Worked } from "../worked";
import type { Check, Finding } from "./check";
import { ofKind } from "./faults";
import { baseName } from "./writing";

export const inACircle: Check = {
  code: "in-a-circle",
  class: "error",
  title: "A value that leads back to itself",
  page: `Lines may stand in any order, but one value cannot follow from another that follows from it. The message tells the way
round. The same goes for files that bring each other.

\`\`\`sawbuck
measure rim = leg-height + 1"
measure leg-height = rim - 1"
part leg 4 of 2x4, length leg-height
\`\`\`

\`\`\`sawbuck
measure rim = 30"
measure leg-height = rim - 1"
part leg 4 of 2x4, length leg-height
\`\`\``,
  templates: {
    values: "“{name}” leads back to itself: {path}. One of them must be a value of its own.",
    places:
      "These lines lean on each other all the way round: {path}. One of them must lean on something else.",
    assemblies: "“{name}” would stand inside itself: {path}. One of these lines must place something else.",
    files: "This file comes back to itself: {path}. Take one of the bring lines out.",
    step: "“{name}” is asked for here.",
    "step-place": "This line asks {name}.",
  },
  run: (worked) => [...values(worked), ...files(worked)],
};

function values(worked: Worked): Finding[] {
  return ofKind(worked, "circle").map(({ at, path }) => {
    const says = sayingOf(path, worked);
    const step = says === "places" ? "step-place" : "step";
    return {
      at,
      about: path.map((p) => nameIn(p.name)),
      says,
      slots: { name: path[0]!.name, path: { row: path.map((p) => p.name), by: " → " } },
      related: path.slice(1, -1).map((p) => ({ at: p.at, says: step, slots: { name: p.name } })),
    };
  });
}

/** Places that lean on each other, assemblies inside each other, or values. */
function sayingOf(path: readonly { readonly name: Told }[], { scope }: Worked): string {
  if (path.every(({ name }) => asSays(name).says === "where stands")) return "places";
  const isAssembly = (name: Told) =>
    typeof name === "string" && scope.declared.get(name)?.kind === "assembly";
  return path.every(({ name }) => isAssembly(name)) ? "assemblies" : "values";
}

function files(worked: Worked): Finding[] {
  return worked.loaded.faults
    .filter((f) => f.kind === "circle")
    .map(({ at, along }) => ({
      at,
      says: "files",
      slots: { path: { row: along.map(baseName), by: " → " } },
    }));
}
