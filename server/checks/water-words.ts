/** How problems speak of water in boxes: what keeps their wood wet, and how a cure writes that one drains. */
import { LENGTH, type Quantity, roughly } from "../units";
import { type Box, mostWidth, oneFewer, tried, type WaterPath, type Worked } from "../worked";
import type { Cure, Edit, Says } from "./check";
import { phrase } from "./phrases";
import { mm } from "./piece-words";
import { edit, editAfter, markAbove, markBelow, writtenLength } from "./writing";

/** What keeps the wood of a box wet. */
export const wetFill = ({ fill }: Box): Says => phrase(fill?.name === "water" ? "water" : "wet soil");

/** The edits that make a box say how it drains, in place of what it says, else at its end. */
export function drainSaid({ box: { declared } }: WaterPath, clause: string): Edit[] {
  const { entry, at } = declared;
  const said = entry.clauses.find((c) => c.kind === "drains");
  if (said) return [edit({ file: at.file, start: said.start, end: said.end }, clause)];
  const end = Math.max(at.end, ...entry.clauses.map((c) => c.end));
  return [editAfter({ file: at.file, start: end, end }, `, ${clause}`)];
}

/** Holes as are usual for a bottom of that size; template `holes` with the slot `clause`. */
export function newHoles(path: WaterPath, worked: Worked): Cure {
  const { count, diameter } = worked.drainage.find((d) => d.box === path.box)!.advised;
  return holesOf(path, count, diameter, worked);
}

/** So many holes, at least so wide. */
export function holesOf(path: WaterPath, count: number, diameter: Quantity, worked: Worked): Cure {
  const { display } = worked.settings;
  const width = writtenLength(markAbove(roughly(LENGTH, diameter.approx), display), display);
  const clause = `drains by ${count} holes of ${width}`;
  return { says: "holes", slots: { clause }, edits: drainSaid(path, clause) };
}

/** Fewer boards, or narrower ones, in the room of the bottom, each tried; templates `fewer` and `narrower`. */
export function respaced(path: WaterPath, { movement, settings }: Worked): Cure[] {
  const row = movement.rows.find(({ box }) => box?.path === path && box.as === "floor");
  if (!row) return [];
  const fewer = oneFewer(row, true);
  const most = settings.tools?.rips === false ? undefined : mostWidth(row, true);
  const width = most === undefined ? undefined : markBelow(mm(most), settings.display);
  const ripped = width && tried(row, row.pieces.length, width.approx, true);
  return [
    ...(fewer ? [{ says: "fewer", slots: { count: fewer.count, gap: mm(fewer.gap) }, edits: [] }] : []),
    ...(ripped
      ? [
          {
            says: "narrower",
            slots: { count: ripped.count, width: mm(ripped.width), gap: mm(ripped.gap) },
            edits: [],
          },
        ]
      : []),
  ];
}
