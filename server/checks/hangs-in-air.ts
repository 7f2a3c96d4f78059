import type { Vec3 } from "../solid/vector";
import {
  HAIRLINE,
  type Hanging,
  hangingGroups,
  lineOfPiece,
  standsSomewhere,
  TOUCHING,
  type Worked,
} from "../worked";
import type { Check, Cure, Finding } from "./check";
import { distanceCure, MOST_TRIED } from "./move-cure";
import { phrase } from "./phrases";
import { mm, pieceSlot, wayWords } from "./piece-words";

export const hangsInAir: Check = {
  code: "hangs-in-air",
  class: "hazard",
  title: "A piece that nothing holds up",
  page: `Every piece must stand on the floor, or lie with a face on something that leads to the floor. What touches only along an
edge or at a corner is held by nothing. The nearest thing is told with its distance: often a gap that a distance or a length
left open. It says nothing of whether what holds a piece is strong enough.

What nothing holds falls down: it is a hazard, and stands only by name, \`accept hangs-in-air on shelf because it is fixed to the
wall\`. Of a plan in which nothing at all touches the floor one warning says so, to be accepted in the same way.

\`\`\`sawbuck
part leg of 2x4, length 30"
part top of 1x4, length 33"
place leg upright, wide face front, on floor, at each corner of 33" x 12"
place top across, flat, 1/2" above legs, flush with left of legs, flush with front of legs
\`\`\`

\`\`\`sawbuck
part leg of 2x4, length 30"
part top of 1x4, length 33"
place leg upright, wide face front, on floor, at each corner of 33" x 12"
place top across, flat, on legs, flush with left of legs, flush with front of legs
\`\`\``,
  templates: {
    near: "{piece}{others} hangs in the air: nearest is {to}, {gap} {where}{more}.",
    edge: "{piece}{others} hangs in the air: it meets {to} only along an edge or at a corner, where nothing holds it{more}.",
    floor: "{piece}{others} hangs in the air, {gap} above the floor{more}.",
    wall: "Nothing of it touches the floor: {piece} is the lowest, {gap} above it.",
    here: "{piece} is placed here.",
    distance: "Write {new} instead of {old}: it then lies there.",
    move: "Move it {gap} {toward}, or put something there that holds it.",
    face: "Let a face of it lie on a face of {to}, or put something there that holds it.",
    under: "Stand it on the floor, or put something under it.",
    fixed: "If it is fixed to a wall, say so: accept hangs-in-air because it is fixed to the wall.",
  },
  run: (worked) => {
    if (!worked.pieces.complete) return [];
    const groups = hangingGroups(worked)
      .filter((g) => g.gap <= TOUCHING || g.gap > HAIRLINE)
      .filter((g) => !toldAsGap(g, worked));
    if (groups.length === 0) return [];
    if (!standsSomewhere(worked)) return wallHung(worked);
    const byLine = new Map<string, Hanging[]>();
    for (const group of groups) {
      const line = `${group.piece.at.file} ${group.piece.at.start}`;
      byLine.set(line, [...(byLine.get(line) ?? []), group]);
    }
    return [...byLine.values()].map((g, n) => findingOf(g, worked, n < MOST_TRIED));
  },
};

/** Whether a piece of the group stands off what a joint joins it to, which is an error of its own (`not-touching`). */
const toldAsGap = ({ group }: Hanging, { joints, space }: Worked): boolean =>
  joints.some(({ placed }) =>
    placed?.misses.some((m) => [m.first, m.into].some((i) => group.includes(space.pieces[i]!))),
  );

function wallHung({ space }: Worked): Finding[] {
  const lowest = space.pieces.reduce((a, b) => (b.bounds.least[2] < a.bounds.least[2] ? b : a));
  const gap = mm(lowest.bounds.least[2]);
  return [
    {
      class: "warning",
      at: lowest.at,
      about: [...new Set(space.pieces.flatMap((p) => [p.part, ...p.owners.map((o) => o.name)]))],
      says: "wall",
      slots: { piece: pieceSlot(lowest), gap },
      numbers: [{ name: "above the floor", value: gap, source: "worked out" }],
      cures: [
        { says: "fixed", slots: {}, edits: [] },
        { says: "under", slots: {}, edits: [] },
      ],
    },
  ];
}

function findingOf(groups: readonly Hanging[], worked: Worked, tries: boolean): Finding {
  const [first, ...rest] = groups as [Hanging, ...Hanging[]];
  // The one nearest to what stands shows the cause.
  const { piece, to, gap, way, group } = rest.reduce((a, b) => (b.gap < a.gap - TOUCHING ? b : a), first);
  const others = group.length - 1;
  const common = {
    piece: pieceSlot(piece),
    others: others === 0 ? "" : phrase("with pieces on it", { n: others }),
    gap: mm(gap),
    more: rest.length === 0 ? "" : phrase("and so do", { n: rest.length }),
  };
  const base = {
    at: piece.at,
    about: [piece.part, ...piece.owners.map((o) => o.name)],
    numbers: [{ name: "distance", value: mm(gap), source: "worked out" }],
  };
  const other = tries ? otherDistance(groups, way, worked) : [];
  if (to === "floor")
    return {
      ...base,
      says: "floor",
      slots: common,
      cures: [...other, { says: "under", slots: {}, edits: [] }],
    };
  const name = pieceSlot(to);
  const related = to.at.start === piece.at.start ? [] : [{ says: "here", slots: { piece: name }, at: to.at }];
  if (gap <= TOUCHING)
    return {
      ...base,
      related,
      says: "edge",
      slots: { ...common, to: name },
      cures: [{ says: "face", slots: { to: name }, edits: [] }],
    };
  const toward = wayWords(way);
  return {
    ...base,
    related,
    says: "near",
    slots: { ...common, to: name, where: phrase(WHERE[toward]) },
    cures: [...other, { says: "move", slots: { gap: mm(gap), toward: phrase(toward) }, edits: [] }],
  };
}

/** The typed distance with which all groups of the line lie on what they are nearest to. */
function otherDistance(groups: readonly Hanging[], way: Vec3, worked: Worked): Cure[] {
  const axis = ([0, 1, 2] as const).find((k) => Math.abs(way[k]) > 0.9998 * Math.hypot(...way));
  if (axis === undefined) return [];
  const gap = Math.min(...groups.map((g) => g.gap));
  const pieces = groups.flatMap((g) => g.group);
  const line = lineOfPiece(worked, groups[0]!.piece);
  return distanceCure(line, axis, Math.sign(way[axis]) * gap, worked, pieces, {});
}

const WHERE = {
  "to the left": "to its left",
  "to the right": "to its right",
  "to the front": "in front of it",
  "to the back": "behind it",
  up: "above it",
  down: "below it",
  "at an angle": "away at an angle",
} as const;
