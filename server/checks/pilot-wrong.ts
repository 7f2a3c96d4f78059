import { boltRoom, boltTight, cite, flatHead, metricPilotShare, pilotBand, softNailHole } from "../trade";
import { type Worked, type WrongHole, type WrongWay, wrongHoles } from "../worked";
import { bitLength, bitSlot, bitWritten } from "./bit-words";
import type { Check, Cure, Finding, ProblemNumber } from "./check";
import { screwSlot } from "./screw-words";
import { edit } from "./writing";

/** Where the rules for a screw's thread come from, each once. */
const RULES = [
  ...new Set([0.42, 0.55, 0.7].flatMap((g) => pilotBand(8, g)!.rules.map((r) => cite(r.source)))),
];

export const pilotWrong: Check = {
  code: "pilot-wrong",
  class: "warning",
  title: "A hole too wide or too narrow for its screw",
  page: `A pilot hole takes the core of the screw and leaves wood for its thread. Tables differ, so any hole within the widest of
them is let be, 1/64" more or less: ${RULES.join("; ")}. For a metric screw, half its diameter (common practice) to
${Math.round(metricPilotShare.value * 100)}% of it (${cite(metricPilotShare.source)}). A wider hole holds little, one as wide as the screw nothing; in a narrower
one the wood may split and the screw twist off. Where a line joins several woods, the widest band of all of them counts.

The clearance hole in the near piece lets the shank through, so that the screw pulls the boards together: a narrower one lets
the thread bite there too and holds them apart, and one as wide as the head (about ${flatHead.value} shanks, ${cite(flatHead.source)}) lets it through.

A nail wants at most ${Math.round(softNailHole.value * 100)}% of its own thickness (${cite(softNailHole.source)}; 90% in hard wood); a bolt from its own (${cite(boltTight.source)}) to
${boltRoom.value.high}" more (${cite(boltRoom.source)}), each 1/64" more or less where that is the wide end.

\`\`\`sawbuck
part post 2 of 4x4, length 30"
part rail 2 of 2x4, length 40"
fasten rail face into post face, 2 #8 x 3" at each end, pilot 3/16"
\`\`\`

\`\`\`sawbuck
part post 2 of 4x4, length 30"
part rail 2 of 2x4, length 40"
fasten rail face into post face, 2 #8 x 3" at each end, pilot 1/8"
\`\`\``,
  templates: {
    "thread-wide":
      "A pilot hole of {typed} is too wide for {screw}: over {limit} the thread finds little wood to hold on to.",
    "no-hold": "A pilot hole of {typed} is as wide as {screw} itself, which then holds nothing.",
    "thread-narrow":
      "A pilot hole of {typed} is too narrow for {screw}: under {limit} the wood may split all the same, or the screw twist off.",
    "nail-wide": "A hole of {typed} is too wide for {screw}: over {limit} the wood no longer grips it.",
    "shank-narrow":
      "In a clearance hole of {typed} the thread of {screw} bites as well: under {limit} it holds the pieces apart as it goes in.",
    "head-through":
      "A clearance hole of {typed} is as wide as the head of {screw}, {limit} or so: the head goes through.",
    "bolt-narrow": "{Screw} does not go into a hole of {typed} without splitting the wood.",
    "bolt-wide":
      "A hole of {typed} is too wide for {screw}: over {limit} the joint shifts before the bolt holds.",
    wood: "{part} is taken as {wood}, since the plan does not say.",
    drill: "Drill {hole} instead.",
  },
  run: (worked) =>
    worked.joints.flatMap((joint) => wrongHoles(joint, worked).map((w) => findingOf(w, worked))),
};

/** Which end of the band was passed. */
const NARROW: readonly WrongWay[] = ["thread-narrow", "shank-narrow", "bolt-narrow"];

function findingOf(wrong: WrongHole, worked: Worked): Finding {
  const { joint, is, hole, typed, at, limit, bit, source, assumed } = wrong;
  const numbers: ProblemNumber[] = [
    { name: `${hole} hole`, value: typed, source: "as written" },
    ...(limit
      ? [
          {
            name: NARROW.includes(is) ? "least" : "most",
            value: bitLength(limit),
            source: cite(source),
          },
        ]
      : []),
  ];
  return {
    at,
    about: [...joint.parts, ...(joint.fastener ? [joint.fastener.name] : [])],
    says: is,
    slots: {
      typed: { full: typed },
      screw: screwSlot(joint),
      limit: limit ? bitSlot(limit) : "",
    },
    numbers,
    assumed: assumed.map((part) => ({
      says: "wood",
      slots: { part: part.name, wood: part.material!.wood.name },
    })),
    cures: bit ? cureOf(wrong, worked) : [],
  };
}

const cureOf = ({ bit, at }: WrongHole, { settings: { display } }: Worked): Cure[] => [
  { says: "drill", slots: { hole: bitSlot(bit!) }, edits: [edit(at, bitWritten(bit!, display))] },
];
