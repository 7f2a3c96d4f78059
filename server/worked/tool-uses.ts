/** What each tool of a plan is taken up for, in the builder's words. */
import { ifKnown } from "../plan";
import type { ToolKey } from "../trade";
import { type Display, quantityText } from "../units";
import { isBored } from "./bits-needed";
import { drainsOf } from "./drains";
import type { Joint } from "./joints";
import { listed, type Operations, type SlantedEnd } from "./operations";
import type { Angles, Part } from "./parts";
import type { Worked } from "./work";

/** What a tool is taken up for; nothing when the plan does not call for it. */
export function usesOf(key: ToolKey, does: Operations, worked: Worked): string[] {
  const { display } = worked.settings;
  const sawn = [...does.boards, ...does.panels];
  const power = does.saws.power !== "no";
  const fastened = [...does.screwed, ...does.nailed, ...does.bolted];
  switch (key) {
    case "eyes":
      return sawn.length + fastened.length > 0 ? ["sawing, drilling and driving"] : [];
    case "ears":
      return sawn.length > 0 && power ? ["sawing by machine"] : [];
    case "dust":
      return sawn.length > 0 ? ["sawing and sanding"] : [];
    case "sawhorses":
    case "tape":
    case "pencil":
      return sawn.length > 0 ? ["every cut"] : [];
    case "square":
      return sawn.length > 0 ? ["square ends", "corners"].slice(0, worked.joints.length > 0 ? 2 : 1) : [];
    case "crosscut":
      return does.boards.map(nameOf);
    case "miter":
    case "bevel":
    case "compound":
      return slantsOf(
        does.slanted.filter((s) => s.kind === key),
        display,
      );
    case "rip":
      return does.ripped.map((p) => `${p.name}, ${quantityText(ifKnown(p.width)!, display)} wide`);
    case "sheet":
      return does.panels.map((p) => panelText(p, display));
    case "chisel":
      return does.notched.map(
        (p) => `${listed([...new Set(p.notches.map((n) => `${n.kind}es`))])} of ${p.name}`,
      );
    case "clamps":
      return clampedOf(does, worked);
    case "drill":
      return boredIn(worked, fastened);
    case "driver":
      return does.screwed.map((j) => j.title);
    case "hammer":
      return does.nailed.map((j) => j.title);
    case "wrench":
      return does.bolted.map((j) => j.title);
    case "level":
      return standing(worked);
    case "brush":
    case "rags":
      return does.coats.map((c) => `${c.with} on ${listed(c.things)}`);
    case "knife":
    case "stapler":
      return does.liners.map((l) => `${l.with} in ${listed(l.things)}`);
  }
}

/** `cheek, right end 10.65°` */
function panelText({ name, leftEnd, rightEnd }: Part, display: Display): string {
  const end = (word: string, a: Angles | undefined): string[] =>
    [a?.miter, a?.bevel].flatMap((q) => (q && q.approx > 0 ? [`${word} ${quantityText(q, display)}`] : []));
  const ends =
    leftEnd === rightEnd
      ? end("both ends", leftEnd)
      : [...end("left end", leftEnd), ...end("right end", rightEnd)];
  return [name, ...ends].join(", ");
}

/** Joints with holes, and boxes that drain by them. */
const boredIn = (worked: Worked, fastened: readonly Joint[]): string[] => [
  ...fastened.filter((j) => isBored(j, worked)).map((j) => j.title),
  ...drainsOf(worked).map(({ box }) => `drain holes of ${box.name}`),
];

const nameOf = ({ name }: Part): string => name;

/** `miters of cap-side and cap-end, 45°`: parts with the same cut are told together. */
function slantsOf(ends: readonly SlantedEnd[], display: Display): string[] {
  const groups = new Map<string, Set<string>>();
  for (const { part, angles, kind } of ends) {
    const [miter, bevel] = [angles.miter, angles.bevel].map((a) => a && quantityText(a, display));
    const cut = kind === "compound" ? `miter ${miter} with bevel ${bevel}` : (miter ?? bevel)!;
    const group = groups.get(cut);
    if (group) group.add(part.name);
    else groups.set(cut, new Set([part.name]));
  }
  const word = ends[0]?.kind === "compound" ? "slanted ends" : `${ends[0]?.kind}s`;
  return [...groups].map(([cut, names]) => `${word} of ${listed([...names])}, ${cut}`);
}

function clampedOf({ glued, short }: Operations, { rings }: Worked): string[] {
  return [
    ...glued.map((j) => j.title),
    ...rings.map((r) => `${r.name} while it is joined`),
    ...(short.length > 0 ? [`sawing ${listed(short.map(nameOf))}`] : []),
  ];
}

/** What must stand plumb or level: boxes, and anything on legs. */
function standing({ boxes, frames, settings }: Worked): string[] {
  return [...boxes.map((b) => b.name), ...(frames.length > 0 ? [settings.title || "the uprights"] : [])];
}
