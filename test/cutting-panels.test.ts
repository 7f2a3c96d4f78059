/** Proven layouts on sheets: answers, bounds, certificates, and published values. */
import { describe, expect, it } from "vitest";
import { type SheetCertificate, sheetBoundHolds } from "../server/cutting/panels/certify-sheets";
import { proveSheets, type SheetProgress } from "../server/cutting/panels/prove";
import { layOutSheets, type SheetJob } from "../server/cutting/sheets";
import { verifySheets } from "../server/cutting/sheets-check";
import { panelPlan } from "./bench/layout/panel-plans";
import { binJob, guillotineSets, unlimitedValue } from "./bench/layout/panels";

const INCH = 16256;
const KERF = INCH / 8;
const EFFORT = 300_000_000;

const ply = { id: "ply", length: 96 * INCH, width: 48 * INCH, price: 4200, grain: true };
const half = { ...ply, id: "half", length: 48 * INCH, price: 2500 };

function panels(count: number, length: number, width: number, grain: "along" | "free" = "along") {
  return Array.from({ length: count }, (_, i) => ({
    id: `${length} x ${width} / ${i + 1}`,
    length: length * INCH,
    width: width * INCH,
    grain,
  }));
}

function ask(parts: Partial<SheetJob>): SheetJob {
  return { pieces: [], sold: [ply], onHand: [], kerf: KERF, ...parts };
}

function all(job: SheetJob, effort = EFFORT): readonly SheetProgress[] {
  const progress: SheetProgress[] = [];
  const steps = proveSheets(job, effort);
  for (let step = steps.next(); ; step = steps.next()) {
    progress.push(step.value);
    if (step.done) return progress;
  }
}

function last(job: SheetJob, effort = EFFORT): SheetProgress {
  return all(job, effort).at(-1)!;
}

describe("proven layouts on sheets", () => {
  it("prove what one sheet takes, and that one more piece needs a second", () => {
    const four = last(ask({ pieces: panels(4, 47.9375, 23.9375) }));
    expect(four.proof).toMatchObject({ status: "proven", cost: 4200, bound: 4200, money: true });
    const five = last(ask({ pieces: panels(5, 47.9375, 23.9375) }));
    expect(five.proof).toMatchObject({ status: "proven", cost: 8400, bound: 8400 });
  });

  it("find the cheaper of whole and half sheets", () => {
    const job = ask({ pieces: panels(3, 47, 23), sold: [ply, half] });
    expect(last(job)).toMatchObject({
      answer: { buy: [{ id: "ply", count: 1, price: 4200 }] },
      proof: { status: "proven", cost: 4200 },
    });
    const two = ask({ pieces: panels(2, 47, 23), sold: [ply, half] });
    expect(last(two)).toMatchObject({
      answer: { buy: [{ id: "half", count: 1, price: 2500 }] },
      proof: { status: "proven", bound: 2500 },
    });
  });

  it("count by area when a price is missing", () => {
    const job = ask({ pieces: panels(2, 47, 23), sold: [ply, { ...half, price: null }] });
    const area = 48 * 48 * INCH * INCH;
    expect(last(job).proof).toMatchObject({ status: "proven", cost: area, bound: area, money: false });
  });

  it("buy nothing when sheets on hand take all, and leave over what nothing takes", () => {
    const rest = { id: "rest", length: 30 * INCH, width: 30 * INCH, grain: true };
    const free = last(ask({ pieces: panels(1, 28, 28), onHand: [rest] }));
    expect(free.proof).toMatchObject({ status: "proven", cost: 0, bound: 0 });
    const wide = last(ask({ pieces: [...panels(1, 40, 50), ...panels(1, 20, 20)] }));
    expect(wide).toMatchObject({
      answer: { unplaced: ["40 x 50 / 1"] },
      proof: { status: "proven", cost: 4200 },
    });
    const onlyRest = { ...rest, length: 60 * INCH, width: 60 * INCH };
    const two = last(ask({ pieces: panels(3, 29.5, 50), onHand: [onlyRest] }));
    expect(two.answer.unplaced).toHaveLength(1);
    expect(two.proof).toMatchObject({ status: "proven", cost: 0 });
  });

  it("refute by trying everything what fractions of patterns would allow", () => {
    const { answer, proof } = last(panelPlan(121));
    expect(proof.status).toBe("proven");
    expect(proof.certificate!.refuted).toHaveLength(1);
    expect(answer.buy).toMatchObject([{ count: 7 }]);
    expect(sheetBoundHolds(panelPlan(121), { ...proof.certificate!, refuted: [] }, [proof.cost, 0])).toBe(
      false,
    );
  });

  it.each(Array.from({ length: 12 }, (_, i) => i + 1))("hold for plywood plan %d, at every step", (seed) => {
    const job = panelPlan(seed);
    const progress = all(job, 100_000_000);
    const first = layOutSheets(job);
    expect(progress[0]!.answer).toEqual(first);
    let [cost, bound, work] = [first.cost!, 0, -1];
    for (const { answer, proof } of progress) {
      expect(verifySheets(job, answer)).toEqual([]);
      expect(proof.cost).toBe(answer.cost);
      expect(proof.cost).toBeLessThanOrEqual(cost);
      expect(proof.bound).toBeGreaterThanOrEqual(bound);
      expect(proof.bound).toBeLessThanOrEqual(proof.cost);
      expect(proof.work).toBeGreaterThanOrEqual(work);
      [cost, bound, work] = [proof.cost, proof.bound, proof.work];
    }
    const { proof } = progress.at(-1)!;
    if (proof.status === "proven") expect(proof.bound).toBe(proof.cost);
    if (proof.bound > 0) expect(sheetBoundHolds(job, proof.certificate!, [proof.bound, 0])).toBe(true);
  });

  it("are the same bytes twice, and let a host stop between", () => {
    for (const seed of [3, 4, 20]) {
      const job = panelPlan(seed);
      const before = JSON.stringify(job);
      const once = JSON.stringify(all(job, 150_000_000));
      expect(JSON.stringify(all(JSON.parse(before) as SheetJob, 150_000_000))).toBe(once);
      expect(JSON.stringify(job)).toBe(before);
    }
    const progress = all(panelPlan(38), 100_000_000);
    const steps = progress.slice(1).map(({ proof }, i) => proof.work - progress[i]!.proof.work);
    expect(Math.max(...steps)).toBeLessThan(100_000_000);
  });

  it("bound many pieces of very unequal sizes, and end", () => {
    const tiny = Array.from({ length: 1500 }, (_, i) => ({
      id: `tiny / ${i}`,
      length: 1 + (i % 2),
      width: 3,
      grain: "free" as const,
    }));
    const job = ask({ pieces: [...tiny, ...panels(40, 13.3, 7.7), ...panels(30, 9.1, 8.9)], kerf: 0 });
    const { answer, proof } = last(job);
    expect(verifySheets(job, answer)).toEqual([]);
    expect(proof.bound).toBeGreaterThan(0);
    expect(proof.bound).toBeLessThanOrEqual(proof.cost);
    const many = ask({ pieces: Array.from({ length: 200 }, (_, i) => panels(15, 3 + i / 16, 7)).flat() });
    const bounded = last(many);
    expect(bounded.proof.bound).toBeGreaterThan(0);
  });

  it("end with the first answer when there is no effort to spend", () => {
    const job = panelPlan(3);
    expect(last(job, 0)).toMatchObject({ answer: layOutSheets(job), proof: { status: "bounded", bound: 0 } });
  });

  it.each([0, -1, 0.5, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 40])("never throw on %d", (odd) => {
    const piece = { id: "a", length: 4 * INCH, width: 4 * INCH, grain: "free" } as const;
    const jobs: SheetJob[] = [
      ask({ pieces: [{ ...piece, length: odd }] }),
      ask({ pieces: [piece], sold: [{ ...ply, width: odd }] }),
      ask({ pieces: [piece], sold: [{ ...ply, price: odd }] }),
      ask({ pieces: [piece], onHand: [{ ...ply, length: odd }] }),
      ask({ pieces: [piece], kerf: odd }),
    ];
    for (const job of jobs) {
      const { answer } = last(job);
      expect(verifySheets(job, answer)).toEqual([]);
      expect(answer.unplaced.length).toBeLessThanOrEqual(layOutSheets(job).unplaced.length);
    }
  });
});

describe("the check of a bound for sheets", () => {
  const job = ask({ pieces: panels(5, 47.9375, 23.9375) });
  const { proof } = last(job);
  const good = proof.certificate!;
  const area = 2 * ply.length * ply.width;
  const holds = (certificate: SheetCertificate, price: readonly [number, number] = [8400, area]) =>
    sheetBoundHolds(job, certificate, price);

  it("accepts the bound, and nothing above it", () => {
    expect(holds(good)).toBe(true);
    expect(holds(good, [8401, 0])).toBe(false);
    expect(holds(good, [8400, area + 1])).toBe(false);
  });

  it.each([
    ["of another length", { ...good, worths: [[...good.worths[0]!, 1]] }],
    ["of no length", { ...good, worths: [[]] }],
    ["not whole", { ...good, worths: [[0.5]] }],
    ["not a number", { ...good, worths: [[Number.NaN]] }],
    ["below 0", { ...good, worths: [[-1]] }],
    ["too large", { ...good, worths: [[2 ** 40]] }],
    ["not there", { ...good, worths: [] }],
    ["nothing", { ...good, worths: [[0]] }],
    ["held, of no group", { ...good, held: [[1]] }],
    ["held twice", { ...good, held: [[0, 0]] }],
    ["held for no vector", { ...good, held: [] }],
    ["refuted, though they take all", { ...good, refuted: [[2]] }],
    ["refuted, not whole", { ...good, refuted: [[0.5]] }],
    ["refuted, of another length", { ...good, refuted: [[1, 1]] }],
  ])("refuses worths that are %s", (_, certificate) => {
    expect(holds(certificate)).toBe(false);
  });

  it("takes a purchase that cannot do for refuted, without any worths", () => {
    expect(holds({ worths: [], held: [], refuted: [[1]] })).toBe(true);
    expect(holds({ worths: [], held: [], refuted: [[0]] })).toBe(false);
  });
});

const sets = guillotineSets();
const absent = sets.length > 0 ? "" : " (skipped: ../shared/bench/guillotine is absent)";

describe(`OR-Library gcut (J. E. Beasley 1985)${absent}`, () => {
  it.skipIf(absent !== "")(
    "the unlimited values of gcut1 and gcut12 are the published 56460 and 979986",
    () => {
      const value = (name: string) => unlimitedValue(sets.find((set) => set.name === name)!).value;
      expect(value("gcut1")).toBe(56460);
      expect(value("gcut12")).toBe(979986);
    },
  );

  it.skipIf(absent !== "")("each item once: no set needs more than one sheet over its bound", () => {
    for (const set of sets.slice(0, 7)) {
      const job = binJob(set);
      const { answer, proof } = last(job);
      expect(verifySheets(job, answer)).toEqual([]);
      expect(proof.cost - proof.bound, set.name).toBeLessThanOrEqual(1);
      expect(sheetBoundHolds(job, proof.certificate!, [proof.bound, 0])).toBe(true);
    }
  });
});
