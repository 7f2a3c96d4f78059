/** Drawings on their own clock: kept while nothing changes, mixed with those of before while they are made, never after a fault. */
import { describe, expect, test } from "vitest";
import { type Asked, drawer } from "../../server/lsp/drawn";
import { turn } from "../../server/lsp/turn";
import { evaluate } from "../../server/service";
import type { SheetDrawing } from "../../server/sheet/drawings";

const plan = (length: number, posts = 1) =>
  evaluate(
    "plan.sawbuck",
    `part post of 2x4, length ${length}"\n${Array.from({ length: posts }, (_, i) => `place post upright, on floor, ${9 * i}" from left, 0 from front\n`).join("")}`,
    (path) => ({ file: path, refused: "there is no such file" }),
  );
const drawing = (of: number, title: string): SheetDrawing =>
  ({ kind: "front", of: `${of}`, drawing: { title, items: [] } }) as unknown as SheetDrawing;
const soon: Asked = { language: "en" as const, soon: true, stale: () => false };
const all: Asked = { language: "en" as const, soon: false, stale: () => false };
const gone: Asked = { language: "en" as const, soon: true, stale: () => true };

/**
 * Three drawings each time, titled by the turn, each after so many pauses. Its clock goes on by a millisecond whenever it is
 * looked at. `fails` tells of each drawing whether it throws.
 */
function scripted(pauses = 0, fails: (turn: number, nth: number) => boolean = () => false) {
  let [turn, time] = [0, 0];
  return drawer(
    function* () {
      const own = ++turn;
      for (const nth of [1, 2, 3]) {
        if (fails(own, nth)) throw new Error("a fault");
        for (let i = 0; i < pauses; i++) yield;
        yield drawing(nth, `${own}.${nth}`);
      }
    },
    () => time++,
  );
}
const names = (drawings: readonly SheetDrawing[]): string[] =>
  drawings.map(({ drawing: { title }, old }) => (old ? `${title} old` : title));

describe("the drawings", () => {
  test("are made once while nothing they show has changed", async () => {
    const drawn = scripted();
    await drawn.of("a", plan(9), soon);
    const again = await drawn.of("a", plan(9), soon);
    expect([names(again.drawings), again.complete]).toEqual([["1.1", "1.2", "1.3"], true]);
    expect(names((await drawn.of("a", plan(10), soon)).drawings)[0]).toBe("2.1");
    drawn.forget("a");
    expect(names((await drawn.of("a", plan(10), soon)).drawings)[0]).toBe("3.1");
  });

  test("of many pieces come with the first one new and the rest of before, then all", async () => {
    const drawn = scripted(3);
    await drawn.of("a", plan(9, 41), all);
    const first = await drawn.of("a", plan(10, 41), soon);
    expect([names(first.drawings), first.complete]).toEqual([["2.1", "1.2 old", "1.3 old"], false]);
    const whole = await drawn.of("a", plan(10, 41), all);
    expect([names(whole.drawings), whole.complete]).toEqual([["2.1", "2.2", "2.3"], true]);
  });

  test("of many pieces that take long are those of before at first", async () => {
    const drawn = scripted(200);
    await drawn.of("a", plan(9, 41), all);
    const first = await drawn.of("a", plan(10, 41), soon);
    expect([names(first.drawings), first.complete]).toEqual([["1.1 old", "1.2 old", "1.3 old"], false]);
    expect(names((await drawn.of("a", plan(10, 41), all)).drawings)).toEqual(["2.1", "2.2", "2.3"]);
  });

  test("of a text that has gone on are not finished", async () => {
    const drawn = scripted(50);
    await drawn.of("a", plan(9), all);
    const { drawings, complete } = await drawn.of("a", plan(10), gone);
    expect([names(drawings), complete]).toEqual([["1.1 old", "1.2 old", "1.3 old"], false]);
  });

  test("leave room for other work while one of them is made", async () => {
    const drawn = scripted(100);
    const done: string[] = [];
    const making = drawn.of("a", plan(9), all).then(() => done.push("drawings"));
    await turn().then(() => done.push("other work"));
    await making;
    expect(done).toEqual(["other work", "drawings"]);
  });

  test("after a fault are begun anew, and not told as complete without what failed", async () => {
    const drawn = scripted(0, (turn, nth) => turn === 1 && nth === 2);
    await expect(drawn.of("a", plan(9), all)).rejects.toThrow("a fault");
    const again = await drawn.of("a", plan(9), all);
    expect([names(again.drawings), again.complete]).toEqual([["2.1", "2.2", "2.3"], true]);
  });
});
