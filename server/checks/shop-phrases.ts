/** How a board or a sheet of a shop file is told, and what is otherwise with another one. */
import type { Template } from "./telling";

export const SHOP_PHRASES = {
  "a section": "a {section}",
  "a section, really": "a {section} that is really {thickness} x {width}",
  "a board of this size": "a board {thickness} x {width}",
  "a sheet of this size": "a sheet {thickness} thick",
  "size of board": "{thickness} x {width}",
  "size of sheet": "{thickness} thick",
  "no species said": "of no said species",
  treated: "treated",
  untreated: "untreated",
  heartwood: "heartwood",
  rough: "rough",
  painted: "painted",
  "not treated": "not treated",
  "not untreated": "not said to be untreated",
  "not heartwood": "not heartwood",
  "not rough": "not rough",
  "not painted": "not painted",
  plywood: "plywood",
  "no plywood": "no plywood",
  "grain length": "its grain along its length",
  "grain width": "its grain along its width",
  "grain none": "without a grain",
  "at moisture": "at {n}% moisture",
  differing: "“{name}” ({differs})",
} as const satisfies Readonly<Record<string, Template>>;
