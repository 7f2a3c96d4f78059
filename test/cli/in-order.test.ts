/** Tasks shared out among workers: in order, each once, whatever becomes of the workers. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { handsFor } from "../../server/cli/check-threads";
import { type Heard, inOrder } from "../../server/cli/in-order";

/** What a worker does with a task: how many turns it takes, or that it is gone by it. */
type Fate = { readonly turns: number; readonly dies?: "once" | "always" };

async function all(fates: readonly Fate[], hands: number, starts = true): Promise<string[]> {
  const tried = new Set<number>();
  const later = (turns: number, then: () => void): void =>
    void (turns === 0 ? setImmediate(then) : setImmediate(() => later(turns - 1, then)));
  const start = (heard: Heard<string>) => {
    later(1, starts ? heard.ready : () => heard.gone("it does not start"));
    return {
      post: (task: number) => {
        const { turns, dies } = fates[task]!;
        const first = !tried.has(task);
        tried.add(task);
        const isGone = dies === "always" || (dies === "once" && first);
        later(turns, () => (isGone ? heard.gone("out of memory") : heard.did(`done ${task}`)));
      },
      end: () => {},
    };
  };
  const given: string[] = [];
  const sharing = {
    tasks: fates.map((_, i) => i),
    hands,
    start,
    here: (task: number) => `done ${task}`,
    lost: (task: number, why: string) => `lost ${task}: ${why}`,
  };
  for await (const one of inOrder(sharing)) given.push(one);
  return given;
}

const fate = fc.record(
  { turns: fc.nat(5), dies: fc.constantFrom("once" as const, "always" as const) },
  { requiredKeys: ["turns"] },
);

describe("tasks shared out", () => {
  test("are given in their order, and each is done or told as lost, by any number of workers", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fate, { maxLength: 30 }),
        fc.integer({ min: 1, max: 6 }),
        async (fates, hands) => {
          expect(await all(fates, hands)).toEqual(
            fates.map(({ dies }, i) => (dies === "always" ? `lost ${i}: out of memory` : `done ${i}`)),
          );
        },
      ),
      { numRuns: 200 },
    );
  });

  test("are done without workers where there are none, and where none starts", async () => {
    const fates = Array.from({ length: 5 }, () => ({ turns: 0 }));
    const wanted = fates.map((_, i) => `done ${i}`);
    expect(await all(fates, 0)).toEqual(wanted);
    expect(await all(fates, 3, false)).toEqual(wanted);
  });

  test("are done at most 1,000 ahead of the one that is waited for", async () => {
    const many = Array.from({ length: 3000 }, (_, i) => ({ turns: i === 0 ? 400 : 0 }));
    expect(await all(many, 4)).toHaveLength(3000);
  });
});

test("a few plans are checked without threads, and no thread is started for less than two", () => {
  expect([0, 1, 3].map((files) => handsFor(files, 8))).toEqual([0, 0, 0]);
  expect([4, 5, 100].map((files) => handsFor(files, 8))).toEqual([2, 3, 8]);
  expect(handsFor(100, 1)).toBe(0);
});
