/** The gallery of mistakes: each plan reports just the codes its first comment lists. */
import { expect, test } from "vitest";
import { CODES } from "../../server/checks/codes";
import { codesOf, MISTAKES } from "./plans";

/** Not kept as files: one is over a million characters long, the other is not text. Both are tested elsewhere. */
const NOT_KEPT = ["not-text", "too-big"];

const listed = (text: string): string[] => (/^# reports: (.+)$/m.exec(text)?.[1] ?? "").split(" ").sort();

test.each(MISTAKES)("$name", ({ text }) => {
  expect(codesOf(text)).toEqual(listed(text));
});

test("every code has its plan", () => {
  const shown = new Set(MISTAKES.flatMap((m) => listed(m.text)));
  expect(CODES.filter((c) => !shown.has(c))).toEqual(NOT_KEPT);
});
