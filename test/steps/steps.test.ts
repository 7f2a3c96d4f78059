/** The steps of a plan worked out: every piece and every screw in one of them, and what they ask of hands. */
import { describe, expect, test } from "vitest";
import { run, STAND } from "../checks/plans";
import { notChecked } from "../finish/plans";
import { beside, SAMPLES, shownSteps, withoutSteps } from "./plans";

const bothWays = SAMPLES.flatMap(({ name, text }) => [
  { name, text },
  { name: `${name}, as proposed`, text: withoutSteps(text) },
]);

describe.each(bothWays)("of $name", ({ text }) => {
  const { worked } = beside(text);
  const { steps, never, stepOf } = worked.steps;

  test("every placed piece is new in just one step", () => {
    const fresh = steps.flatMap((s) => [...s.fresh]).sort((a, b) => a - b);
    expect(fresh).toEqual([...worked.space.pieces.keys()]);
    expect(never).toEqual({ pieces: [], parts: [] });
    steps.forEach((s, n) => {
      for (const i of s.fresh) expect(stepOf[i]).toBe(n);
    });
  });

  test("every screw is driven in just one step, and none before its pieces are there", () => {
    for (const joint of worked.joints) {
      const driven = steps.flatMap((s, n) =>
        [...s.joints, ...s.glues].filter((d) => d.joint === joint).map((d) => ({ ...d, n })),
      );
      const screws = driven.flatMap((d) => [...d.screws]).sort((a, b) => a - b);
      expect(screws).toEqual([...(joint.placed?.screws.keys() ?? [])]);
      expect(driven.flatMap((d) => [...d.crossings]).length).toBe(joint.placed?.crossings.length ?? 0);
      const sum = driven.reduce((all, d) => all + (d.count ?? 0), 0);
      if (joint.count.state === "known") expect(sum).toBe(joint.count.value);
      for (const { crossings, n } of driven)
        for (const { first, through, into } of crossings) {
          const at = [first, ...through, into].map((i) => stepOf[i]!);
          expect(Math.max(...at)).toBe(n);
        }
    }
  });

  test("every check of corners comes when all it measures is there and held together", () => {
    for (const [n, step] of steps.entries())
      for (const { pieces } of step.squares) {
        const there = Math.max(...pieces.map((i) => stepOf[i]!));
        const held = steps.findIndex((_, m) => pieces.every((i) => heldWith(pieces[0]!, m).has(i)));
        expect(n).toBe(Math.max(there, held));
      }
  });

  /** What joints hold to a piece once a step is done. */
  function heldWith(piece: number, step: number): ReadonlySet<number> {
    const found = new Set([piece]);
    const joints = steps.slice(0, step + 1).flatMap((s) => [...s.joints, ...s.glues]);
    const groups = joints.flatMap((d) => d.crossings.map((c) => [c.first, ...c.through, c.into]));
    for (let before = 0; before < found.size; ) {
      before = found.size;
      for (const group of groups) if (group.some((i) => found.has(i))) for (const i of group) found.add(i);
    }
    return found;
  }
});

describe("what a step uses", () => {
  test("a name takes what no step before has taken, a narrowed one only what it chooses", () => {
    const plan = run(
      `${STAND}step One side\n  uses front legs and front rail\nstep The other\n  uses legs and rail\nstep The slats\n  uses slats\n`,
    );
    expect(shownSteps(plan)).toEqual([
      "1. One side: 2 leg, 1 rail; 4 screws",
      "2. The other: 2 leg, 1 rail; 4 screws",
      "3. The slats: 4 slat; 8 screws",
    ]);
    expect(plan.worked.steps.steps[1]!.again).toHaveLength(3);
    expect(plan.worked.steps.steps[2]!.standing).toHaveLength(2);
  });

  test("a joint is split over the steps that bring its pieces", () => {
    const plan = run(`${STAND}step A\n  uses leg\nstep B\n  uses front rail\nstep C\n  uses rail and slat\n`);
    expect(shownSteps(plan)).toEqual([
      "1. A: 4 leg",
      "2. B: 1 rail; 4 screws",
      "3. C: 1 rail, 4 slat; 12 screws",
    ]);
  });

  test("before placing, a joint belongs to the step in which all its parts are there", () => {
    const plan = run(
      'part leg 4 of 2x4, length 20"\npart rail 2 of 1x6, length 30"\nfasten rail face into leg face, 2 #8 x 1-5/8" at each end\nstep Cut\n  uses leg\nstep Join\n  uses rail\n',
    );
    expect(shownSteps(plan)).toEqual(["1. Cut: leg", "2. Join: rail; 8 screws"]);
  });

  test("a joint of which one part stands nowhere belongs to the step in which all of it is there", () => {
    const text = `${STAND}part block 2 of 2x4, length 6"\nfasten block face into leg face, 2 #8 x 1-5/8" at each end\n`;
    const plan = run(`${text}step A\n  uses leg and rail\nstep B\n  uses block\nstep C\n  uses slat\n`);
    expect(shownSteps(plan)).toEqual([
      "1. A: 4 leg, 2 rail; 8 screws",
      "2. B: block; 8 screws",
      "3. C: 4 slat; 8 screws",
    ]);
    const later = run(`${text}step A\n  uses block and front legs and rail\nstep B\n  uses legs and slat\n`);
    expect(shownSteps(later)).toEqual([
      "1. A: 2 leg, 2 rail, block; 4 screws",
      "2. B: 2 leg, 4 slat; 20 screws",
    ]);
  });

  test("a joint of which one part is placed and one is not belongs there too", () => {
    const plan = run(
      `${STAND}part peg 6 of 2x2, length 5"\nfasten rail face into peg end, 1 #8 x 2" at each end\nstep A\n  uses leg and rail and slat\nstep Pegs\n  uses peg\n`,
    );
    expect(shownSteps(plan)[1]).toBe("2. Pegs: peg; 4 screws");
  });

  test("nothing is told as never used while a step cannot be read", () => {
    for (const clause of ["uses", "uses lag", "uses leg and and"]) {
      const { worked, problems } = run(`${STAND}step Do it\n  ${clause}\n`);
      expect(worked.steps.never).toEqual({ pieces: [], parts: [] });
      expect(problems.map((p) => p.code)).not.toContain("never-assembled");
    }
  });

  test("coats are dealt to the steps that lay them", () => {
    const oil = "finish oil, dries 12 h, 3 coats\ncoat leg with oil\n";
    const steps = (n: number): string => "step Oil\n  coats leg\n  wait 2 days\n".repeat(n);
    const coats = (n: number): number[] =>
      run(`${STAND}${oil}${steps(n)}`).worked.steps.steps.flatMap((s) => s.coats.map((c) => c.coats));
    expect(coats(1)).toEqual([3]);
    expect(coats(2)).toEqual([2, 1]);
    expect(coats(3)).toEqual([1, 1, 1]);
  });
});

describe("finishes that steps lay", () => {
  const PLAN = `${STAND}finish oil, dries 12 h, 2 coats\nfinish primer, dries 4 h, 1 coats\n`;
  const laid = (text: string): string[][] =>
    run(PLAN + text).worked.steps.steps.map((s) =>
      s.coats.map((c) => `${c.words}: ${c.line?.finish} ${c.coats}`),
    );
  const LAYERS = "coat leg with primer\ncoat leg with oil\n";
  const steps = (n: number): string => "step Coat\n  coats leg\n  wait 2 days\n".repeat(n);

  test("two halves of a part, each in a step of its own, both get all coats", () => {
    expect(
      laid(
        "coat leg with oil\nstep A\n  coats front legs\n  wait 24 h\nstep B\n  coats back legs\n  wait 24 h\n",
      ),
    ).toEqual([["front legs: oil 2"], ["back legs: oil 2"]]);
  });

  test("two finishes of one part are laid one after the other", () => {
    expect(laid(LAYERS + steps(2))).toEqual([["leg: primer 1"], ["leg: oil 2"]]);
    expect(laid(LAYERS + steps(3))).toEqual([["leg: primer 1"], ["leg: oil 1"], ["leg: oil 1"]]);
    expect(laid(LAYERS + steps(1))).toEqual([["leg: primer 1", "leg: oil 2"]]);
  });

  test("a thing of which two lines finish different parts goes with the line of most of it", () => {
    const box = "box bin, walls rail and leg\ncoat rail with primer\ncoat leg with oil\n";
    expect(laid(`${box}step A\n  coats bin\n`)).toEqual([["bin: oil 2"]]);
  });

  test("what no line finishes is coated all the same", () => {
    expect(laid("step A\n  coats slat\n")).toEqual([["slat: undefined 1"]]);
  });

  test("proposed ones lay what their line says", () => {
    const { worked } = run(PLAN + LAYERS);
    const coated = worked.steps.steps.filter((s) => s.coats.length > 0);
    expect(coated.map((s) => [s.title, s.coats.map((c) => c.coats), s.wait?.approx])).toEqual([
      ["Coat the legs with primer, and let it dry", [1], 240],
      ["Coat the legs with oil twice, and let it dry", [2], 1440],
    ]);
  });

  test("proposed ones wait as long as the finish is told to dry", () => {
    const { worked } = run(`${STAND}coat leg with exterior-paint, 2 coats\n`);
    expect(worked.coats[0]!.dries!.approx).toBe(16 * 60);
    expect(worked.steps.steps.find((s) => s.coats.length > 0)!.wait!.approx).toBe(2 * 16 * 60);
  });
});

describe("what cannot be read of a step", () => {
  const found = (text: string): string[] => run(text).problems.map((p) => p.code);
  const oil = (wait: string): string =>
    `${STAND}finish oil, dries 12 h\ncoat leg with oil\nstep Oil\n  coats leg\n  ${wait}\nstep Go on\n  uses leg and rail and slat\n`;

  test.each([
    ["wait 12", "unit-mismatch"],
    ["wait 12 huors", "not-understood"],
    ["wait 0 h - 2 h", "impossible-value"],
  ])("no wait is missed where it says %j", (wait, code) => {
    expect(found(oil(wait))).toEqual([code]);
  });

  test("nobody is taken to lift alone where it does not rightly say how many there are", () => {
    const beam = (people: string): string =>
      `stock beam of 6x6, species douglas-fir, sold 14' $60\npart sill 1 of beam, length 12'\nstep Lay it\n  uses sill\n${people}`;
    expect(found(beam(""))).toContain("heavy-to-lift");
    expect(found(beam("  0 people\n"))).not.toContain("heavy-to-lift");
    expect(found(beam("  0 people\n"))).toContain("impossible-value");
  });

  test.each(["takes 0 min - 5 min", "wait 0 min - 5 min"])("%s is less than nothing", (clause) => {
    expect(found(`${STAND}step A\n  uses leg and rail and slat\n  ${clause}\n`)).toEqual([
      "impossible-value",
    ]);
  });

  test.each(["takes 5 min\n  takes 6 min", "wait 5 min\n  wait 6 min", "2 people\n  3 people"])(
    "what is said twice is told: %j",
    (clauses) => {
      expect(found(`${STAND}step A\n  uses leg and rail and slat\n  ${clauses}\n`)).toEqual(["said-twice"]);
    },
  );
});

describe("waits of which nothing is known", () => {
  const listed = (text: string): string[] =>
    notChecked(run(text).worked)
      .filter((u) => /has dried|has set/.test(u.what))
      .map((u) => `${u.what}: ${u.why}`);
  const oil = (dries: string, between: string): string =>
    `${STAND}finish oil${dries}\ncoat leg with oil\nstep Oil\n  coats leg\n${between}step Go on\n  uses leg and rail and slat\n`;
  const GLUED = STAND.replace(/fasten rail.*/, "glue rail to leg");

  test("where the steps between do not say how long they take", () => {
    const sweep = "step Sweep\n";
    expect(listed(oil(", dries 12 h", sweep))).toEqual([
      "whether oil on “leg” has dried when it is handled again: the steps between do not all say how long they take",
    ]);
    expect(listed(oil(", dries 12 h", `  wait 12 h\n${sweep}`))).toEqual([]);
    expect(listed(`${GLUED}step A\n  uses leg and rail\n${sweep}step B\n  uses leg and slat\n`)).toEqual([
      expect.stringContaining(
        "whether the glue of rail has set when it is worked on again: the steps between",
      ),
    ]);
  });

  test("where nobody says how long the finish takes to dry", () => {
    expect(listed(oil("", ""))).toEqual([
      "whether oil on “leg” has dried when it is handled again: neither the plan nor the shop says how long oil takes to dry",
    ]);
    expect(listed(oil(", dries 12", ""))).toEqual([]);
  });

  test("a proposed order leaves its times to the builder, and is not listed", () => {
    expect(listed(`${GLUED}finish oil\ncoat leg with oil\n`)).toEqual([]);
  });
});

describe("what is lifted", () => {
  const lifts = (text: string) =>
    run(text).worked.steps.steps.map(
      ({ lift }) => lift && `${lift.is} ${lift.pieces.length} ${lift.kg.toFixed(2)}`,
    );

  test("new pieces one by one, and what stands on the floor not at all", () => {
    const [frame, slats] = lifts(`${STAND}step A\n  uses leg and rail\nstep B\n  uses slat\n`);
    expect(frame).toMatch(/^piece 1 /);
    expect(slats).toMatch(/^piece 1 /);
  });

  test("what was joined before and ends up higher", () => {
    const [top, legs] = lifts(
      `${STAND.replace("length 10", "length 30")}step A\n  uses rail and slat\nstep B\n  uses leg\n`,
    );
    expect(top).toMatch(/^piece 1 /);
    expect(legs).toMatch(/^unit 6 /);
  });
});

describe("limits", () => {
  const found = (text: string, code: string): number =>
    run(text).problems.filter((p) => p.code === code).length;
  const oil = (wait: string): string =>
    `${STAND}finish oil, dries 12 h\ncoat leg with oil\nstep Oil\n  coats leg\n${wait}step Go on\n  uses leg and rail and slat\n`;

  test.each([
    ["", 1],
    ["  wait 11.9 h\n", 1],
    ["  wait 12 h\n", 0],
    ["  wait 11 h\nstep Sweep\n  takes 1 h\n", 0],
    ["  wait 11 h\nstep Sweep\n  takes 50 min\n", 1],
    // How long it takes is not said: nothing is known of the time between.
    ["step Sweep\n", 0],
  ])("a finish that dries 12 h, with %j", (wait, n) => {
    expect(found(oil(wait), "wait-missing")).toBe(n);
  });

  test("a finish that says no time is looked up by its name, and left alone where it is unknown", () => {
    expect(
      found(oil("").replaceAll("oil", "exterior-paint").replace(", dries 12 h", ""), "wait-missing"),
    ).toBe(1);
    expect(found(oil("").replace(", dries 12 h", ""), "wait-missing")).toBe(0);
  });

  test("glue that screws hold too may be worked on at once", () => {
    const glued = STAND.replace("fasten slat", "glue rail to leg\nfasten slat");
    expect(found(`${glued}step A\n  uses leg and rail\nstep B\n  uses slat\n`, "wait-missing")).toBe(0);
  });

  test.each([
    ['3/8"', 1],
    ['1/2"', 0],
  ])("a gap of %s between what is oiled late", (gap, n) => {
    const text = `part batten of 1x2, length 12"
part slat of 1x4, length 30"
place batten front to back, flat, on floor, 0 from left, 0 from front
place slat across, flat, on batten, flush with left of batten, flush with front of batten, 2 deep, ${gap} apart
finish oil, dries 12 h
coat slat with oil
step Lay them
  uses batten and slat
step Oil them
  coats slat
`;
    expect(found(text, "cannot-reach")).toBe(n);
  });

  test("indoors wood may stay bare where other wood lies on it", () => {
    const text = (where: string): string =>
      `plan A\n  ${where}\n${STAND}finish oil, dries 12 h\ncoat leg with oil\nstep A\n  uses leg and rail and slat\nstep B\n  coats leg\n`;
    expect(found(text("outdoors"), "finish-after-cover")).toBe(1);
    expect(found(text("indoors"), "finish-after-cover")).toBe(0);
  });

  test("a second coat may cover what the first has reached", () => {
    const text = `plan A\n  outdoors\n${STAND}finish oil, dries 1 h, 2 coats\ncoat leg with oil\nstep A\n  coats leg\n  wait 1 h\nstep B\n  uses leg and rail and slat\nstep C\n  coats leg\n`;
    expect(found(text, "finish-after-cover")).toBe(0);
  });

  test("what stands on the floor, or lies on what is there, may be used before what it is joined to", () => {
    expect(
      found(`${STAND}step A\n  uses leg\nstep B\n  uses rail\nstep C\n  uses slat\n`, "step-uses-later"),
    ).toBe(0);
    expect(
      found(`${STAND}step A\n  uses rail\nstep B\n  uses leg\nstep C\n  uses slat\n`, "step-uses-later"),
    ).toBe(1);
  });

  test("what a later step names again was only cut or tried", () => {
    const text = `${STAND}step Cut the rails\n  uses rail\nstep B\n  uses leg and rail\nstep C\n  uses slat\n`;
    expect(found(text, "step-uses-later")).toBe(0);
  });
});
