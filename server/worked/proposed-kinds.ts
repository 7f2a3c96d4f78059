/** What an order of work is made of: things that a step can name, with how they hang together. Read off the solids and the joints. */
import { HAIRLINE } from "../solid/contact";
import { DisjointSets } from "../solid/disjoint-sets";
import type { Joint } from "./joints";
import type { Part } from "./parts";
import { DRIVER } from "./screw-way";
import { otherOf, type Space } from "./space";

/** A part, a ring or an assembly of which pieces stand; or several that share pieces, which are used together. */
export interface Kind {
  /** The names to use it by; the first gives it its place in the text's order. */
  readonly names: readonly string[];
  readonly pieces: readonly number[];
  /** What the screws of this go into, and what lies between: there with it or before. */
  readonly into: Set<number>;
  /** All that it is joined to. */
  readonly joined: Set<number>;
  /** What it lies on. */
  readonly on: Set<number>;
  /** What must not stand yet when its own screws are driven. */
  readonly before: Set<number>;
  /** It is a ring or an assembly, of so many copies; none of a part. */
  readonly copies: number;
  /** Pieces of it are joined to each other. */
  readonly inner: boolean;
  readonly onFloor: boolean;
  readonly upright: boolean;
  /** Cut when the rest stands. */
  readonly toFit: boolean;
  /** mm: how high its lowest piece begins, and how long its longest is. */
  readonly low: number;
  readonly long: number;
}

export interface Kinds {
  readonly kinds: readonly Kind[];
  readonly kindOf: readonly number[];
}

export function kindsOf(space: Space, joints: readonly Joint[], parts: ReadonlyMap<string, Part>): Kinds {
  const { keys, keyOf } = keysOf(space);
  const members: number[][] = keys.map(() => []);
  for (const [i, k] of keyOf.entries()) members[k]!.push(i);
  const { pieces } = space;
  const inner = new Set<number>();
  const kinds = keys.map((names, k): Kind => {
    const own = members[k]!;
    return {
      names,
      pieces: own,
      into: new Set(),
      joined: new Set(),
      on: new Set(),
      before: new Set(),
      copies: new Set(own.flatMap((i) => pieces[i]!.owners[0]?.id ?? [])).size,
      get inner() {
        return inner.has(k);
      },
      onFloor: own.some((i) => pieces[i]!.bounds.least[2] <= HAIRLINE),
      upright: own.every((i) => Math.abs(pieces[i]!.pose.length[2]) > UPRIGHT),
      toFit: names.length === 1 && parts.get(names[0]!)?.fit !== undefined,
      low: own.reduce((least, i) => Math.min(least, pieces[i]!.bounds.least[2]), Infinity),
      long: own.reduce((most, i) => Math.max(most, lengthOf(space, i)), 0),
    };
  });
  lying(space, keyOf, kinds);
  for (const { placed } of joints) {
    if (!placed) continue;
    for (const { first, through, into } of placed.crossings)
      for (const i of [...through, into]) {
        const [a, b] = [keyOf[first]!, keyOf[i]!];
        if (a === b) inner.add(a);
        else {
          kinds[a]!.joined.add(b);
          kinds[b]!.joined.add(a);
          kinds[a]!.into.add(b);
        }
      }
    for (const { behind, crossing } of placed.screws) {
      if (!behind || behind.room >= DRIVER.length) continue;
      const other = keyOf[behind.piece]!;
      const [a, b] = [keyOf[crossing.first]!, keyOf[crossing.into]!];
      if (other === a || other === b) continue;
      kinds[a]!.before.add(other);
      kinds[b]!.before.add(other);
    }
  }
  return { kinds, kindOf: keyOf };
}

/** Cosine from which a board stands upright. */
const UPRIGHT = 0.9;

function lengthOf({ pieces }: Space, i: number): number {
  const { least, most } = pieces[i]!.bounds;
  return Math.max(most[0] - least[0], most[1] - least[1], most[2] - least[2]);
}

/** What lies on what, and stands on no floor itself. */
function lying(space: Space, keyOf: readonly number[], kinds: readonly Kind[]): void {
  for (const meeting of space.meetings) {
    const [a, b] = [keyOf[meeting.a]!, keyOf[meeting.b]!];
    if (a === b) continue;
    const up = meeting.patches[0]!.normal[2];
    if (Math.abs(up) < Math.SQRT1_2) continue;
    const over = up > 0 ? meeting.b : meeting.a;
    const under = keyOf[otherOf(meeting, over)]!;
    if (space.pieces[over]!.bounds.least[2] > HAIRLINE && !kinds[under]!.toFit)
      kinds[keyOf[over]!]!.on.add(under);
  }
}

/** Groups of names by which the pieces are used, each group apart from all others: the outermost assembly or ring, else the part. */
function keysOf({ pieces }: Space): { keys: string[][]; keyOf: number[] } {
  const keyName = pieces.map((p) => p.owners[0]?.name ?? p.part);
  const outermost = new Set(keyName);
  const together = new DisjointSets<string>();
  // A name that also means pieces inside another is used in one step with it.
  pieces.forEach((p, i) => {
    for (const name of [p.part, ...p.owners.map((o) => o.name)])
      if (outermost.has(name)) together.join(keyName[i]!, name);
  });
  const places = new Map<string, number>();
  const keys: string[][] = [];
  const keyOf = keyName.map((name) => {
    const key = together.topOf(name);
    const place = places.get(key) ?? places.set(key, keys.push([]) - 1).get(key)!;
    if (!keys[place]!.includes(name)) keys[place]!.push(name);
    return place;
  });
  return { keys, keyOf };
}
