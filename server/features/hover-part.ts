/** What a hover says of a part, and of the stock or sheet it is cut from. */
import type { Clause } from "../../grammar/tree";
import { ifKnown } from "../plan";
import {
  DENSITY,
  type Display,
  fraction,
  LENGTH,
  lengthText,
  moneyText,
  type Quantity,
  quantityText,
  roughly,
  unitNamed,
} from "../units";
import type { Material, Part, Worked } from "../worked";
import { sparesOf } from "../worked";
import { partHolds } from "./hover-holding";
import { code, escaped, list, paragraphs, strong } from "./markdown";
import { bothTexts, chainOf, offTheMark, told, valueOr, whyNot } from "./values";

export function describePart(part: Part, worked: Worked): string {
  const { display } = worked.settings;
  const { entry } = part.declared;
  const of = entry.kind === "part" ? entry.of.text : "";
  const length = ifKnown(part.length);
  const clause = entry.clauses.find((c): c is Clause & { kind: "length" } => c.kind === "length");
  const chain = clause ? chainOf(clause.value, part.declared.at.file, worked) : [];
  const words = part.leftEnd || part.rightEnd ? `, ${POINTS[part.measured]}` : "";
  return paragraphs(
    `${strong(part.name)}, a part cut from ${escaped(of)}`,
    length
      ? `Length **${escaped(bothTexts(length, display))}**${words}${escaped(offTheMark(length, display))}`
      : `Length: ${whyNot(part.length)}`,
    chain.map(code).join("  \n"),
    list([
      ...endLines(part, display),
      sectionLine(part, display),
      countLine(part, worked),
      weightLine(part, display),
      ...part.notches.map((n) => {
        const where = n.distance ? `${lengthText(n.distance, display)} ${n.where}` : n.where;
        return `A ${n.kind} ${escaped(`${lengthText(n.along, display)} along and ${lengthText(n.into, display)} in, ${where}`)}; not fitted to anything yet`;
      }),
      part.fit && fitLine(part, display),
      part.measuredAssumed
        ? "Taken for granted: the length runs from long point to long point, since the plan does not say"
        : undefined,
      part.material?.wood.assumed ? `Wood ${escaped(part.material.wood.assumed)}` : undefined,
    ]),
    partHolds(part.name, worked),
  );
}

const POINTS = {
  overall: "tip to tip",
  "long to long": "long point to long point",
  "short to short": "short point to short point",
  "long to short": "long point to short point",
} as const;

function endLines(part: Part, display: Display): string[] {
  const { leftEnd, rightEnd } = part;
  if (!leftEnd && !rightEnd) return ["Ends: square"];
  const left = endText(leftEnd, display);
  const right = endText(rightEnd, display);
  const cuts = left === right ? `${left} at both ends` : `left ${left}, right ${right}`;
  const edges =
    leftEnd?.miter && rightEnd?.miter
      ? `, long points on ${part.edges === "one" ? "one edge" : "opposite edges"}`
      : "";
  const board = ifKnown(part.cut);
  const long = board && bothTexts(roughly(LENGTH, board.longPoint), display);
  const short = board && bothTexts(roughly(LENGTH, board.shortPoint), display);
  return [
    `Ends: ${escaped(cuts)}${edges}`,
    ...(long && short
      ? [`Long point to long point ${escaped(long)}, short point to short point ${escaped(short)}`]
      : []),
  ];
}

function endText(end: Part["leftEnd"], display: Display): string {
  const cuts = [
    end?.miter && `${quantityText(end.miter, display)} miter`,
    end?.bevel && `${quantityText(end.bevel, display)} bevel`,
  ].filter(Boolean);
  return cuts.length > 0 ? cuts.join(" and ") : "square";
}

function sectionLine(part: Part, display: Display): string {
  const { material, thickness, width } = part;
  if (!material) return `Section: ${whyNot(thickness)}`;
  const from = material.source ? `; ${escaped(material.source)}` : "";
  const ripped = part.ripped && material.kind === "board" ? "ripped to that width, " : "";
  return `${told("Thickness", thickness, display)}, ${told("width", width, display)}; ${ripped}${escaped(material.name)}${from}`;
}

function countLine(part: Part, worked: Worked): string {
  const { make } = worked.settings;
  const count = ifKnown(part.count);
  if (count === undefined) return `How many: ${whyNot(part.count)}`;
  const rings = worked.rings.filter((r) => r.members.some((m) => m.part === part.name)).map((r) => r.name);
  const from =
    part.counted === "ring"
      ? `counted in ${escaped(rings.join(" and "))}`
      : part.counted === "placed"
        ? "counted where it is placed"
        : "as typed";
  const hands = part.left + part.right > 0 ? `, ${part.left} left and ${part.right} right` : "";
  const copies = make > 1 ? `; ${count * make} for ${make} of the whole thing` : "";
  const spares = sparesOf(count * make, worked.settings);
  return `How many: ${count}, ${from}${hands}${copies}${spares > 0 ? `, and ${spares} spare` : ""}`;
}

function weightLine(part: Part, display: Display): string {
  const one = ifKnown(part.weight);
  if (!one) return `Weight: ${whyNot(part.weight)}`;
  const { wood } = part.material!;
  const count = ifKnown(part.count);
  const all =
    count !== undefined && count > 1
      ? `, ${escaped(bothTexts({ ...one, exact: null, approx: one.approx * count }, display))} for ${count}`
      : "";
  const notches = part.notches.length > 0 ? ", notches not taken off" : "";
  return `Weight, an estimate: ${escaped(bothTexts(one, display))}${all}${notches}; ${escaped(`${wood.title} at ${wood.moisture}% moisture, ${wood.source}`)}`;
}

function fitLine(part: Part, display: Display): string {
  const more = part.fit?.allowance;
  return more
    ? `Cut to fit when the rest stands: ${escaped(bothTexts(more, display))} is left on, so cut it at ${valueOr(part.needs, display)} first`
    : "Cut to fit when the rest stands";
}

/** A stock, a sheet, or a section that no line declares. */
export function describeMaterial(material: Material, worked: Worked): string {
  const { display } = worked.settings;
  const { wood } = material;
  const kind = !material.declared ? "a board by its name" : material.kind === "sheet" ? "a sheet" : "a stock";
  const size =
    material.thickness.state !== "known"
      ? `its size is ${whyNot(material.thickness)}`
      : material.kind === "sheet"
        ? `really ${valueOr(material.thickness, display)} thick`
        : `really ${valueOr(material.thickness, display)} x ${material.width ? valueOr(material.width, display) : ""}`;
  const density =
    wood.density === undefined
      ? "its weight is in no table"
      : `${bothTexts(roughly(DENSITY, wood.density / 1e9), display)} at ${wood.moisture}% moisture, ${wood.source}`;
  return paragraphs(
    `${strong(material.name)}, ${kind}: ${size}`,
    material.source && `Size: ${escaped(material.source)}`,
    list([
      `Wood: ${escaped(wood.title)}, ${escaped(density)}`,
      wood.assumed ? `Wood ${escaped(wood.assumed)}` : undefined,
      material.conditions.length > 0 ? `Said of it: ${material.conditions.join(", ")}` : undefined,
      `Sold: ${soldText(material, display)}`,
      onHandText(material, display),
      material.kind === "sheet" && material.grain !== "none"
        ? `Grain along its ${material.grain}`
        : undefined,
      material.kind === "board" && material.sold.length > 0
        ? `${escaped(bothTexts(material.endTrim.value, display))} is trimmed off a bought end${material.endTrim.assumed ? ", taken for granted" : ""}`
        : undefined,
    ]),
  );
}

function soldText(material: Material, display: Display): string {
  if (material.sold.length === 0) return "neither the plan nor the shop says in what lengths";
  const offers = material.sold.map((s) => {
    const size = s.width
      ? `${lengthText(s.length, display)} x ${lengthText(s.width, display)}`
      : yardLength(s.length, display);
    return `${size} ${s.price ? `for ${moneyText(s.price)}` : "without a price"}`;
  });
  return escaped(offers.join(", "));
}

/** Whole feet as the yard says them. */
function yardLength(q: Quantity, display: Display): string {
  const feet = q.exact && fraction.divide(q.exact, unitNamed("ft")!.factor);
  return display.system === "inches" && feet && feet.d === 1n ? `${feet.n}'` : lengthText(q, display);
}

function onHandText(material: Material, display: Display): string | undefined {
  if (material.onHand.length === 0) return undefined;
  const piles = material.onHand.map((p) => {
    const width = p.width ? ` x ${lengthText(p.width, display)}` : "";
    const bad = p.bad
      .map((b) => `${lengthText(b.from, display)} to ${lengthText(b.to, display)}`)
      .join(" and ");
    return `${p.count} of ${lengthText(p.length, display)}${width}${bad ? ` (bad from ${bad})` : ""}`;
  });
  const rule =
    material.kind === "sheet"
      ? ""
      : material.salvage === "keep"
        ? "; kept for what nothing sold can do"
        : "; used up first";
  return `On hand: ${escaped(piles.join(", "))}${rule}`;
}
