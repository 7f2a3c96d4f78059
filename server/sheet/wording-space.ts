/** The words of the sheet about what stands where: size over all, pieces by mark, marks of screws, diagonals. */
import { screwsInWords } from "../checks/set-out-words";
import type { CutRow, SheetData, SheetJoint, SheetSetOut, SheetSquare } from "./data";
import type { SheetDrawing } from "./drawings";
import { partWords } from "./wording";

/** `Over all: 50" wide, 20" deep, 30" high.` */
export function overallWords({ width, depth, height }: NonNullable<SheetData["overall"]>): string {
  return `Over all: ${width.text} wide, ${depth.text} deep, ${height.text} high.`;
}

/** The rows of the cut list in the order of their marks. */
export function rowsByMark({ cutList }: SheetData): readonly CutRow[] {
  const rows = cutList.flatMap((group) => group.rows).filter(({ mark }) => mark !== "");
  return rows.sort((a, b) => a.mark.length - b.mark.length || (a.mark < b.mark ? -1 : 1));
}

/** `B side`: what is written on a piece. */
export const withMark = ({ mark, label }: { readonly mark: string; readonly label: string }): string =>
  mark === "" ? label : `${mark} ${label}`;

/** `side, 4 pieces`. */
export const rowWords = (row: CutRow): string => `${partWords(row)}, ${pieces(row.count)}`;

const pieces = (n: number): string => `${n} piece${n === 1 ? "" : "s"}`;

/** `The assembly frame alone`; nothing over a drawing of the whole. */
export const drawingWords = ({ of }: SheetDrawing): string => (of === "" ? "" : `${of}, an assembly, alone`);

/** `side face into leg face: 16 screws at 8 crossings, deck-mid (#8 x 1-5/8"), pilot 1/8"`. */
export function jointWords({ title, what, pattern, holes, screws, crossings }: SheetJoint): string {
  const count = screws === null || crossings === null ? pattern : screwsInWords(screws, crossings);
  return `${title}: ${[count, what, holes].filter((words) => words !== "").join(", ")}`;
}

/** `side, 4 pieces`; which ones, where not all of the part are marked alike. */
export function setOutWords(set: SheetSetOut, joint: SheetJoint): string {
  const all = joint.setOut.filter((other) => other.part === set.part).length === 1;
  const count = set.pieces.length > 1 ? `, ${pieces(set.pieces.length)}` : "";
  return `${set.part}${count}${all ? "" : `, ${namesOf(set)}`}`;
}

/** `4 screws each`. */
export const screwsOn = ({ screws, pieces }: SheetSetOut): string =>
  `${screws} screw${screws === 1 ? "" : "s"}${pieces.length > 1 ? " each" : ""}`;

type Grid = SheetSetOut["grids"][number];

/** `on the edge, from each end: 1-3/4"`. */
export const alongWords = ({ on, along }: Grid): string =>
  on === "face" ? along.words : `on the ${on}, ${along.words}`;

/** What tells these pieces from the others of their part. */
function namesOf({ part, pieces }: SheetSetOut): string {
  const names = pieces.map((id) => (id.startsWith(`${part} / `) ? id.slice(part.length + 3) : id));
  const shown = names.slice(0, MOST_NAMES).join("; ");
  return names.length > MOST_NAMES ? `${shown} and ${names.length - MOST_NAMES} more` : shown;
}
const MOST_NAMES = 2;

/** `cap, from outside corner to outside corner: measure both diagonals: each 53-7/8"; equal means square.` */
export const squareWords = ({ words, diagonal }: SheetSquare): string =>
  `${words}: measure both diagonals: each ${diagonal.text} (${diagonal.other}); equal means square.`;
