import { type Blocked, blockedScrews, DRIVER, type Joint, type Worked } from "../worked";
import type { Check, Finding } from "./check";
import { phrase } from "./phrases";
import { mm, pieceSlot } from "./piece-words";
import { screwSlot } from "./screw-words";

export const noRoomToDrive: Check = {
  code: "no-room-to-drive",
  class: "warning",
  title: "No room for a drill behind a screw",
  page: `A drill with its bit takes about 10" (254 mm) in line with a screw: that is common practice. Where a piece that already stands
is nearer to the head than that, the screw cannot be driven straight with it.

What already stands is read from the order of work. Where the pieces of a joint and the piece in the way are used in different
steps, the steps tell; else a piece stands from the first \`fasten\` or \`glue\` line on that joins it, and one that no line joins
can be put there last. Pieces of the joint itself are never in the way, and a joint inside an assembly is driven where nothing
but that assembly lies. So the first cure is the order: drive it before the other piece stands.

\`\`\`sawbuck
part rail of 2x4, length 30"
part block of 4x4, length 6"
part slat of 1x4, length 12"
part top of 1x4, length 30"
place rail across, flat, on floor, 0 from left, 0 from front
place block across, flat, on rail, flush with left of rail, flush with front of rail
place block across, flat, on rail, flush with right of rail, flush with front of rail
place slat across, flat, on rail, 9" in from left of rail, flush with front of rail
place top across, flat, on blocks, flush with left of rail, flush with front of rail
fasten rail into block, 2 #8 x 3" at each crossing
fasten top into block, 2 #8 x 1-5/8" at each crossing
fasten slat into rail, 2 #8 x 1-5/8" in all
\`\`\`

\`\`\`sawbuck
part rail of 2x4, length 30"
part block of 4x4, length 6"
part slat of 1x4, length 12"
part top of 1x4, length 30"
place rail across, flat, on floor, 0 from left, 0 from front
place block across, flat, on rail, flush with left of rail, flush with front of rail
place block across, flat, on rail, flush with right of rail, flush with front of rail
place slat across, flat, on rail, 9" in from left of rail, flush with front of rail
place top across, flat, on blocks, flush with left of rail, flush with front of rail
fasten rail into block, 2 #8 x 3" at each crossing
fasten slat into rail, 2 #8 x 1-5/8" in all
fasten top into block, 2 #8 x 1-5/8" at each crossing
\`\`\``,
  templates: {
    blocked:
      "Behind the head of {screw} in {first} there is {room} up to {by}, which stands by then{more}, and a drill with its bit takes {needs}.",
    here: "{piece} is placed here.",
    before: "Drive it before {by} stands: join {by} in a later line or step.",
    other: "Or drive it from the other side, at an angle, or with an angled drill.",
  },
  run: (worked) => [...blockedScrews(worked)].map(([joint, blocked]) => findingOf(joint, blocked, worked)),
};

function findingOf(joint: Joint, blocked: readonly Blocked[], worked: Worked): Finding {
  const [worst, ...rest] = blocked as readonly [Blocked, ...Blocked[]];
  const { crossing } = worst.screw;
  const [first, into] = [crossing.first, crossing.into].map((i) => worked.space.pieces[i]!);
  const by = pieceSlot(worst.by);
  const all = [first!, into!, worst.by];
  const [room, needs] = [mm(worst.room), mm(DRIVER.length)];
  return {
    at: joint.sizeAt ?? joint.at,
    about: [...new Set(all.flatMap((p) => [p.part, ...p.owners.map((o) => o.name)]))],
    says: "blocked",
    slots: {
      screw: screwSlot(joint),
      first: pieceSlot(first!),
      room,
      by,
      more: rest.length > 0 ? phrase("and too little behind", { n: rest.length }) : "",
      needs,
    },
    numbers: [
      { name: "room behind the head", value: room, source: "worked out" },
      { name: "a drill with its bit", value: needs, source: "common practice" },
    ],
    related: [{ says: "here", slots: { piece: by }, at: worst.by.at }],
    cures: [
      { says: "before", slots: { by }, edits: [] },
      { says: "other", slots: {}, edits: [] },
    ],
  };
}
