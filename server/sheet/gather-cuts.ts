/** The cut list: by stock, longest first. */
import type { At } from "../plan";
import { ifKnown } from "../plan";
import {
  type Display,
  fraction,
  LENGTH,
  lengthInFull,
  lengthText,
  onTheMark,
  type Quantity,
  quantityText,
  roughly,
} from "../units";
import { type Material, type Part, sparesOf, type Worked } from "../worked";
import type { CutGroup, CutRow, Place } from "./data";
import type { Identities, Row } from "./identity";
import { marked } from "./marks";
import type { SheetWords } from "./words";

export function cutGroups(
  worked: Worked,
  identities: Identities,
  place: (at: At) => Place,
  words: SheetWords,
): CutGroup[] {
  const parts = [...worked.parts.values()];
  return worked.materials.flatMap((material) => {
    const rows = parts
      .filter((p) => p.material === material && p.count.state === "known")
      .flatMap((p) => rowsOf(p, worked, identities, place, words))
      .sort((a, b) => (b.length?.mm ?? 0) - (a.length?.mm ?? 0));
    if (rows.length === 0) return [];
    return [
      {
        stock: material.name,
        title: materialTitle(material, worked.settings.display, words),
        source: words.wood.materials.sizeFrom(material),
        rows,
      },
    ];
  });
}

/** `2x4, 1-1/2" x 3-1/2", western redcedar` */
export function materialTitle(material: Material, display: Display, words: SheetWords): string {
  const { materials } = words.wood;
  const t = ifKnown(material.thickness);
  const w = ifKnown(material.width);
  const size =
    t && w
      ? [t, w].map((q) => lengthText(q, display)).join(words.by)
      : t
        ? materials.thick(thicknessText(t, display))
        : "";
  const said = material.wood.assumed ? "" : words.shop.wood(material.wood);
  return [material.name, size, said, ...material.conditions.map(materials.condition)]
    .filter(Boolean)
    .join(", ");
}

/** The thickness that a sheet is sold by, which need not lie on the plan's marks: `23/32"`, `6.5 mm`. */
const thicknessText = (q: Quantity, display: Display): string =>
  onTheMark(q, { ...display, mark: FINEST[display.system] })
    ? lengthInFull(q, display)
    : lengthText(q, display);

/** Millimetres. */
const FINEST = { inches: fraction.rational(127, 320), millimetres: fraction.rational(1, 10) } as const;

function rowsOf(
  part: Part,
  worked: Worked,
  identities: Identities,
  place: (at: At) => Place,
  words: SheetWords,
): CutRow[] {
  const rows = identities.rowsOf(part);
  return rows.flatMap((r) =>
    r.pieces.length > 0 || rows.length === 1 ? [row(part, r, worked, place, words)] : [],
  );
}

function row(
  part: Part,
  { hand, mark, pieces: ofOne }: Row,
  worked: Worked,
  place: (at: At) => Place,
  words: SheetWords,
): CutRow {
  const { cuts } = words.wood;
  const copies = Array.from({ length: worked.settings.make - 1 }, (_, i) =>
    ofOne.map((id) => `copy ${i + 2} / ${id}`),
  );
  const pieces = [...ofOne, ...copies.flat()];
  const { display } = worked.settings;
  const needs = ifKnown(part.needs);
  const board = ifKnown(part.cut);
  const width = ifKnown(part.width);
  const thickness = ifKnown(part.thickness);
  const slanted = board && (part.leftEnd || part.rightEnd);
  return {
    mark,
    part: part.name,
    pieces,
    count: pieces.length,
    hand,
    length: needs ? marked(needs, display) : null,
    rule: ruleOf(part, worked),
    measured: slanted ? cuts.longToLong : "",
    shortPoint: slanted ? marked(roughly(LENGTH, board.shortPoint), display) : null,
    width: width ? marked(width, display) : null,
    thickness: thickness ? marked(thickness, display) : null,
    ripped: Boolean(part.ripped),
    ends: endsText(part, display, words),
    notes: notesOf(part, hand, worked, words),
    place: place(part.declared.at),
  };
}

/** The expression that a length is written as, on one line; empty where it is a plain measure. */
function ruleOf({ declared }: Part, { loaded }: Worked): string {
  const { entry, at } = declared;
  const clause = entry.clauses.find((c) => c.kind === "length");
  if (!clause || clause.value.kind === "literal") return "";
  const text = loaded.files.find(({ file }) => file === at.file)?.tree.text ?? "";
  return text.slice(clause.value.start, clause.value.end).replace(/\s+/g, " ");
}

/** `45° miter both ends, long points on one edge` */
function endsText(part: Part, display: Display, words: SheetWords): string {
  const { cuts } = words.wood;
  const { leftEnd: left, rightEnd: right } = part;
  if (!left && !right) return "";
  const l = endText(left, display, words);
  const r = endText(right, display, words);
  const ends = l === r ? cuts.bothEnds(l) : cuts.ends(l, r);
  const two = left?.miter && right?.miter;
  return two ? `${ends}, ${cuts.longPoints(part.edges === "one" ? "one" : "opposite")}` : ends;
}

function endText(end: Part["leftEnd"], display: Display, { wood: { cuts } }: SheetWords): string {
  if (!end) return cuts.square;
  const [miter, bevel] = [end.miter, end.bevel].map((angle) => angle && quantityText(angle, display));
  return cuts.angled(miter, bevel);
}

function notesOf(part: Part, hand: CutRow["hand"], worked: Worked, { wood: { cuts } }: SheetWords): string[] {
  const { display } = worked.settings;
  const notes: string[] = [];
  if (part.fit) {
    notes.push(cuts.toFit(part.fit.allowance ? lengthText(part.fit.allowance, display) : ""));
  }
  for (const n of part.notches) {
    const [along, into] = [lengthText(n.along, display), lengthText(n.into, display)];
    const distance = n.distance ? lengthText(n.distance, display) : "";
    notes.push(cuts.notch(n.kind, along, into, n.where, distance));
  }
  if (hand) notes.push(cuts.mirror(hand));
  if (part.measuredAssumed) notes.push(cuts.pointsAssumed);
  const spares = sparesOf((ifKnown(part.count) ?? 0) * worked.settings.make, worked.settings);
  if (spares > 0 && hand !== "right") notes.push(cuts.spares(spares));
  return notes;
}
