import { cite, fingerBand, headBand } from "../trade";
import { FINGERS, HEADS, type RowChange, rowChanges, type Trap, type Worked } from "../worked";
import type { Check, Cure, Finding } from "./check";
import { phrase } from "./phrases";
import { mm, pieceSlot } from "./piece-words";
import { edit, writtenLength } from "./writing";

export const gapTraps: Check = {
  code: "gap-traps",
  class: "hint",
  title: "A gap that catches a finger or a head",
  page: `Where the plan says \`near children\`, the openings between its pieces are measured. From 5/16" to 1" a finger goes in and
may stick. Over 3-1/2" and under 9" a small body slips through feet first, and the head does not follow; such an opening
counts where it is closed all round and at least 6.2" the other way (playground guidance, from memory).

An opening is a gap across which two faces look at each other. What stands in it, or close behind, closes it: within 1/2" for
a finger, within 3-1/2" for a body; soil in a box does too. What begins higher than 60" is out of reach, and an opening that
goes down to the ground is let be. Leaning and sloping pieces, and openings that stay open on a side, are not looked at and
stand on the not-checked list.

\`\`\`sawbuck
plan Sandpit seat
  near children
part batten of 2x2, length 16"
part slat of 1x4, length 36"
place batten front to back, flat, on floor, 0 from left, 0 from front
place batten front to back, flat, on floor, 34-1/2" from left, 0 from front
place slat across, flat, on battens, flush with left of battens, flush with front of battens, 4 deep, 1/2" apart
fasten slat into batten, 2 #8 x 1-5/8" at each crossing, pilot 3/32"
\`\`\`

\`\`\`sawbuck
plan Sandpit seat
  near children
part batten of 2x2, length 16"
part slat of 1x4, length 36"
place batten front to back, flat, on floor, 0 from left, 0 from front
place batten front to back, flat, on floor, 34-1/2" from left, 0 from front
place slat across, flat, on battens, flush with left of battens, flush with front of battens, 4 deep, 1/4" apart
fasten slat into batten, 2 #8 x 1-5/8" at each crossing, pilot 3/32"
\`\`\``,
  templates: {
    finger:
      "A gap of {gap} between {piece} and {other}{more} catches a child’s finger, as gaps from {low} to {high} do.",
    head: "An opening of {gap} by {long} between {piece} and {other}{more} lets a child’s body through and not its head, as openings over {low} and under {high} do.",
    here: "{other} stands here.",
    count: "Make it {pieces} pieces: gaps of {gap}",
    "at most": "Let them stand at most {to} apart: {pieces} pieces, with gaps of {gap}",
    apart: "Set them {to} apart",
    "on center": "Set them {to} on center: gaps of {gap}",
    "finger limits": "Leave less than {low} between them, or more than {high}.",
    "head limits": "Leave no more than {low} between them, or at least {high}.",
  },
  run: (worked) => worked.guarding.traps.map((trap) => findingOf(trap, worked)),
};

function findingOf(trap: Trap, worked: Worked): Finding {
  const { catches, opening, more } = trap;
  const { pieces } = worked.space;
  const [piece, other] = [pieces[opening.first]!, pieces[opening.second]!];
  const [band, row] = catches === "finger" ? [FINGERS, fingerBand] : [HEADS, headBand];
  const limits = { low: mm(band.low), high: mm(band.high) };
  const gap = mm(opening.gap);
  return {
    at: piece.at,
    about: [...new Set([piece, other].flatMap((p) => [p.part, ...p.owners.map((o) => o.name)]))],
    says: catches,
    slots: {
      gap,
      ...(catches === "head" && { long: mm(opening.long) }),
      piece: pieceSlot(piece),
      other: pieceSlot(other),
      more: more > 0 ? phrase("and in more places", { n: more }) : "",
      ...limits,
    },
    numbers: [
      { name: "gap", value: gap, source: "worked out" },
      { name: "from", value: limits.low, source: cite(row.source) },
      { name: "to", value: limits.high, source: cite(row.source) },
    ],
    related:
      piece.at.start === other.at.start
        ? []
        : [{ says: "here", slots: { other: pieceSlot(other) }, at: other.at }],
    cures: [
      ...rowChanges(trap, worked).map((c) => cureOf(c, worked)),
      { says: catches === "finger" ? "finger limits" : "head limits", slots: limits, edits: [] },
    ],
  };
}

function cureOf({ is, to, at, pieces, gap, count }: RowChange, { settings }: Worked): Cure {
  const written = is === "count" ? String(to) : writtenLength(mm(to), settings.display);
  return {
    says: is,
    slots: { pieces, gap: mm(gap), ...(is !== "count" && { to: mm(to) }) },
    edits: [edit(at, written), ...(count ? [edit(count.at, String(count.to))] : [])],
  };
}
