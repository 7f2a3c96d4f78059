/** The order that is proposed for a plan without steps. */
import { describe, expect, test } from "vitest";
import { judge } from "../../server/checks";
import { applied, countOf } from "../checks/curing";
import { run } from "../checks/plans";
import { beside, SAMPLES, shownSteps, withoutSteps } from "./plans";

const stripped = (name: string): string => withoutSteps(SAMPLES.find((s) => s.name === name)!.text);

describe.each(SAMPLES)("of $name", ({ text }) => {
  const bare = withoutSteps(text);
  const before = beside(bare);
  const hint = before.problems.find((p) => p.code === "never-assembled");

  test("the cure writes it, and then nothing is left unused and nothing grave is new", () => {
    if (before.worked.steps.steps.filter((s) => s.joints.length + s.glues.length > 0).length < 2) return;
    expect(hint?.class).toBe("hint");
    const after = beside(applied(bare, hint!.cures[0]!.edits));
    expect(after.worked.steps.proposed).toBe(false);
    expect(shownSteps(after)).toEqual(shownSteps(before));
    expect(after.problems.map((p) => p.code)).toEqual([]);
  });

  test("a comment or a note changes nothing of it", () => {
    const more = `${bare}\n# a word to oneself\nnote Mind the dog.\n`;
    expect(shownSteps(beside(more))).toEqual(shownSteps(before));
  });
});

test("the short ends first, then the long sides, then what lies on them, from below upwards", () => {
  expect(shownSteps(beside(stripped("salad-trough.sawbuck")))).toMatchInlineSnapshot(`
    [
      "1. Cut every piece",
      "2. Coat the sides, the ends, the legs and the cap with outdoor-oil twice, and let it dry",
      "3. Build the frames of legs, ends and end ledgers, each by itself: 4 leg, 4 end, 2 end-ledger; 22 screws",
      "4. Add the sides and the ledgers: 4 side, 2 ledger; 40 screws",
      "5. Lay the floor boards and the end floors: 10 floor-board, 2 end-floor; 46 screws",
      "6. Lay the cap: 2 cap-side, 2 cap-end; 8 screws",
      "7. Line the trough with pond-liner",
      "8. Fill the trough in the place where it will stay",
    ]
  `);
});

test("what hangs together by itself is built first, what is cut to fit comes last", () => {
  expect(shownSteps(beside(stripped("potting-bench.sawbuck")))).toMatchInlineSnapshot(`
    [
      "1. Cut every piece",
      "2. Build the bin, by itself: 6 bin-floor, 4 bin-post, 2 bin-side, 2 bin-end, 2 bin-cleat; 48 screws",
      "3. Build the frames of posts and short rails, each by itself: 4 post, 4 short-rail; 16 screws",
      "4. Add the long rails: 4 long-rail; 16 screws",
      "5. Lay the shelf slats: 10 shelf-slat; 40 screws",
      "6. Lay the bench top: 1 bench-top; 14 screws",
      "7. Lay the tray: 4 lip; 4 screws; 4 glued",
      "8. Fill the bin in the place where it will stay",
    ]
  `);
  expect(shownSteps(beside(stripped("school-gate.sawbuck")))).toMatchInlineSnapshot(`
    [
      "1. Cut every piece but the brace",
      "2. Coat the pickets, the rails and the brace with outdoor-oil twice, and let it dry",
      "3. Build the frame of pickets and rails: 8 picket, 2 rail; 32 screws",
      "4. Mark the brace in place, cut to fit and fasten: 1 brace; 8 screws",
    ]
  `);
});

test("what would stand in the way of a drill comes after it", () => {
  expect(shownSteps(beside(stripped("tree-seat.sawbuck")))).toMatchInlineSnapshot(`
    [
      "1. Cut every piece",
      "2. Coat the slats and the side slats with outdoor-oil twice, and let it dry",
      "3. Build the frames of inner legs and inner side rails, each by itself: 4 inner-leg, 2 inner-side-rail; 16 screws",
      "4. Add the inner rails: 2 inner-rail; 16 screws",
      "5. Build the frames of outer legs and rails, each by itself: 4 outer-leg, 2 rail; 12 screws",
      "6. Add the side rails: 2 side-rail; 12 screws",
      "7. Lay the slats and the side slats: 20 slat, 10 side-slat; 120 screws",
      "8. Build the collar, and set in place: 6 collar-board; 12 glued",
    ]
  `);
});

test("a thing on a wall is built all the same", () => {
  const shelf = `part board of 1x8, length 30"
part cleat of 1x2, length 30"
place board across, flat, 48" up, 0 from left, 0 from front
place cleat across, on edge, under board, flush with left of board, flush with back of board
fasten board into cleat edge, 3 #8 x 1-5/8" along it
`;
  expect(shownSteps(run(shelf))).toMatchInlineSnapshot(`
    [
      "1. Cut every piece",
      "2. Put together the board and the cleat: 1 board, 1 cleat; 3 screws",
    ]
  `);
});

test("none where nothing placed is joined", () => {
  expect(run('part leg 4 of 2x4, length 20"\nplace leg upright, on floor').worked.steps.steps).toEqual([]);
  expect(run('part leg 4 of 2x4, length 20"').worked.steps.steps).toEqual([]);
  expect(run("").worked.steps).toMatchObject({ steps: [], proposed: true });
});

test("no hint while the plan has a mistake, or where there is no order to speak of", () => {
  const pair = `plan A
part rail of 2x4, length 30"
part slat of 1x4, length 12"
place rail across, flat, on floor
place slat front to back, flat, on rail, 9" in from left of rail, flush with front of rail
fasten slat into rail, 2 #8 x 1-5/8" at each crossing
`;
  expect(countOf("never-assembled", pair)).toBe(0);
  const bench = stripped("potting-bench.sawbuck");
  expect(beside(bench).problems.map((p) => p.code)).toEqual(["never-assembled"]);
  expect(beside(bench.replace("part lip of", "part lipp of")).problems.map((p) => p.code)).not.toContain(
    "never-assembled",
  );
});

describe("how things are called", () => {
  const titles = (text: string): string[] => run(text).worked.steps.steps.map((s) => s.title);
  const FRAME = `part rail of 2x4, length 30", cut to fit plus 1"
part beam of 2x4, length 34-1/2"
`;
  const placed = (leg: string): string => `part ${leg} of 2x4, length 20"
assembly frame
  place ${leg} upright, wide face front, on floor, 2 across, 23" apart
  place rail across, flat, on ${leg}, flush with left of ${leg}, flush with front of ${leg}
  fasten rail face into ${leg} end, 1 #8 x 3" at each crossing
place frame, 0 from left, 0 from front
place frame, 0 from left, 20" from front
place beam front to back, flat, on rails, flush with left of rails, flush with front of rails
fasten beam face into rail face, 1 #8 x 2" at each crossing
`;

  test("what is cut to fit inside an assembly is not cut with the rest", () => {
    expect(titles(FRAME + placed("leg"))[0]).toBe("Cut every piece but the rails");
  });

  test("a part named by its plural keeps it", () => {
    const plan = `part legs of 2x4, length 20"
part shelf of 2x4, length 30"
place legs upright, wide face front, on floor, 2 across, 20" apart
place shelf across, flat, on legs, flush with left of legs, flush with front of legs
fasten shelf face into legs end, 2 #8 x 3" at each crossing
`;
    expect(titles(plan)).toContain("Set up the legs");
  });

  test("boxes are lined by their plural too, and several are filled in several places", () => {
    const inside = 'inside 9" x 9" x 9", filled with soil';
    const text = `${FRAME}${placed("leg")}box tub, ${inside}
box bin, ${inside}
roll film, width 4'
line tubs with film
`;
    expect(titles(text).slice(-2)).toEqual([
      "Line the tub with film",
      "Fill the tub and the bin in the places where they will stay",
    ]);
  });
});

test("the feet are measured once the frames are joined, not while they lie apart", () => {
  const plan = run(`part leg of 2x2, length 15"
part long of 1x4, length overall width of legs
part short of 1x4, length overall depth of legs
place leg upright, on floor, at each corner of 12" x 10"
place long across, on edge, in front of legs, flush with left of legs, flush with top of legs
  mirrored front to back about legs
place short front to back, on edge, right of left legs, flush with front of legs, flush with top of legs
  mirrored left to right about legs
fasten long into leg, 2 #8 x 1-5/8" at each crossing
fasten short into leg, 2 #8 x 1-5/8" at each crossing
`);
  const { steps } = plan.worked.steps;
  expect(steps.map((s) => [s.title, s.squares.length])).toEqual([
    ["Cut every piece", 0],
    ["Build the frames of legs and shorts, each by itself", 0],
    ["Add the longs", 1],
  ]);
});

test("a usual finish gets the time that the sheet says it takes", () => {
  const { worked } = run(`part post of 4x4, length 20"
part foot of 2x4, length 22"
place foot across, flat, on floor
place post upright, wide face front, on foot, centered on foot
fasten foot into post, 2 #10 x 3" at each crossing
coat post and foot with exterior-paint
`);
  const coat = worked.steps.steps.find((s) => s.coats.length > 0);
  expect(coat?.wait?.approx).toBe(worked.coats[0]!.dries!.approx);
});

test("the problems of a plan without steps are found without working an order out", () => {
  const { worked, problems } = beside(stripped("salad-trough.sawbuck"));
  const asked: string[] = [];
  const steps = new Proxy(worked.steps, {
    get: (of, name) => {
      asked.push(String(name));
      return Reflect.get(of, name);
    },
  });
  const codes = judge({ ...worked, steps }).problems.map((p) => p.code);
  expect(codes).toContain("never-assembled");
  expect(codes).toEqual(problems.map((p) => p.code));
  expect([...new Set(asked)]).toEqual(["proposed"]);
});
