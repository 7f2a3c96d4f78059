/** The cut list: by stock, longest first. */
import type { At } from "../plan";
import { ifKnown } from "../plan";
import { briefly } from "../trade";
import { type Display, LENGTH, lengthText, quantityText, roughly } from "../units";
import { type Material, type Part, sparesOf, type Worked } from "../worked";
import type { CutGroup, CutRow, Place } from "./data";
import type { Identities, Row } from "./identity";
import { marked } from "./marks";

export function cutGroups(worked: Worked, identities: Identities, place: (at: At) => Place): CutGroup[] {
  const parts = [...worked.parts.values()];
  return worked.materials.flatMap((material) => {
    const rows = parts
      .filter((p) => p.material === material && p.count.state === "known")
      .flatMap((p) => rowsOf(p, worked, identities, place))
      .sort((a, b) => (b.length?.mm ?? 0) - (a.length?.mm ?? 0));
    if (rows.length === 0) return [];
    return [
      {
        stock: material.name,
        title: materialTitle(material, worked.settings.display),
        source: briefly(material.source),
        rows,
      },
    ];
  });
}

/** `2x4, 1-1/2" x 3-1/2", western redcedar` */
export function materialTitle(material: Material, display: Display): string {
  const t = ifKnown(material.thickness);
  const w = ifKnown(material.width);
  const size =
    t && w
      ? `${lengthText(t, display)} x ${lengthText(w, display)}`
      : t
        ? `${lengthText(t, display)} thick`
        : "";
  const said = material.wood.assumed ? "" : material.wood.title;
  return [material.name, size, said, ...material.conditions].filter(Boolean).join(", ");
}

function rowsOf(part: Part, worked: Worked, identities: Identities, place: (at: At) => Place): CutRow[] {
  const rows = identities.rowsOf(part);
  return rows.flatMap((r) => (r.pieces.length > 0 || rows.length === 1 ? [row(part, r, worked, place)] : []));
}

function row(
  part: Part,
  { hand, mark, pieces: ofOne }: Row,
  worked: Worked,
  place: (at: At) => Place,
): CutRow {
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
    measured: slanted ? "long point to long point" : "",
    shortPoint: slanted ? marked(roughly(LENGTH, board.shortPoint), display) : null,
    width: width ? marked(width, display) : null,
    thickness: thickness ? marked(thickness, display) : null,
    ripped: Boolean(part.ripped) && part.material?.kind === "board",
    ends: endsText(part, display),
    notes: notesOf(part, hand, worked),
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
export function endsText(part: Part, display: Display): string {
  const { leftEnd: left, rightEnd: right } = part;
  if (!left && !right) return "";
  const l = endText(left, display);
  const r = endText(right, display);
  const ends = l === r ? `${l} both ends` : `left end ${l}, right end ${r}`;
  const two = left?.miter && right?.miter;
  return two ? `${ends}, long points on ${part.edges === "one" ? "one edge" : "opposite edges"}` : ends;
}

function endText(end: Part["leftEnd"], display: Display): string {
  if (!end) return "square";
  const cuts = [
    end.miter && `${quantityText(end.miter, display)} miter`,
    end.bevel && `${quantityText(end.bevel, display)} bevel`,
  ];
  return cuts.filter(Boolean).join(" and ");
}

function notesOf(part: Part, hand: string, worked: Worked): string[] {
  const { display } = worked.settings;
  const notes: string[] = [];
  if (part.fit) {
    const more = part.fit.allowance ? `, ${lengthText(part.fit.allowance, display)} is left on` : "";
    notes.push(`cut to fit when the rest stands${more}`);
  }
  for (const n of part.notches) {
    const where = n.distance ? `${lengthText(n.distance, display)} ${n.where}` : n.where;
    notes.push(
      `${n.kind} ${lengthText(n.along, display)} along, ${lengthText(n.into, display)} in, ${where}`,
    );
  }
  if (hand) notes.push(`${hand} piece: the mirror image of the ${hand === "left" ? "right" : "left"} one`);
  if (part.measuredAssumed)
    notes.push("the plan does not say between which points; long point to long point is taken");
  const spares = sparesOf((ifKnown(part.count) ?? 0) * worked.settings.make, worked.settings);
  if (spares > 0 && hand !== "right") notes.push(`and ${spares} spare`);
  return notes;
}
