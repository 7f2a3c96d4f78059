/** A proposed order leaves nothing out and uses nothing before its time, in whatever order a plan's lines stand. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { stepsWritten } from "../../server/checks/step-words";
import { evaluate } from "../../server/service";
import { beside, SAMPLES, withoutSteps } from "../steps/plans";
import { brokenSample, FEWER, madePlan } from "./plans";

/** The entries of a plan, each with its indented lines. */
const entriesOf = (text: string): string[] => text.match(/^\S.*\n(?:(?:[ \t].*)?\n)*/gm) ?? [];

const CODES = ["step-uses-later", "never-assembled"];

test(
  "lines in any order, with some joints left out",
  () => {
    const shuffled = fc.constantFrom(...SAMPLES).chain(({ text }) => {
      const [head, ...rest] = entriesOf(`${withoutSteps(text)}\n`);
      const joints = rest.filter((e) => /^(fasten|glue) /.test(e));
      const all = fc.shuffledSubarray(rest, { minLength: rest.length });
      return fc
        .tuple(all, fc.subarray(joints, { maxLength: Math.min(3, joints.length) }))
        .map(([order, less]) => [head, ...order.filter((e) => !less.includes(e))].join(""));
    });
    fc.assert(
      fc.property(shuffled, (text) => {
        const { worked } = beside(text);
        fc.pre(worked.pieces.complete && worked.steps.steps.length > 0);
        const { problems } = beside(`${text}\n${stepsWritten(worked)}\n`);
        expect(problems.filter((p) => CODES.includes(p.code)).map((p) => `${p.code} ${p.says}`)).toEqual([]);
      }),
      { numRuns: Math.ceil(FEWER / 10) },
    );
  },
  60_000 + FEWER * 50,
);

const alone = (text: string) => evaluate("plan.sawbuck", text, (path) => ({ file: path, refused: "no" }));

test(
  "every placed piece of any plan is in at most one step, every screw too, and none before its pieces",
  () => {
    fc.assert(
      fc.property(fc.oneof(madePlan, brokenSample), (text) => {
        const { worked } = alone(text);
        const { steps, stepOf } = worked.steps;
        const fresh = steps.flatMap((s) => [...s.fresh]);
        expect(new Set(fresh).size).toBe(fresh.length);
        for (const step of steps)
          for (const { joint, screws, crossings } of [...step.joints, ...step.glues]) {
            expect(new Set(screws).size).toBe(screws.length);
            for (const { first, into } of crossings)
              expect(Math.max(stepOf[first]!, stepOf[into]!)).toBeLessThanOrEqual(steps.indexOf(step));
            for (const n of screws) expect(joint.placed!.screws[n]).toBeDefined();
          }
      }),
      { numRuns: FEWER },
    );
  },
  60_000 + FEWER * 50,
);
