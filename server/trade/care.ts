// Care after building: what to look at and when, each called up by what a plan makes and where it stands.
import { finish, stainService } from "./finishes";
import { COMMON_PRACTICE, type Row, remembered, type Source, type Span } from "./row";

/** What in a plan calls a piece of care up. */
export type CareTag =
  | "screws-in-drying-wood"
  | "bolts"
  | "oil"
  | "stain-rough"
  | "stain-smooth"
  | "finish"
  | "bare"
  | "drains"
  | "no-drain"
  | "liner"
  | "liner-open"
  | "frost"
  | "frost-water"
  | "feet"
  | "treated-cuts"
  | "hinged"
  | "tall"
  | "hung"
  | "grows"
  | "children"
  | "salvage";

export interface Care {
  /** Any one of these calls it up. */
  readonly when: readonly CareTag[];
  readonly text: string;
}

/** The care that these tags call up, in the order of the table. */
export function careFor(tags: Iterable<CareTag>): readonly Row<Care>[] {
  const wanted = new Set(tags);
  return care.filter(({ value }) => value.when.some((tag) => wanted.has(tag)));
}

/** Which of the usual kinds a finish is, by its own name; undefined for a name that tells none. */
export function finishKind(name: string): "oil" | "stain" | "paint" | "water-repellent" | undefined {
  const kind = finish(name)?.name ?? name;
  if (/water-?(based|borne)/.test(kind)) return undefined;
  if (/\bstain\b/.test(kind)) return "stain";
  if (/\b(oil|linseed|tung)\b/.test(kind)) return "oil";
  if (/\bpaint\b/.test(kind)) return "paint";
  return /\brepellent\b/.test(kind) ? "water-repellent" : undefined;
}

const [ROUGH, SMOOTH] = stainService as readonly [Row<Span>, Row<Span>];
const CUTS = remembered("AWPA M4", "field treatment of cuts and holes");

export const care: readonly Row<Care>[] = [
  row("tighten", ["screws-in-drying-wood"], COMMON_PRACTICE, [
    "Tighten the screws after the first dry season: wood shrinks as it dries, and they work loose.",
  ]),
  row("bolts", ["bolts"], COMMON_PRACTICE, ["Tighten the bolts after a month, and then each spring."]),
  row("oil", ["oil"], COMMON_PRACTICE, [
    "Sprinkle water on it each spring: where it soaks in and no longer beads, clean the wood and oil it again.",
  ]),
  row("stain-rough", ["stain-rough"], ROUGH.source, [
    `Two coats of stain on rough wood last up to ${ROUGH.value.high} years outdoors: renew them when the wood looks dry.`,
  ]),
  row("stain-smooth", ["stain-smooth"], SMOOTH.source, [
    `One coat of stain on smooth new wood lasts ${SMOOTH.value.low} to ${SMOOTH.value.high} years outdoors: renew it when the wood looks dry.`,
  ]),
  row("finish", ["finish"], COMMON_PRACTICE, [
    "Look at the finish each spring, end grain first: renew it where it has worn or cracked, before the wood under it grays.",
  ]),
  row("bare", ["bare"], COMMON_PRACTICE, [
    "Wood without a finish grays and checks outdoors. Look each spring for splits that run into a screw.",
  ]),
  row("drains", ["drains"], COMMON_PRACTICE, [
    "Each spring pour water in and see that it runs out below: clear the holes and gaps of roots and soil.",
  ]),
  row("liner", ["liner"], COMMON_PRACTICE, [
    "Look at the liner each spring, along the rim and at the corners: close a tear.",
  ]),
  row("liner-open", ["liner-open"], COMMON_PRACTICE, [
    "Each spring clear the openings in the liner over the drain.",
  ]),
  row("no-drain", ["no-drain"], COMMON_PRACTICE, [
    "It does not drain: water it sparingly, and keep it out of the rain.",
  ]),
  row("frost", ["frost"], COMMON_PRACTICE, [
    "Wet soil swells as it freezes and pushes the walls out: let it drain before the first frost, and look at the corners in spring.",
  ]),
  row("frost-water", ["frost-water"], COMMON_PRACTICE, [
    "Water left in it bursts it when it freezes: empty it, and any hose, before the first frost.",
  ]),
  row("feet", ["feet"], COMMON_PRACTICE, [
    "Push a screwdriver into what stands on the ground each spring: where it goes in easily, the wood rots and wants replacing.",
  ]),
  row("treated-cuts", ["treated-cuts"], CUTS, [
    "Brush end-cut preservative on every cut and hole in treated wood: the treatment does not reach the middle.",
  ]),
  row("hinged", ["hinged"], COMMON_PRACTICE, [
    "Each spring see that it swings free and does not sag, and tighten the screws of its hinges and latch.",
  ]),
  row("tall", ["tall", "hung"], COMMON_PRACTICE, [
    "Pull at its anchors each year, and outdoors after every storm.",
  ]),
  row("grows", ["grows"], COMMON_PRACTICE, [
    "Rinse what is eaten from it, and brush and rinse the empty box between plantings.",
  ]),
  row("children", ["children"], COMMON_PRACTICE, [
    "Feel along edges and rims each season with a cloth: sand off splinters, and drive proud screws below the wood.",
  ]),
  row("salvage", ["salvage"], COMMON_PRACTICE, [
    "Look over the salvaged wood each year, for splits at old nail holes and for paint that flakes.",
  ]),
];

export const careRows: readonly Row<unknown>[] = care;

function row(key: string, when: readonly CareTag[], source: Source, sentences: readonly string[]): Row<Care> {
  return { key: `care: ${key}`, value: { when, text: sentences.join(" ") }, unit: "", source };
}
