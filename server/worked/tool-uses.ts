/** What each tool of a plan is taken up for, in the builder's words. */
import { ifKnown } from "../plan";
import type { ToolKey } from "../trade";
import { type Display, quantityText } from "../units";
import { isHung } from "./anchoring";
import { isBored } from "./bits-needed";
import type { Joint } from "./joints";
import type { Operations, SlantedEnd } from "./operations";
import type { Part } from "./parts";
import type { Angles } from "./shapes";
import type { ShopWords } from "./shop-words";
import type { Worked } from "./work";

/** What a tool is taken up for; nothing when the plan does not call for it. */
export function usesOf(key: ToolKey, does: Operations, worked: Worked, words: ShopWords): string[] {
  const { display } = worked.settings;
  const { uses, titleOf } = words;
  const sawn = [...does.boards, ...does.panels];
  const power = does.saws.power !== "no";
  const fastened = [...does.screwed, ...does.nailed, ...does.bolted];
  switch (key) {
    case "eyes":
      return sawn.length + fastened.length > 0 ? [uses.working] : [];
    case "ears":
      return sawn.length > 0 && power ? [uses.machine] : [];
    case "dust":
      return sawn.length > 0 ? [uses.dust] : [];
    case "pincers":
      return does.salvage.map((m) => uses.nailsIn(m.name));
    case "sawhorses":
    case "tape":
    case "pencil":
      return sawn.length > 0 ? [uses.cuts] : [];
    case "square":
      return sawn.length > 0
        ? [uses.squareEnds, uses.corners].slice(0, worked.joints.length > 0 ? 2 : 1)
        : [];
    case "crosscut":
      return does.boards.map(nameOf);
    case "miter":
    case "bevel":
    case "compound":
      return slantsOf(
        does.slanted.filter((s) => s.kind === key),
        display,
        words,
      );
    case "rip":
      return does.ripped.map((p) => uses.ripped(p.name, quantityText(ifKnown(p.width)!, display)));
    case "sheet":
      return does.panels.map((p) => panelText(p, display, words));
    case "chisel":
      return does.notched.map((p) => uses.notches([...new Set(p.notches.map((n) => n.kind))], p.name));
    case "clamps":
      return clampedOf(does, worked, words);
    case "drill":
      return boredIn(worked, fastened, words);
    case "driver":
      return does.screwed.map(titleOf);
    case "hammer":
      return does.nailed.map(titleOf);
    case "wrench":
      return does.bolted.map(titleOf);
    case "level":
      return standing(worked, words);
    case "brush":
    case "rags":
      return does.coats.map((c) => uses.coat(c.with, c.things));
    case "knife":
    case "stapler":
      return does.liners.map((l) => uses.liner(l.with, l.things));
  }
}

/** `cheek, right end 10.65°` */
function panelText({ name, leftEnd, rightEnd }: Part, display: Display, { uses }: ShopWords): string {
  const end = (word: string, a: Angles | undefined): string[] =>
    [a?.miter, a?.bevel].flatMap((q) => (q && q.approx > 0 ? [`${word} ${quantityText(q, display)}`] : []));
  const ends =
    leftEnd === rightEnd
      ? end(uses.ends.both, leftEnd)
      : [...end(uses.ends.left, leftEnd), ...end(uses.ends.right, rightEnd)];
  return [name, ...ends].join(", ");
}

/** Joints with holes, and boxes that drain by them. */
const boredIn = (worked: Worked, fastened: readonly Joint[], { titleOf, uses }: ShopWords): string[] => [
  ...fastened.filter((j) => isBored(j, worked)).map(titleOf),
  ...worked.drainage.filter(({ how }) => how === "holes").map(({ box }) => uses.drains(box.name)),
];

const nameOf = ({ name }: Part): string => name;

/** `miters of cap-side and cap-end, 45°`: parts with the same cut are told together. */
function slantsOf(ends: readonly SlantedEnd[], display: Display, { uses }: ShopWords): string[] {
  interface Cut extends Pick<SlantedEnd, "kind"> {
    readonly miter: string | undefined;
    readonly bevel: string | undefined;
    readonly names: Set<string>;
  }
  const groups = new Map<string, Cut>();
  for (const { part, angles, kind } of ends) {
    const [miter, bevel] = [angles.miter, angles.bevel].map((a) => a && quantityText(a, display));
    const key = JSON.stringify([kind, miter, bevel]);
    const group = groups.get(key) ?? { kind, miter, bevel, names: new Set() };
    groups.set(key, group);
    group.names.add(part.name);
  }
  return [...groups.values()].map(({ kind, miter, bevel, names }) =>
    uses.slants(kind, [...names], miter, bevel),
  );
}

function clampedOf({ glued, short }: Operations, { rings }: Worked, { titleOf, uses }: ShopWords): string[] {
  return [
    ...glued.map(titleOf),
    ...rings.map((r) => uses.ring(r.name)),
    ...(short.length > 0 ? [uses.sawing(short.map(nameOf))] : []),
  ];
}

/** What must stand plumb or level: anything on legs or on a wall, with all that is in it; else boxes. */
function standing(worked: Worked, { uses }: ShopWords): string[] {
  const { boxes, frames, settings } = worked;
  return frames.length > 0 || isHung(worked) ? [settings.title || uses.uprights] : boxes.map((b) => b.name);
}
