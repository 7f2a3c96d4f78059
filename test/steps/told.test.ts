/** Steps that cannot be read, gaps that wood fills, and pieces of a plan that is brought in. */
import { describe, expect, test } from "vitest";
import { run, STAND } from "../checks/plans";

describe("what cannot be read", () => {
  const beam =
    "stock beam of 6x6, species douglas-fir, sold 14' $60\npart sill 1 of beam, length 12'\nstep Lay it\n  uses sill";

  test("leaves how many people there are, and how long is waited, open", () => {
    const codes = (text: string) => run(text).problems.map((p) => p.code);
    expect(codes(beam)).toEqual(["heavy-to-lift"]);
    expect(codes(`${beam}, 0 people`)).toEqual(["impossible-value"]);
    expect(codes(`${beam}\n  people 2`)).toEqual(["not-understood"]);
    const oiled = (wait: string) =>
      `${STAND}finish oil, dries 12 h\ncoat leg with oil\nstep Oil\n  coats leg${wait}\nstep Build\n  uses leg and rail and slat\n`;
    expect(codes(oiled(""))).toEqual(["wait-missing"]);
    expect(codes(oiled("\n  wait overnight"))).toEqual(["unknown-name"]);
  });
});

test("a gap that other wood fills wants no brush", () => {
  const sandwich = (length: string) => `sheet ply, thickness 1/4", sold 48" x 96" $30
part rail of 1x4, length 30"
part panel of ply, length ${length}, width 3-1/2"
place rail across, on edge, on floor, 0 from left, 0 from front
place panel across, on edge, on floor, 0 from left, 3/4" from front
place rail across, on edge, on floor, 0 from left, 1" from front
finish oil, dries 12 h
coat rail with oil
step Build
  uses rail and panel
step Oil
  coats rail
`;
  const reached = (length: string) => run(sandwich(length)).problems.filter((p) => p.code === "cannot-reach");
  expect(reached('30"')).toEqual([]);
  expect(reached('3"')).toHaveLength(1);
});

test("what no step uses is told where the plan places it, though another file declares it", () => {
  const lid = `part plank of 1x4, length 28"
assembly lid
  place plank across, flat, on floor, 0 from left, 0 from front
  place plank across, flat, on floor, 0 from left, 4" from front
`;
  const plan = `bring lid.sawbuck
part leg of 2x4, length 10"
place leg upright, wide face front, on floor, at each corner of 28" x 7-1/2"
place lid, on legs, flush with left of legs, flush with front of legs
step Legs
  uses leg
`;
  const { problems } = run(plan, (path) =>
    path === "lid.sawbuck" ? { file: path, text: lid } : { file: path, refused: "there is no such file" },
  );
  const [found] = problems.filter((p) => p.code === "never-assembled");
  expect(found!.slots.part).toBe("lid");
  expect(plan.slice(found!.at.start, found!.at.end)).toBe("place lid");
});
