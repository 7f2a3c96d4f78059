import { say } from "../plan";
import { chooseNothing, type Fault, type Worked } from "../worked";
import type { Check, Cure, Finding } from "./check";
import { ofKind } from "./faults";
import { phrase } from "./phrases";

type Undecided = Extract<Fault, { kind: "undecided" }>;

export const placeUndecided: Check = {
  code: "place-undecided",
  class: "error",
  title: "Where a piece stands is not said",
  page: `A \`place\` line says where a thing stands in three directions: left to right, front to back, and up and down; and how
a board lies. What is left open cannot be guessed in the shop, so the message offers what is likely meant. Only the first line
of a plan (or of an assembly) may leave left to right and front to back unsaid, where no other line is measured from the
plan's left or front: it then begins there, and the rest leans on it. An assembly whose own pieces stand on the floor stands on the floor.

\`\`\`sawbuck
part leg of 2x4, length 28"
part rail of 1x4, length 30"
place leg upright, on floor, at each corner of 30" x 12"
place rail across, flat, on legs, flush with left of legs
\`\`\`

\`\`\`sawbuck
part leg of 2x4, length 28"
part rail of 1x4, length 30"
place leg upright, on floor, at each corner of 30" x 12"
place rail across, flat, on legs, flush with left of legs, flush with front of legs
\`\`\``,
  templates: {
    open: "Nothing says where “{subject}” stands {directions}.",
    lie: "Nothing says how “{subject}” lies: upright, across or front to back.",
    "flat or on edge": "Nothing says whether “{subject}” lies flat or on edge.",
    "lie and open":
      "Nothing says how “{subject}” lies (upright, across or front to back), nor where it stands {directions}.",
    "flat or on edge and open":
      "Nothing says whether “{subject}” lies flat or on edge, nor where it stands {directions}.",
    nowhere: "“{name}” stands nowhere here, so what is put beside it has no place either.",
    itself: "No other “{name}” stands here for this line to lean on.",
    narrowed:
      "No “{words}” stands here: the words before a name choose those on one side of the middle of several, “middle” those in it.",
    floor: "The floor is only a level, without sides: measure from something that stands on it.",
    "no-far-side": "How far away the {side} is follows from the space of the plan, which no line says.",
    "no-far-side inside":
      "An assembly has no {side} of its own before it is put together; measure from its {other}.",
    room: "Nothing says in what room as many of “{subject}” as fit stand. Say it like: between left legs and right legs",
    add: "Add “{text}”",
    space: "Say the space in the plan line, like: {example}",
  },
  run: (worked) => [
    ...ofKind(worked, "undecided").map(open),
    ...unplaced(worked),
    ...unchosen(worked),
    ...ofKind(worked, "no-far-side").map(farSide),
    ...ofKind(worked, "room-unsaid").map(({ at, subject }) => ({
      at,
      about: [subject],
      says: "room",
      slots: { subject },
    })),
  ],
};

function farSide({ at, side, inside }: Extract<Fault, { kind: "no-far-side" }>): Finding {
  if (inside)
    return { at, says: "no-far-side inside", slots: { side: say(side), other: say(OTHER[side] ?? "left") } };
  const example = 'space 60" wide, 30" deep, 48" high';
  return {
    at,
    says: "no-far-side",
    slots: { side: say(side) },
    cures: [{ says: "space", slots: { example }, edits: [] }],
  };
}

const OTHER: Readonly<Record<string, string>> = { right: "left", back: "front", top: "bottom" };
const DIRECTIONS = ["left to right", "front to back", "up and down"] as const;

const LIES: Readonly<Record<NonNullable<Undecided["lie"]>, readonly string[]>> = {
  lie: ["upright", "across, flat", "across, on edge", "front to back, flat", "front to back, on edge"],
  "flat or on edge": ["flat", "on edge"],
};

function open(fault: Undecided): Finding {
  const { at, subject, lie } = fault;
  const directions = { all: fault.open.map((axis) => phrase(DIRECTIONS[axis])) };
  const says = lie ? (fault.open.length > 0 ? `${lie} and open` : lie) : "open";
  return { at, about: [subject], says, slots: { subject, directions }, cures: curesOf(fault) };
}

/** The likely clauses, added to the end of the line; one cure for each way a board may lie. */
function curesOf({ at, lie, offers, after, open }: Undecided): Cure[] {
  if (offers.length < open.length || (offers.length === 0 && !lie)) return [];
  return (lie ? LIES[lie] : [""]).map((words) => {
    const text = [words, ...offers].filter(Boolean).join(", ");
    const edits = [{ file: at.file, start: after, end: after, text: `, ${text}` }];
    return { says: "add", slots: { text }, edits };
  });
}

/** Each thing that stands nowhere, told once: unless a line that may place it could not be read. */
/** Joints whose words choose none of what stands there. */
function unchosen({ joints, space, scope, pieces }: Worked): Finding[] {
  if (!pieces.complete) return [];
  return joints
    .filter(({ placed }) => !placed)
    .flatMap(({ entry, at: { file } }) =>
      chooseNothing(entry, space, scope).map(({ start, end, where, name }) => ({
        at: { file, start, end },
        about: [name.text],
        says: "narrowed",
        slots: { words: [...where, name].map((w) => w.text).join(" ") },
      })),
    );
}

function unplaced(worked: Worked): Finding[] {
  const told = new Set<string>();
  return ofKind(worked, "unplaced").flatMap(({ at, name, words, why }): Finding[] => {
    if (told.has(words) || placeLineLost(worked)) return [];
    told.add(words);
    return [{ at, about: [name], says: why, slots: { name, words } }];
  });
}

/** Whether something in the files could not be read that may have been a place line. */
const placeLineLost = ({ loaded }: Worked): boolean =>
  loaded.files.some(({ tree }) => tree.entries.some((e) => e.kind === "unknown"));
