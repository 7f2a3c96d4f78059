/** Tools, bits, weights, cautions and care of every sample, held word for word. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { diskReader } from "../../server/lsp/disk";
import { evaluate } from "../../server/service";
import { EXAMPLES, MISTAKES, run } from "../checks/plans";
import { told } from "./told";

const FOLDER = join(__dirname, "../../samples");
const SAMPLES = readdirSync(FOLDER).filter((f) => f.endsWith(".sawbuck"));

test.each(SAMPLES)("%s", async (name) => {
  const file = join(FOLDER, name);
  const { worked } = evaluate(file, readFileSync(file, "utf8"), diskReader);
  await expect(told(worked)).toMatchFileSnapshot(`snapshots/${name.replace(".sawbuck", "")}.txt`);
});

test("nothing throws on a plan with a mistake", () => {
  for (const { name, text } of [...MISTAKES, ...EXAMPLES])
    expect(() => told(run(text).worked), name).not.toThrow();
});
