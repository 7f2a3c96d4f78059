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
import type { Material, Notch, Part, Worked } from "../worked";
import { sparesOf } from "../worked";
import { partHolds } from "./hover-holding";
import { COMMON } from "./hover-texts/common";
import { PART } from "./hover-texts/part";
import type { Voice } from "./hover-texts/voice";
import { code, escaped, list, paragraphs, strong } from "./markdown";
import { bothTexts, chainOf, offTheMark, told, valueOr, whyNot } from "./values";

export function describePart(part: Part, worked: Worked, voice: Voice): string {
  const { language, display } = voice;
  const says = PART[language];
  const common = COMMON[language];
  const { entry } = part.declared;
  const of = entry.kind === "part" ? entry.of.text : "";
  const length = ifKnown(part.length);
  const clause = entry.clauses.find((c): c is Clause & { kind: "length" } => c.kind === "length");
  const chain = clause ? chainOf(clause.value, part.declared.at.file, worked, display) : [];
  const points = part.leftEnd || part.rightEnd ? says.measured(part.measured) : "";
  const wood = part.material?.wood;
  return paragraphs(
    says.part(strong(part.name), escaped(of)),
    length
      ? says.length(escaped(bothTexts(length, display)), points, escaped(offTheMark(length, voice)))
      : common.lacks(says.lengthWord, whyNot(part.length, voice)),
    chain.map(code).join("  \n"),
    list([
      ...endLines(part, voice),
      sectionLine(part, voice),
      countLine(part, worked, voice),
      weightLine(part, voice),
      ...part.notches.map((notch) => escaped(notchText(notch, voice))),
      part.fit && fitLine(part, voice),
      part.measuredAssumed ? common.assumed(says.pointsAssumed) : undefined,
      wood?.assumed ? escaped(says.woodAssumed(wood)) : undefined,
    ]),
    partHolds(part.name, worked, voice),
  );
}

function notchText({ kind, along, into, where, distance }: Notch, { language, display }: Voice): string {
  const long = (q: Quantity): string => lengthText(q, display);
  return PART[language].notch(kind, long(along), long(into), where, distance && long(distance));
}

function endLines(part: Part, voice: Voice): string[] {
  const { language, display } = voice;
  const says = PART[language];
  const { leftEnd, rightEnd } = part;
  if (!leftEnd && !rightEnd) return [says.squareEnds];
  const left = endText(leftEnd, voice);
  const right = endText(rightEnd, voice);
  const cuts = left === right ? says.bothEnds(left) : says.eachEnd(left, right);
  const edges =
    leftEnd?.miter && rightEnd?.miter ? says.longPoints(part.edges === "one" ? "one" : "opposite") : "";
  const board = ifKnown(part.cut);
  const long = board && bothTexts(roughly(LENGTH, board.longPoint), display);
  const short = board && bothTexts(roughly(LENGTH, board.shortPoint), display);
  return [
    says.ends(escaped(cuts), edges),
    ...(long && short ? [says.points(escaped(long), escaped(short))] : []),
  ];
}

function endText(end: Part["leftEnd"], { language, display }: Voice): string {
  const says = PART[language];
  if (!end?.miter && !end?.bevel) return says.square;
  const angle = (q: Quantity | undefined): string | undefined => q && quantityText(q, display);
  return says.angled(angle(end.miter), angle(end.bevel));
}

function sectionLine(part: Part, voice: Voice): string {
  const { material, thickness, width } = part;
  const says = PART[voice.language];
  const common = COMMON[voice.language];
  if (!material) return common.lacks(says.section, whyNot(thickness, voice));
  return says.sectionOf(
    told(says.thickness, thickness, voice),
    told(says.width, width, voice),
    part.ripped && material.kind === "board" ? says.ripped : "",
    escaped(material.name),
    escaped(common.sizeOf(material)),
  );
}

function countLine(part: Part, worked: Worked, voice: Voice): string {
  const { make } = worked.settings;
  const says = PART[voice.language];
  const common = COMMON[voice.language];
  const count = ifKnown(part.count);
  if (count === undefined) return common.lacks(says.howMany, whyNot(part.count, voice));
  const rings = worked.rings.filter((r) => r.members.some((m) => m.part === part.name)).map((r) => r.name);
  const from =
    part.counted === "ring"
      ? says.countedIn(escaped(common.each(rings)))
      : part.counted === "placed"
        ? says.countedPlaced
        : says.asTyped;
  const hands = part.left + part.right > 0 ? says.hands(part.left, part.right) : "";
  const copies = make > 1 ? says.copies(count * make, make) : "";
  const spares = sparesOf(count * make, worked.settings);
  return says.counted(count, from, hands, copies, spares > 0 ? says.spares(spares) : "");
}

function weightLine(part: Part, voice: Voice): string {
  const { language, display } = voice;
  const says = PART[language];
  const common = COMMON[language];
  const one = ifKnown(part.weight);
  if (!one) return common.lacks(says.weightWord, whyNot(part.weight, voice));
  const { wood } = part.material!;
  const count = ifKnown(part.count);
  const all =
    count !== undefined && count > 1
      ? says.weightOf(escaped(bothTexts({ ...one, exact: null, approx: one.approx * count }, display)), count)
      : "";
  const of = says.woodAt(common.wood(wood.name, wood.title), wood.moisture, sourceOf(wood, voice));
  return says.weight(
    escaped(bothTexts(one, display)),
    all,
    part.notches.length > 0 ? says.withNotches : "",
    escaped(of),
  );
}

const sourceOf = ({ from }: Material["wood"], { language }: Voice): string =>
  from ? COMMON[language].cite(from) : "";

function fitLine(part: Part, voice: Voice): string {
  const more = part.fit?.allowance;
  const says = PART[voice.language];
  return more
    ? says.toFitWith(escaped(bothTexts(more, voice.display)), valueOr(part.needs, voice))
    : says.toFit;
}

/** A stock, a sheet, or a section that no line declares. */
export function describeMaterial(material: Material, voice: Voice): string {
  const { language, display } = voice;
  const says = PART[language];
  const common = COMMON[language];
  const { wood, thickness } = material;
  const kind = !material.declared ? "board" : material.kind === "sheet" ? "sheet" : "stock";
  const size =
    thickness.state !== "known"
      ? says.sizeNot(whyNot(thickness, voice))
      : material.kind === "sheet"
        ? says.reallyThick(valueOr(thickness, voice))
        : says.really(valueOr(thickness, voice), material.width ? valueOr(material.width, voice) : "");
  const density =
    wood.density === undefined
      ? says.noDensity
      : says.density(
          bothTexts(roughly(DENSITY, wood.density / 1e9), display),
          wood.moisture,
          sourceOf(wood, voice),
        );
  return paragraphs(
    says.material(strong(material.name), kind, size),
    material.source && common.size(escaped(common.sizeOf(material))),
    list([
      says.wood(escaped(common.wood(wood.name, wood.title)), escaped(density)),
      wood.assumed ? escaped(says.woodAssumed(wood)) : undefined,
      material.conditions.length > 0 ? says.conditions(material.conditions) : undefined,
      says.sold(soldText(material, voice)),
      onHandText(material, voice),
      material.kind === "sheet" && material.grain !== "none" ? says.grain(material.grain) : undefined,
      material.kind === "board" && material.sold.length > 0
        ? says.trim(escaped(bothTexts(material.endTrim.value, display)), material.endTrim.assumed)
        : undefined,
    ]),
  );
}

function soldText(material: Material, { language, display }: Voice): string {
  const says = PART[language];
  if (material.sold.length === 0) return says.notSold;
  const offers = material.sold.map((s) => {
    const size = s.width
      ? `${lengthText(s.length, display)} x ${lengthText(s.width, display)}`
      : yardLength(s.length, display);
    return says.offer(size, s.price ? moneyText(s.price) : "");
  });
  return escaped(offers.join(", "));
}

/** Whole feet as the yard says them. */
function yardLength(q: Quantity, display: Display): string {
  const feet = q.exact && fraction.divide(q.exact, unitNamed("ft")!.factor);
  return display.system === "inches" && feet && feet.d === 1n ? `${feet.n}'` : lengthText(q, display);
}

function onHandText(material: Material, { language, display }: Voice): string | undefined {
  if (material.onHand.length === 0) return undefined;
  const says = PART[language];
  const piles = material.onHand.map((p) => {
    const width = p.width ? ` x ${lengthText(p.width, display)}` : "";
    const bad = p.bad.map((b) => says.stretch(lengthText(b.from, display), lengthText(b.to, display)));
    return `${says.pile(p.count, `${lengthText(p.length, display)}${width}`)}${bad.length > 0 ? says.bad(bad) : ""}`;
  });
  const rule = material.kind === "sheet" ? "" : material.salvage === "keep" ? says.keep : says.useUp;
  return says.onHand(escaped(piles.join(", ")), rule);
}
