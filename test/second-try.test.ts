/** Scenarios of the real editor that failed are tried once more, and it is said. */
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { close, withSecondTry } from "./e2e/telling.mjs";

interface Scenario {
  readonly name: string;
  /** How often it fails before it holds. */
  readonly fails: number;
}

const said: string[] = [];
beforeEach(() => {
  said.length = 0;
  vi.spyOn(console, "log").mockImplementation((line: string) => void said.push(line));
});
afterEach(() => vi.restoreAllMocks());

/** What a run of those scenarios prints at its end, its exit code, and what it tried. */
async function outcome(...fails: readonly number[]) {
  const tried: string[] = [];
  const run = async (chosen: readonly Scenario[]) =>
    chosen.map((scenario) => {
      tried.push(scenario.name);
      const times = tried.filter((name) => name === scenario.name).length;
      return { scenario, error: times <= scenario.fails ? new Error("timeout") : undefined };
    });
  const chosen = fails.map((count, i) => ({ name: "abcde"[i]!, fails: count }));
  const code = close(await withSecondTry(chosen, run), "1.0");
  return { code, said: said.slice(), tried: tried.join("") };
}

test("nothing where all hold", async () => {
  expect(await outcome(0, 0)).toEqual({
    code: 0,
    said: ["the scenarios took 1.0 s", "2 passed, 0 failed"],
    tried: "ab",
  });
});

test("one of three, which then holds", async () => {
  expect(await outcome(0, 1, 0)).toEqual({
    code: 0,
    said: [
      "once more, in a workbench of its own:",
      "the scenarios took 1.0 s",
      "only at the second try: b",
      "3 passed, 0 failed",
    ],
    tried: "abcb",
  });
});

test("two, one of which fails again", async () => {
  expect(await outcome(1, 0, 2)).toEqual({
    code: 1,
    said: [
      "once more, in a workbench of its own:",
      "the scenarios took 1.0 s",
      "only at the second try: a",
      "2 passed, 1 failed",
    ],
    tried: "abcac",
  });
});

test("none where three failed, and none of an empty run, which does not pass", async () => {
  expect(await outcome(1, 1, 1)).toMatchObject({ code: 1, tried: "abc" });
  expect(await outcome()).toMatchObject({ code: 1, tried: "" });
});
