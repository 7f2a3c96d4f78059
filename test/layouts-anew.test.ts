/** A plan laid out anew is the plan that is worked out with those layouts from the start. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { diskReader } from "../server/lsp/disk";
import { type Evaluated, evaluate, sheetOf, withLayouts, writeSheet } from "../server/service";
import { FIRST_ANSWERS } from "../server/worked/layouts";
import { planOf } from "./bench/plan";
import { layoutsOf } from "./laid-out";

const SAMPLES = join(__dirname, "../samples");
const plansIn = (folder: string) =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".sawbuck"))
    .map((name) => join(folder, name))
    .map((file) => ({ file, text: readFileSync(file, "utf8") }));

const PLANS = [
  ...plansIn(SAMPLES),
  ...plansIn(join(SAMPLES, "mistakes")),
  { file: "many-lengths", text: planOf(120) },
];

const shown = (e: Evaluated) => ({
  problems: e.problems,
  accepted: e.accepted,
  unchecked: e.worked.unchecked,
  sheet: JSON.parse(writeSheet(sheetOf(e), "json")),
});

test("laid out anew, every plan shows what it shows laid out so from the start, and the other way", () => {
  let others = 0;
  for (const { file, text } of PLANS) {
    const first = evaluate(file, text, diskReader);
    const layouts = layoutsOf(first, 5_000_000);
    const whole = evaluate(file, text, diskReader, { layouts });
    expect(shown(withLayouts(first, layouts)), file).toEqual(shown(whole));
    expect(shown(withLayouts(whole, FIRST_ANSWERS)), file).toEqual(shown(first));
    const boards = ({ worked }: Evaluated) => JSON.stringify(worked.boards.map(({ answer }) => answer));
    if (boards(first) !== boards(whole)) others++;
  }
  expect(others).toBeGreaterThan(3);
});
