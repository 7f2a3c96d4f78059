/** What a measurement could be called, by what it is for: `leg-length`, `overhang`, `trough-depth`. */
import type { Clause, Entry } from "../../grammar/tree";
import { ifKnown, lookUp } from "../plan";
import { ANGLE, isNumber, LENGTH, sameDimension, TIME, WEIGHT } from "../units";
import type { Worked } from "../worked";
import { isExpression, type Standing } from "./expressions-in";

/** A name that nothing has yet, in any of the plan's files. */
export function measureName(worked: Worked, standing: Standing): string {
  const wanted = nameFor(worked, standing);
  const free = (name: string): boolean =>
    lookUp(worked.scope, name) === undefined && !worked.scope.broken.has(name);
  if (free(wanted)) return wanted;
  let n = 2;
  while (!free(`${wanted}-${n}`)) n++;
  return `${wanted}-${n}`;
}

function nameFor(worked: Worked, standing: Standing): string {
  const { entry, within, expression } = standing;
  const clause = within.find((node): node is Clause => entry.clauses.some((c) => c === node));
  const thing = thingOf(entry);
  const what = (clause && ofClause(clause, standing)) ?? ofEntry(entry) ?? kindOf(worked, standing);
  // A part of a sum is not the whole: of what kind it is tells less wrong.
  const part = within.some(isExpression) && expression.kind === "literal";
  const word = part && clause?.kind === "length" ? kindOf(worked, standing) : what;
  return thing === "" || WORDS_ALONE.has(word) ? word : `${thing}-${word}`;
}

/** The name of what the entry is about, where it is one word that a name can begin with. */
function thingOf(entry: Entry): string {
  const name =
    entry.kind === "place"
      ? entry.subject.name.text
      : entry.kind === "load"
        ? entry.thing.name.text
        : "name" in entry && entry.name
          ? entry.name.text
          : "";
  return /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/.test(name) ? name : "";
}

/** Clear enough without the thing. */
const WORDS_ALONE = new Set(["overhang", "budget", "kerf", "tax", "limit"]);

function ofClause(clause: Clause, { within, expression }: Standing): string | undefined {
  switch (clause.kind) {
    case "ends":
      return clause.cuts.some((c) => c.how === "beveled" && within.some((node) => node === c))
        ? "bevel"
        : "miter";
    case "space":
    case "way in":
    case "inside":
    case "outline":
    case "tapering": {
      const side = clause.extents.find((x) => within.some((node) => node === x))?.side ?? "wide";
      return { wide: "width", deep: "depth", high: "height", long: "length" }[side];
    }
    case "inset":
      return clause.past ? "overhang" : "inset";
    case "touches":
      return "gap";
    case "from":
      return clause.datum === "bottom" || clause.datum === "floor" ? "height" : "offset";
    case "corners":
      return clause.width === expression ? "width" : "depth";
    case "spacing":
      return clause.rule === "on center" ? "spacing" : "gap";
    case "joint spacing":
      return "spacing";
    case "leaning":
      return "lean";
    case "sloping":
      return "slope";
    case "repeat":
      return "count";
    case "filled":
      return clause.level?.how === "deep" ? "depth" : "freeboard";
    case "weighs":
      return "weight";
    case "drains":
      return clause.size === expression ? "hole" : "holes";
    case "budget":
    case "kerf":
    case "tax":
    case "width":
    case "length":
    case "thickness":
    case "fold":
    case "overlap":
    case "pilot":
    case "clearance":
    case "notch":
    case "dado":
      return clause.kind;
    case "floor limit":
    case "foot limit":
    case "bound":
      return "limit";
    default:
      return undefined;
  }
}

const ofEntry = (entry: Entry): string | undefined =>
  entry.kind === "load" ? "load" : entry.kind === "must" ? "limit" : undefined;

function kindOf({ evaluate, loaded }: Worked, { expression }: Standing): string {
  const dim = ifKnown(evaluate(expression, loaded.files[0]!.file))?.dim;
  if (!dim || sameDimension(dim, LENGTH)) return "size";
  if (sameDimension(dim, ANGLE)) return "angle";
  if (sameDimension(dim, WEIGHT)) return "weight";
  if (sameDimension(dim, TIME)) return "time";
  if (dim.money !== 0) return "price";
  return isNumber(dim) ? "count" : "amount";
}
