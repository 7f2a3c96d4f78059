import { type At, asSays, say, usesOf } from "../plan";
import { ANGLE, isNumber, LENGTH, nameOf, order, type Quantity, readLiteral, sameDimension } from "../units";
import { compares, type Fault, type Worked } from "../worked";
import type { Check, Cure, Finding, Says } from "./check";
import { ofKind } from "./faults";
import { phrase } from "./phrases";
import { textAt } from "./writing";

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
    function:
      "“{here}” cannot be worked out from {left}: sin, cos and tan take an angle, like 30°, and asin, acos and atan a plain number.",
    "put together": "{Left} and {right} do not go together here.",
    meant: "{Right} cannot be taken from {left}. Did you mean {meant}, without blanks?",
    wanted: "{What} is wanted here, not {found}.",
    "no-kind": "{What} is wanted here, and “{text}” comes to a value of no everyday kind.",
    bare: "{What} is wanted here, but {text} has no unit. Is it inches or millimetres?",
    "bare-measure": "“{name}” is used as a length, but {text} has no unit. Is it inches or millimetres?",
    use: "It is used as a length here.",
    write: "Write {to}",
  },
  run: (worked) => [...sums(worked), ...wanted(worked)],
};

type Kinds = Extract<Fault, { kind: "kinds" }>;
type Wanted = Extract<Fault, { kind: "wanted" }>;

function sums(worked: Worked): Finding[] {
  return ofKind(worked, "kinds").map((fault) => {
    // A function has one value, which stands on both sides.
    if (fault.left === fault.right) return ofFunction(fault, worked);
    const left = said(fault.left);
    const right = said(fault.right);
    return {
      at: fault.at,
      says: fault.meant ? "meant" : fault.doing,
      slots: { left, right, meant: fault.meant ?? "" },
      cures: fault.meant ? [write(fault.at, fault.meant)] : besideLength(fault, worked),
    };
  });
}

function ofFunction({ at, left }: Kinds, worked: Worked): Finding {
  const here = textAt(worked, at);
  const bare = /^((?:sin|cos|tan) ?\( ?[\d.]+)( ?\))$/.exec(here);
  const cures = bare ? [write(at, `${bare[1]}°${bare[2]}`)] : [];
  return { at, says: "function", slots: { here, left: said(left) }, cures };
}

/** The units a bare number beside a length may have; of those compared, only such as keep what is said of them. */
function besideLength({ sides, left, right, comparison }: Kinds, worked: Worked): Cure[] {
  const bareLeft = isNumber(left.dim) && sameDimension(right.dim, LENGTH);
  const bareRight = isNumber(right.dim) && sameDimension(left.dim, LENGTH);
  if (!sides || !(bareLeft || bareRight)) return [];
  const at = sides[bareLeft ? 0 : 1];
  const text = textAt(worked, at);
  if (!BARE.test(text)) return [];
  return inUnits(text, worked)
    .filter((to) => {
      const length = readLiteral(to);
      if (!length || !comparison) return true;
      const o = bareLeft ? order(length, right) : order(left, length);
      return typeof o === "number" && compares(o, comparison);
    })
    .map((to) => write(at, to));
}

function wanted(worked: Worked): Finding[] {
  const faults = ofKind(worked, "wanted");
  const told = bareMeasures(faults, worked);
  return faults.flatMap((fault) => {
    const group = told.find((g) => g.faults.includes(fault));
    if (group) return group.faults[0] === fault ? [ofMeasure(group, worked)] : [];
    const text = fault.text || textAt(worked, fault.at);
    const number = isNumber(fault.found.dim) && BARE.test(fault.text);
    const bare = number && sameDimension(fault.wanted, LENGTH);
    const angle = number && sameDimension(fault.wanted, ANGLE) && /^[\d.]+$/.test(text);
    const options = bare ? inUnits(text, worked) : angle ? [`${text}°`] : [];
    return {
      at: fault.at,
      says: bare ? "bare" : nameOf(fault.found.dim) === NO_KIND ? "no-kind" : "wanted",
      slots: { what: asSays(fault.what), found: said(fault.found), text },
      cures: (fault.meant ? [fault.meant] : options).map((to) => write(fault.at, to)),
    };
  });
}

interface BareMeasure {
  readonly name: string;
  /** Where its number stands. */
  readonly at: At;
  readonly faults: readonly Wanted[];
}

/** Measures that are a bare number, and that every line which names them takes for a length: one mistake each. */
function bareMeasures(faults: readonly Wanted[], worked: Worked): BareMeasure[] {
  const named = faults.filter((f) => f.text === "" && sameDimension(f.wanted, LENGTH));
  if (named.length === 0) return [];
  const uses = worked.loaded.files.flatMap((f) =>
    f.tree.entries.flatMap((e) => (e.kind === "built" ? [] : usesOf(e))),
  );
  return [...worked.measures.values()].flatMap(({ name, declared: { entry, at } }): BareMeasure[] => {
    const value = entry.kind === "measure" ? entry.value : undefined;
    if (value?.kind !== "literal" || !BARE.test(value.text)) return [];
    const mine = named.filter((f) => textAt(worked, f.at) === name);
    const all = uses.filter((u) => u.name.text === name && u.kinds.includes("measure"));
    if (mine.length === 0 || mine.length < all.length) return [];
    return [{ name, at: { file: at.file, start: value.start, end: value.end }, faults: mine }];
  });
}

function ofMeasure({ name, at, faults }: BareMeasure, worked: Worked): Finding {
  const text = textAt(worked, at);
  return {
    at,
    about: [name],
    says: "bare-measure",
    slots: { name, text },
    related: faults.map((f) => ({ at: f.at, says: "use", slots: {} })),
    cures: inUnits(text, worked).map((to) => write(at, to)),
  };
}

const BARE = /^[\d./]+$/;

/** A bare number with the marks of both systems, the plan's own first; a fraction is always of an inch. */
function inUnits(text: string, { settings }: Worked): string[] {
  if (text.includes("/")) return [`${text}"`];
  const both = [`${text}"`, `${text}mm`];
  return settings.display.system === "inches" ? both : both.reverse();
}

const NO_KIND = nameOf({ ...LENGTH, length: 9 });

/** `a length (28-1/2")` */
const said = (q: Quantity): Says => phrase("valued", { kind: say(nameOf(q.dim)), value: q });

const write = (at: Finding["at"], to: string): Cure => ({
  says: "write",
  slots: { to },
  edits: [{ ...at, text: to }],
});
