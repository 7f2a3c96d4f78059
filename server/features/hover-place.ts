/** What a hover says of place lines and assemblies: where they stand, how many, which way they lie, what they touch. */
import type { Clause, Entry } from "../../grammar/tree";
import { textAt } from "../checks/writing";
import { type Declared, ifKnown, lookUp, type Value } from "../plan";
import { TOUCHING } from "../solid/contact";
import { LENGTH, type Quantity, roughly } from "../units";
import type { Worked } from "../worked";
import { type Axis, type Placement, startsAt } from "../worked/placing";
import { otherOf } from "../worked/space";
import { COMMON } from "./hover-texts/common";
import { PLACE } from "./hover-texts/place";
import type { Voice } from "./hover-texts/voice";
import { escaped, list, paragraphs, strong } from "./markdown";
import { exactText, valueOr, whyNot } from "./values";

type PlaceEntry = Entry & { readonly kind: "place" };

/** Where one line puts its thing. */
export function describePlace(entry: PlaceEntry, worked: Worked, voice: Voice): string | undefined {
  const line = worked.placing.linesOf(subjectOf(entry, worked)).find((p) => p.entry === entry);
  if (!line) return undefined;
  const says = PLACE[voice.language];
  const title = says.placed(escaped(line.subject.name), inside(line, worked, voice));
  const stands = AXES.map((axis) => worked.placing.stretches(line, axis));
  const lost = stands.find((s) => s.state !== "known");
  if (lost)
    return paragraphs(title, says.standsNot(whyNot(lost, voice)), list([liesText(line, worked, voice)]));
  return paragraphs(
    title,
    escaped(says.stands(AXES.map((axis) => spanText(line, axis, worked, voice)))),
    list([
      howMany(line, worked, voice),
      liesText(line, worked, voice),
      touchText(line, worked, voice),
      startText(line, worked, voice),
    ]),
  );
}

const AXES = [0, 1, 2] as const;

const subjectOf = ({ subject: { name } }: PlaceEntry, { scope }: Worked): string =>
  lookUp(scope, name.text)?.name ?? name.text;

const inside = ({ context }: Placement, { placing }: Worked, { language }: Voice): string =>
  context === placing.plan ? "" : PLACE[language].inside(escaped(context.name));

/** `from 18-1/4" to 29-1/4" above the floor`: from the first to the last of its row. */
function spanText(line: Placement, axis: Axis, worked: Worked, { language, display }: Voice): string {
  const all = ifKnown(worked.placing.stretches(line, axis)) ?? [];
  const low = all.reduce((a, b) => (b.low.approx < a.low.approx ? b : a)).low;
  const high = all.reduce((a, b) => (b.high.approx > a.high.approx ? b : a)).high;
  return PLACE[language].span(exactText(low, display), exactText(high, display), axis);
}

/** `2 high, tight`, `10 across with gaps of 1/2"`: rows in each direction, and how many pieces in all. */
function howMany(line: Placement, worked: Worked, voice: Voice): string {
  const { placing } = worked;
  const says = PLACE[voice.language];
  const corners = line.entry.clauses.some((c) => c.kind === "corners");
  const rows = AXES.flatMap((axis) => {
    const along = ifKnown(placing.along(line, axis));
    const n = along?.row.starts.length ?? 1;
    if (n < 2 || (corners && axis !== 2)) return [];
    return [says.row(n, axis, gapText(along?.row.gap, voice))];
  });
  const mirrored = line.entry.clauses.some((c) => c.kind === "mirrored") ? [says.mirrored] : [];
  const total = placing.counts.all(line);
  const how = [...(corners ? [says.inCorners] : []), ...rows, ...mirrored].join(", ");
  const pieces = ifKnown(total);
  // A single row of single pieces says it all.
  if (rows.length === 1 && !corners && mirrored.length === 0 && how.startsWith(`${pieces} `))
    return says.howMany(escaped(how));
  const count = pieces === undefined ? whyNot(total, voice) : says.pieces(pieces);
  return says.howMany(`${count}${how ? `, ${escaped(how)}` : ""}`);
}

function gapText(gap: Quantity | undefined, { language, display }: Voice): string {
  if (!gap) return "";
  const says = PLACE[language];
  return Math.abs(gap.approx) < TOUCHING ? says.tight : says.gaps(exactText(gap, display));
}

/** Where it begins without saying so: as the first of its plan, or on the floor as its own pieces do. */
function startText(line: Placement, { placing }: Worked, { language }: Voice): string | undefined {
  const says = PLACE[language];
  const [x, y, z] = AXES.map((axis) => startsAt(placing, line, axis));
  const sides = [...(x ? (["left"] as const) : []), ...(y ? (["front"] as const) : [])];
  const said = [...(sides.length > 0 ? [says.begins(sides)] : []), ...(z ? [says.onFloor] : [])];
  const { assumed, between } = COMMON[language];
  return said.length > 0 ? assumed(said.join(between)) : undefined;
}

/** Which way it lies, in the line's own words. */
function liesText(line: Placement, worked: Worked, { language }: Voice): string | undefined {
  const { entry, context } = line;
  const words = entry.clauses
    .filter((c) => LYING.has(c.kind))
    .map(({ start, end }) => textAt(worked, { file: context.file, start, end }));
  return words.length > 0 ? PLACE[language].lies(words, escaped) : undefined;
}

const LYING: ReadonlySet<Clause["kind"]> = new Set([
  "lies",
  "wide face",
  "long points at",
  "leaning",
  "sloping",
]);

/** The parts that its pieces lie against, and the floor; for lines of the plan itself. */
function touchText(line: Placement, { pieces, space }: Worked, { language }: Voice): string | undefined {
  const placed = pieces.lines.find((l) => l.placement === line);
  if (!placed || placed.pieces.length === 0) return undefined;
  const says = PLACE[language];
  const own = new Set(placed.pieces);
  const names = new Set<string>();
  space.pieces.forEach((piece, i) => {
    if (!own.has(piece)) return;
    if (Math.abs(piece.bounds.least[2]) <= TOUCHING) names.add(says.floor);
    for (const m of space.meetingsOf[i] ?? []) {
      const other = space.pieces[otherOf(space.meetings[m]!, i)]!;
      if (!own.has(other)) names.add(other.part);
    }
  });
  return names.size > 0
    ? says.touches(escaped(COMMON[language].all([...names].sort())))
    : says.touchesNothing;
}

/** What an assembly is made of, how large it is, and how often it is placed. */
export function describeAssembly(declared: Declared, worked: Worked, voice: Voice): string {
  const { placing, scope } = worked;
  const says = PLACE[voice.language];
  const context = placing.assembly(declared);
  const parts = [...scope.declared.values()].flatMap((d): string[] => {
    const count = d.kind === "part" ? placing.counts.of(d, context) : undefined;
    return count ? [[ifKnown(count), d.name].filter(Boolean).join(" ")] : [];
  });
  const size = AXES.map((axis) => sizeOf(placing.boundsOf(context, axis)));
  const [wide, deep, high] = size.map((s) => valueOr(s, voice));
  const times = placing.linesOf(declared.name).length;
  return paragraphs(
    says.assembly(strong(declared.name), escaped(COMMON[voice.language].all(parts))),
    size.every((s) => s.state === "known") ? says.size(wide!, deep!, high!) : undefined,
    times > 0 ? says.placedBy(times) : says.placedByNone,
  );
}

function sizeOf(span: Value<{ readonly low: Quantity; readonly high: Quantity }>): Value<Quantity> {
  if (span.state !== "known") return span;
  return { state: "known", value: roughly(LENGTH, span.value.high.approx - span.value.low.approx) };
}
