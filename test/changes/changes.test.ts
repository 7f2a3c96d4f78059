/** What is told of two versions of a plan: each kind of change, as text, in French, as Markdown, JSON and a page. Invented plans. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { compare, writeComparisons } from "../../server/exchange";
import { readStrictly } from "../sheet/strict-markup";
import { between, comparing, planOf, SAMPLES } from "./pairs";

const sample = (name: string): string => readFileSync(join(SAMPLES, `${name}.sawbuck`), "utf8");
const TROUGH = sample("salad-trough");
const swapped = (text: string, ...pairs: readonly (readonly [from: string, to: string])[]): string =>
  pairs.reduce((all, [from, to]) => {
    expect(all).toContain(from);
    return all.replaceAll(from, to);
  }, text);
const text = (old: string, now: string, language: "en" | "fr" = "en"): string =>
  writeComparisons([comparing(old, now)], "text", language);

const RACK = `plan Rack
  language 1
  indoors
stock 2x4, sold 8' $4.20
stock 1x4, sold 6' $3.10
part rail 2 of 2x4, length 16"
part slat 3 of 1x4, length 30"
part peg 2 of 1x4, length 5"
fasten slat face into rail edge, 2 #8 x 1-5/8" at 6 crossings
step Screw the slats down
  uses slat and rail
  takes 20 min
`;

describe("what changed", () => {
  test("a lower rim: legs are shorter, the rest stands lower", () => {
    expect(text(TROUGH, swapped(TROUGH, ['rim-height = 30"', 'rim-height = 28"']))).toMatchSnapshot();
  });

  test("in French", () => {
    expect(
      writeComparisons(
        [
          compare(
            planOf(TROUGH),
            planOf(swapped(TROUGH, ['rim-height = 30"', 'rim-height = 28"'])),
            { old: () => "ancien.sawbuck", new: () => "nouveau.sawbuck" },
            "fr",
          ),
        ],
        "text",
        "fr",
      ),
    ).toMatchSnapshot();
  });

  test("parts that are new, gone, renamed and of another section; joints, steps, prices, problems", () => {
    const now = swapped(
      RACK,
      ["part peg 2 of 1x4", "part hook 2 of 1x4"],
      ['part rail 2 of 2x4, length 16"', 'part rail 3 of 1x4, length 16"'],
      ["$4.20", "$4.60"],
      ['#8 x 1-5/8" at 6', '#8 x 2" at 6'],
      ["takes 20 min", "takes 25 min"],
      [
        "step Screw",
        'part brace 2 of 2x4, length 20", ends mitered 45°, long points on one edge\nstep Screw',
      ],
    );
    expect(text(RACK, now)).toMatchSnapshot();
    expect(writeComparisons([comparing(RACK, now)], "markdown")).toMatchSnapshot();
    expect(writeComparisons([comparing(RACK, now)], "json")).toMatchSnapshot();
  });

  test("nothing: comments, order of lines, other words for the same length", () => {
    const now = swapped(RACK, ['length 16"', "length 1' 4\""], ["plan Rack", "# Ours.\nplan Rack"]);
    expect(text(RACK, now)).toMatchSnapshot();
    expect(between(RACK, now).same).toBe(true);
  });

  test("a plan that is new, and one that is gone", () => {
    const [made] = [compare(undefined, planOf(RACK), { new: () => "rack.sawbuck" })];
    expect(writeComparisons([made!], "text")).toMatchSnapshot();
    const gone = compare(planOf(RACK), undefined, { old: () => "rack.sawbuck" });
    expect(gone.changes.same).toBe(false);
    expect(writeComparisons([gone], "text")).toContain("rack.sawbuck is gone");
    expect(gone.changes.pieces.map(({ new: now }) => now)).toEqual([null, null, null]);
  });

  test("pieces that are renamed are the same pieces, unless others are cut alike", () => {
    const renamed = between(RACK, swapped(RACK, ["part peg 2", "part hook 2"])).pieces;
    expect(renamed.map(({ old, new: now }) => [old?.part, now?.part])).toEqual([["peg", "hook"]]);
    const two = swapped(RACK, [
      'part peg 2 of 1x4, length 5"',
      'part a 2 of 1x4, length 5"\npart b 2 of 1x4, length 5"',
    ]);
    expect(between(RACK, two).pieces.map(({ old, new: now }) => [old?.part, now?.part])).toEqual([
      [undefined, "a"],
      ["peg", undefined],
      [undefined, "b"],
    ]);
  });

  test("lengths are told in the units of the new plan", () => {
    const metric = swapped(TROUGH, ['units inches to 1/16"', "units millimetres"], ['= 30"', '= 28"']);
    expect(text(TROUGH, metric)).toContain("743 mm → 692 mm");
  });

  test("a page shows both in one scale, with what changed pointed out, and needs nothing else", () => {
    const now = swapped(TROUGH, ['rim-height = 30"', 'rim-height = 28"']);
    const comparison = comparing(TROUGH, now);
    const { old, new: drawn } = comparison.drawings();
    expect(old!.scale).toBe(drawn!.scale);
    const marked = (items: NonNullable<typeof drawn>["items"]) =>
      new Set(
        items.flatMap((item) =>
          item.kind === "path" && item.fill === "marked" ? [item.piece?.split(" / ")[0]] : [],
        ),
      );
    expect(marked(drawn!.items)).toEqual(new Set(["leg"]));
    expect(marked(old!.items)).toEqual(new Set(["leg"]));
    const page = writeComparisons([comparison], "html");
    const { elements, texts } = readStrictly(page);
    expect(elements.filter(({ tag }) => tag === "svg").length).toBe(2);
    expect(texts).toContain("What changed: Salad trough");
    expect(page).not.toMatch(/https?:\/\/(?!www\.w3\.org)/);
  });

  test("several plans follow each other, each section saying of which it is", () => {
    const other = sample("cold-frame");
    const all = [
      comparing(TROUGH, swapped(TROUGH, ['rim-height = 30"', 'rim-height = 28"'])),
      comparing(other, swapped(other, ["plan ", "plan The "])),
    ];
    const made = writeComparisons(all, "text");
    expect(made).toMatch(/^What changed: 2 plans\n/);
    expect(made).toMatch(/^Salad trough: Pieces$/m);
    expect(made).toMatch(/^The .*: The plan$/m);
    expect((JSON.parse(writeComparisons(all, "json")) as { plans: unknown[] }).plans.length).toBe(2);
  });
});
