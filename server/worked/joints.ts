/** Joints: which part is screwed through into which, how far the screw goes in each, and how many it takes. */
import type { Entry, Expression, JointPlace, JointSide } from "../../grammar/tree";
import {
  type At,
  chain,
  ifKnown,
  known,
  type Loaded,
  MISTAKE,
  type Scope,
  unknown,
  type Value,
} from "../plan";
import { ANGLE, exactly, fraction, type Quantity } from "../units";
import type { Worker } from "./expressions";
import { type Fastener, type Size, screwSize } from "./fasteners";
import { declaredThing, partsOf } from "./groups";
import { type JointInSpace, jointInSpace, pathsInSpace } from "./joint-space";
import { JOINT_ENGLISH, type JointSetting, jointTitle } from "./joint-words";
import type { Part } from "./parts";
import { drive, type Face, type Layer, type Path } from "./paths";
import { Reader } from "./settings";
import type { Space } from "./space";

export interface Joint {
  readonly entry: Entry & { kind: "fasten" | "glue" };
  readonly at: At;
  /** "side and end into leg". */
  readonly title: string;
  /** Names of the parts it joins, each once. */
  readonly parts: readonly string[];
  readonly size: Size | undefined;
  readonly fastener: Fastener | undefined;
  /** Where the size is written, to blame or to change. */
  readonly sizeAt: At | undefined;
  readonly angle: Quantity;
  readonly angledAt: At | undefined;
  readonly pilot: Quantity | undefined;
  readonly clearance: Quantity | undefined;
  /** Which faces meet was not said, and was taken as face to face. */
  readonly facesAssumed: boolean;
  readonly paths: readonly Path[];
  /** In one copy of the plan. */
  readonly count: Value<number>;
  /** "2 at each end". */
  readonly pattern: string;
  /** The same, to be told in other words. */
  readonly setting: JointSetting;
  /** From center to center, where the line gives a spacing. */
  readonly spacing: Quantity | undefined;
  /** The assembly whose line it is; empty for the plan's own. */
  readonly within: string;
  /** Where it crosses and where its screws go; undefined when its pieces are not placed. */
  readonly placed: JointInSpace | undefined;
}

const SQUARE = exactly(ANGLE, fraction.ZERO);
const MOST_SCREWS = 1_000_000;

/** The joints of the plan, then those of its assemblies, wherever these are declared. */
export function jointLines(loaded: Loaded, scope: Scope): JointLine[] {
  const isJoint = (e: Entry): e is JointLine["entry"] => e.kind === "fasten" || e.kind === "glue";
  const main = loaded.files[0]!;
  const own = main.tree.entries.filter(isJoint).map((entry) => ({ entry, file: main.file, within: "" }));
  const inner = [...scope.declared.values()].flatMap(({ entry, name, at }) =>
    entry.kind === "assembly"
      ? entry.body.filter(isJoint).map((e) => ({ entry: e, file: at.file, within: name }))
      : [],
  );
  return [...own, ...inner];
}

/** A joint's line, and the assembly it stands in. */
export interface JointLine {
  readonly entry: Entry & { kind: "fasten" | "glue" };
  readonly file: string;
  readonly within: string;
}

/** `setOut` screws of other joints are set out one by one already. */
export function workJoint(
  { entry, file, within }: JointLine,
  scope: Scope,
  worker: Worker,
  parts: ReadonlyMap<string, Part>,
  fasteners: readonly Fastener[],
  space: Space,
  setOut: number,
): Joint {
  const read = new Reader(worker, file, entry.clauses);
  const driven = read.clause("driven");
  const fastener = findFastener(driven, file, scope, worker, fasteners);
  const written = driven?.size ? screwSize(driven.size.text) : undefined;
  const size = written ?? fastener?.size;
  const sizeSpan = driven?.size ?? driven?.fastener;
  const angled = read.clause("angled");
  const angle = (angled && ifKnown(worker.angle(angled.value, file))) ?? SQUARE;
  const sides = (list: readonly JointSide[]) =>
    list.flatMap((s) => {
      const found = declaredThing(
        s.thing,
        file,
        ["part", "ring", "box", "assembly"],
        "a part",
        scope,
        worker,
      );
      return found ? partsOf(found, scope).map((part) => ({ part, face: s.face })) : [];
    });
  const first = sides(entry.first);
  const through = sides(entry.through);
  const into = sides(entry.into);
  const pattern = patternOf(read, worker, file);
  const spacing = pattern.spacing && ifKnown(pattern.spacing);
  const placed = jointInSpace(
    entry,
    within,
    scope,
    space,
    size && {
      size,
      angle,
      count: (pattern.each && ifKnown(pattern.each)) ?? 1,
      place: pattern.place,
      spacing: spacing?.approx,
      most: MOST_SET_OUT - setOut,
    },
  );
  const paths =
    entry.kind === "glue" || !size
      ? []
      : placed
        ? pathsInSpace(placed, space, size, angle)
        : first.flatMap((a) => into.map((b) => pathOf(a, through, b, parts, size, angle)));
  const at = { file, start: entry.keyword.start, end: entry.end };
  const countPlaced = ({ screws, tooMany }: JointInSpace): Value<number> =>
    tooMany === undefined
      ? known(screws.length)
      : worker.fault({
          kind: "too-many",
          at,
          what: "the number of screws",
          found: setOut + tooMany,
          limit: MOST_SET_OUT,
        });
  return {
    entry,
    at,
    title: jointTitle(entry),
    parts: [...new Set([...first, ...through, ...into].map((s) => s.part))],
    size,
    fastener: fastener ?? (written && fasteners.find((f) => f.size && sameSize(f.size, written))),
    sizeAt: sizeSpan && { file, start: sizeSpan.start, end: sizeSpan.end },
    angle,
    angledAt: angled && read.at(angled),
    pilot: read.length("pilot", "the pilot hole"),
    clearance: read.length("clearance", "the clearance hole"),
    facesAssumed: !placed && [...entry.first, ...entry.through, ...entry.into].some((s) => !s.face),
    paths,
    spacing,
    ...countOf(pattern, worker, file, first, parts),
    ...(placed && size && pattern.each?.state !== "unknown" && { count: countPlaced(placed) }),
    within,
    placed,
  };
}

/** The most screws of a plan that are set out one by one. */
const MOST_SET_OUT = 20_000;

const sameSize = (a: Size, b: Size): boolean =>
  a.length.approx === b.length.approx && a.diameter.approx === b.diameter.approx;

type Driven = Extract<Joint["entry"]["clauses"][number], { kind: "driven" }>;

function findFastener(
  driven: Driven | undefined,
  file: string,
  scope: Scope,
  worker: Worker,
  fasteners: readonly Fastener[],
): Fastener | undefined {
  if (!driven?.fastener) return undefined;
  const thing = { where: [], name: driven.fastener, start: driven.fastener.start, end: driven.fastener.end };
  const found = declaredThing(thing, file, ["fastener"], "a fastener", scope, worker);
  return found && fasteners.find((f) => f.name === found.name);
}

/** A part that a screw meets, and at which of its sides; at its face where none is said. */
export interface Side {
  readonly part: string;
  readonly face: Face | undefined;
}

/** The way through parts as their line names them, before any is placed. */
export function pathOf(
  first: Side,
  through: readonly Side[],
  into: Side,
  parts: ReadonlyMap<string, Part>,
  size: Size,
  angle: Quantity,
): Path {
  const layers: Layer[] = [];
  let missing: Value<never> | undefined;
  for (const side of [first, ...through, into]) {
    const part = parts.get(side.part);
    const face = side.face ?? "face";
    const depth = part ? depthOf(part, face) : MISTAKE;
    if (depth.state === "known") layers.push({ part: side.part, face, depth: depth.value });
    else missing ??= depth;
  }
  const driven = missing ?? drive(size, angle, layers);
  return { first: first.part, into: into.part, layers, behind: 0, driven };
}

/** How much wood a screw meets that goes in at that face: the thickness, the width, or the length. */
function depthOf(part: Part, face: Face): Value<Quantity> {
  if (face === "face") return part.thickness;
  return face === "edge" ? part.width : part.length;
}

/** What the line says of how many fasteners go where. */
interface Pattern {
  /** At each place; undefined where the line drives none. */
  readonly each: Value<number> | undefined;
  readonly place: JointPlace | undefined;
  /** From center to center; undefined where the line gives none. */
  readonly spacing: Value<Quantity> | undefined;
}

function patternOf(read: Reader, worker: Worker, file: string): Pattern {
  const driven = read.clause("driven");
  const spaced = read.clause("joint spacing");
  const counted = (e: Expression | undefined): Value<number> =>
    e ? worker.wholeNumber(e, file, "how many screws", MOST_SCREWS) : known(1);
  return {
    each: driven && counted(driven.count),
    place: driven?.place ?? read.clause("joint place")?.place,
    spacing: spaced && worker.positiveLength(spaced.value, file, "the spacing"),
  };
}

/** How many it takes before placing, and in words where. */
function countOf(
  pattern: Pattern,
  worker: Worker,
  file: string,
  first: readonly Side[],
  parts: ReadonlyMap<string, Part>,
): Pick<Joint, "count" | "pattern" | "setting"> {
  const { count, ...where } = countAndWhere(pattern, worker, file, first, parts);
  const setting = { each: pattern.each && ifKnown(pattern.each), ...where };
  return { count, setting, pattern: JOINT_ENGLISH.pattern(setting) };
}

function countAndWhere(
  { each, place, spacing }: Pattern,
  worker: Worker,
  file: string,
  first: readonly Side[],
  parts: ReadonlyMap<string, Part>,
): Pick<Joint, "count"> & Omit<JointSetting, "each"> {
  if (!each) return { count: known(0), where: "nowhere" };
  const times = (places: Value<number>) => chain(each, (e) => chain(places, (p) => known(p * e)));
  if (spacing)
    return {
      count: chain(spacing, (apart) => sumOver(first, parts, (part) => perLength(part, apart))),
      where: "along it, spaced",
    };
  const pieces = sumOver(first, parts, () => known(1));
  if (place?.at === "in all") return { count: each, where: "in all" };
  if (place?.at === "each end")
    return { count: times(chain(pieces, (p) => known(p * 2))), where: "each end" };
  if (place?.at === "along it") return { count: times(pieces), where: "along each" };
  if (place?.at === "crossings") {
    const crossings = worker.wholeNumber(place.count, file, "how many crossings", MOST_SCREWS);
    return { count: times(crossings), where: "crossings", crossings: ifKnown(crossings) };
  }
  return { count: times(unknown("placing", "crossings unknown")), where: place ? "each crossing" : "unsaid" };
}

function sumOver(
  sides: readonly Side[],
  parts: ReadonlyMap<string, Part>,
  per: (p: Part) => Value<number>,
): Value<number> {
  let total = 0;
  for (const side of sides) {
    const part = parts.get(side.part);
    if (!part) return MISTAKE;
    const value = chain(part.count, (count) => chain(per(part), (n) => known(n * count)));
    if (value.state !== "known") return value;
    total += value.value;
  }
  return known(total);
}

/** Screws along a length at a spacing: one at each end of it and between, no further apart than said. */
function perLength(part: Part, apart: Quantity): Value<number> {
  return chain(part.length, (length) => known(Math.ceil(length.approx / apart.approx - 1e-9) + 1));
}
