/** Measures the drawing of the built thing, from solids to SVG text, and prints each figure beside its budget. */
import { drawExploded, drawView } from "../../server/sheet/piece-drawing";
import { viewOf } from "../../server/sheet/piece-drawing/views";
import { svgText } from "../../server/sheet/svg";
import { pictureOf } from "../../server/solid/view";
import { bench, troughs } from "../sheet/made-pieces";
import { type Figure, inMs, print, timed } from "./stats";

const options = {
  name: "bench",
  words: (mm: number) => `${Math.round(mm)} mm`,
  system: "millimetres",
} as const;
const figures: Figure[] = [];
for (const [pieces, budget, runs] of [
  [bench(), "20 ms", 60],
  [troughs(), "60 ms", 40],
] as const) {
  const count = `${pieces.length} pieces`;
  const add = (what: string, limit: string, f: () => unknown): void => {
    figures.push({ what: `${what}, ${count}`, budget: limit, value: inMs(timed(runs, f)) });
  };
  add("lines and faces", "", () => pictureOf(pieces, viewOf("turned")));
  for (const side of ["turned", "front", "above"] as const)
    add(`drawn ${side}, to SVG`, budget, () => svgText(drawView(pieces, side, options)));
  add("drawn apart, to SVG", "", () => svgText(drawExploded(pieces, options)));
}
print(figures);
