/** Which pieces a `coat` line means, and how much of their surface is seen once they stand. */
import type { Thing } from "../../grammar/tree";
import { type Declared, known, lookUp, MISTAKE, map, type Scope, unknown, type Value } from "../plan";
import { AREA, plus, type Quantity, refused, roughly } from "../units";
import { chosen } from "./choose";
import { partsOf } from "./groups";
import type { Part } from "./parts";
import type { Pieces } from "./pieces";
import type { Ring } from "./rings";
import type { Space } from "./space";
import { areaTimes, type Surfaces, touching } from "./surfaces";

export interface Coated {
  /** Places among all pieces, rising, each once. */
  readonly pieces: readonly number[];
  /** Pieces that stand nowhere. */
  readonly loose: readonly Loose[];
}

export interface Loose {
  readonly part: string;
  readonly count: number;
}

/** Areas of one coat by how they drink, mm². */
export interface CoatedArea {
  /** Faces and edges of planed wood. */
  readonly smooth: number;
  /** Faces and edges of rough wood. */
  readonly rough: number;
  /** End grain. */
  readonly ends: number;
}

export interface Seen {
  readonly area: CoatedArea;
  readonly exposed: Quantity;
  /** What lies on other wood, mm². */
  readonly hidden: number;
}

export interface CoatedIn {
  readonly scope: Scope;
  readonly parts: ReadonlyMap<string, Part>;
  readonly rings: readonly Ring[];
  readonly pieces: Pieces;
  readonly space: Space;
}

/** A thing as its line says it: `front legs`. */
export const wordsOf = ({ where, name }: Thing): string => [...where.map((w) => w.text), name.text].join(" ");

/** The pieces a line means: those that stand, and how many of each part stand nowhere. */
export function coatedBy(things: readonly Thing[], input: CoatedIn): Value<Coated> {
  const placed = new Set<number>();
  const loose = new Map<string, number>();
  // Pieces of two rings are not the same ones; those of a ring are among those of their part.
  const inRings = new Map<string, number>();
  const rings = new Set<string>();
  for (const thing of things) {
    const declared = lookUp(input.scope, thing.name.text);
    if (!declared || !COATED.has(declared.kind)) return MISTAKE;
    const found = coatedAs(thing, declared, input);
    if (found.state !== "known") return found;
    for (const i of found.value.pieces) placed.add(i);
    if (declared.kind !== "ring")
      for (const { part, count } of found.value.loose) loose.set(part, Math.max(loose.get(part) ?? 0, count));
    else if (!rings.has(declared.name)) {
      rings.add(declared.name);
      for (const { part, count } of found.value.loose) inRings.set(part, (inRings.get(part) ?? 0) + count);
    }
  }
  const parts = new Set([...loose.keys(), ...inRings.keys()]);
  return known({
    pieces: [...placed].sort((a, b) => a - b),
    loose: [...parts].map((part) => ({
      part,
      count: Math.max(loose.get(part) ?? 0, inRings.get(part) ?? 0),
    })),
  });
}

const COATED: ReadonlySet<Declared["kind"]> = new Set(["part", "ring", "assembly", "box"]);

function coatedAs(thing: Thing, declared: Declared, input: CoatedIn): Value<Coated> {
  const { space, scope, parts, pieces } = input;
  const names = partsOf(declared, scope);
  // A line that could not be worked out may place more of them, or what would touch them.
  if (!pieces.complete && names.some((name) => parts.get(name)?.placed))
    for (const { stands } of pieces.lines) if (stands.state !== "known") return stands;
  const own = chosen(thing, space, scope);
  if (thing.where.length === 0)
    return map(looseOf(declared, names, input), (loose) => ({ pieces: own, loose }));
  if (own.length > 0) return known({ pieces: own, loose: [] });
  const words = wordsOf(thing);
  return chosen({ ...thing, where: [] }, space, scope).length > 0
    ? unknown("unsaid", "chooses none", { words })
    : unknown("placing", "chosen by place", { words });
}

/** How many pieces of a thing stand nowhere, by their parts. */
function looseOf(declared: Declared, names: readonly string[], input: CoatedIn): Value<readonly Loose[]> {
  const { parts, rings, space } = input;
  if (declared.kind === "part" || declared.kind === "box") {
    const all: Loose[] = [];
    for (const name of names) {
      const own = looseOfPart(parts.get(name), space);
      if (own.state !== "known") return own;
      if (own.value > 0) all.push({ part: name, count: own.value });
    }
    return known(all);
  }
  if (space.named.has(declared.name)) return known([]);
  if (declared.kind === "assembly")
    return unknown("placing", "assembly placed nowhere", { name: declared.name });
  const ring = rings.find((r) => r.name === declared.name);
  const members = new Map<string, number>();
  for (const { part, count } of ring?.members ?? []) members.set(part, (members.get(part) ?? 0) + count);
  return ring ? known([...members].map(([part, count]) => ({ part, count }))) : MISTAKE;
}

/** What the places ask for counts where they do; a count typed beside that differs is a problem of its own. */
function looseOfPart(part: Part | undefined, space: Space): Value<number> {
  if (!part) return MISTAKE;
  return map(part.placed ?? part.count, (n) => Math.max(0, n - (space.named.get(part.name)?.length ?? 0)));
}

/** What is seen of them: their whole surfaces, less what of those that stand lies on other wood. */
export function seenOf({ pieces, loose }: Coated, input: CoatedIn, surfaces: Surfaces): Value<Seen> {
  const { parts, space } = input;
  const area = { smooth: 0, rough: 0, ends: 0 };
  const counts = new Map<Part, number>();
  let hidden = 0;
  const add = (part: Part, count: number, faces: number, ends: number): void => {
    area[isRough(part) ? "rough" : "smooth"] += faces * count;
    area.ends += ends * count;
    counts.set(part, (counts.get(part) ?? 0) + count);
  };
  for (const i of pieces) {
    const part = parts.get(space.pieces[i]!.part);
    const surface = part && surfaces.of(part);
    if (!part || !surface) return MISTAKE;
    const faces = surface.whole.approx - surface.ends;
    const under = touching(space, i);
    // Pieces that overlap may lie on more of a face than there is.
    const hides = { faces: Math.min(under.faces, faces), ends: Math.min(under.ends, surface.ends) };
    hidden += hides.faces + hides.ends;
    add(part, 1, faces - hides.faces, surface.ends - hides.ends);
  }
  for (const { part: name, count } of loose) {
    const part = parts.get(name);
    if (!part) return MISTAKE;
    const surface = surfaces.of(part);
    if (!surface) return sizeMissing(part);
    add(part, count, surface.whole.approx - surface.ends, surface.ends);
  }
  return known({ area, hidden, exposed: exposedOf(counts, surfaces, hidden) });
}

/** The whole surface of so many pieces less what is hidden; exact where nothing is and every piece is a plain block. */
function exposedOf(counts: ReadonlyMap<Part, number>, surfaces: Surfaces, hidden: number): Quantity {
  let total: Quantity | undefined;
  for (const [part, count] of counts) {
    const own = areaTimes(surfaces.of(part)!.whole, count);
    const sum = total && plus(total, own);
    total = sum === undefined || refused(sum) ? own : sum;
  }
  if (total && hidden === 0) return total;
  return roughly(AREA, Math.max(0, (total?.approx ?? 0) - hidden));
}

/** Why a part has no surface: the first of its sizes that is not known. */
function sizeMissing({ cut, width, thickness }: Part): Value<never> {
  for (const size of [cut, width, thickness]) if (size.state !== "known") return size;
  return MISTAKE;
}

/** Not planed, or with old paint on it: weathered wood drinks as rough wood does. */
const isRough = ({ material }: Part): boolean =>
  material?.conditions.some((c) => c === "rough" || c === "painted") ?? false;
