/** What a plan may ask of a thing: `thickness of 2x4`, `inside depth of trough`. */
import type { Thing } from "../../grammar/tree";
import {
  type At,
  type Declared,
  known,
  lookUp,
  MISTAKE,
  map,
  nearNames,
  type Scope,
  unknown,
  type Value,
} from "../plan";
import { count, type Quantity } from "../units";
import type { Worker } from "./expressions";
import { screwSize } from "./fasteners";
import type { Materials } from "./materials";
import { insideProperty, isPlaced, type Placing, placedProperty } from "./placing";
import { Reader } from "./settings";

/** What can stand somewhere. */
const PLACEABLE = new Set<Declared["kind"]>(["part", "ring", "assembly", "box"]);
const ALL = ["part", "stock", "sheet", "roll", "fastener", "box", "ring", "assembly"] as const;

/** The value of a property, or undefined when things of that kind have none of that name. */
export function findProperty(
  thing: Thing,
  property: string,
  at: At,
  worker: Worker,
  scope: Scope,
  materials: Materials,
  placing: Placing,
): Value<Quantity> | undefined {
  const name = thing.name.text;
  const declared = lookUp(scope, name);
  if (isPlaced(property)) {
    if (!declared && name !== "floor") return missing(name, at, scope, worker);
    return declared && !PLACEABLE.has(declared.kind)
      ? undefined
      : placedProperty(placing, thing, property, at);
  }
  if (!declared) {
    if (!/^\d/.test(name)) return missing(name, at, scope, worker);
    const material = materials.named(thing.name, at.file);
    return material ? ofMaterial(property, material) : MISTAKE;
  }
  switch (declared.kind) {
    case "part":
      return ofPart(property, declared, worker, placing);
    case "stock":
    case "sheet": {
      const material = materials.named({ ...thing.name, text: declared.name }, at.file);
      return material ? ofMaterial(property, material) : MISTAKE;
    }
    case "box":
      return ofBox(property, declared, worker, placing);
    case "roll":
    case "fastener":
      return ofBought(property, declared, worker);
    case "measure":
      return worker.fault({
        kind: "wrong-kind",
        at,
        name,
        found: "measure",
        wants: "a part, a stock or a box",
      });
    default:
      return undefined;
  }
}

function missing(name: string, at: At, scope: Scope, worker: Worker): Value<never> {
  return worker.fault({
    kind: "unknown-name",
    at,
    name,
    near: nearNames(scope, name, ALL),
    wants: "a part, a stock or a box",
  });
}

function ofMaterial(
  property: string,
  material: NonNullable<ReturnType<Materials["named"]>>,
): Value<Quantity> | undefined {
  if (property === "thickness") return material.thickness;
  return property === "width" ? material.width : undefined;
}

function ofPart(
  property: string,
  declared: Declared,
  worker: Worker,
  placing: Placing,
): Value<Quantity> | undefined {
  const { entry, at } = declared;
  if (entry.kind !== "part") return undefined;
  const { shapes } = placing.input;
  if (property === "length") return shapes.length(declared);
  if (property === "width") return shapes.width(declared);
  if (property === "thickness") return shapes.thickness(declared);
  if (property !== "count") return undefined;
  const stated = entry.count;
  if (!stated) {
    const placed = placing.counts.of(declared, placing.plan);
    return placed ? map(placed, count) : unknown("placing", "placed nowhere", { name: declared.name });
  }
  return worker.once("count", declared.name, `count of ${declared.name}`, at, () => {
    const value = worker.evaluate(stated, at.file);
    return value.state === "known" ? known(count(value.value.approx)) : value;
  });
}

const INSIDE: ReadonlyMap<string, "wide" | "deep" | "high"> = new Map([
  ["inside width", "wide"],
  ["inside depth", "deep"],
  ["inside height", "high"],
]);

function ofBox(
  property: string,
  declared: Declared,
  worker: Worker,
  placing: Placing,
): Value<Quantity> | undefined {
  const side = INSIDE.get(property);
  if (!side) return undefined;
  const { at, entry, name } = declared;
  return worker.once(property, name, `${property} of ${name}`, at, () => {
    const clause = entry.clauses.find((c) => c.kind === "inside");
    const extents = clause?.kind === "inside" ? clause.extents : [];
    const extent = extents.find((e) => e.side === side || (side === "wide" && e.side === "long"));
    if (extent) return worker.positiveLength(extent.value, at.file, "this side");
    return insideProperty(placing, declared, property) ?? MISTAKE;
  });
}

function ofBought(property: string, declared: Declared, worker: Worker): Value<Quantity> | undefined {
  const { entry, at } = declared;
  if (property === "width" && entry.kind === "roll") {
    return worker.once("width", declared.name, `width of ${declared.name}`, at, () => {
      const width = new Reader(worker, at.file, entry.clauses).length("width", "the width");
      return width ? known(width) : MISTAKE;
    });
  }
  const fits = entry.clauses.find((c) => c.kind === "fits");
  if (property !== "length" || fits?.kind !== "fits") return undefined;
  const size = fits.size && screwSize(fits.size.text);
  if (size) return known(size.length);
  const last = fits.sides[fits.sides.length - 1];
  return worker.once("length", declared.name, `length of ${declared.name}`, at, () =>
    last ? worker.positiveLength(last, at.file, "this size") : MISTAKE,
  );
}
