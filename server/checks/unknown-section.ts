import { section } from "../trade";
import { type Display, exactly, fraction, INCH, LENGTH, lengthText, readNumber } from "../units";
import type { Worked } from "../worked";
import type { Check, Slot } from "./check";
import { ofKind } from "./faults";
import { phrase } from "./phrases";

export const unknownSection: Check = {
  code: "unknown-section",
  class: "error",
  title: "A board that no yard names like that",
  page: `A name such as \`2x4\` is what the yard calls a board; its real size, 1-1/2" x 3-1/2", comes from the lumber standard the plan
follows. A board of any other size is told with \`stock\`: \`stock slat, measured 5/8" x 3-7/16"\`.

\`\`\`sawbuck
part leg 4 of 2x7, length 28"
\`\`\`

\`\`\`sawbuck
part leg 4 of 2x6, length 28"
\`\`\``,
  templates: {
    near: "No yard sells a board called {name}. Near it are {near}.",
    unknown: "No yard sells a board called {name}. Tell its real size on a stock line.",
    swap: "Write {to}",
  },
  run: (worked) =>
    ofKind(worked, "unknown-section").map(({ at, name, near }) => ({
      at,
      about: [name],
      says: near.length > 0 ? "near" : "unknown",
      slots: {
        name,
        near: { all: near.map((to) => withSize(to, worked.settings)) },
      },
      cures: near.map((to) => ({ says: "swap", slots: { to }, edits: [{ ...at, text: to }] })),
    })),
};

/** `2x4 (really 1-1/2" x 3-1/2")`; a metric name is its own size. */
function withSize(name: string, { lumber, display }: Worked["settings"]): Slot {
  const found = section(name, lumber);
  if (found?.unit !== "in") return name;
  const [thick, wide] = [found.thickness, found.width].map((side) => inchesText(side, display));
  return phrase("really", { name, thick: thick!, wide: wide! });
}

const inchesText = (tape: string, display: Display): string =>
  lengthText(exactly(LENGTH, fraction.multiply(readNumber(tape)!, INCH)), display);
