import { cite } from "../trade";
import {
  EDGE_RULE,
  edgeDistance,
  fewerScrews,
  isBolt,
  type Joint,
  type NearSide,
  nearSides,
  thinnerScrew,
  type Worked,
} from "../worked";
import type { Check, Cure, Finding } from "./check";
import { phrase } from "./phrases";
import { mm, pieceSlot } from "./piece-words";
import { kindSlot, screwSlot } from "./screw-words";
import { edit, markAbove, tellApart } from "./writing";

export const screwNearEdge: Check = {
  code: "screw-near-edge",
  class: "warning",
  title: "A screw too near the side of a piece",
  page: `A screw that goes in close to an edge, an end or a notch splits the wood there, or breaks out of it. From the center of the
screw to any side beside it there should be 2-1/2 times its diameter: about 7/16" for a #8 screw, 10 mm for a 4 mm screw. The
number is the edge distance of ${cite(EDGE_RULE.source)}. A millimetre less is let be, since nobody sets a screw finer. Near an
end the same sources ask for more before a strength may be claimed; that is not asked for here.

Fewer screws in a row stand further from the ends of the row; a thinner screw needs less; a pilot hole helps in any case.

\`\`\`sawbuck
part rail of 2x4, length 30"
part slat of 1x4, length 12"
place rail across, flat, on floor, 0 from left, 0 from front
place slat front to back, flat, on rail, 9" in from left of rail, flush with front of rail
fasten slat into rail, 5 #8 x 1-5/8" at each crossing
\`\`\`

\`\`\`sawbuck
part rail of 2x4, length 30"
part slat of 1x4, length 12"
place rail across, flat, on floor, 0 from left, 0 from front
place slat front to back, flat, on rail, 9" in from left of rail, flush with front of rail
fasten slat into rail, 2 #8 x 1-5/8" at each crossing
\`\`\``,
  templates: {
    near: "{Screw} stands {distance} from the {side} of {piece}{more}: nearer than {asked} it splits the wood.",
    here: "{piece} is placed here.",
    fewer: "Take {count} in place of {now}: then each stands far enough from every side.",
    thinner: "Take a thinner {kind}: {size} may stand so near.",
    move: "Set it at least {least} from the {side}.",
  },
  run: (worked) =>
    worked.joints.flatMap((joint): Finding[] => {
      const near = isBolt(joint) ? [] : nearSides(joint, worked);
      const [worst] = near;
      return worst ? [findingOf(joint, worst, near.length - 1, worked)] : [];
    }),
};

function findingOf(joint: Joint, worst: NearSide, more: number, worked: Worked): Finding {
  const { display } = worked.settings;
  const { piece, side } = worst;
  const size = joint.size!;
  const asked = mm(edgeDistance(size.diameter.approx));
  const distance = mm(worst.distance);
  const [stands, needed] = tellApart(distance, asked, display);
  const { first, into } = worst.screw.crossing;
  const joined = [first, into].map((i) => worked.space.pieces[i]!);
  return {
    at: joint.sizeAt ?? joint.at,
    about: [...new Set([piece, ...joined].flatMap((p) => [p.part, ...p.owners.map((o) => o.name)]))],
    says: "near",
    slots: {
      screw: screwSlot(joint),
      distance: stands,
      side: phrase(side),
      piece: pieceSlot(piece),
      more: more > 0 ? phrase("and more are too near", { n: more }) : "",
      asked: needed,
    },
    numbers: [
      { name: `to the ${side}`, value: distance, source: "worked out" },
      { name: "least to any side", value: asked, source: cite(EDGE_RULE.source) },
    ],
    related: [{ says: "here", slots: { piece: pieceSlot(piece) }, at: piece.at }],
    cures: curesOf(joint, worst, worked),
  };
}

function curesOf(joint: Joint, worst: NearSide, worked: Worked): Cure[] {
  const fewer = fewerScrews(joint, worked);
  const driven = joint.entry.clauses.find((c) => c.kind === "driven");
  const cures: Cure[] = [];
  if (fewer && driven?.count) {
    const { start, end } = driven.count;
    const now = joint.pattern.split(" ")[0]!;
    const at = { file: joint.at.file, start, end };
    cures.push({ says: "fewer", slots: { count: fewer, now }, edits: [edit(at, String(fewer))] });
  }
  const size = thinnerScrew(joint, worst.distance);
  if (size) cures.push({ says: "thinner", slots: { kind: kindSlot(joint), size }, edits: [] });
  const least = markAbove(mm(edgeDistance(joint.size!.diameter.approx)), worked.settings.display);
  return [...cures, { says: "move", slots: { least, side: phrase(worst.side) }, edits: [] }];
}
