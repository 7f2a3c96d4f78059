/** What the boxes to tick are known by: no tick is taken for another's, and none is lost where nothing of its own changed. */
import { describe, expect, it } from "vitest";
import { evaluate, inUnits, type SheetOptions, sheetDocument, sheetOf } from "../../server/service";
import type { Block, SheetDocument, Tick } from "../../server/sheet/document";

const PLAN = `plan Bench
stock 2x4
  sold 8' $4.40
stock 1x4
  sold 8' $3.30, 10' $4.20
part leg 4 of 2x4, length 16"
part brace of 2x4, length 30", 2 left and 2 right, left end mitered 45°, long point to long point
part peg 60 of 1x4, length 3"
step Oil it
  uses leg
  takes 20 min, then wait 12 h
step Oil it
  uses brace
step Put it together
  uses peg
`;

const documentFor = (
  plan: string,
  language: SheetOptions["language"] = "en",
  metric = false,
): SheetDocument => {
  const read = evaluate("bench.sawbuck", plan, (file) => ({ file, refused: "no" }));
  const sheet = sheetOf(metric ? inUnits(read, "millimetres") : read, undefined, language);
  return sheetDocument(sheet, { language });
};

function ticksOf(block: Block): readonly Tick[] {
  if (block.kind === "list") return block.items.flatMap(({ ticks = [] }) => ticks);
  if (block.kind === "group") return [...(block.ticks ?? []), ...block.blocks.flatMap(ticksOf)];
  if (block.kind !== "table") return [];
  return block.groups.flatMap(({ rows }) =>
    rows.flatMap(({ cells }) => cells.flatMap((cell) => ("ticks" in cell ? cell.ticks : []))),
  );
}

const idsIn = (document: SheetDocument, of = ""): string[] =>
  document.sections
    .flatMap(({ blocks }) => blocks.flatMap(ticksOf))
    .map(({ id }) => id)
    .filter((id) => id.startsWith(of));
const ids = (plan: string, of = ""): string[] => idsIn(documentFor(plan), of);

describe("the boxes to tick", () => {
  it("are all told apart, the steps of one title too", () => {
    const all = ids(PLAN.replace("plan Bench", "plan Bench\n  make 3"));
    expect(new Set(all).size).toBe(all.length);
    expect(ids(PLAN, "step/")).toEqual(["step/1/Oil it", "step/2/Oil it", "step/1/Put it together"]);
  });

  it("are the same in every language and in all units, under the same plan, with a title and without", () => {
    for (const plan of [PLAN, PLAN.replace("plan Bench\n", "")]) {
      const [own, french] = [documentFor(plan), documentFor(plan, "fr", true)];
      expect(idsIn(french)).toEqual(idsIn(own));
      expect(french.plan).toBe(own.plan);
    }
  });

  it("stay where another part, and another step, is put in before", () => {
    const plan = PLAN.replace("plan Bench", "plan Bench\n  make 3");
    const more = plan
      .replace("part leg", 'part rail 2 of 2x4, length 20"\npart leg')
      .replace("step Oil it", "step Sand it\n  uses rail\nstep Oil it");
    for (const of of ["cut/", "kit/", "step/"])
      expect(ids(more, of)).toEqual(expect.arrayContaining(ids(plan, of)));
  });

  it("are others once they stand for another number of things, or another size", () => {
    expect(ids(PLAN, "cut/all/")).toEqual(["cut/all/peg/60"]);
    expect(ids(PLAN.replace("peg 60", "peg 70"), "cut/all/")).toEqual(["cut/all/peg/70"]);
    const bought = ids(PLAN, "buy/boards/1x4");
    expect(bought.length).toBeGreaterThan(0);
    const longer = PLAN.replace("sold 8' $3.30, 10' $4.20", "sold 10' $4.20");
    for (const changed of [longer, PLAN.replace("peg 60", "peg 120")])
      expect(ids(changed, "buy/boards/1x4").filter((id) => bought.includes(id))).toEqual([]);
  });
});
