import { cite, fasteningGravity, leadHoleOver, species, thinBoard } from "../trade";
import { count } from "../units";
import { END_RULE, ROW_RULE, type Split, splitOf, THIN_BOARD, type Worked } from "../worked";
import { bitSlot, bitWritten } from "./bit-words";
import type { Check, Cure, Finding, ProblemNumber } from "./check";
import { phrase } from "./phrases";
import { mm, pieceSlot } from "./piece-words";
import { screwSlot } from "./screw-words";
import { editAfter, markAbove, tellApart } from "./writing";

export const screwSplits: Check = {
  code: "screw-splits",
  class: "warning",
  title: "A screw without a pilot hole where wood splits",
  page: `A screw drives the fibers apart. In the middle of a soft board they close round it; near an end nothing holds them
together, and the board splits. Told once for each line that gives no \`pilot\`:

- nearer to an end than ${END_RULE.value.bored} times the screw's diameter, about 13/16" for a #8 screw: there even a bored screw may stand no nearer
  (${cite(END_RULE.source)});
- as a hint, nearer than ${END_RULE.value.unbored} times its diameter, which the same guide asks for without a hole, in boards up to 3/4" thick of wood
  that splits easily (cedar, redwood, oak) or has a specific gravity of ${leadHoleOver.value} and more;
- three screws and more in a row along the grain, closer than ${ROW_RULE.value.bored} times the diameter (the same guide);
- anywhere in wood denser than ${leadHoleOver.value} (${cite(leadHoleOver.source)});
- anywhere in a board thinner than ${thinBoard.value}" (${cite(thinBoard.source)});
- in end grain, once the plan accepts \`screw-in-end-grain\`.

Screws that stand so near a side that a hole does not help are told by \`screw-near-edge\`. Nails, bolts and panels are not
looked at. Screws with a drilling tip split less; whether yours do is told by the box, and the line may be accepted.

\`\`\`sawbuck
part rail of 2x4, length 30"
part slat of 1x4, length 12"
place rail across, on edge, on floor, 0 from left, 0 from front
place rail across, on edge, on floor, 0 from left, 10-1/2" from front
place slat front to back, flat, on rails, 3" in from left of rails, flush with front of rails, 6 across, 1" apart
fasten slat into rail, 2 #8 x 2" at each crossing
\`\`\`

\`\`\`sawbuck
part rail of 2x4, length 30"
part slat of 1x4, length 12"
place rail across, on edge, on floor, 0 from left, 0 from front
place rail across, on edge, on floor, 0 from left, 10-1/2" from front
place slat front to back, flat, on rails, 3" in from left of rails, flush with front of rails, 6 across, 1" apart
fasten slat into rail, 2 #8 x 2" at each crossing, pilot 3/32"
\`\`\``,
  templates: {
    end: "{Screw} goes into {piece} {distance} from its end{more}, with no pilot hole: nearer than {asked} it is apt to split the wood.",
    brittle:
      "{Screw} goes into {piece} {distance} from its end{more}, with no pilot hole: {wood} splits easily, and wants a hole nearer to an end than {asked}.",
    row: "{Screw} stands {distance} from the next in a row along the grain of {piece}{more}, with no pilot hole: closer than {asked} they are apt to split it from one to the next.",
    dense:
      "{part} is of {wood}, with a specific gravity of {gravity}: over {limit} {screw} wants a pilot hole, or the wood splits and the screw twists off.",
    thin: "{part} is {thick} thick: {screw} is apt to split a board under {asked} without a pilot hole.",
    along: "{Screw} goes into the end of {part} with no pilot hole: along the fibers it drives them apart.",
    here: "{piece} is placed here.",
    pilot: "Drill {hole} first: write {to}",
    move: "Or set it at least {least} from the end.",
    spread: "Or set them at least {least} apart, or stagger them across the grain.",
  },
  run: (worked) =>
    worked.joints.flatMap((joint): Finding[] => {
      const split = splitOf(joint, worked);
      return split ? [findingOf(split, worked)] : [];
    }),
};

function findingOf(split: Split, worked: Worked): Finding {
  const { joint, part, why } = split;
  const wood = part.material?.wood.name ?? "";
  const about = [...joint.parts, ...(joint.fastener ? [joint.fastener.name] : [])];
  const common = { at: joint.sizeAt ?? joint.at, says: why, cures: curesOf(split, worked) };
  const slots = { screw: screwSlot(joint), part: part.name, wood };
  if (why === "along") return { ...common, about, slots };
  if (why === "thin") {
    const [thick, asked] = tellApart(mm(split.thick), THIN_BOARD, worked.settings.display);
    const numbers = [
      { name: `${part.name}, thick`, value: mm(split.thick), source: part.material?.source ?? "" },
      { name: "least without a hole", value: THIN_BOARD, source: cite(thinBoard.source) },
    ];
    return { ...common, about, slots: { ...slots, thick, asked }, numbers };
  }
  if (why === "dense") {
    const { gravity } = split;
    const from = species(wood) && fasteningGravity(species(wood)!)?.from;
    const numbers = [
      { name: `specific gravity of ${wood}`, value: count(gravity), source: from ? cite(from.source) : "" },
      {
        name: "most without a hole",
        value: count(leadHoleOver.value),
        source: cite(leadHoleOver.source),
      },
    ];
    const figures = { gravity: String(gravity), limit: String(leadHoleOver.value) };
    return { ...common, about, slots: { ...slots, ...figures }, numbers };
  }
  const { piece, limit, more } = split;
  const [distance, asked] = tellApart(mm(split.distance), mm(limit), worked.settings.display);
  const rule = why === "row" ? ROW_RULE : END_RULE;
  const numbers: ProblemNumber[] = [
    {
      name: why === "row" ? "to the next screw" : "to the end",
      value: mm(split.distance),
      source: "worked out",
    },
    { name: "least without a hole", value: mm(limit), source: cite(rule.source) },
  ];
  return {
    ...common,
    ...(why === "brittle" && { class: "hint" as const }),
    about: [...new Set([...about, ...piece.owners.map((o) => o.name)])],
    slots: {
      ...slots,
      piece: pieceSlot(piece),
      distance,
      asked,
      more: more > 0 ? phrase("as do more", { n: more }) : "",
    },
    numbers,
    related: [{ says: "here", slots: { piece: pieceSlot(piece) }, at: piece.at }],
  };
}

function curesOf(split: Split, { settings: { display } }: Worked): Cure[] {
  const { joint, bit, why } = split;
  const cures: Cure[] = [];
  if (bit) {
    const to = `pilot ${bitWritten(bit, display)}`;
    cures.push({ says: "pilot", slots: { hole: bitSlot(bit), to }, edits: [editAfter(joint.at, `, ${to}`)] });
  }
  if (why !== "end" && why !== "brittle" && why !== "row") return cures;
  const least = markAbove(mm(split.limit), display);
  return [...cures, { says: why === "row" ? "spread" : "move", slots: { least }, edits: [] }];
}
