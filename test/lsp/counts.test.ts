/** How a plan stands, as the server tells it after each time it has worked one out, and the list of what was not looked at. */
import { afterEach, describe, expect, test } from "vitest";
import { diskReader } from "../../server/lsp/disk";
import { countsOf, evaluate, sheetOf } from "../../server/service";
import { type Editor, editor, uriOf } from "./editor";

const PLAN = "/yard/rack.sawbuck";
const RACK = `plan Rack
  indoors
part rail 2 of 1x4, length 12"
measure spare = 2"
fasten rail face into rail face, 2 #8 x 4"
fasten rail into nothing
`;

interface Entries {
  readonly entries: readonly { what: string; why: string; uri?: string; line?: number }[];
}

let e: Editor;
afterEach(() => e.end());
const asked = (uri: string): Promise<Entries | null> =>
  e.connection.sendRequest<Entries | null>("sawbuck/notChecked", { uri });

describe("the counts", () => {
  test("are told with each version, by class", async () => {
    e = await editor();
    await e.open(PLAN, RACK);
    await e.until(() => e.worked.length > 0);
    const { problems } = evaluate(PLAN, RACK, diskReader);
    const of = (kind: string): number => problems.filter((p) => p.class === kind).length;
    expect(e.worked[0]!.counts).toEqual({
      errors: of("error"),
      hazards: of("hazard"),
      warnings: of("warning"),
      hints: of("hint"),
      unchecked: (await asked(uriOf(PLAN)))!.entries.length,
    });
    expect(of("error") * of("hazard") * of("hint")).toBeGreaterThan(0);
    await e.replace(PLAN, "plan Rack\n");
    await e.until(() => e.worked.length > 1);
    expect(e.worked[1]!.counts).toEqual({ errors: 0, hazards: 0, warnings: 0, hints: 0, unchecked: 0 });
  });

  test("are as many as the list of problems and the sheet have", async () => {
    const disk = new Map([["/yard/shop.sawbuck", "stock 1x4\n  sold 8' $6\nstock 1x4\n  sold 8' $7\n"]]);
    e = await editor({ disk, capabilities: { textDocument: { diagnostic: {} } } });
    await e.open(PLAN, `shop shop.sawbuck\n${RACK}`);
    const listed = await e.pull(PLAN);
    const { errors, hazards, warnings, hints, unchecked } = e.worked.at(-1)!.counts;
    expect(errors + hazards + warnings + hints).toBe(listed.length);
    expect(unchecked).toBe((await asked(uriOf(PLAN)))!.entries.length);
    const plan = evaluate(PLAN, RACK, diskReader);
    expect(countsOf(plan).unchecked).toBe(sheetOf(plan).notChecked.length);
  });
});

describe("what was not checked", () => {
  test("is told with its line, in the words of the sheet", async () => {
    e = await editor();
    await e.open(PLAN, RACK);
    const { entries } = (await asked(uriOf(PLAN)))!;
    expect(entries.map(({ what, why, line }) => `${line ?? "-"}: ${what}: ${why}`)).toMatchSnapshot();
    expect(entries.every(({ uri }) => uri === undefined || uri === uriOf(PLAN))).toBe(true);
  });

  test("is told in the language of the editor", async () => {
    e = await editor({ locale: "fr" });
    await e.open(PLAN, RACK);
    const { entries } = (await asked(uriOf(PLAN)))!;
    const french = sheetOf(evaluate(PLAN, RACK, diskReader), undefined, "fr").notChecked;
    expect(entries.map(({ what }) => what)).toEqual(french.map(({ what }) => what));
  });

  test("is null for a text that is not open, and empty for an empty one", async () => {
    e = await editor();
    expect(await asked(uriOf("/yard/none.sawbuck"))).toBeNull();
    await e.open(PLAN, "");
    expect(await asked(uriOf(PLAN))).toEqual({ entries: [] });
  });
});
