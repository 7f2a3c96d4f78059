import { cite, footholdBand, houseGuard, tallGuard } from "../trade";
import { CLEAR_OF_GUARD, FOOTHOLDS, type Foothold, GUARDS, type Worked } from "../worked";
import type { Check, Cure, Finding, Slot } from "./check";
import { phrase } from "./phrases";
import { mm, pieceSlot } from "./piece-words";

export const climbableAtGuard: Check = {
  code: "climbable-at-guard",
  class: "hazard",
  title: "A foothold beside a guard",
  page: `A child who climbs on something beside a railing or a drop has that much less of the guard left. Where the plan says
\`near a guard\`, every top is looked for that lies over 5" and up to 36" above the floor: rims, rails, slats, shelves, and the soil
in a box. A top counts from a depth of 15 mm on, with 20 mm of room for toes over it, and up to a slope of 1 in 2 (National
Building Code of Canada 9.8.8.6, from memory); it must be open to a foot from above or from a side. The guard is told as 36"
and as 42" high, the least that is asked for in houses and in other buildings (IRC R312 and IBC 1015, from memory).

Heights are taken from the floor that it stands on. What stands more than 4 ft away lowers no guard. Guards, railings and what
may stand beside them are for local code to judge; the plan can only say why it stands there all the same, with \`accept\`.

\`\`\`sawbuck
plan Curb at the terrace
  near a guard
part curb of 2x6, length 48"
place curb across, on edge, on floor
\`\`\`

\`\`\`sawbuck
plan Curb at the terrace
  near a guard
part curb of 2x6, length 48"
place curb across, flat, on floor
\`\`\``,
  templates: {
    one: "A child finds a foothold on {low}, {from} up, and stands there with {left} left of a guard of {guard}, or {more} of one of {tall}.",
    several:
      "A child climbs from {low}, {from} up, to {high}, {to} up, and stands there with {left} left of a guard of {guard}, or {more} of one of {tall}.",
    guard: "The plan says that it stands near a guard.",
    highest: "{high} is the highest foothold up to {most}.",
    floor: "The guard stands on the same floor.",
    caution: "{caution}",
    level:
      "All its footholds are {from} up: they would be none {down} lower, at {least}, or more than {up} higher, over {most}.",
    things: "Leave {things} no top between {least} and {most} that a foot finds hold on.",
    away: "It must stand more than {far} from the guard.",
  },
  run: (worked) => finding(worked),
};

function finding(worked: Worked): Finding[] {
  const { climb } = worked.guarding;
  if (!climb) return [];
  const { lowest, highest } = climb;
  const same = lowest === highest;
  const [at, high] = [placeOf(lowest, worked), placeOf(highest, worked)];
  const left = (guard: number): Slot => mm(Math.max(0, guard - highest.to));
  return [
    {
      at,
      about: [...new Set([lowest, highest].flatMap((f) => namesOf(f, worked)))],
      says: same ? "one" : "several",
      slots: {
        low: nameOf(lowest, worked),
        from: mm(same ? lowest.to : lowest.from),
        ...(!same && { high: nameOf(highest, worked), to: mm(highest.to) }),
        left: left(GUARDS.house),
        guard: mm(GUARDS.house),
        more: left(GUARDS.tall),
        tall: mm(GUARDS.tall),
      },
      numbers: [
        { name: "lowest foothold", value: mm(lowest.from), source: "worked out" },
        { name: "highest foothold", value: mm(highest.to), source: "worked out" },
        { name: "footholds count from", value: mm(FOOTHOLDS.low), source: cite(footholdBand.source) },
        { name: "footholds count up to", value: mm(FOOTHOLDS.high), source: cite(footholdBand.source) },
        { name: "guard of a house", value: mm(GUARDS.house), source: cite(houseGuard.source) },
        { name: "guard of other buildings", value: mm(GUARDS.tall), source: cite(tallGuard.source) },
      ],
      related: [
        { says: "guard", slots: {}, at: climb.at },
        ...(same
          ? []
          : [
              {
                says: "highest",
                slots: { high: nameOf(highest, worked), most: mm(FOOTHOLDS.high) },
                at: high,
              },
            ]),
      ],
      assumed: [
        { says: "floor", slots: {} },
        { says: "caution", slots: { caution: phrase("guard caution") } },
      ],
      cures: curesOf(worked),
    },
  ];
}

function curesOf({ guarding: { climb } }: Worked): Cure[] {
  const { lowest, things, oneLevel } = climb!;
  const band = { least: mm(FOOTHOLDS.low), most: mm(FOOTHOLDS.high) };
  const level = oneLevel && {
    says: "level",
    slots: { from: mm(lowest.from), up: mm(oneLevel.up), down: mm(oneLevel.down), ...band },
    edits: [],
  };
  return [
    ...(level ? [level] : []),
    { says: "things", slots: { things: { all: things }, ...band }, edits: [] },
    { says: "away", slots: { far: mm(CLEAR_OF_GUARD) }, edits: [] },
  ];
}

const nameOf = ({ piece, box }: Foothold, { space }: Worked): Slot =>
  piece === undefined ? phrase("the fill of", { box: box!.name }) : pieceSlot(space.pieces[piece]!);

const placeOf = ({ piece, box }: Foothold, { space }: Worked): Finding["at"] =>
  piece === undefined ? (box!.fillAt ?? box!.declared.at) : space.pieces[piece]!.at;

function namesOf({ piece, box }: Foothold, { space }: Worked): string[] {
  if (piece === undefined) return [box!.name];
  const { part, owners } = space.pieces[piece]!;
  return [part, ...owners.map((o) => o.name)];
}
