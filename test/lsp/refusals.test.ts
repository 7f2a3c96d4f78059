/** An editor that refuses what it said it can do: the server says so and lives on. */
import { afterEach, expect, test } from "vitest";
import { type Editor, editor, uriOf } from "./editor";

let e: Editor | undefined;
afterEach(() => e?.end());

test("a refused registration is logged, and plans are still read", async () => {
  e = await editor({
    refuses: true,
    capabilities: {
      workspace: { configuration: true, didChangeConfiguration: { dynamicRegistration: true } },
    },
  });
  await e.until(() =>
    e!.logged.some((line) => line.includes("will not tell of changes of the settings of sawbuck")),
  );
  await e.open("/yard/plan.sawbuck", "prat leg");
  await e.until(() => e!.pushed("/yard/plan.sawbuck") !== undefined);
  expect(e.pushes.map((p) => [p.uri, p.diagnostics.map((d) => d.code)])).toEqual([
    [uriOf("/yard/plan.sawbuck"), ["unknown-entry"]],
  ]);
});
