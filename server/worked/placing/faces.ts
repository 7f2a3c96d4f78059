/** What an expression may ask of placed things: `overall width of legs`, `top of front left leg`, `inside depth of trough`. */
import type { Thing } from "../../../grammar/tree";
import { type At, chain, type Declared, known, lookUp, map, unknown, type Value } from "../../plan";
import type { Quantity } from "../../units";
import { type Axis, axisOfSide, isFar } from "./axes";
import type { Inside } from "./block";
import { mirroredIn } from "./clauses";
import { reach } from "./group";
import type { Context, Placement, Placing } from "./placing";
import { compared, least, middle, most, type Stretch, sizeOf } from "./stretch";

const SIZES: Readonly<Record<string, Axis>> = { "overall width": 0, "overall depth": 1, "overall height": 2 };
const INSIDE: Readonly<Record<string, Axis>> = { "inside width": 0, "inside depth": 1, "inside height": 2 };
const FACES = ["left", "right", "front", "back", "top", "bottom"] as const;

/** Whether a property follows from where things stand. */
export const isPlaced = (property: string): boolean =>
  Object.hasOwn(SIZES, property) || FACES.some((f) => f === property);

/** The value, or undefined for a property that does not follow from where things stand. */
export function placedProperty(
  placing: Placing,
  thing: Thing,
  property: string,
  at: At,
): Value<Quantity> | undefined {
  const context = placing.contextAt(at);
  const size = Object.hasOwn(SIZES, property) ? SIZES[property] : undefined;
  if (size !== undefined)
    return alone(placing, thing, size, context) ?? map(here(placing, thing, size, context), sizeOf);
  const face = FACES.find((f) => f === property);
  if (!face) return undefined;
  return map(here(placing, thing, axisOfSide(face), context), (s) => (isFar(face) ? s.high : s.low));
}

/**
 * The size of what one line puts in one place, which does not depend on where that is; undefined for a group of several
 * places.
 */
function alone(placing: Placing, thing: Thing, axis: Axis, context: Context): Value<Quantity> | undefined {
  const declared = lookUp(placing.input.scope, thing.name.text);
  if (!declared || thing.where.length > 0) return undefined;
  const lines = context.placements.filter(
    ({ subject, block }) =>
      subject.name === declared.name ||
      (subject.kind !== "part" && (block?.inside(declared.name).length ?? 0) > 0),
  );
  const [line] = lines;
  if (lines.length !== 1 || !line?.block || !isSingle(line, axis)) return undefined;
  if (line.subject.name === declared.name) return line.block.size(axis);
  return chain(reach(line.block.inside(declared.name), axis), (r) =>
    r ? known(sizeOf(r)) : unknown("placing", "it is placed nowhere"),
  );
}

/** Whether a line stands in one place in that direction, as its words tell. */
const isSingle = ({ entry, patterns }: Placement, axis: Axis): boolean =>
  patterns.every((one) => one.axis !== undefined && one.axis !== axis) &&
  !mirroredIn(entry, axis) &&
  !(axis !== 2 && entry.clauses.some((c) => c.kind === "corners"));

function here(placing: Placing, thing: Thing, axis: Axis, context: Context): Value<Stretch> {
  const declared = lookUp(placing.input.scope, thing.name.text);
  const nowhere = declared && placing.groupOf(declared, context).length === 0;
  if (nowhere) return unknown("placing", "placed nowhere", { name: declared.name });
  return placing.reachOf(thing, axis, context);
}

/** The free room inside a box, from its placed walls and bottom; undefined for a property that is not of the inside. */
export function insideProperty(
  placing: Placing,
  box: Declared,
  property: string,
): Value<Quantity> | undefined {
  const axis = Object.hasOwn(INSIDE, property) ? INSIDE[property] : undefined;
  return axis === undefined ? undefined : map(insideOf(placing, box, axis), sizeOf);
}

/** Between the inner faces of the walls on either side; up and down from the bottom's top to the walls' top. */
export function insideOf(placing: Placing, box: Declared, axis: Axis): Value<Stretch> {
  const named = (kind: "walls" | "floor"): Inside[] =>
    box.entry.clauses.flatMap((c) =>
      c.kind === kind
        ? c.things.flatMap((t) => {
            const found = lookUp(placing.input.scope, t.name.text);
            return found ? [...placing.groupOf(found, placing.plan)] : [];
          })
        : [],
    );
  const walls = named("walls");
  if (walls.length === 0) return unknown("placing", "walls placed nowhere", { box: box.name });
  if (axis === 2) {
    const floor = named("floor");
    return chain(reachSure(walls, 2), (w) =>
      floor.length === 0
        ? known(w)
        : map(reachSure(floor, 2), (f) => ({ low: f.high, high: w.high, flipped: false })),
    );
  }
  const across = walls.filter((w) => w.thin(axis));
  if (across.length === 0) return unknown("placing", "no wall square", { box: box.name });
  return chain(reachSure(across, axis), (all) => {
    const lows: Quantity[] = [];
    const highs: Quantity[] = [];
    for (const wall of across) {
      const list = wall.stretches(axis);
      if (list.state !== "known") return list;
      for (const s of list.value) {
        const near = compared(centre(s), centre(all)) < 0;
        if (near) lows.push(s.high);
        else highs.push(s.low);
      }
    }
    if (lows.length === 0 || highs.length === 0)
      return unknown("placing", "walls on one side", { box: box.name });
    return known({ low: most(lows), high: least(highs), flipped: false });
  });
}

const centre = (s: Stretch): Quantity => middle(s.low, s.high);

const reachSure = (group: readonly Inside[], axis: Axis): Value<Stretch> =>
  chain(reach(group, axis), (r) => (r ? known(r) : unknown("placing", "it is placed nowhere")));
