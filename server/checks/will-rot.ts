import { aboveGround, cite, groundContact, lastsInSoil, sapwoodDecay } from "../trade";
import { otherStocks, type Part, type Rot, resistanceOf, rotsOf, type Worked } from "../worked";
import type { Check, Cure, Edit, Finding, Says, Slot } from "./check";
import { phrase } from "./phrases";
import { pieceSlot } from "./piece-words";
import { wetFill } from "./water-words";
import { edit, editAfter } from "./writing";

export const willRot: Check = {
  code: "will-rot",
  class: "warning",
  title: "Wood that rots where it stands",
  page: `Wood rots where it stays wet. Bought boards are largely sapwood, and the sapwood of every wood resists as little as the worst
(${cite(sapwoodDecay.source)}); only a stock line that says \`treated\` or \`heartwood\` promises more.

- **On the ground**, outdoors: wood treated for ground contact (${groundContact.value}, ${cite(groundContact.source)}), or heartwood that resists, such as
  cedar, white oak or black locust. That of ${lastsInSoil.value.join(" or ")} woods lasts some years there, treated wood longer. Oil and paint do not help.
- **Against the wet soil of a box**, its walls, its bottom and what stands in it: the same, or a liner that holds water between
  soil and wood. A box is wet outdoors, and anywhere when it grows something, drains or holds water.
- **On a built floor**, outdoors: paving or a deck dries, but an end that stands on it drinks, and under a board it stays damp. A
  finish helps there, and so does heartwood that resists moderately. A plan that gives a floor limit or a foot limit stands on one.

What is higher up and only rained on may be bare: it dries again. Not judged: panels, since no line tells how they are
treated; what a gate stands on, since it hangs; water that stays in joints. Wood for above the ground (${aboveGround.value}) is sold as treated too: the tag on its end tells.
Where it stands drier than is taken here, say so: \`accept will-rot on leg because it stands on slabs under the eaves\`.

\`\`\`sawbuck
plan Yard stool
  outdoors
stock 2x4, sold 8' $4.20
part leg of 2x4, length 17"
part seat of 2x4, length 12"
place leg upright, wide face left, on floor, 0 from left, 0 from front
place leg upright, wide face left, on floor, 10-1/2" from left, 0 from front
place seat across, flat, on legs, flush with left of legs, flush with front of legs
\`\`\`

\`\`\`sawbuck
plan Yard stool
  outdoors
stock 2x4, treated, sold 8' $6.40
part leg of 2x4, length 17"
part seat of 2x4, length 12"
place leg upright, wide face left, on floor, 0 from left, 0 from front
place leg upright, wide face left, on floor, 10-1/2" from left, 0 from front
place seat across, flat, on legs, flush with left of legs, flush with front of legs
\`\`\``,
  templates: {
    ground: "{Piece} stands on the ground outdoors{more}: {because}.",
    floor: "{Piece} stands bare on the floor outdoors{more}: water stays under it, and {because}.",
    soil: "{Fill} in {box} lies against {parts}: {because}.",
    "soil-ground": "{Fill} in {box} lies against {parts}, and the ground under it as well: {because}.",
    here: "{piece} is placed here.",
    bare: "The plan gives no floor limit: it is taken to stand on bare ground.",
    line: "Line {box} with {roll}, which keeps the {fill} off the wood.",
    stock: "Take {stocks}.",
    ask: `Ask the yard for {sections} treated for ground contact (${groundContact.value} on its tag), or in the heartwood of cedar, white oak or black locust.`,
    "ask-food":
      "Ask the yard for {sections} in the heartwood of cedar, white oak or black locust, since what grows there may be eaten.",
    foot: "Or stand it on a foot that keeps its end dry: a stone, a post base, or a block of treated wood.",
    raise: "Or raise it off the ground, on stones or blocks of treated wood.",
    coat: "Coat {parts} as well, the ends above all.",
    finish: "Oil or paint {parts}, the ends above all.",
  },
  run: (worked) => rotsOf(worked).map((rot) => findingOf(rot, worked)),
};

const names = (parts: readonly Part[]): Slot => ({ all: parts.map((p) => p.name) });

function findingOf(rot: Rot, worked: Worked): Finding {
  const { where, box, parts, pieces, onGround } = rot;
  const [first] = pieces;
  const owners = pieces.flatMap((p) => p.owners.map((o) => o.name));
  const about = [...(box ? [box.name] : []), ...parts.map((p) => p.name), ...owners];
  const common = {
    about: [...new Set(about)],
    assumed: where === "ground" || (where === "soil" && onGround) ? [{ says: "bare", slots: {} }] : [],
    cures: box ? soilCures(rot, worked) : floorCures(rot, worked),
  };
  const because = becauseOf(rot);
  if (box)
    return {
      ...common,
      at: box.declared.at,
      says: onGround ? "soil-ground" : "soil",
      slots: { box: box.name, fill: wetFill(box), parts: names(parts), because },
    };
  const more = pieces.length - 1;
  const slots = {
    piece: pieceSlot(first!),
    more: more > 0 ? phrase("and so do more on it", { n: more, material: rot.materials[0]!.name }) : "",
    because,
  };
  const related = [{ says: "here", slots: { piece: slots.piece }, at: first!.at }];
  return { ...common, at: madeOf(parts[0]!), says: where, slots, related };
}

/** Where a part's line names what it is made of. */
function madeOf({ declared: { at, entry } }: Part): Finding["at"] {
  if (entry.kind !== "part") return at;
  const { start, end } = entry.of;
  return { file: at.file, start, end };
}

/** Why the worst of the woods rots there. */
function becauseOf({ materials, resists }: Rot): Says {
  const { wood, conditions } = materials.find((m) => resistanceOf(m) === resists) ?? materials[0]!;
  if (conditions.includes("heartwood"))
    return phrase(resists === "moderate" ? "heartwood half" : "heartwood little", { wood: wood.name });
  return wood.assumed === "" ? phrase("sapwood of", { wood: wood.name }) : phrase("sapwood");
}

function soilCures(rot: Rot, worked: Worked): Cure[] {
  const stock = stockCure(rot, worked);
  // A liner keeps the soil off, but not the ground.
  return rot.onGround ? [stock] : [linerCure(rot, worked), stock];
}

function linerCure({ box }: Rot, { rolls, linings }: Worked): Cure {
  const { name, grows, declared } = box!;
  const fit = rolls.filter((r) => r.declared && r.holdsWater && !(grows.length > 0 && r.foodSafe === false));
  const roll = (fit.find((r) => r.foodSafe) ?? fit[0])?.name ?? "pond-liner";
  const line = linings.find((l) => l.box === box);
  const { file } = declared.at;
  const edits: Edit[] = line
    ? [edit({ file: line.at.file, start: line.entry.with.start, end: line.entry.with.end }, roll)]
    : [editAfter({ file, start: 0, end: declared.entry.end }, `\nline ${name} with ${roll}`)];
  return {
    says: "line",
    slots: { box: name, roll, fill: wetFill(box!) },
    edits: line || declared.role === "plan" ? edits : [],
  };
}

function stockCure(rot: Rot, worked: Worked): Cure {
  const found = otherStocks(rot, worked);
  if (!found) {
    const sections: Slot = { all: rot.materials.map((m) => m.name) };
    return (rot.box?.grows.length ?? 0) > 0
      ? { says: "ask-food", slots: { sections }, edits: [] }
      : { says: "ask", slots: { sections }, edits: [] };
  }
  const stocks = found.map(({ stock, for: parts }) => {
    const why = stock.conditions.includes("treated") ? "treated" : "heartwood";
    return phrase("stock for", { stock: stock.name, why, parts: names(parts) });
  });
  const edits = found.flatMap(({ stock, for: parts }) => parts.map((p) => edit(madeOf(p), stock.name)));
  return { says: "stock", slots: { stocks: { all: stocks } }, edits };
}

function floorCures(rot: Rot, worked: Worked): Cure[] {
  const stock = stockCure(rot, worked);
  const lift: Cure = { says: rot.onEnd ? "foot" : "raise", slots: {}, edits: [] };
  return rot.where === "floor" ? [coatCure(rot, worked), stock, lift] : [stock, lift];
}

/** The plan's own first finish, on these as well. */
function coatCure({ parts }: Rot, { coats }: Worked): Cure {
  const coat = coats[0];
  const last = coat?.entry.things.at(-1);
  const slots = { parts: names(parts) };
  if (!coat || !last) return { says: "finish", slots, edits: [] };
  const text = parts.map((p) => ` and ${p.name}`).join("");
  const at = { file: coat.at.file, start: last.start, end: last.end };
  return { says: "coat", slots, edits: [editAfter(at, text)] };
}
