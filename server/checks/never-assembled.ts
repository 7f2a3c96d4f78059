import { type At, lookUp } from "../plan";
import { handsFor, hasOrder, type Worked, type WorkStep } from "../worked";
import type { Check, Cure, Edit, Finding } from "./check";
import { namesOf, someOf, stepSlot, stepsWritten, textOfPlan } from "./step-words";
import { counted } from "./telling";

export const neverAssembled: Check = {
  code: "never-assembled",
  class: "warning",
  title: "Pieces that no step uses",
  page: `Where a plan says its steps, every piece should go in by one of them (\`uses\`): a name stands for all pieces of that name
that no step before has used. What belongs to a ring or an assembly is used as a whole, by its name. A plan with placed pieces and joints, but no step at all, gets a hint, with an order of work
to begin with: what stands on the floor first, the short sides before the long ones, then what lies on them, from below
upwards. Times are left to the builder.

\`\`\`sawbuck
part leg of 2x4, length 30"
part rail of 1x6, length 30"
place leg upright, wide face front, on floor, at each corner of 30" x 12"
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
place rail across, on edge, behind legs, flush with left of legs, flush with top of legs
fasten rail into leg, 2 #8 x 1-5/8" at each crossing
step Screw the frames together
  uses leg and front rail
\`\`\`

\`\`\`sawbuck
part leg of 2x4, length 30"
part rail of 1x6, length 30"
place leg upright, wide face front, on floor, at each corner of 30" x 12"
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
place rail across, on edge, behind legs, flush with left of legs, flush with top of legs
fasten rail into leg, 2 #8 x 1-5/8" at each crossing
step Screw the frames together
  uses leg and rail
\`\`\``,
  templates: {
    some: counted(
      "count",
      "{count} of the {all} pieces of “{part}” is used by no step.",
      "{count} of the {all} pieces of “{part}” are used by no step.",
    ),
    all: "No step uses “{part}”.",
    prose: "The steps do not say what they use, so nothing is known of what goes in when.",
    none: "The plan does not say in which order its {count} pieces go together.",
    there: "What it is joined to is there by this step.",
    add: "Use {part} in {step} too",
    step: "Use {part} in the step that puts it in.",
    name: "Write what goes in below each step: uses {names}.",
    propose: "Write an order of work at the end.",
  },
  run: (worked) => {
    if (worked.steps.proposed) return proposal(worked);
    const { steps, never } = worked.steps;
    const [first] = steps;
    if (!first) return [];
    const { pieces, parts } = never;
    if (pieces.length + parts.length === 0) return [];
    if (steps.every((s) => s.uses.length === 0)) {
      const names = [...new Set([...pieces.map((i) => worked.space.pieces[i]!.part), ...parts])];
      const cure: Cure = { says: "name", slots: { names: someOf(names) }, edits: [] };
      return [{ class: "hint", at: first.at, about: names, says: "prose", slots: {}, cures: [cure] }];
    }
    return [...byName(pieces, worked), ...parts.map((part) => findingOf(part, [], worked))];
  },
};

/** By the ring or the assembly of which no piece is used, else by their parts. */
function byName(pieces: readonly number[], worked: Worked): Finding[] {
  const { space, steps } = worked;
  const unused = new Map<string, boolean>();
  const isUnused = (name: string): boolean => {
    const said = unused.get(name) ?? space.named.get(name)!.every((i) => steps.stepOf[i] === undefined);
    unused.set(name, said);
    return said;
  };
  const lists = new Map<string, number[]>();
  for (const i of pieces) {
    const { part, owners } = space.pieces[i]!;
    const name = owners.find((o) => isUnused(o.name))?.name ?? part;
    const list = lists.get(name);
    if (list) list.push(i);
    else lists.set(name, [i]);
  }
  return [...lists].map(([name, list]) => findingOf(name, list, worked));
}

/** Where a thing is declared, or where the plan places the first of its pieces if another file declares it. */
function placeOf(name: string, [first]: readonly number[], { scope, space, loaded }: Worked): At {
  const { at } = lookUp(scope, name)!;
  return at.file === loaded.files[0]!.file || first === undefined ? at : space.pieces[first]!.at;
}

function findingOf(part: string, pieces: readonly number[], worked: Worked): Finding {
  const all = worked.space.named.get(part)?.length ?? 0;
  const step = stepFor(part, pieces, worked);
  const edits = step ? usedToo(step, part) : [];
  const cure: Cure =
    step && edits.length > 0
      ? { says: "add", slots: { part, step: stepSlot(step, worked) }, edits }
      : { says: "step", slots: { part }, edits: [] };
  return {
    at: placeOf(part, pieces, worked),
    about: pieces.length > 0 ? namesOf(pieces, worked) : [part],
    says: pieces.length < all ? "some" : "all",
    slots: { part, count: pieces.length, all },
    related: step && edits.length > 0 ? [{ says: "there", slots: {}, at: step.at }] : [],
    cures: [cure],
  };
}

/** The first step by which something that these pieces are joined to is there; rather one that uses the name already. */
function stepFor(
  name: string,
  pieces: readonly number[],
  { joints, steps: { steps, stepOf } }: Worked,
): WorkStep | undefined {
  const own = new Set(pieces);
  let first = Infinity;
  for (const { placed } of joints)
    for (const crossing of placed?.crossings ?? []) {
      const all = [crossing.first, ...crossing.through, crossing.into];
      const others = all.filter((i) => !own.has(i)).map((i) => stepOf[i] ?? Infinity);
      if (others.length > 0 && others.length < all.length) first = Math.min(first, Math.max(...others));
    }
  return steps.find(({ uses }, n) => n >= first && uses.some((t) => t.name === name)) ?? steps[first];
}

function usedToo({ entry, at }: WorkStep, part: string): Edit[] {
  const clause = entry?.clauses.find((c) => c.kind === "uses");
  const last = clause?.kind === "uses" ? clause.things.at(-1) : undefined;
  return last ? [{ file: at.file, start: last.end, end: last.end, text: ` and ${part}` }] : [];
}

/** Where there is an order to speak of. It is worked out when it is asked for: few do while a plan is being typed. */
function proposal(worked: Worked): Finding[] {
  const { settings, pieces, loaded, faults } = worked;
  const unread = loaded.files.some((f) => f.tree.complaints.length > 0);
  if (!settings.at || !pieces.complete || unread || faults.length > 0) return [];
  if (!hasOrder(worked)) return [];
  const { file } = settings.at;
  const cure: Cure = {
    says: "propose",
    slots: {},
    get edits() {
      return orderWritten(worked, file);
    },
  };
  return [
    {
      class: "hint",
      at: settings.at,
      about: namesOf([...worked.space.pieces.keys()], worked),
      says: "none",
      slots: { count: worked.space.pieces.length },
      cures: [cure],
    },
  ];
}

/** None where a step of it would be too heavy to lift. */
function orderWritten(worked: Worked, file: string): Edit[] {
  if (worked.steps.steps.some((s) => s.lift && handsFor(s.lift.kg) === undefined)) return [];
  const text = textOfPlan(worked);
  const before = text.endsWith("\n") ? "\n" : "\n\n";
  return [{ file, start: text.length, end: text.length, text: `${before}${stepsWritten(worked)}\n` }];
}
