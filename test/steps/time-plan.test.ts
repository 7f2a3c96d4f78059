/** Steps as sittings: what ends one, and what fills a wait. */
import { expect, test } from "vitest";
import { timePlanOf } from "../../server/worked";
import { run } from "../checks/plans";
import { beside, SAMPLES } from "./plans";

const PARTS =
  'part leg 4 of 2x4, length 20"\npart rail 2 of 1x6, length 30"\npart lid 1 of 1x6, length 30"\n';

const sittings = (steps: string): string[] =>
  timePlanOf(run(`${PARTS}${steps}`).worked.steps.steps).map(({ steps, minutes, wait }) => {
    const titles = steps.map((s) => s.title).join("+");
    const end = wait
      ? ` then ${wait.minutes} after ${wait.after.title}${wait.overnight ? " overnight" : ""}`
      : "";
    const fill = wait && wait.meanwhile.length > 0 ? `, meanwhile ${wait.meanwhile.map((s) => s.title)}` : "";
    return `${titles} ${minutes ?? "?"}${end}${fill}`;
  });

test("a wait over an hour ends a sitting, a short one does not", () => {
  expect(
    sittings(
      "step A\n  uses leg\n  takes 20 min, then wait 1 h\nstep B\n  uses leg\n  takes 10 min, then wait 2 h\nstep C\n  uses leg\n  takes 5 min\n",
    ),
  ).toEqual(["A+B 30 then 120 after B", "C 5"]);
});

test("eight hours are overnight", () => {
  const plan = (hours: number): string =>
    `step A\n  uses leg\n  takes 1 h, then wait ${hours} h\nstep B\n  uses leg\n`;
  expect(sittings(plan(8))).toEqual(["A 60 then 480 after A overnight", "B ?"]);
  expect(sittings(plan(7))).toEqual(["A 60 then 420 after A", "B ?"]);
});

test("what comes next fills a wait as far as it leaves alone what waits", () => {
  const steps =
    "step Glue\n  uses leg\n  takes 1 h, then wait 3 h\nstep Cut\n  uses rail\nstep Sand\n  uses lid\nstep Join\n  uses leg\nstep Oil\n  uses rail\n";
  expect(sittings(steps)[0]).toBe("Glue 60 then 180 after Glue, meanwhile Cut,Sand");
  expect(sittings(steps.replace("3 h", "12 h"))[0]).toBe("Glue 60 then 720 after Glue overnight");
});

test("a step that names nothing fills no wait", () => {
  expect(sittings("step A\n  uses leg\n  wait 3 h\nstep B\nstep C\n  uses leg\n")[0]).toBe(
    "A ? then 180 after A",
  );
});

test("no steps, no sittings; and the last wait ends the last", () => {
  expect(timePlanOf([])).toEqual([]);
  expect(sittings("step A\n  takes 5 min, then wait 1 day\n")).toEqual(["A 5 then 1440 after A overnight"]);
});

test.each(SAMPLES)("$name: every step in just one sitting, in order", ({ text }) => {
  const { steps } = beside(text).worked.steps;
  expect(timePlanOf(steps).flatMap((s) => [...s.steps])).toEqual([...steps]);
});
