/** How a screw that holds too little is told of between placed pieces, whose depths are measured in space. */
import { expect, test } from "vitest";
import { problemText } from "../../server/checks";
import { run } from "./plans";

test("one that holds just the least, and less than half of itself, is told the half", () => {
  const { problems, worked } = run(`part leg of 2x2, length 15"
part short of 1x4, length overall depth of legs
place leg upright, on floor, at each corner of 12" x 10"
place short front to back, on edge, right of left legs, flush with front of legs, flush with top of legs
  mirrored left to right about legs
fasten short into leg, 2 #8 x 1-1/4" at each crossing
`);
  const found = problems.find((p) => p.code === "screw-holds-little")!;
  expect(problemText(found.code, found, worked.settings.display)).toBe(
    'A #8 x 1-1/4" screw goes through short (3/4") and holds only 1/2" in leg: less than half of its 1-1/4".',
  );
});
