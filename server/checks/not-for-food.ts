import { plainStock, type Unfit, type Worked } from "../worked";
import type { Check, Cure, Finding } from "./check";
import { edit, editAfter } from "./writing";

export const notForFood: Check = {
  code: "not-for-food",
  class: "hazard",
  title: "Soil for food against what is not fit for it",
  page: `Where a box \`grows\` something that is eaten, its soil takes up what its walls, its bottom and its liner give off. Told are
old paint, which may hold lead; wood that is only on hand and of which neither \`treated\` nor \`untreated\` is said, since ties,
pallets and old posts may be full of creosote or arsenic; treated wood that is only on hand, since until the end of 2003 that
was mostly arsenic; and a liner of which is said that it is not for food. Treated wood as it is sold today is let be, as extension
services do. Behind a liner that lets no water through no soil touches the wood.

Which plants are eaten is read from a table (common practice). An unknown plant, a liner of which nothing is said and what a
finish gives off stay unknown, and stand on the not-checked list.

\`\`\`sawbuck
stock 1x6, species western-redcedar, heartwood
stock old-door of 1x6, species western-redcedar, heartwood, painted, on hand 2 of 40"
part side 2 of old-door, length 30"
part end 2 of 1x6, length 12"
box bed, walls side and end, inside 30" x 10-1/2" x 5-1/2", filled with soil, grows lettuce
\`\`\`

\`\`\`sawbuck
stock 1x6, species western-redcedar, heartwood
part side 2 of 1x6, length 30"
part end 2 of 1x6, length 12"
box bed, walls side and end, inside 30" x 10-1/2" x 5-1/2", filled with soil, grows lettuce
\`\`\``,
  templates: {
    painted:
      "What {box} grows is eaten ({plants}), and its soil lies against {material}, with old paint on it that may hold lead.",
    unknown:
      "What {box} grows is eaten ({plants}), and its soil lies against {material}, salvage of which nobody says whether it was treated, and with what.",
    "old treated":
      "What {box} grows is eaten ({plants}), and its soil lies against {material}, treated wood that may be old enough to hold arsenic.",
    liner:
      "What {box} grows is eaten ({plants}), and its soil lies on {roll}, which is said not to be for food.",
    grows: "This is what grows there.",
    stock: "This is all that is said of {material}.",
    roll: "This is what is said of {roll}.",
    line: "Line {box} with {roll}",
    reline: "Line {box} with {roll} instead",
    plain: "Cut {part} from {stock}",
    "no roll":
      "Line {box} with a roll of which “food safe” is said and which lets no water through: there is none here.",
    "no such roll": "Line {box} with a roll of which “food safe” is said: there is none here.",
    new: "Cut {parts} from wood that is bought for it.",
  },
  run: (worked) => worked.guarding.food.unfit.map((one) => findingOf(one, worked)),
};

function findingOf(one: Unfit, worked: Worked): Finding {
  const { why, box, plants, at, growsAt, material, lining, parts } = one;
  const roll = lining?.roll;
  const said = material?.declared ?? roll?.declared;
  return {
    at,
    about: [
      box.name,
      ...parts.map((p) => p.name),
      ...(material ? [material.name] : []),
      ...(roll ? [roll.name] : []),
    ],
    says: why,
    slots: {
      plants: { all: plants },
      box: box.name,
      ...(material && { material: material.name }),
      ...(roll && { roll: roll.name }),
    },
    related: [
      { says: "grows", slots: {}, at: growsAt },
      ...(said
        ? [
            material
              ? { says: "stock", slots: { material: material.name }, at: said.at }
              : { says: "roll", slots: { roll: roll!.name }, at: said.at },
          ]
        : []),
    ],
    cures: lining ? linerCures(one) : [...liningCures(one, worked), ...stockCures(one, worked)],
  };
}

/** Another roll in the line's place, which must line this box alone. */
function linerCures({ box, fitRolls, lining, at }: Unfit): Cure[] {
  const alone = lining!.entry.things.length === 1;
  if (fitRolls.length === 0) return [{ says: "no such roll", slots: { box: box.name }, edits: [] }];
  return fitRolls.map((roll) => ({
    says: "reline",
    slots: { box: box.name, roll: roll.name },
    edits: alone ? [edit(at, roll.name)] : [],
  }));
}

/** A line of its own after the box, in the plan itself, or another roll in that it has. */
function liningCures({ box, fitRolls, lined }: Unfit, { loaded }: Worked): Cure[] {
  if (fitRolls.length === 0) return [{ says: "no roll", slots: { box: box.name }, edits: [] }];
  const { file } = loaded.files[0]!;
  const { entry, at } = box.declared;
  const own = at.file === file;
  return fitRolls.map((roll) => {
    const [line] = lined;
    const slots = { box: box.name, roll: roll.name };
    if (line) {
      const { with: now, things } = line.entry;
      const place = { file: line.at.file, start: now.start, end: now.end };
      return { says: "reline", slots, edits: things.length === 1 ? [edit(place, roll.name)] : [] };
    }
    const edits = own
      ? [editAfter({ file, start: entry.start, end: entry.end }, `\nline ${box.name} with ${roll.name}`)]
      : [];
    return { says: "line", slots, edits };
  });
}

/** The same parts from plain boards of their size, where there are some for all of them. */
function stockCures({ parts }: Unfit, worked: Worked): Cure[] {
  const plain = parts.map((part) => plainStock(part, worked));
  const [stock] = plain;
  if (stock === undefined || plain.some((p) => p === undefined))
    return [{ says: "new", slots: { parts: { all: parts.map((p) => p.name) } }, edits: [] }];
  const edits = parts.flatMap(({ declared: { entry, at } }) =>
    entry.kind === "part" ? [edit({ file: at.file, start: entry.of.start, end: entry.of.end }, stock)] : [],
  );
  return [{ says: "plain", slots: { part: { all: parts.map((p) => p.name) }, stock }, edits }];
}
