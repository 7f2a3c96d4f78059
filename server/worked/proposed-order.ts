/**
 * A sensible order in which things go together: what is built apart first, then frames from what stands on the floor,
 * the short sides before the long ones, then what lies on them from below upwards, and last what is cut to fit.
 */
import { DisjointSets } from "../solid/disjoint-sets";
import type { Joint } from "./joints";
import type { Kind, Kinds } from "./proposed-kinds";

/** Things that go in together, as places among the kinds. */
export interface Group {
  readonly kinds: readonly number[];
  readonly is: "apart" | "ends" | "frame" | "joined" | "hung" | "laid" | "fit" | "loose";
}

/** Every kind in one group. `joints` tell which pieces of a frame hold together. */
export function groupsOf({ kinds, kindOf }: Kinds, joints: readonly Joint[]): Group[] {
  const done = new Set<number>();
  const groups: Group[] = [];
  const push = (list: readonly number[], is: Group["is"]): void => {
    const fresh = [...new Set(list)].filter((k) => !done.has(k)).sort((a, b) => a - b);
    for (const k of fresh) done.add(k);
    if (fresh.length > 0) groups.push({ kinds: fresh, is });
  };
  const { apart, main, loose } = clusters(kinds);
  for (const cluster of apart) push(cluster, "apart");
  const fits = main.filter((k) => kinds[k]!.toFit);
  const links = linksOf(kindOf, kinds.length, joints);
  let open = main.filter((k) => !kinds[k]!.toFit);
  for (; open.length > 0; open = open.filter((k) => !done.has(k))) {
    const next = frames(open, kinds, done);
    const own = next.filter((k) => isBuilt(kinds[k]!));
    if (next.length > own.length)
      push(
        next.filter((k) => !own.includes(k)),
        "joined",
      );
    else if (own[0] !== undefined) push([own[0]], "hung");
    else if (!seed(open, kinds, links, done, push)) push(laid(open, kinds, done), "laid");
  }
  push(fits, "fit");
  for (const k of byHeight(loose, kinds)) push([k], "loose");
  return groups;
}

/** For each kind what crossings join a piece of it to, in whatever kind: pairs of pieces, and the kind of the second. */
type Links = readonly (readonly { readonly first: number; readonly into: number; readonly kind: number }[])[];

function linksOf(kindOf: readonly number[], count: number, joints: readonly Joint[]): Links {
  const links: { first: number; into: number; kind: number }[][] = Array.from({ length: count }, () => []);
  for (const { placed } of joints)
    for (const { first, into } of placed?.crossings ?? [])
      links[kindOf[first]!]!.push({ first, into, kind: kindOf[into]! });
  return links;
}

/** Whether any of them is so; sets are asked often, and not spread for it. */
function some(set: ReadonlySet<number>, so: (k: number) => boolean): boolean {
  for (const k of set) if (so(k)) return true;
  return false;
}

const byHeight = (list: readonly number[], kinds: readonly Kind[]): number[] =>
  [...list].sort((a, b) => kinds[a]!.low - kinds[b]!.low || a - b);

interface Clusters {
  readonly apart: readonly (readonly number[])[];
  readonly main: readonly number[];
  readonly loose: readonly number[];
}

/**
 * Kinds by what their joints hold together: what hangs together apart from all that stands on the floor is built first, and
 * so is what stands there and is joined within itself; what is joined to nothing else comes last.
 */
function clusters(kinds: readonly Kind[]): Clusters {
  const apart: number[][] = [];
  const main: number[] = [];
  const loose: number[] = [];
  const seen = new Set<number>();
  kinds.forEach((kind, start) => {
    if (seen.has(start)) return;
    const cluster = new Set([start]);
    for (const k of cluster) for (const other of kinds[k]!.joined) cluster.add(other);
    for (const k of cluster) seen.add(k);
    const list = [...cluster].sort((a, b) => a - b);
    if (kind.joined.size === 0) loose.push(start);
    else if (list.some((k) => kinds[k]!.onFloor)) main.push(...list);
    else apart.push(list);
  });
  const built = main.filter((k) => isBuilt(kinds[k]!) && kinds[k]!.onFloor);
  return {
    apart: [...apart, ...built.map((k) => [k])],
    main: main.filter((k) => !built.includes(k)).sort((a, b) => a - b),
    loose,
  };
}

/** Kinds that need nothing but what is there or comes along: with all that their screws go into. Undefined where something must come first. */
function withNeeds(k: number, kinds: readonly Kind[], done: ReadonlySet<number>): number[] | undefined {
  const list = new Set([k]);
  for (const one of list)
    for (const need of kinds[one]!.into) {
      if (done.has(need) || list.has(need) || kinds[need]!.toFit) continue;
      list.add(need);
    }
  const lies = [...list].some((one) => one !== k && isLaid(kinds[one]!));
  return lies ? undefined : [...list];
}

/** An assembly or a ring that is joined within itself. */
const isBuilt = ({ inner, copies }: Kind): boolean => inner && copies > 0;

/** It lies on something else. */
const isLaid = ({ on, onFloor }: Kind): boolean => !onFloor && on.size > 0;

/** Kinds of a frame that join what is there already. */
function frames(open: readonly number[], kinds: readonly Kind[], done: ReadonlySet<number>): number[] {
  if (done.size === 0) return [];
  return open.flatMap((k) => {
    const kind = kinds[k]!;
    if (isLaid(kind) || !some(kind.joined, (j) => done.has(j))) return [];
    return withNeeds(k, kinds, done) ?? [];
  });
}

/** The lowest of what lies on what is there, with all at its height. */
function laid(open: readonly number[], kinds: readonly Kind[], done: ReadonlySet<number>): number[] {
  const lying = open.filter((k) => isLaid(kinds[k]!));
  const ready = lying.filter((k) => !some(kinds[k]!.on, (o) => !done.has(o)));
  const [first] = byHeight([ready, lying, open].find((list) => list.length > 0) ?? [], kinds);
  if (first === undefined) return [];
  const level = ready.filter((k) => Math.abs(kinds[k]!.low - kinds[first]!.low) < LEVEL);
  const needs = (k: number): number[] => [...kinds[k]!.into].filter((i) => !done.has(i) && open.includes(i));
  return [first, ...level].flatMap((k) => [k, ...needs(k)]);
}

/** mm: what begins this near in height lies on one level. */
const LEVEL = 20;

/** Begins with what stands on the floor: pairs of it by the shortest that join them, then the rest. False where nothing stands there. */
function seed(
  open: readonly number[],
  kinds: readonly Kind[],
  links: Links,
  done: ReadonlySet<number>,
  push: (list: readonly number[], is: Group["is"]) => void,
): boolean {
  const standing = open.filter((k) => kinds[k]!.onFloor && withNeeds(k, kinds, done));
  const posts = standing.filter((k) => kinds[k]!.upright);
  const foot = posts.length > 0 ? posts : standing;
  if (foot[0] === undefined) return false;
  const feet = new Set(foot);
  const frame = new Set(open.filter((k) => feet.has(k) || !isLaid(kinds[k]!)));
  const own = some(frame, (k) => kinds[k]!.before.size > 0)
    ? firstOf(
        foot.map((k) => connected(k, frame, kinds)),
        kinds,
      )
    : connected(foot[0], frame, kinds);
  const base = foot.filter((k) => own.has(k));
  const around = [...own]
    .filter((k) => !base.includes(k) && some(kinds[k]!.joined, (j) => base.includes(j)))
    .flatMap((k) => {
      const list = withNeeds(k, kinds, done);
      return list ? [{ k, list }] : [];
    })
    .sort((a, b) => kinds[a.k]!.long - kinds[b.k]!.long || a.k - b.k);
  for (const { list } of around) {
    const group = [...base, ...list];
    if (setsOf(group, kinds, links, base) < 2) continue;
    push(group, "ends");
    return true;
  }
  const group = [
    ...base,
    ...base.flatMap((k) => withNeeds(k, kinds, done) ?? []),
    ...around.flatMap((a) => a.list),
  ];
  push(group, new Set(group).size > 1 ? "frame" : "laid");
  return true;
}

/** The first of these sets of which nothing stands in the way of a drill that another needs. */
function firstOf(sets: readonly ReadonlySet<number>[], kinds: readonly Kind[]): ReadonlySet<number> {
  const blocks = (set: ReadonlySet<number>): boolean =>
    sets.some(
      (other) =>
        other !== set && some(other, (k) => !set.has(k) && some(kinds[k]!.before, (b) => set.has(b))),
    );
  return sets.find((set) => !blocks(set)) ?? sets[0]!;
}

/** What of some kinds hangs together by joints with one of them. */
function connected(from: number, within: ReadonlySet<number>, kinds: readonly Kind[]): ReadonlySet<number> {
  const found = new Set([from]);
  for (const k of found) for (const j of kinds[k]!.joined) if (within.has(j)) found.add(j);
  return found;
}

/** How many sets of at least two standing pieces a group holds together; none where a standing piece is in no set. */
function setsOf(
  group: readonly number[],
  kinds: readonly Kind[],
  links: Links,
  base: readonly number[],
): number {
  const own = new Set(group);
  const held = new DisjointSets<number>();
  for (const k of own)
    for (const { first, into, kind } of links[k]!) if (own.has(kind)) held.join(first, into);
  const sets = new Map<number, number>();
  for (const k of base)
    for (const i of kinds[k]!.pieces) sets.set(held.topOf(i), (sets.get(held.topOf(i)) ?? 0) + 1);
  return [...sets.values()].every((n) => n >= 2) ? sets.size : 0;
}
