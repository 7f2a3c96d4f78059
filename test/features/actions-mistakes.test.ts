/** What is offered for every mistake of the gallery, and that each quick fix does what it says. */
import { expect, test } from "vitest";
import { type Action, actionsAt } from "../../server/features/actions";
import { placeOf } from "../../server/features/diagnostics";
import { type Evaluated, evaluate } from "../../server/service";
import { applied, countOf, graveAdded } from "../checks/curing";
import { EXAMPLES, MISTAKES, nothing } from "../checks/plans";
import { differences, taken } from "./acting";
import { PLAN } from "./plans";

/** All that is offered at any of a plan's problems, each once, in the order in which it is offered. */
function everything(plan: Evaluated, only?: readonly string[]): Action[] {
  const list = plan.problems.flatMap((p) =>
    actionsAt(plan, {
      range: caretAt(placeOf(plan, p)),
      only,
      invoked: false,
      read: nothing,
      makesFiles: false,
    }),
  );
  return list.filter((a, i) => list.findIndex((b) => b.id === a.id) === i);
}

const caretAt = ({ start }: { readonly start: number }) => ({ start, end: start });

const lineOf = (plan: Evaluated, action: Action): string => {
  const lines = action.problems.map((p) => plan.text.slice(0, placeOf(plan, p).start).split("\n").length);
  return [...new Set(lines)].join(", ");
};

test.each(MISTAKES)("what is offered in $name", async ({ name, text }) => {
  const plan = evaluate(PLAN, text, nothing);
  const told = everything(plan).map((a) =>
    [
      `line ${lineOf(plan, a)}: ${a.title}`,
      `  ${a.kind}${a.preferred ? ", preferred" : ""}`,
      ...differences(text, taken({ plan }, a)[PLAN]!).map((l) => `  ${l}`),
    ].join("\n"),
  );
  await expect(`${told.join("\n\n")}\n`).toMatchFileSnapshot(
    `snapshots/actions/${name.replace(".sawbuck", ".txt")}`,
  );
});

let fixes = 0;
let accepted = 0;
test.each([...EXAMPLES, ...MISTAKES])("every quick fix holds: $name", ({ text }) => {
  const plan = evaluate(PLAN, text, nothing);
  for (const action of everything(plan, ["quickfix", "source"])) {
    const change = action.change()!;
    const now = applied(text, change.edits);
    if (change.typing !== undefined) {
      // Without a reason it is reported, and nothing is accepted.
      expect(evaluate(PLAN, now, nothing).accepted).toHaveLength(plan.accepted.length);
      const at = now.indexOf(" because ", change.edits[0]!.start) + " because ".length;
      const said = evaluate(PLAN, `${now.slice(0, at)}it was looked at${now.slice(at)}`, nothing);
      expect(said.accepted.length).toBeGreaterThan(plan.accepted.length);
      accepted++;
      continue;
    }
    for (const code of new Set(action.problems.map((p) => p.code))) {
      const mended = action.problems.filter((p) => p.code === code).length;
      expect(countOf(code, now), action.title).toBeLessThanOrEqual(countOf(code, text) - mended);
    }
    expect(graveAdded(text, now), action.title).toEqual([]);
    fixes++;
  }
});

test("fixes were tried", () => {
  expect(fixes).toBeGreaterThan(60);
  expect(accepted).toBeGreaterThan(60);
});

test("of the cures of one problem at most one is preferred", () => {
  for (const { text } of [...EXAMPLES, ...MISTAKES]) {
    const plan = evaluate(PLAN, text, nothing);
    for (const problem of plan.problems) {
      const preferred = everything(plan).filter((a) => a.preferred && a.problems.includes(problem));
      expect(preferred.length).toBeLessThanOrEqual(1);
    }
  }
});
