/** Weights of wood, and what to know in the aisle. */
import { describe, expect, it } from "vitest";
import { ifKnown } from "../../server/plan";
import { woodDensity } from "../../server/trade";
import { aisleFacts, weightOf } from "../../server/worked";
import { run } from "../checks/plans";

const weights = (text: string) => weightOf(run(text).worked);
const aisle = (text: string) => aisleFacts(run(text).worked);

/** Pounds of spruce-pine-fir at 12%, lb/cuft by the NDS form: printed 28.1 (check 57). */
const SPF = woodDensity(0.42, 12);
const lb = (kg: number | undefined): number => (kg ?? Number.NaN) / 0.45359237;

const STOCK = "stock 2x4\n  sold 8' $4.40, 12' $7.35\n";
const PLAN = `${STOCK}part leg 4 of 2x4, length 28"\npart rail 2 of 2x4, length 40"\n`;

describe("own weight", () => {
  it("is the volume of the pieces at the wood's density", () => {
    const cuft = ((4 * 28 + 2 * 40) * 1.5 * 3.5) / 1728;
    expect(SPF).toBeCloseTo(28.1, 1);
    expect(lb(ifKnown(weights(PLAN).own)?.approx)).toBeCloseTo(cuft * SPF, 6);
    expect(weights(PLAN).heaviest).toMatchObject({ part: "rail" });
  });

  it("is of one copy, however many are made", () => {
    const [one, three] = [weights(PLAN), weights(`plan A thing\n  make 3\n${PLAN}`)];
    expect(ifKnown(three.own)?.approx).toBe(ifKnown(one.own)?.approx);
    expect(ifKnown(three.trip)!.approx).toBeGreaterThan(2 * ifKnown(one.trip)!.approx);
  });

  it("is unknown with its cause where a part's is, and tells which, and what is known", () => {
    const found = weights(`${PLAN}stock 1x4\n  species catalpa\npart slat 3 of 1x4, length 20"\n`);
    expect(found.own).toMatchObject({ state: "unknown", cause: { kind: "unsaid" } });
    expect(found.unknown.map((u) => u.part)).toEqual(["slat"]);
    expect(found.atLeast.approx).toBeCloseTo(ifKnown(weights(PLAN).own)!.approx, 9);
  });

  it("puts a mistake before other causes, so that it is not told twice", () => {
    const found = weights(
      'stock 1x4\n  species catalpa\npart slat 3 of 1x4, length 20"\npart leg 4 of 2x4, length 3 lb\n',
    );
    expect(found.own).toMatchObject({ state: "unknown", cause: { kind: "mistake" } });
  });
});

describe("what is bought", () => {
  it("is weighed as sold, in whole boards", () => {
    const { bought, trip } = weights(PLAN);
    const [lot] = bought;
    const feet = run(PLAN).worked.shopping.rows.reduce(
      (sum, r) => sum + (r.count * r.size!.length.approx) / 304.8,
      0,
    );
    expect(lot).toMatchObject({ aisle: "boards", wetter: "" });
    expect(lb(ifKnown(trip)?.approx)).toBeCloseTo(((feet * 12 * 1.5 * 3.5) / 1728) * SPF, 6);
  });

  it("says that green and treated wood is heavier, and dry wood is not", () => {
    const wetter = (clause: string) => weights(PLAN.replace("sold", `${clause}\n  sold`)).bought[0]?.wetter;
    expect(wetter("moisture green")).toContain("green");
    expect(wetter("treated")).toContain("45 to 60 lb/cuft");
    expect(wetter("moisture 19%")).toBe("");
    expect(wetter("moisture 25%")).toContain("green");
  });

  it("is nothing without anything sold", () => {
    expect(weights('part leg 4 of 2x4, length 28"\n').bought).toEqual([]);
    expect(aisle("")).toMatchObject({ rows: [], count: 0, longest: undefined });
  });
});

describe("in the aisle", () => {
  it("tells how many, the longest, and the section that was taken", () => {
    const { rows, count, longest } = aisle(PLAN);
    expect(rows).toHaveLength(1);
    expect(rows[0]).toMatchObject({ name: "2x4", wood: "", aisle: "boards", count });
    expect(rows[0]?.taken.thickness?.approx).toBeCloseTo(38.1, 9);
    expect(rows[0]?.taken.width?.approx).toBeCloseTo(88.9, 9);
    expect(rows[0]?.taken.source).toContain("PS 20");
    expect(longest?.approx).toBe(rows[0]?.longest.approx);
  });

  it("measures sheets by their longer side", () => {
    const text = 'sheet ply\n  plywood 3/4"\n  sold 48" x 96" $50\npart a 1 of ply, length 40", width 30"\n';
    const [row] = aisle(text).rows;
    expect(row).toMatchObject({ aisle: "sheets", count: 1 });
    expect(row?.longest.approx).toBeCloseTo(96 * 25.4, 9);
    expect(row?.taken.width).toBeUndefined();
  });
});
