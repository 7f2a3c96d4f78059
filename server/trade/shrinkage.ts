// How much a named wood shrinks across its grain; names that cover several woods take the most of those that are printed.
import { type Row, remembered } from "./row";
import { type Shrinkage, shrinkages } from "./wood";

export interface ShrinkageOf {
  readonly row: Row<Shrinkage>;
  /** The wood that was taken, where the name covers several. */
  readonly member: string | undefined;
}

/** Shrinkage of a wood by its name in the species table; undefined where none is printed of it or of any of its woods. */
export function shrinkageOf(name: string): ShrinkageOf | undefined {
  return FOUND.get(name);
}

/** The woods sold under one grade stamp. Those whose shrinkage no table here prints are left out of the comparison. */
export const soldTogether: readonly Row<readonly string[]>[] = (
  [
    [
      "spruce-pine-fir",
      [
        "white-spruce",
        "engelmann-spruce",
        "black-spruce",
        "red-spruce",
        "lodgepole-pine",
        "balsam-fir",
        "subalpine-fir",
      ],
    ],
    [
      "spruce-pine-fir-south",
      [
        "white-spruce",
        "engelmann-spruce",
        "black-spruce",
        "red-spruce",
        "sitka-spruce",
        "lodgepole-pine",
        "red-pine",
        "balsam-fir",
      ],
    ],
    [
      "douglas-fir-larch",
      ["douglas-fir", "douglas-fir-interior-north", "douglas-fir-interior-west", "western-larch"],
    ],
    ["hem-fir", ["western-hemlock", "grand-fir", "noble-fir", "pacific-silver-fir", "white-fir"]],
    ["southern-pine", ["loblolly-pine", "longleaf-pine", "shortleaf-pine", "slash-pine"]],
    ["western-cedars", ["western-redcedar", "yellow-cedar", "port-orford-cedar"]],
    ["redwood", ["redwood-old-growth", "redwood-young-growth"]],
    ["eastern-hemlock-tamarack", ["eastern-hemlock", "tamarack"]],
  ] as const
).map(([key, value]) => ({
  key,
  value,
  unit: "",
  source: remembered("NDS Supplement 2018", "species combinations"),
  range: "of those whose shrinkage is printed here",
}));

const PRINTED = new Map(shrinkages.map((row) => [row.key, row]));
const FOUND: ReadonlyMap<string, ShrinkageOf> = new Map([
  ...soldTogether.flatMap(({ key, value }): [string, ShrinkageOf][] => {
    const [most] = value
      .flatMap((name) => PRINTED.get(name) ?? [])
      .sort((a, b) => b.value.tangential - a.value.tangential);
    return most ? [[key, { row: most, member: most.key }]] : [];
  }),
  ...[...PRINTED].map(([name, row]): [string, ShrinkageOf] => [name, { row, member: undefined }]),
]);
