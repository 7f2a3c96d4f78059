import type { Quantity } from "../units";
import { AXIS_WORDS, type Overlap, overlapsOf, type Worked } from "../worked";
import type { Check, Cure, Finding } from "./check";
import { distanceCure, MOST_TRIED } from "./move-cure";
import { mm, pieceName, wayWords } from "./piece-words";

export const piecesOverlap: Check = {
  code: "pieces-overlap",
  class: "error",
  title: "Two pieces in one place",
  page: `Two boards cannot be in one place. Placed pieces that are further inside each other than 1/64" (0.4 mm), which no saw and
no tape can keep, are told with the depth: the least way that one of them must move, or be shortened, to be clear of the other.
Lengths and places that the plan works out fit exactly, so an overlap has its cause in something typed: a distance, a length, a
row set closer than its boards are wide. Of two place lines the later one is blamed; all pieces that they put into each other
make one problem.

\`\`\`sawbuck
part leg of 2x4, length 20"
part top of 1x4, length 33"
place leg upright, wide face front, on floor, at each corner of 33" x 12"
place top across, flat, 19" up, flush with left of legs, flush with front of legs
\`\`\`

\`\`\`sawbuck
part leg of 2x4, length 20"
part top of 1x4, length 33"
place leg upright, wide face front, on floor, at each corner of 33" x 12"
place top across, flat, 20" up, flush with left of legs, flush with front of legs
\`\`\``,
  templates: {
    axis: "{low} reaches {to} {from}, and {high} already begins at {starts}: they overlap by {depth} {way}{more}.",
    plain: "{first} and {second} overlap by {depth} {way}{more}.",
    here: "{piece} is placed here.",
    distance: "Write {new} instead of {old}: {second} then stands clear.",
    move: "Move {second} {depth} {toward}, or take that much off one of the two.",
    askew:
      "Move one of the two, or cut it shorter or to another angle, until they are {depth} further apart.",
    row: "Set the pieces of this row {depth} further apart.",
  },
  run: (worked) => overlapsOf(worked).map((o, n) => findingOf(o, worked, n < MOST_TRIED)),
};

function findingOf(overlap: Overlap, worked: Worked, tries: boolean): Finding {
  const { lines, pieces, axis, count } = overlap;
  const [first, second] = pieces;
  const [earlier, later] = lines;
  const depth = mm(overlap.depth);
  const pairs = count - 1 === 1 ? "1 more pair does" : `${count - 1} more pairs do`;
  const way = axis === undefined ? "at an angle" : AXIS_WORDS[axis];
  const common = { depth, way, more: count > 1 ? `, and ${pairs}` : "" };
  const sides = sidesOf(overlap);
  const one = earlier.at.file === later.at.file && earlier.at.start === later.at.start;
  const names = pieces.flatMap((p) => [p.part, ...p.owners.map((o) => o.name)]);
  return {
    at: later.at,
    about: [...new Set(names)],
    ...(sides
      ? { says: "axis", slots: { ...common, ...sides } }
      : { says: "plain", slots: { ...common, first: pieceName(first), second: pieceName(second) } }),
    numbers: [{ name: "overlap", value: depth, source: "worked out" }],
    related: one ? [] : [{ says: "here", slots: { piece: pieceName(first) }, at: earlier.at }],
    cures: one ? [{ says: "row", slots: { depth }, edits: [] }] : curesOf(overlap, worked, tries),
  };
}

const FROM = ["from the left", "from the front", "up from the floor"] as const;

/** Where the one ends and the other begins, where that is the overlap and both are within the plan's own corner. */
function sidesOf({ pieces, out, axis, depth }: Overlap): Record<string, string | Quantity> | undefined {
  if (axis === undefined) return undefined;
  const [low, high] = out[axis] > 0 ? pieces : [pieces[1], pieces[0]];
  const [to, starts] = [low.bounds.most[axis], high.bounds.least[axis]];
  if (starts < 0 || Math.abs(to - starts - depth) > 0.01) return undefined;
  return { low: pieceName(low), high: pieceName(high), to: mm(to), starts: mm(starts), from: FROM[axis] };
}

function curesOf(overlap: Overlap, worked: Worked, tries: boolean): Cure[] {
  const { pieces, out, axis } = overlap;
  const depth = mm(overlap.depth);
  if (axis === undefined) return [{ says: "askew", slots: { depth }, edits: [] }];
  const slots = { second: pieceName(pieces[1]), depth, toward: wayWords(out) };
  const shift = Math.sign(out[axis]) * overlap.depth;
  const other = tries ? distanceCure(overlap.lines[1], axis, shift, worked, [], slots) : [];
  return [...other, { says: "move", slots, edits: [] }];
}
