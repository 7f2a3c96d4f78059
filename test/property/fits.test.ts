/** 4. A cure that rewrites a placed plan removes its problem and adds no error and no hazard. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { applied, countOf, graveAdded } from "../checks/curing";
import { run } from "../checks/plans";
import { FEWER } from "./plans";

const eighths = (most: number): fc.Arbitrary<string> =>
  fc.integer({ min: 0, max: most * 8 }).map((n) => {
    const [whole, rest] = [Math.floor(n / 8), n % 8];
    return rest === 0 ? `${whole}"` : whole === 0 ? `${rest}/8"` : `${whole}-${rest}/8"`;
  });
const onFloor = fc
  .tuple(eighths(20), eighths(10))
  .map(([x, y]) => `on floor, ${x} from left, ${y} from front`);
const raised = fc
  .tuple(eighths(4), eighths(20), eighths(10))
  .map(([z, x, y]) => `${z} up, ${x} from left, ${y} from front`);
const over = fc
  .tuple(eighths(2), eighths(8))
  .map(([z, x]) => `${z} above bearer, ${x} in from left of bearer, flush with front of bearer`);
const joint = fc
  .tuple(fc.integer({ min: 1, max: 7 }), fc.constantFrom('#8 x 1-5/8"', '#10 x 2"', '#8 x 3"'))
  .map(([n, screw]) => `fasten slat into bearer, ${n} ${screw} at each crossing`);

/** Boards laid about at random, two of them on others, and some of them joined. */
const laidAbout = fc
  .record({
    places: fc.tuple(onFloor, fc.oneof(onFloor, raised), fc.oneof(raised, over), over),
    joint: fc.option(joint),
    space: fc.option(fc.constantFrom('space 30" wide, 12" deep, 6" high', 'way in 8" wide')),
  })
  .map(({ places: [bearer, block, slat, lid], joint, space }) =>
    [
      "plan Laid about",
      ...(space ? [`  ${space}`] : []),
      'part bearer of 2x4, length 24"',
      'part block of 4x4, length 6"',
      'part slat of 1x4, length 9"',
      'part lid of 1x6, length 12"',
      `place bearer across, flat, ${bearer}`,
      `place block across, flat, ${block}`,
      `place slat front to back, flat, ${slat}`,
      `place lid across, flat, ${lid}`,
      ...(joint ? [joint] : []),
      "",
    ].join("\n"),
  );

/** Each is worked out many times over. */
const CASES = Math.ceil(FEWER / 4);

test("boards laid about", () => {
  let cured = 0;
  fc.assert(
    fc.property(laidAbout, (text) => {
      for (const problem of run(text).problems)
        for (const cure of problem.cures) {
          if (cure.edits.length === 0) continue;
          cured++;
          const after = applied(text, cure.edits);
          expect(countOf(problem.code, after)).toBeLessThan(countOf(problem.code, text));
          expect(graveAdded(text, after)).toEqual([]);
        }
    }),
    { numRuns: CASES },
  );
  console.log(`${cured} cures were tried`);
  expect(cured).toBeGreaterThan(CASES / 5);
});
