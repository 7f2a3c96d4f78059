/** What a hover says of fasteners, joints and rings. */
import type { JointSide } from "../../grammar/tree";
import { problemText } from "../checks";
import { gridWords, screwsInWords } from "../checks/set-out-words";
import { setOut } from "../checks/writing";
import { ifKnown } from "../plan";
import type { Ring as Closing } from "../solid/ring";
import { LENGTH, lengthText, moneyText, quantityText, roughly } from "../units";
import { type Fastener, type Joint, type Path, type Ring, setOutOf, type Worked } from "../worked";
import type { Checked } from "./checked";
import { jointHolds } from "./hover-holding";
import { escaped, list, paragraphs, strong } from "./markdown";
import { bothTexts, exactText, fineTexts, whyNot } from "./values";

export function describeFastener(fastener: Fastener, worked: Worked): string {
  const { display } = worked.settings;
  const { size, pack } = fastener;
  const used = worked.joints.filter((j) => j.fastener === fastener);
  const kind = [fastener.coating, fastener.kind].filter(Boolean).join(" ");
  return paragraphs(
    `${strong(fastener.name)}, a fastener: ${escaped([kind, size?.gauge !== undefined ? size.text : ""].filter(Boolean).join(", "))}`,
    size
      ? `Length ${escaped(bothTexts(size.length, display))}, shank ${escaped(fineTexts(size.diameter, display))}; ${escaped(size.source)}`
      : "Its size is not said",
    list([
      pack
        ? `Sold in boxes of ${pack.count}${pack.price ? ` for ${escaped(moneyText(pack.price))}` : ", without a price"}`
        : undefined,
      fastener.onHand > 0 ? `On hand: ${fastener.onHand}` : undefined,
      ...used
        .slice(0, MOST_PATHS)
        .map((j) => `Used in ${escaped(j.title)}: ${countText(j, worked.settings)}`),
      used.length > MOST_PATHS ? `and in ${used.length - MOST_PATHS} more joints` : undefined,
      used.length === 0 ? "No joint here uses it" : undefined,
    ]),
  );
}

/** The most ways through a joint that are told. */
const MOST_PATHS = 8;

export function describeJoint(joint: Joint, worked: Worked): string {
  const { display } = worked.settings;
  const { size, angle } = joint;
  if (joint.entry.kind === "glue")
    return paragraphs(`**Glued**: ${escaped(joint.title)}`, "What glue holds is not checked.");
  const name = joint.fastener ? ` (${escaped(joint.fastener.name)})` : "";
  const slant = angle.approx > 0 ? `, driven ${escaped(quantityText(angle, display))} off square` : "";
  const { paths } = joint;
  return paragraphs(
    `**Fastened**: ${escaped(joint.title)}`,
    size
      ? `${escaped(size.text)}${name}, ${escaped(bothTexts(size.length, display))} long, shank ${escaped(fineTexts(size.diameter, display))}${slant}; ${escaped(size.source)}`
      : "not checked: the line does not say which screws",
    list([
      ...paths.slice(0, MOST_PATHS).map((p) => pathText(p, worked)),
      paths.length > MOST_PATHS ? `and ${paths.length - MOST_PATHS} more ways through it` : undefined,
      joint.pattern ? `How many: ${countText(joint, worked.settings)}` : undefined,
      ...setOutLines(joint, worked),
      joint.pilot && `Pilot hole ${escaped(fineTexts(joint.pilot, display))}`,
      joint.clearance && `Clearance hole ${escaped(fineTexts(joint.clearance, display))}`,
      facesText(joint),
    ]),
    jointHolds(joint, worked),
  );
}

function countText(joint: Joint, { make, display }: Worked["settings"]): string {
  const count = ifKnown(joint.count);
  const how = escaped(setOut(joint, display));
  if (count === undefined) return `${how}; ${whyNot(joint.count)}`;
  if (joint.pattern.endsWith("in all") && make === 1) return how;
  return `${how}, ${count} in all${make > 1 ? ` for one, ${count * make} for ${make}` : ""}`;
}

/** How many crossings, and the marks of the screws on each piece that is screwed through. */
function setOutLines(joint: Joint, { space, settings }: Worked): string[] {
  const screws = joint.placed?.screws ?? [];
  if (screws.length === 0) return [];
  const crossings = new Set(screws.map((s) => s.crossing)).size;
  const sets = setOutOf(joint, space);
  const marks = sets.slice(0, MOST_SETS).map((set) => {
    const { part, pieces } = set;
    const which = pieces.length > 1 ? `${pieces.length} of ${part}` : space.pieces[pieces[0]!]!.id;
    return `Marks on ${escaped(`${which}: ${gridWords(set, settings.display).join(". And ")}`)}`;
  });
  return [
    `Placed: ${screwsInWords(screws.length, crossings)}`,
    ...marks,
    ...(sets.length > MOST_SETS
      ? [`and ${sets.length - MOST_SETS} more pieces with marks of their own`]
      : []),
  ];
}

/** Sets of marks that a hover tells; the sheet tells all. */
const MOST_SETS = 4;

function pathText(path: Path, worked: Worked): string {
  const { display } = worked.settings;
  const layers = path.layers
    .map((l) => `${l.part} ${l.face} (${exactText(l.depth, display)})`)
    .join(", then ");
  const driven = ifKnown(path.driven);
  if (!driven) return `${escaped(`${path.first} into ${path.into}`)}: ${whyNot(path.driven)}`;
  const length = (mm: number) => lengthText(roughly(LENGTH, mm), display);
  const over = driven.tip.woodOverTip;
  const tip =
    over < 0
      ? `its tip comes out ${length(-over)} proud`
      : `${over === 0 ? "no wood" : `${length(over)} of wood`} stays over its tip`;
  return escaped(
    `through ${layers}: bites ${length(driven.bite)} into ${path.into}, ${Math.round(driven.share * 100)}% of the screw; ${tip}`,
  );
}

function facesText(joint: Joint): string | undefined {
  const unsaid = (sides: readonly JointSide[]) => sides.flatMap((s) => (s.face ? [] : [s.thing.name.text]));
  const names = [...unsaid(joint.entry.first), ...unsaid(joint.entry.through), ...unsaid(joint.entry.into)];
  if (names.length === 0) return undefined;
  return `Taken for granted: the screw meets ${escaped([...new Set(names)].join(" and "))} at the wide face, since the line does not say face, edge or end`;
}

export function describeRing(ring: Ring, { worked, problems }: Checked): string {
  const { display } = worked.settings;
  const open = problems.find((p) => p.code === "ring-open" && p.about.includes(ring.name));
  const closing = ifKnown(ring.closing);
  const members = ring.members.map((m) => (m.count > 1 ? `${m.count} ${m.part}` : m.part)).join(", ");
  const state = open
    ? escaped(problemText(open.code, open, display))
    : closing?.kind === "ring"
      ? `It ${closing.closes ? "closes" : "does not close"}: the opening is ${escaped(exactText(roughly(LENGTH, closing.opening), display))}, and its corners turn ${escaped(degrees(closing.misfitDegrees + 360))} in all.`
      : ring.closing.state === "known"
        ? "It cannot be walked round: see its problem."
        : `Whether it closes: ${whyNot(ring.closing)}.`;
  return paragraphs(
    `${strong(ring.name)}, a ring of ${ring.sides.length} sides: ${escaped(members)}`,
    state,
    list([
      `Its parts ${ring.lies === "flat" ? "lie flat, mitered across their width" : "stand on edge, beveled through their thickness"}`,
      ...(closing?.kind === "ring" ? cornerLines(ring, closing) : []),
    ]),
  );
}

function cornerLines(ring: Ring, closing: Closing): string[] {
  const alike = new Map<string, number>();
  for (const { between, turn } of closing.corners) {
    const [a, b] = between;
    const key = `${ring.sides[a]} to ${ring.sides[b]}: turns ${degrees(turn)}`;
    alike.set(key, (alike.get(key) ?? 0) + 1);
  }
  return [...alike]
    .slice(0, MOST_PATHS)
    .map(([text, n]) => `${n === 1 ? "Corner" : `${n} corners`} ${escaped(text)}`);
}

const degrees = (n: number): string => `${n.toFixed(2).replace(/\.?0+$/, "")}°`;
