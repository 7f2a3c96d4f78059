/** Which stock at hand would last where another rots: of the same section, and long enough. */
import { ifKnown } from "../../plan";
import type { Quantity } from "../../units";
import type { Material } from "../materials";
import type { Part } from "../parts";
import { isForFloor, isForSoil, resistanceOf } from "./resistance";
import type { Rot } from "./rot";
import type { Known } from "./wet";

export interface OtherStock {
  readonly for: readonly Part[];
  readonly stock: Material;
}

/** The cheapest stock for each kind of board that rots; undefined where one has none. Food grows in no treated box. */
export function otherStocks(rot: Rot, worked: Known): OtherStock[] | undefined {
  const food = (rot.box?.grows.length ?? 0) > 0;
  const fits = rot.where === "floor" ? isForFloor : isForSoil;
  const stocks = [...worked.scope.declared.values()]
    .filter((d) => d.kind === "stock")
    .flatMap((d) => worked.materialOf(d) ?? [])
    .filter((m) => {
      const resists = resistanceOf(m);
      return resists !== undefined && fits(resists) && !(food && resists === "treated");
    });
  const found = rot.materials.map((material): OtherStock | undefined => {
    const parts = rot.parts.filter((p) => p.material === material);
    const [stock] = stocks
      .filter((m) => isAlike(m, material) && reaches(m, parts))
      .sort((a, b) => perLength(a) - perLength(b) || 0);
    return stock && { for: parts, stock };
  });
  return found.every((f) => f !== undefined) ? (found as OtherStock[]) : undefined;
}

/** mm */
const SAME = 0.5;

const isAlike = (a: Material, b: Material): boolean =>
  near(ifKnown(a.thickness), ifKnown(b.thickness)) && near(ifKnown(a.width), ifKnown(b.width));

const near = (a: Quantity | undefined, b: Quantity | undefined): boolean =>
  a !== undefined && b !== undefined && Math.abs(a.approx - b.approx) < SAME;

/** Some length that is sold holds the longest of these pieces. */
function reaches({ sold, endTrim }: Material, parts: readonly Part[]): boolean {
  const longest = Math.max(...sold.map((s) => s.length.approx - endTrim.value.approx));
  return parts.every((p) => (ifKnown(p.needs)?.approx ?? Number.POSITIVE_INFINITY) <= longest + SAME);
}

/** What a millimetre costs at its cheapest; more than any where no price is given. */
const perLength = ({ sold }: Material): number =>
  Math.min(
    Number.MAX_VALUE,
    ...sold.map((s) => (s.price ? s.price.approx / s.length.approx : Number.MAX_VALUE)),
  );
