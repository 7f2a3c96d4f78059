/** What is offered first: what this plan makes likely. ‸ marks the cursor; `…` that more is needed behind it. */
import { expect, test } from "vitest";
import { completionsAt } from "../../server/features/completion";
import { filled } from "../../server/features/completion-snippet";
import { atCaret, fixture, worked } from "./plans";

const FILES = { "shop.sawbuck": fixture("shop") };
const BASE = `plan Bench
  lumber dry
shop shop.sawbuck
measure rim = 30"
part leg 4 of 2x4, length 20"
part rail 2 of 1x4, length 30"
part slat 6 of 1x4, length 14"
place leg upright, wide face front, on floor, at each corner of 30" x 12"
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
`;

const first = (marked: string, many = 4, language: "en" | "fr" = "en"): string => {
  const { plan, offset } = atCaret(BASE + marked, FILES);
  return completionsAt(plan, offset, language)
    .slice(0, many)
    .map(
      (c) => `${c.preselect ? "*" : ""}${c.label}${c.goesOn ? "…" : ""}${c.detail ? ` (${c.detail})` : ""}`,
    )
    .join("\n");
};

test.each<[string, string]>([
  ["place ‸", 'slat (a part: 6 of 1x4, 14"; stands nowhere yet)'],
  ["place slat across, ‸", "flat (The wide face is level.)\non edge (The wide face is upright.)"],
  [
    "place slat front to back, flat, ‸",
    "*on rail (says how high)\nflush with top of rail (says how high)\non floor (says how high)",
  ],
  [
    "place slat front to back, flat, on legs, ‸",
    "*flush with left of legs (says where left to right)\ncentered left to right on legs (says where left to right)",
  ],
  ["place slat across, flat, on legs, flush with left of legs, flush with ‸", "front of…\nback of…"],
  [
    "place slat across, flat, on rail, flush with left of rail, flush with front of rail, ‸",
    "2 high\n2 across\n2 deep",
  ],
  ["place slat flat, 2 ‸", "high\nacross\ndeep"],
  ["place slat across, flat, on ‸", 'rail (a part: 2 of 1x4, 30")'],
  ["fasten rail into ‸", 'leg (a part: 4 of 2x4, 20"; touches rail)'],
  [
    "fasten rail face into leg face, ‸",
    '*2 #8 x 1-5/8" at each crossing (through 3/4", 7/8" into leg; deck-mid)',
  ],
  ["fasten rail face into leg face, 2 ‸", '*#8 x 1-5/8" (through 3/4", 7/8" into leg; deck-mid)'],
  [
    'fasten rail face into leg face, #8 x 1-5/8", ‸',
    'pilot… (pilot 1/8")\nclearance… (clearance 3/16")\nangled… (angled 30°)',
  ],
  ["stock 1x8, sold ‸", "6' (a length usually sold)\n8' (a length usually sold)"],
])("%s", (marked, list) => {
  expect(first(marked, list.split("\n").length)).toBe(list);
});

test("a screw that does not fit says why", () => {
  const list = first("fasten slat into rail, 2 #8‸", 8).split("\n");
  expect(list[0]).toBe('*#8 x 1-1/4" (through 3/4", 1/2" into rail)');
  expect(list).toContain('#8 x 1-5/8" (comes out 1/8"; deck-mid)');
  expect(list).toContain('#8 x 1" (only 1/4" in rail)');
});

test("a pilot hole is offered by the bit that the screw wants", () => {
  expect(first('fasten rail face into leg face, 2 #8 x 1-5/8" at each crossing, pilot ‸', 1)).toMatch(
    /^\*\d+\/\d+" \(the bit for #8 x 1-5\/8" in this wood\)$/,
  );
});

test("nothing leans on itself, nor is narrowed where there is but one row", () => {
  const { plan, offset } = atCaret(`${BASE}place slat across, flat, on ‸`, FILES);
  const all = completionsAt(plan, offset).map((c) => c.label);
  expect(all).not.toContain("slat");
  expect(all).toEqual(expect.arrayContaining(["front", "left"]));
  // All legs stand on one level, and there is one rail.
  expect(all).not.toContain("upper");
  const { plan: narrowed, offset: at } = atCaret(`${BASE}place slat across, flat, on front ‸`, FILES);
  const names = completionsAt(narrowed, at).map((c) => c.label);
  expect(names).toContain("legs");
  expect(names).not.toContain("rail");
});

test("an empty file begins with its plan, in French too", () => {
  const [one] = completionsAt(worked(""), 0, "fr");
  expect(one).toMatchObject({ label: "plan", preselect: true, insertText: "plan " });
  expect(one!.documentation()).toContain("Donne un nom au plan");
});

test("whole entries have places to fill in, with names of the plan to choose from", () => {
  const { plan, offset } = atCaret(`${BASE}pl‸`, FILES);
  const whole = completionsAt(plan, offset).find((c) => c.label.startsWith("place … upright"));
  expect(whole?.insertText).toBe(
    'place slat upright, wide face front, on floor, at each corner of 46-1/2" x 16-1/2"',
  );
  expect(whole?.snippet).toBe(
    // biome-ignore lint/suspicious/noTemplateCurlyInString: a snippet's own signs
    'place ${1:slat} upright, wide face ${2|front,right|}, on floor, at each corner of ${3:46-1/2"} x ${4:16-1/2"}',
  );
});

test("marks of the snippets' own are written as such", () => {
  expect(filled("$3 {a, b|c} {@part:leg} }", () => [])).toEqual({
    plain: "$3 a, b leg }",
    // biome-ignore lint/suspicious/noTemplateCurlyInString: a snippet's own signs
    snippet: "\\$3 ${1|a\\, b,c|} ${2:leg} \\}",
  });
});
