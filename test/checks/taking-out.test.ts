/** Cures that take a clause or a line out: what is said beside them to people, and what could not be read, stays. */
import { expect, test } from "vitest";
import { applied } from "./curing";
import { run } from "./plans";

/** The text once the first cure of a code's first problem is taken; undefined where it has none. */
function cured(code: string, text: string): string | undefined {
  const problem = run(text).problems.find((p) => p.code === code);
  if (!problem) throw new Error(`${code} is not among ${run(text).problems.map((p) => p.code)}`);
  const edits = problem.cures[0]?.edits;
  return edits && edits.length > 0 ? applied(text, edits) : undefined;
}

const twice = (text: string) => cured("said-twice", text);

test("a clause goes with the comma on its line", () => {
  expect(twice('part leg 4 of 2x4, length 28", length 30"\n')).toBe('part leg 4 of 2x4, length 28"\n');
  expect(twice('part leg 4 of 2x4,\n  length 28",\n  length 30", width 3"\n')).toBe(
    'part leg 4 of 2x4,\n  length 28",\n  width 3"\n',
  );
  expect(twice('part leg 4 of 2x4,\n  length 28",\n  length 30",\n  width 3"\n')).toBe(
    'part leg 4 of 2x4,\n  length 28",\n  width 3"\n',
  );
});

test("else with the comma above", () => {
  expect(twice('part leg 4 of 2x4,\r\n  length 28",\r\n  length 30"\r\n')).toBe(
    'part leg 4 of 2x4,\r\n  length 28"\r\n',
  );
});

test("never with a comma in a comment or in words to people", () => {
  expect(twice("plan Chairs, tables,\n  kerf 3mm\n  # Thin, sharp,\n  kerf 4mm\n  indoors\n")).toBe(
    "plan Chairs, tables,\n  kerf 3mm\n  # Thin, sharp,\n  indoors\n",
  );
  expect(twice("plan x\n  kerf 3mm\n  written by Ann, Ben,\n  kerf 4mm\n")).toBe(
    "plan x\n  kerf 3mm\n  written by Ann, Ben,\n",
  );
  expect(twice('part leg 4 of 2x4,\n  length 28" # Long, but,\n  length 30"\n')).toBe(
    'part leg 4 of 2x4,\n  length 28" # Long, but,\n',
  );
});

test("a comment between the comma and the clause stays, and one behind the clause", () => {
  expect(twice('part leg 4 of 2x4,\n  length 28", # short,\n  # or long,\n  length 30"\n')).toBe(
    'part leg 4 of 2x4,\n  length 28" # short,\n  # or long,\n',
  );
  expect(twice("plan x\n  kerf 3mm\n  kerf 4mm # thick\n  indoors\n")).toBe(
    "plan x\n  kerf 3mm\n  # thick\n  indoors\n",
  );
});

test("of two places that dispute, too", () => {
  const plan = (end: string) =>
    `part leg 1 of 2x4, length 28"
part shelf 1 of 1x6, length 30"
place leg upright, on floor, 0 from left, 0 from front
place shelf across, flat, behind leg, 0 from left, flush with top of leg${end}
`;
  expect(cured("place-disputed", plan(' # so, yes,\n  14" up'))).toMatch(/# so, yes,\n/);
});

test("a line that nothing uses leaves its comments behind", () => {
  const part = 'part leg 4 of 2x4, length 28"\n';
  expect(cured("never-used", `measure rim = 30" # how high\n${part}`)).toBe(`# how high\n${part}`);
  expect(cured("never-used", `measure rim = 30",\n  at least 3" # not less\n  # nor more\n${part}`)).toBe(
    `  # not less\n  # nor more\n${part}`,
  );
  expect(cured("never-used", `${part}measure rim = 30" # how high`)).toBe(`${part}# how high`);
});

test("an accept line leaves its comments behind, and stays where something with it was not read", () => {
  const part = 'part leg 4 of 2x4, length 28"\n';
  expect(cured("cannot-accept", `${part}accept tips-over because so\n  # I tried it.\n`)).toBe(
    `${part}  # I tried it.\n`,
  );
  const read = run(`${part}accept no-room on leg because so\n  lenght 3"\n`);
  const accept = read.problems.filter((p) => p.code === "cannot-accept");
  expect(accept.flatMap((p) => p.cures)).toEqual([]);
});
