/** Names in lines that are worked out without a word about them, or not yet: a misspelt one is told here. */
import { nearest } from "../../grammar/near";
import type { Entry } from "../../grammar/tree";
import { type DeclaredKind, lookUp, nearNames, type Scope, type Use, usesOf } from "../plan";
import { finishNames, linerNames } from "../trade";
import type { Worker } from "./expressions";
import { kindWord } from "./groups";

type Main = { readonly file: string; readonly tree: { readonly entries: readonly Entry[] } };

const UNTOLD: ReadonlySet<Entry["kind"]> = new Set([
  "place",
  "assembly",
  "coat",
  "line",
  "load",
  "step",
  "accept",
  "built",
]);

export function checkUses(main: Main, scope: Scope, worker: Worker): void {
  for (const entry of main.tree.entries) {
    if (UNTOLD.has(entry.kind)) for (const use of usesOf(entry)) checkUse(use, main.file, scope, worker);
    if (entry.kind === "box") {
      const carried = new Set(
        entry.clauses.flatMap((c) => (c.kind === "carried" ? c.by.map((t) => t.name) : [])),
      );
      for (const use of usesOf(entry)) if (carried.has(use.name)) checkUse(use, main.file, scope, worker);
    }
  }
}

/** What else the floor is called. */
const GROUND: ReadonlySet<string> = new Set(["ground", "earth", "grass", "paving", "slab", "soil"]);

function checkUse(use: Use, file: string, scope: Scope, worker: Worker): void {
  const { name, kinds, also } = use;
  if ((also === "floor" && name.text === "floor") || (also === "sections" && /^\d/.test(name.text))) return;
  const at = { file, start: name.start, end: name.end };
  const found = lookUp(scope, name.text);
  const wants = wanted(kinds);
  const usual = USUAL[also]?.() ?? [];
  if (!found) {
    if (usual.includes(name.text)) return;
    worker.fault({
      kind: "unknown-name",
      at,
      name: name.text,
      near:
        also === "floor" && GROUND.has(name.text)
          ? ["floor"]
          : [...new Set([...nearNames(scope, name.text, kinds), ...nearest(name.text, usual)])],
      wants,
    });
  } else if (!kinds.includes(found.kind)) {
    worker.fault({ kind: "wrong-kind", at, name: name.text, found: found.kind, wants });
  }
}

/** Names that every plan knows. */
const USUAL: Readonly<Partial<Record<Use["also"], () => readonly string[]>>> = {
  finishes: finishNames,
  liners: linerNames,
};

const wanted = (kinds: readonly DeclaredKind[]): string =>
  kinds.includes("part") ? "a part" : kindWord(kinds[0] ?? "part");
