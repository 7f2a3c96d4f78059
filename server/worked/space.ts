/** Which placed pieces touch, which overlap, and which stand on nothing: facts of the solids, each worked out once. */
import { apart, type Bounds, boundsOf, type Contact, contacts, HAIRLINE, TOUCHING } from "../solid/contact";
import { type Grid, gridOf } from "../solid/grid";
import { nearPairs } from "../solid/pairs";
import { joinedPatches } from "../solid/patches";
import type { Vec3 } from "../solid/vector";
import type { Piece } from "./pieces";

/** Two pieces whose faces lie on each other, up to a hairline, by their places among all pieces. */
export interface Meeting {
  readonly a: number;
  readonly b: number;
  /** Patches of common face, with normals from a towards b, those of notched boards put together; the largest first. */
  readonly patches: readonly Contact[];
}

/** Two pieces of which one is inside the other by more than arithmetic explains. */
export interface Clash {
  readonly a: number;
  readonly b: number;
  /** mm: the least way one must move to be clear of the other, and which way the second would go. */
  readonly depth: number;
  readonly direction: Vec3;
}

export interface Space {
  readonly pieces: readonly Piece[];
  readonly meetings: readonly Meeting[];
  /** For each piece its meetings, as places in `meetings`. */
  readonly meetingsOf: readonly (readonly number[])[];
  readonly clashes: readonly Clash[];
  /** Groups of pieces that touch each other but lead by no contact to the floor; places among all pieces. */
  readonly hanging: readonly (readonly number[])[];
  /** Pieces by the name of their part, and by the names of the rings and assemblies they belong to. */
  readonly named: ReadonlyMap<string, readonly number[]>;
  readonly grid: Grid;
  /** Around everything; undefined without pieces. */
  readonly bounds: Bounds | undefined;
}

export function spaceOf(pieces: readonly Piece[]): Space {
  const meetings: Meeting[] = [];
  const clashes: Clash[] = [];
  const meetingsOf: number[][] = pieces.map(() => []);
  const near = nearPairs(
    pieces.map((p) => p.bounds),
    HAIRLINE,
  );
  for (const [a, b] of near) {
    const clash = clashOf(pieces[a]!, pieces[b]!);
    if (clash) clashes.push({ a, b, ...clash });
    const patches = patchesOf(pieces[a]!, pieces[b]!);
    if (patches.length === 0) continue;
    meetingsOf[a]!.push(meetings.length);
    meetingsOf[b]!.push(meetings.length);
    meetings.push({ a, b, patches });
  }
  const bounds =
    pieces.length > 0 ? boundsOf(pieces.flatMap((p) => [p.bounds.least, p.bounds.most])) : undefined;
  return {
    pieces,
    meetings,
    meetingsOf,
    clashes,
    hanging: hangingOf(pieces, meetings, meetingsOf),
    named: namesOf(pieces),
    grid: gridOf(pieces.map((p) => p.bounds)),
    bounds,
  };
}

function namesOf(pieces: readonly Piece[]): ReadonlyMap<string, readonly number[]> {
  const named = new Map<string, number[]>();
  pieces.forEach((p, i) => {
    for (const name of new Set([p.part, ...p.owners.map((o) => o.name)])) {
      const list = named.get(name);
      if (list) list.push(i);
      else named.set(name, [i]);
    }
  });
  return named;
}

/**
 * The pieces of each copy of a ring or an assembly, or of some of them, by their places among all; pieces that belong to
 * none of that name are each one by itself. In the order of the first pieces.
 */
export function copiesOf(
  { pieces, named }: Space,
  name: string,
  group: readonly number[] = named.get(name) ?? [],
): number[][] {
  const copies = new Map<string, number[]>();
  for (const i of group) {
    const key = pieces[i]!.owners.find((o) => o.name === name)?.id ?? pieces[i]!.id;
    const copy = copies.get(key);
    if (copy) copy.push(i);
    else copies.set(key, [i]);
  }
  return [...copies.values()];
}

/** The patch as seen from a piece of the meeting: the normal leads away from it. */
export const outward = (meeting: Meeting, from: number, { normal }: Contact): Vec3 =>
  meeting.a === from ? normal : [-normal[0], -normal[1], -normal[2]];

export const otherOf = ({ a, b }: Meeting, one: number): number => (a === one ? b : a);

function clashOf(p: Piece, q: Piece): Pick<Clash, "depth" | "direction"> | undefined {
  let worst: Pick<Clash, "depth" | "direction"> | undefined;
  for (const a of p.cells)
    for (const b of q.cells) {
      const { gap, direction } = apart(a, b, -TOUCHING);
      if (gap < -TOUCHING && (!worst || -gap > worst.depth)) worst = { depth: -gap, direction };
    }
  return worst;
}

function patchesOf(p: Piece, q: Piece): Contact[] {
  const found: Contact[] = [];
  for (const a of p.cells) for (const b of q.cells) found.push(...contacts(a, b, HAIRLINE));
  return found.length < 2 ? found : joinedPatches(found);
}

function hangingOf(
  pieces: readonly Piece[],
  meetings: readonly Meeting[],
  meetingsOf: readonly (readonly number[])[],
): number[][] {
  const seen = new Set<number>();
  const groupFrom = (start: number): number[] => {
    const group = [start];
    seen.add(start);
    for (const one of group)
      for (const m of meetingsOf[one]!) {
        const other = otherOf(meetings[m]!, one);
        if (seen.has(other)) continue;
        seen.add(other);
        group.push(other);
      }
    return group;
  };
  pieces.forEach((p, i) => {
    if (p.bounds.least[2] <= HAIRLINE && !seen.has(i)) groupFrom(i);
  });
  return pieces.flatMap((_, i) => (seen.has(i) ? [] : [groupFrom(i)]));
}
