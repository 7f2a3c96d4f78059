/** What a hover says of place lines and assemblies: where they stand, how many, which way they lie, what they touch. */
import type { Clause, Entry } from "../../grammar/tree";
import { allOf, textAt } from "../checks/writing";
import { type Declared, ifKnown, lookUp, type Value } from "../plan";
import { TOUCHING } from "../solid/contact";
import { type Display, LENGTH, type Quantity, roughly } from "../units";
import type { Worked } from "../worked";
import { type Axis, type Placement, startsAt } from "../worked/placing";
import { otherOf } from "../worked/space";
import { escaped, list, paragraphs, strong } from "./markdown";
import { exactText, valueOr, whyNot } from "./values";

type PlaceEntry = Entry & { readonly kind: "place" };

/** Where one line puts its thing. */
export function describePlace(entry: PlaceEntry, worked: Worked): string | undefined {
  const line = worked.placing.linesOf(subjectOf(entry, worked)).find((p) => p.entry === entry);
  if (!line) return undefined;
  const { display } = worked.settings;
  const title = `**Placed**: ${escaped(line.subject.name)}${inside(line, worked)}`;
  const stands = AXES.map((axis) => worked.placing.stretches(line, axis));
  const lost = stands.find((s) => s.state !== "known");
  if (lost) return paragraphs(title, `Where it stands is ${whyNot(lost)}.`, list([liesText(line, worked)]));
  const spans = AXES.map((axis) => spanText(line, axis, worked));
  return paragraphs(
    title,
    `Stands ${escaped(`${spans[2]}, ${spans[0]}, ${spans[1]}`)}.`,
    list([
      howMany(line, worked, display),
      liesText(line, worked),
      touchText(line, worked),
      startText(line, worked),
    ]),
  );
}

const AXES = [0, 1, 2] as const;

const subjectOf = ({ subject: { name } }: PlaceEntry, { scope }: Worked): string =>
  lookUp(scope, name.text)?.name ?? name.text;

const inside = ({ context }: Placement, { placing }: Worked): string =>
  context === placing.plan ? "" : `, measured inside ${escaped(context.name)}`;

const FROM = ["from the left", "from the front", "above the floor"] as const;

/** `from 18-1/4" to 29-1/4" above the floor`: from the first to the last of its row. */
function spanText(line: Placement, axis: Axis, worked: Worked): string {
  const all = ifKnown(worked.placing.stretches(line, axis)) ?? [];
  const { display } = worked.settings;
  const low = all.reduce((a, b) => (b.low.approx < a.low.approx ? b : a)).low;
  const high = all.reduce((a, b) => (b.high.approx > a.high.approx ? b : a)).high;
  return `from ${exactText(low, display)} to ${exactText(high, display)} ${FROM[axis]}`;
}

const WORDS = ["across", "deep", "high"] as const;

/** `2 high, tight`, `10 across with gaps of 1/2"`: rows in each direction, and how many pieces in all. */
function howMany(line: Placement, worked: Worked, display: Display): string {
  const { placing } = worked;
  const corners = line.entry.clauses.some((c) => c.kind === "corners");
  const rows = AXES.flatMap((axis) => {
    const along = ifKnown(placing.along(line, axis));
    const n = along?.row.starts.length ?? 1;
    if (n < 2 || (corners && axis !== 2)) return [];
    return [`${n} ${WORDS[axis]}${gapText(along?.row.gap, display)}`];
  });
  const mirrored = line.entry.clauses.some((c) => c.kind === "mirrored") ? ["and their mirror images"] : [];
  const total = placing.counts.all(line);
  const how = [...(corners ? ["one in each corner"] : []), ...rows, ...mirrored].join(", ");
  const pieces = ifKnown(total);
  // A single row of single pieces says it all.
  if (rows.length === 1 && !corners && mirrored.length === 0 && how.startsWith(`${pieces} `))
    return `How many: ${escaped(how)}`;
  const count = pieces === undefined ? whyNot(total) : `${pieces} ${pieces === 1 ? "piece" : "pieces"}`;
  return `How many: ${count}${how ? `, ${escaped(how)}` : ""}`;
}

function gapText(gap: Quantity | undefined, display: Display): string {
  if (!gap) return "";
  return Math.abs(gap.approx) < TOUCHING ? ", tight" : ` with gaps of ${exactText(gap, display)}`;
}

/** Where it begins without saying so: as the first of its plan, or on the floor as its own pieces do. */
function startText(line: Placement, { placing }: Worked): string | undefined {
  const [x, y, z] = AXES.map((axis) => startsAt(placing, line, axis));
  const sides = [...(x ? ["left"] : []), ...(y ? ["front"] : [])];
  const said = [
    ...(sides.length > 0
      ? [`it begins at the ${sides.join(" and the ")}, since no line says otherwise`]
      : []),
    ...(z ? ["it stands on the floor, as its own pieces do"] : []),
  ];
  return said.length > 0 ? `Taken for granted: ${said.join("; ")}` : undefined;
}

/** Which way it lies, in the line's own words. */
function liesText(line: Placement, worked: Worked): string | undefined {
  const { entry, context } = line;
  const words = entry.clauses
    .filter((c) => LYING.has(c.kind))
    .map(({ start, end }) => textAt(worked, { file: context.file, start, end }));
  return words.length > 0 ? `It lies ${escaped(words.join(", "))}` : undefined;
}

const LYING: ReadonlySet<Clause["kind"]> = new Set([
  "lies",
  "wide face",
  "long points at",
  "leaning",
  "sloping",
]);

/** The parts that its pieces lie against, and the floor; for lines of the plan itself. */
function touchText(line: Placement, { pieces, space }: Worked): string | undefined {
  const placed = pieces.lines.find((l) => l.placement === line);
  if (!placed || placed.pieces.length === 0) return undefined;
  const own = new Set(placed.pieces);
  const names = new Set<string>();
  space.pieces.forEach((piece, i) => {
    if (!own.has(piece)) return;
    if (Math.abs(piece.bounds.least[2]) <= TOUCHING) names.add("the floor");
    for (const m of space.meetingsOf[i] ?? []) {
      const other = space.pieces[otherOf(space.meetings[m]!, i)]!;
      if (!own.has(other)) names.add(other.part);
    }
  });
  return names.size > 0 ? `It touches ${escaped(allOf([...names].sort()))}` : "It touches nothing";
}

/** What an assembly is made of, how large it is, and how often it is placed. */
export function describeAssembly(declared: Declared, worked: Worked): string {
  const { placing, scope } = worked;
  const { display } = worked.settings;
  const context = placing.assembly(declared);
  const parts = [...scope.declared.values()].flatMap((d): string[] => {
    const count = d.kind === "part" ? placing.counts.of(d, context) : undefined;
    return count ? [[ifKnown(count), d.name].filter(Boolean).join(" ")] : [];
  });
  const size = AXES.map((axis) => sizeOf(placing.boundsOf(context, axis)));
  const [wide, deep, high] = size.map((s) => valueOr(s, display));
  const times = placing.linesOf(declared.name).length;
  return paragraphs(
    `${strong(declared.name)}, an assembly${parts.length > 0 ? ` of ${escaped(allOf(parts))}` : ""}`,
    size.every((s) => s.state === "known") ? `${wide} wide, ${deep} deep, ${high} high` : undefined,
    times > 0 ? `Placed by ${times === 1 ? "one line" : `${times} lines`}` : "No line places it",
  );
}

function sizeOf(span: Value<{ readonly low: Quantity; readonly high: Quantity }>): Value<Quantity> {
  if (span.state !== "known") return span;
  return { state: "known", value: roughly(LENGTH, span.value.high.approx - span.value.low.approx) };
}
