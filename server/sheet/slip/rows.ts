/** What is to be measured anew at another place: the values that a plan has as they were measured, and not from others. */
import type { Expression } from "../../../grammar/tree";
import type { At } from "../../plan";
import { ifKnown } from "../../plan";
import { ANGLE, LENGTH, type Quantity, sameDimension } from "../../units";
import type { Measure, Worked } from "../../worked";

export interface SlipRow {
  /** As a wish names it: `rim-height`, `width of space`. */
  readonly what: string;
  /** For what is no measure with a name of its own. */
  readonly side?: { readonly of: "space" | "way in"; readonly side: "wide" | "deep" | "high" };
  readonly value: Quantity;
  /** Where the value stands. */
  readonly at: At;
  readonly least?: Quantity;
  readonly most?: Quantity;
}

/**
 * In the order one measures: the place itself, the way to it, then the plan's measures in the order of the text. Lengths and
 * angles alone, which a tape or a bevel gauge can tell.
 */
export function slipRows({ settings, measures, loaded }: Worked): SlipRow[] {
  const main = loaded.files[0]!;
  const plan = main.tree.entries.find((entry) => entry.kind === "plan");
  const sides = (["space", "way in"] as const).flatMap((of) => {
    const clause = plan?.clauses.find((one) => one.kind === of);
    const known = of === "space" ? settings.space : settings.wayIn;
    if (clause?.kind !== of) return [];
    return clause.extents.flatMap(({ side, value }): SlipRow[] => {
      const quantity = side === "long" ? undefined : known?.[side];
      if (side === "long" || !quantity || !isTyped(value)) return [];
      const at = { file: main.file, start: value.start, end: value.end };
      return [{ what: `${SIDES[side]} of ${of}`, side: { of, side }, value: quantity, at }];
    });
  });
  return [...sides, ...[...measures.values()].flatMap((measure) => rowOf(measure, loaded))];
}

const SIDES = { wide: "width", deep: "depth", high: "height" } as const;

function rowOf({ name, declared, value, bounds }: Measure, { files }: Worked["loaded"]): SlipRow[] {
  const { entry, at } = declared;
  const known = ifKnown(value);
  const isShop = files.find(({ file }) => file === at.file)?.role === "shop";
  if (entry.kind !== "measure" || !entry.value || !isTyped(entry.value) || !known || isShop) return [];
  if (!sameDimension(known.dim, LENGTH) && !sameDimension(known.dim, ANGLE)) return [];
  const bound = (way: "at least" | "at most") => bounds.find(({ comparison }) => comparison === way)?.value;
  const [least, most] = [bound("at least"), bound("at most")];
  const { start, end } = entry.value;
  return [
    {
      what: name,
      value: known,
      at: { file: at.file, start, end },
      ...(least && { least }),
      ...(most && { most }),
    },
  ];
}

/** Written as what was measured, without names: `30"`, `2' + 3"`. */
export function isTyped(value: Expression): boolean {
  if (value.kind === "sum") return isTyped(value.left) && isTyped(value.right);
  return value.kind === "literal";
}
