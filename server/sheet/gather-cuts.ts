/** The cut list: by stock, longest first. */
import type { At } from "../plan";
import { ifKnown } from "../plan";
import { type Display, LENGTH, lengthText, quantityText, roughly } from "../units";
import { allPieces, type Material, type Part, sparesOf, type Worked } from "../worked";
import type { CutGroup, CutRow, Place } from "./data";
import { marked } from "./marks";

export function cutGroups(worked: Worked, place: (at: At) => Place): CutGroup[] {
  const parts = [...worked.parts.values()];
  return worked.materials.flatMap((material) => {
    const rows = parts
      .filter((p) => p.material === material && p.count.state === "known")
      .flatMap((p) => rowsOf(p, worked, place))
      .sort((a, b) => (b.length?.mm ?? 0) - (a.length?.mm ?? 0));
    if (rows.length === 0) return [];
    return [
      {
        stock: material.name,
        title: materialTitle(material, worked.settings.display),
        source: material.source,
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

function rowsOf(part: Part, worked: Worked, place: (at: At) => Place): CutRow[] {
  const { settings } = worked;
  const one = ifKnown(part.count) ?? 0;
  const all = allPieces(part.name, one, settings.make);
  if (part.left + part.right !== one || part.left + part.right === 0)
    return [row(part, "", all, worked, place)];
  const isLeft = (id: string) => Number(id.slice(id.lastIndexOf("/") + 1)) <= part.left;
  const left = row(part, "left", all.filter(isLeft), worked, place);
  const right = row(
    part,
    "right",
    all.filter((id) => !isLeft(id)),
    worked,
    place,
  );
  return [left, right].filter((r) => r.count > 0);
}

function row(
  part: Part,
  hand: CutRow["hand"],
  pieces: readonly string[],
  worked: Worked,
  place: (at: At) => Place,
): CutRow {
  const { display } = worked.settings;
  const needs = ifKnown(part.needs);
  const board = ifKnown(part.cut);
  const width = ifKnown(part.width);
  const thickness = ifKnown(part.thickness);
  const slanted = board && (part.leftEnd || part.rightEnd);
  return {
    part: part.name,
    pieces,
    count: pieces.length,
    hand,
    length: needs ? marked(needs, display) : null,
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
