/** Boxes of tests about water: of cedar bought dry, one board thick, on two runners unless said. */
import { run } from "../checks/plans";

export const codes = (text: string): string[] => run(text).problems.map((p) => `${p.code}: ${p.says}`);

export const OUTDOORS = "plan Yard thing\n  outdoors\n";
export const INDOORS = "plan Yard thing\n  indoors\n";

/** So deep inside, and 34-1/2" wide; the bottom boards begin at the front. */
export const box = (
  deep: string,
  boards: string,
  says: string,
  under = "runners",
): string => `measure deep = ${deep}
stock 1x8, species western-redcedar, heartwood
stock 1x4, species western-redcedar, heartwood
part side of 1x8, length 36"
part end of 1x8, length deep
${
  under === "floor"
    ? ""
    : `stock 2x2, species western-redcedar, heartwood
part runner of 2x2, length deep + 1-1/2"
place runner front to back, on edge, on floor, 0 from front, 4" from left
place runner front to back, on edge, on floor, 0 from front, 30-1/2" from left
`
}part floor-board of 1x4, length 34-1/2"
place side across, on edge, on ${under}, 0 from left, 0 from front
place end front to back, on edge, on ${under}, 0 from left, 3/4" from front
place end front to back, on edge, on ${under}, 35-1/4" from left, 3/4" from front
place side across, on edge, on ${under}, 0 from left, behind ends
place floor-board across, flat, on ${under}, between left end and right end, 3/4" from front, ${boards}
box trough, walls side and end, bottom floor-board, filled with potting-mix${says}
`;
