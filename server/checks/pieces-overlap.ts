import { AXIS_WORDS, clearWhenMoved, HAIRLINE, type Overlap, overlapsOf, type Worked } from "../worked";
import type { Check, Cure, Finding, Slots } from "./check";
import { distanceCure, MOST_TRIED } from "./move-cure";
import { alongItsLine, curesOfOwn } from "./own-overlap";
import { phrase } from "./phrases";
import { mm, pieceSlot, wayWords } from "./piece-words";

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
part leg of 2x4, length 30"
part top of 1x4, length 33"
place leg upright, wide face front, on floor, at each corner of 33" x 12"
place top across, flat, 29" up, flush with left of legs, flush with front of legs
\`\`\`

\`\`\`sawbuck
part leg of 2x4, length 30"
part top of 1x4, length 33"
place leg upright, wide face front, on floor, at each corner of 33" x 12"
place top across, flat, 30" up, flush with left of legs, flush with front of legs
\`\`\``,
  templates: {
    axis: "{low} reaches {to} {from}, and {high} already begins at {starts}: they overlap by {depth} {way}{more}.",
    plain: "{first} and {second} overlap by {depth} {way}{more}.",
    same: "{second} stands just where {first} stands already{more}.",
    here: "{piece} is placed here.",
    distance: "Write {new} instead of {old}: {second} then stands clear.",
    move: "Move {second} {depth} {toward}, or take that much off one of the two.",
    shorten:
      "Take {depth} off one of the two, or move one: {second} alone cannot go {toward}, where something else stands.",
    askew:
      "Move one of the two, or cut it shorter or to another angle, until they are {depth} further apart.",
    twice: "Take one of the two out, or put {second} somewhere else.",
    row: "Set the pieces of this line {depth} further apart {way}.",
    mirror: "Move {piece} {half} {toward}: its mirror image then goes as far the other way.",
    turn: "Write “wide face {facing}”: each is then {thin} {way}, and the two stand clear.",
  },
  run: (worked) => overlapsOf(worked).map((o, n) => findingOf(o, worked, n < MOST_TRIED)),
};

function findingOf(found: Overlap, worked: Worked, tries: boolean): Finding {
  const [earlier, later] = found.lines;
  const one = earlier.at.file === later.at.file && earlier.at.start === later.at.start;
  const overlap = one ? alongItsLine(found) : found;
  const { pieces, axis, count } = overlap;
  const [first, second] = pieces;
  const depth = mm(overlap.depth);
  const way = phrase(axis === undefined ? "at an angle" : AXIS_WORDS[axis]);
  const common = { depth, way, more: count > 1 ? phrase("and more pairs do", { n: count - 1 }) : "" };
  const sides = sidesOf(overlap);
  const told = { first: pieceSlot(first), second: pieceSlot(second) };
  const same = inOnePlace(overlap);
  const names = pieces.flatMap((p) => [p.part, ...p.owners.map((o) => o.name)]);
  return {
    at: later.at,
    about: [...new Set(names)],
    ...(sides && !same
      ? { says: "axis", slots: { ...common, ...sides } }
      : { says: same ? "same" : "plain", slots: { ...common, ...told } }),
    numbers: [{ name: "overlap", value: depth, source: "worked out" }],
    related: one ? [] : [{ says: "here", slots: { piece: pieceSlot(first) }, at: earlier.at }],
    cures: same
      ? [{ says: "twice", slots: told, edits: [] }]
      : one
        ? curesOfOwn(overlap)
        : curesOf(overlap, worked, tries),
  };
}

/** Whether the one stands in the very place of the other. */
const inOnePlace = ({ pieces: [a, b] }: Overlap): boolean =>
  ([0, 1, 2] as const).every(
    (k) =>
      Math.abs(a.bounds.least[k] - b.bounds.least[k]) <= HAIRLINE &&
      Math.abs(a.bounds.most[k] - b.bounds.most[k]) <= HAIRLINE,
  );

const FROM = ["from the left", "from the front", "up from the floor"] as const;

/** Where the one ends and the other begins, where that is the overlap and both are within the plan's own corner. */
function sidesOf({ pieces, out, axis, depth }: Overlap): Slots | undefined {
  if (axis === undefined) return undefined;
  const [low, high] = out[axis] > 0 ? pieces : [pieces[1], pieces[0]];
  const [to, starts] = [low.bounds.most[axis], high.bounds.least[axis]];
  if (starts < 0 || Math.abs(to - starts - depth) > 0.01) return undefined;
  return {
    low: pieceSlot(low),
    high: pieceSlot(high),
    to: mm(to),
    starts: mm(starts),
    from: phrase(FROM[axis]),
  };
}

/** A move the other way is offered up to so many times the overlap. */
const MOST_FARTHER = 3;

function curesOf(overlap: Overlap, worked: Worked, tries: boolean): Cure[] {
  const { pieces, out, axis } = overlap;
  const depth = mm(overlap.depth);
  if (axis === undefined) return [{ says: "askew", slots: { depth }, edits: [] }];
  const [first, second] = pieces;
  const slots = { second: pieceSlot(second), depth, toward: phrase(wayWords(out)) };
  const sign = Math.sign(out[axis]);
  const shift = sign * overlap.depth;
  const line = overlap.lines[1];
  const other = tries ? distanceCure(line, axis, shift, worked, [], slots) : [];
  if (!tries || other.length > 0 || clearWhenMoved(worked, line, axis, shift))
    return [...other, { says: "move", slots, edits: [] }];
  // That way something else stands; the other way there may be room.
  const back =
    sign > 0
      ? first.bounds.least[axis] - second.bounds.most[axis]
      : first.bounds.most[axis] - second.bounds.least[axis];
  if (Math.abs(back) > overlap.depth * MOST_FARTHER || !clearWhenMoved(worked, line, axis, back))
    return [{ says: "shorten", slots, edits: [] }];
  const toward = phrase(wayWords([-out[0], -out[1], -out[2]]));
  return [{ says: "move", slots: { ...slots, depth: mm(Math.abs(back)), toward }, edits: [] }];
}
