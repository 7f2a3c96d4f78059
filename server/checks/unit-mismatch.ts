import { isNumber, LENGTH, nameOf, type Quantity, sameDimension } from "../units";
import type { Worked } from "../worked";
import { type Check, type Cure, type Finding, slotText } from "./check";
import { ofKind } from "./faults";
import { capital, textAt } from "./writing";

export const unitMismatch: Check = {
  code: "unit-mismatch",
  class: "error",
  title: "Values of different kinds",
  page: `A length and a weight cannot be added, and a bare number is never taken for a length: it needs its unit (only 0 does
not). \`11 - 1/2"\` is eleven less half an inch, which means nothing; eleven and a half inches is \`11-1/2"\`.

\`\`\`sawbuck
part leg 4 of 2x4, length 28
\`\`\`

\`\`\`sawbuck
part leg 4 of 2x4, length 28"
\`\`\``,
  templates: {
    add: "{Left} and {right} cannot be added.",
    subtract: "{Right} cannot be taken from {left}.",
    multiply: "{Left} and {right} cannot be multiplied.",
    divide: "{Left} cannot be divided by {right}.",
    compare: "{Left} and {right} cannot be compared.",
    round: "{Left} cannot be rounded to {right}.",
    "put together": "{Left} and {right} do not go together here.",
    meant: "{Right} cannot be taken from {left}. Did you mean {meant}, without blanks?",
    wanted: "{what} is wanted here, not {found}.",
    "no-kind": "{what} is wanted here, and “{text}” comes to a value of no everyday kind.",
    bare: "{what} is wanted here, but {text} has no unit. Is it inches or millimetres?",
    write: "Write {to}",
  },
  run: (worked) => [...sums(worked), ...wanted(worked)],
};

function sums(worked: Worked): Finding[] {
  return ofKind(worked, "kinds").map((fault) => {
    const left = said(fault.left, worked);
    const right = said(fault.right, worked);
    return {
      at: fault.at,
      says: fault.meant ? "meant" : fault.doing,
      slots: { left, right, Left: capital(left), Right: capital(right), meant: fault.meant ?? "" },
      cures: fault.meant ? [write(fault.at, fault.meant)] : [],
    };
  });
}

function wanted(worked: Worked): Finding[] {
  const inches = worked.settings.display.system === "inches";
  return ofKind(worked, "wanted").map((fault) => {
    const what = capital(fault.what);
    const bare =
      isNumber(fault.found.dim) && sameDimension(fault.wanted, LENGTH) && /^[\d./]+$/.test(fault.text);
    const options = inches ? [`${fault.text}"`, `${fault.text}mm`] : [`${fault.text}mm`, `${fault.text}"`];
    return {
      at: fault.at,
      says: bare ? "bare" : nameOf(fault.found.dim) === NO_KIND ? "no-kind" : "wanted",
      slots: { what, found: said(fault.found, worked), text: fault.text || textAt(worked, fault.at) },
      cures: fault.meant
        ? [write(fault.at, fault.meant)]
        : bare
          ? options.map((to) => write(fault.at, to))
          : [],
    };
  });
}

const NO_KIND = nameOf({ ...LENGTH, length: 9 });

/** `a length (28-1/2")` */
function said(q: Quantity, { settings }: Worked): string {
  const value = slotText(q, settings.display);
  return `${nameOf(q.dim)} (${value})`;
}

const write = (at: Finding["at"], to: string): Cure => ({
  says: "write",
  slots: { to },
  edits: [{ ...at, text: to }],
});
