/** What both screw checks say: the screw, what it goes through, and the cure by another size. */
import { type Display, fraction, LENGTH, lengthText, order, roughly } from "../units";
import {
  type Joint,
  type Layer,
  type LengthWindow,
  lengthWindow,
  otherSize,
  type Path,
  SCREW_RULE,
  type ScrewFit,
  screwFits,
  type Worked,
} from "../worked";
import type { Cure, Finding, ProblemNumber, Says, Slot } from "./check";
import { phrase } from "./phrases";
import { standsByALine } from "./placed";
import { edit, markAbove, markBelow } from "./writing";

export const SCREW_TEMPLATES = {
  faces: "The line does not say which faces meet: face to face is taken.",
  layer: "{part} is {depth} {way}.",
  "one-length": "{A} {kind} {least} long would bite enough and leave {margin} of wood over its tip.",
  range: "{A} {kind} from {least} to {most} long would bite enough and leave {margin} of wood over its tip.",
  longer: "{A} {kind} at least {least} long would bite enough.",
  "too-thin":
    "These pieces are too thin for any {kind} driven {how}: use a thicker {into}, or join them another way, such as with a block behind.",
  "one-size": "No one length does for all the pieces of this line: give each its own fasten line.",
} as const;

/** `deck-2 (2")`, or `a #8 x 2" screw`. */
export function screwSlot(joint: Joint): Says {
  const { size, fastener, angle, angledAt } = joint;
  const length: Slot = { full: size!.length };
  const screw =
    fastener && isNamed(joint)
      ? phrase("named screw", { name: fastener.name, length })
      : phrase("sized screw", { size: size!.text, kind: kindSlot(joint) });
  return angledAt ? phrase("angled", { screw, angle: `${fraction.toDecimal(angle.exact!, 2)}°` }) : screw;
}

const kindOf = (joint: Joint): string => joint.fastener?.kind ?? "screw";

/** What kind of fastener a joint takes; one with a name that only its line gives it, by that. */
export function kindSlot(joint: Joint): Says {
  const kind = kindOf(joint);
  return kind === "screw" || kind === "nail" || kind === "bolt"
    ? phrase(kind)
    : phrase("fastening", { kind });
}

const LAYERS = { face: "layer", edge: "layer edge", end: "layer end" } as const;

/** `slat (3/4") and leg edge (3-1/2")` */
export const layersSlot = (layers: readonly Layer[]): Slot => ({
  all: layers.map(({ part, face, depth }) => phrase(LAYERS[face], { part, depth: { full: depth } })),
});

/** The layers, and what lies tight behind the last of them. */
export const woodSlot = ({ layers, behind }: Path): Slot =>
  behind > 0
    ? phrase("wood behind", { layers: layersSlot(layers), depth: { full: roughly(LENGTH, behind) } })
    : layersSlot(layers);

export const WAY = { face: "thick", edge: "wide", end: "long" } as const;

/** What every finding about a path says besides its own sentence. */
export function aboutPath(
  joint: Joint,
  fit: ScrewFit,
  worked: Worked,
): Pick<Finding, "about" | "numbers" | "related" | "assumed"> & { at: Finding["at"] } {
  const { layers } = fit.path;
  const depths = layers.map(({ part, face, depth }): ProblemNumber => {
    const source = worked.parts.get(part)?.material?.source || "as the plan says";
    return {
      name: `${part}, ${WAY[face]}`,
      value: depth,
      source: face === "end" ? "as the plan says" : source,
    };
  });
  return {
    at: joint.sizeAt ?? joint.at,
    about: [...new Set([...layers.map((l) => l.part), ...(joint.fastener ? [joint.fastener.name] : [])])],
    numbers: [
      { name: `${kindOf(joint)} length`, value: joint.size!.length, source: "as written" },
      ...depths,
      { name: "wood over the tip", value: fit.over, source: "worked out" },
      { name: `${kindOf(joint)} in the last piece`, value: fit.bite, source: "worked out" },
      { name: "least wood over the tip", value: SCREW_RULE.margin, source: "common practice" },
      { name: "least in the last piece", value: SCREW_RULE.bite, source: "common practice" },
    ],
    related: uniqueParts(layers).flatMap(({ part, face, depth }) => {
      const at = worked.parts.get(part)?.declared.at;
      const slots = { part, depth: { full: depth }, way: phrase(WAY[face]) };
      return at ? [{ says: "layer", slots, at }] : [];
    }),
    assumed: joint.facesAssumed ? [{ says: "faces", slots: {} }] : [],
  };
}

/** Another size that does for every path of the joint (templates `shop` and `usual`), or why there is none. */
export function sizeCure(
  joint: Joint,
  fits: readonly ScrewFit[],
  worked: Worked,
  want: "longest" | "shortest",
  why: Says["slots"],
): Cure[] {
  const { display } = worked.settings;
  const kind = kindSlot(joint);
  const window = lengthWindow(fits, joint.angle);
  const told = (says: string, slots: Says["slots"]): Cure[] => [{ says, slots, edits: [] }];
  const ends = window && windowText(window, display);
  if (!window || !ends) {
    const does = (f: ScrewFit) => {
      const own = lengthWindow([f], joint.angle);
      return own && windowText(own, display);
    };
    const alone = fits.filter((f) => !does(f));
    if (alone.length === 0) return told("one-size", {});
    const how = phrase(joint.angle.approx === 0 ? "straight" : "at this angle");
    return told("too-thin", { kind, how, into: alone[0]!.path.into });
  }
  const other = otherSize(joint, worked.fasteners, window, want);
  if (!other || !joint.sizeAt) {
    const says = window.most > LONGEST ? "longer" : ends.least === ends.most ? "one-length" : "range";
    return told(says, { kind, margin: SCREW_RULE.margin, ...ends });
  }
  const length: Slot = { full: other.size.length };
  const named = other.fastener && (isNamed(joint) || other.fastener.size?.text === other.fastener.name);
  const text = named ? other.fastener!.name : other.size.text;
  const edits = [edit(joint.sizeAt, text)];
  if (other.fastener) return [{ says: "shop", slots: { ...why, name: other.fastener.name, length }, edits }];
  // A gauge's screws are sold by the inch, also where the plan is in millimetres.
  const sold = display.system === "inches" || other.size.gauge === undefined ? length : other.size.text;
  return [{ says: "usual", slots: { ...why, length: sold, kind }, edits }];
}

/** The paths of every joint with screws, those with anything known. */
export const screwedJoints = (worked: Worked): { joint: Joint; fits: ScrewFit[] }[] =>
  worked.joints
    .filter((joint) => !waitsForPlaces(joint, worked))
    .map((joint) => ({ joint, fits: screwFits(joint) }))
    .filter(({ fits }) => fits.length > 0);

/** Whether which faces meet follows from places that a mistake elsewhere keeps unknown: face to face is then no guess to make. */
const waitsForPlaces = ({ facesAssumed, paths }: Joint, worked: Worked): boolean =>
  facesAssumed && paths.some(({ layers }) => layers.every(({ part }) => standsByALine(part, worked)));

/** No screw is longer than this, in mm: 12". */
const LONGEST = 304.8;

/** Lengths in mm that differ by less are one length, and no screw is just that long. */
const NARROW = 0.5;

/** The ends of a window on the plan's marks, within it; in full where no mark lies within it; nothing where it is too narrow. */
function windowText(
  { least, most }: LengthWindow,
  display: Display,
): { least: Slot; most: Slot } | undefined {
  const [from, to] = [roughly(LENGTH, least), roughly(LENGTH, most)];
  const [above, below] = [markAbove(from, display), markBelow(to, display)];
  const onMarks = Number(order(above, below)) <= 0;
  if (!onMarks && most - least < NARROW) return undefined;
  return onMarks
    ? { least: lengthText(above, display), most: lengthText(below, display) }
    : { least: { full: from }, most: { full: to } };
}

/** Of ways through a joint, one for each two parts, and none for those of the worst. */
export const otherParts = (worst: ScrewFit, others: readonly ScrewFit[]): ScrewFit[] => {
  const key = ({ path }: ScrewFit): string => `${path.first}\n${path.into}`;
  return others.filter((f, i) => key(f) !== key(worst) && others.findIndex((o) => key(o) === key(f)) === i);
};

const isNamed = (joint: Joint): boolean =>
  joint.entry.clauses.some((c) => c.kind === "driven" && c.fastener !== undefined);

function uniqueParts(layers: readonly Layer[]): Layer[] {
  return layers.filter((l, i) => layers.findIndex((o) => o.part === l.part && o.face === l.face) === i);
}
