/** A proposed order of work for a plan that says no steps: cut, finish, build, lay, line, fill. Its times are left to the builder. */
import { ifKnown, lookUp } from "../plan";
import { exactly, fraction, TIME } from "../units";
import { wallsOf } from "./choose";
import type { CoatLine } from "./finish-drying";
import { listed } from "./operations";
import { type Kind, kindsOf } from "./proposed-kinds";
import { type Group, groupsOf } from "./proposed-order";
import { type StepLine, type StepThing, stepThing } from "./step-lines";
import type { ForSteps } from "./steps";

/** The lines of the proposal; none where nothing placed is joined. */
export function proposedLines(plan: ForSteps, coating: readonly CoatLine[]): StepLine[] {
  const { space, joints, parts } = plan;
  if (!joints.some((j) => j.placed && j.placed.crossings.length > 0)) return [];
  const all = kindsOf(space, joints, parts);
  const groups = supported(driveable(groupsOf(all, joints), all.kinds), all.kinds);
  return [
    cutting(plan),
    ...coating.filter((c) => c.pieces.size > 0).map((c) => coatingStep(c, all.kinds, plan)),
    ...groups.map((g) => building(g, all.kinds, plan)),
    ...lining(plan),
    ...filling(plan),
  ];
}

/** Groups in which what would stand in the way of a drill comes after what is driven there, where nothing leans on it before. */
function driveable(groups: readonly Group[], kinds: readonly Kind[]): readonly Group[] {
  const list = groups.map((g) => ({ ...g, kinds: [...g.kinds] }));
  const at = (k: number): number => list.findIndex((g) => g.kinds.includes(k));
  kinds.forEach((kind, k) => {
    for (const other of kind.before) {
      const [own, blocks] = [at(k), at(other)];
      const group = list[blocks]!;
      if (blocks >= own || kinds[other]!.before.has(k) || group.is === "apart") continue;
      const leans = list
        .slice(blocks, own + 1)
        .some((g) =>
          g.kinds.some((o) => o !== other && (kinds[o]!.on.has(other) || kinds[o]!.into.has(other))),
        );
      if (leans) continue;
      group.kinds.splice(group.kinds.indexOf(other), 1);
      list.splice(own + 1, 0, { kinds: [other], is: kinds[other]!.on.size > 0 ? "laid" : "joined" });
    }
  });
  return list.filter((g) => g.kinds.length > 0);
}

/** Groups in which a thing that can neither stand nor be joined to anything yet waits for what it is joined to. */
function supported(groups: readonly Group[], kinds: readonly Kind[]): Group[] {
  const list = groups.map((g) => [...g.kinds]);
  const groupOf = new Map(list.flatMap((own, n) => own.map((k) => [k, n] as const)));
  const last = list.length;
  for (let n = 0; n < last; n++)
    for (const k of [...list[n]!]) {
      const { onFloor, inner, joined, on } = kinds[k]!;
      if (onFloor || inner || joined.size === 0) continue;
      const first = (others: ReadonlySet<number>): number => {
        let least = last;
        for (const j of others) least = Math.min(least, groupOf.get(j) ?? last);
        return least;
      };
      const later = first(joined);
      if (later <= n || later === last || first(on) <= n) continue;
      list[n]!.splice(list[n]!.indexOf(k), 1);
      list[later]!.push(k);
      groupOf.set(k, later);
    }
  return list.flatMap((own, n) =>
    own.length > 0 ? [{ is: groups[n]!.is, kinds: own.sort((a, b) => a - b) }] : [],
  );
}

const NOTHING = {
  entry: undefined,
  uses: [],
  coats: [],
  lines: [],
  takes: undefined,
  wait: undefined,
  people: undefined,
  unread: false,
} as const;

const at = ({ settings, loaded }: ForSteps): StepLine["at"] =>
  settings.at ?? { file: loaded.files[0]!.file, start: 0, end: 0 };

/** What is cut to fit is cut where it goes, inside an assembly too. */
function cutting(plan: ForSteps): StepLine {
  const { parts, space } = plan;
  const fits = [...parts.values()].flatMap(({ name, fit }) => {
    const count = space.named.get(name)?.length ?? 0;
    return fit !== undefined && count > 0 ? [`the ${several(name, count)}`] : [];
  });
  const title = fits.length > 0 ? `Cut every piece but ${listed(fits)}` : "Cut every piece";
  return { ...NOTHING, at: at(plan), title };
}

/** `Coat the sides and ends with outdoor-oil, and let it dry`; the wait is the most that its coats take to dry. */
function coatingStep(line: CoatLine, kinds: readonly Kind[], plan: ForSteps): StepLine {
  const things = line.entry.things.map((t) => stepThing(t, plan.space, plan.scope));
  const words = things.map((t) => {
    const kind = kinds.find((k) => k.names.length === 1 && k.names[0] === t.words);
    return kind ? theKind(kind) : `the ${plain(t.words)}`;
  });
  const twice = line.coats === 1 ? "" : line.coats === 2 ? " twice" : ` ${line.coats} times`;
  const dries = ifKnown(line.dries);
  const minutes = dries && Math.ceil(dries.most.approx * line.coats);
  return {
    ...NOTHING,
    at: at(plan),
    title: `Coat ${listed(words)} with ${line.finish}${twice}, and let it dry`,
    coats: things.map((t) => ({ ...t, line, coats: line.coats })),
    wait: minutes === undefined ? undefined : exactly(TIME, fraction.rational(minutes)),
  };
}

function building({ kinds: list, is }: Group, kinds: readonly Kind[], plan: ForSteps): StepLine {
  const own = list.map((k) => kinds[k]!);
  const uses = own.flatMap((k) => thingsOf(k, plan));
  return { ...NOTHING, at: at(plan), title: titleOf(own, is, boxOf(own, plan)), uses };
}

/** The box that all of these make, by its name. */
function boxOf(own: readonly Kind[], { boxes, space, scope }: ForSteps): string | undefined {
  const pieces = new Set(own.flatMap((k) => k.pieces));
  return boxes.find(({ declared }) => {
    const walls = wallsOf(declared, space, scope);
    return walls.length > 0 && walls.every((i) => pieces.has(i));
  })?.name;
}

const thingsOf = ({ names }: Kind, { space }: ForSteps): StepThing[] =>
  names.map((name) => ({
    words: name,
    name,
    thing: undefined,
    pieces: space.named.get(name) ?? [],
    parts: [],
  }));

function titleOf(own: readonly Kind[], is: Group["is"], box: string | undefined): string {
  const these = listed(own.map(theKind));
  const bare = listed(own.map((k) => spoken(k)));
  const [only] = own;
  if (is === "ends") return `Build the frames of ${bare}, each by itself`;
  if (is === "frame") return `Build the frame of ${bare}`;
  if (is === "joined") return `Add ${these}`;
  if (is === "fit") return `Mark ${these} in place, cut to fit and fasten`;
  if (is === "apart") {
    const one = box ? `the ${plain(box)}` : own.length === 1 ? these : undefined;
    return one ? `Build ${one}${only?.onFloor ? "" : ", by itself"}` : `Put together ${these}`;
  }
  if (own.length === 1 && only?.inner && only.copies > 0) return `Build ${these}, and set in place`;
  if (is === "laid") return own.some((k) => k.on.size > 0) ? `Lay ${these}` : `Set up ${these}`;
  return is === "hung" ? `Add ${these}` : `Put ${these} in place`;
}

function lining(plan: ForSteps): StepLine[] {
  return plan.loaded.files[0]!.tree.entries.flatMap((entry): StepLine[] => {
    if (entry.kind !== "line") return [];
    const boxes = entry.things.flatMap((t) => {
      const declared = lookUp(plan.scope, t.name.text);
      return plan.boxes.find((b) => b.declared === declared) ?? [];
    });
    if (boxes.length === 0) return [];
    const lines = boxes.map(
      (b): StepThing => ({ words: b.name, name: b.name, thing: undefined, pieces: [], parts: [] }),
    );
    const title = `Line ${listed(boxes.map((b) => `the ${plain(b.name)}`))} with ${entry.with.text}`;
    return [{ ...NOTHING, at: at(plan), title, lines }];
  });
}

function filling(plan: ForSteps): StepLine[] {
  const filled = plan.boxes.filter((b) => b.fill);
  if (filled.length === 0) return [];
  const where = filled.length > 1 ? "the places where they will stay" : "the place where it will stay";
  const title = `Fill ${listed(filled.map((b) => `the ${plain(b.name)}`))} in ${where}`;
  return [{ ...NOTHING, at: at(plan), title }];
}

const plain = (name: string): string => name.replaceAll("-", " ");

/** `legs`, `floor boards`, `cap`: one name of a thing, and more than one of it where more stand. */
function spoken({ names, pieces, copies }: Kind): string {
  return listed(names.map((n) => several(n, copies > 0 ? copies : pieces.length)));
}
const several = (name: string, count: number): string => (count > 1 ? plural(plain(name)) : plain(name));
const theKind = (kind: Kind): string => `the ${spoken(kind)}`;

function plural(word: string): string {
  // A part may be named by its plural: legs.
  if (/[^isu]s$/.test(word)) return word;
  if (/(?:[sxz]|ch|sh)$/.test(word)) return `${word}es`;
  if (/[^aeiou]y$/.test(word)) return `${word.slice(0, -1)}ies`;
  if (/lf$/.test(word)) return `${word.slice(0, -1)}ves`;
  return `${word}s`;
}
