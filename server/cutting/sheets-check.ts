/**
 * An independent check of an answer for sheets: nothing overlaps, a kerf lies between pieces, and every sheet comes apart
 * by cuts from edge to edge. It knows nothing of rows.
 */
import { MOST } from "./job";
import { LONGEST_SIDE, type Placement, type SheetAnswer, type SheetJob, type SheetLayout } from "./sheets";

/** What is wrong with the answer, one line each; empty when nothing is. */
export function verifySheets(job: SheetJob, answer: SheetAnswer): string[] {
  return [
    ...wrongPieces(job, answer),
    ...answer.sheets.flatMap((sheet) => wrongSheet(job, sheet)),
    ...wrongSums(job, answer),
  ];
}

function wrongPieces({ pieces, sold, kerf }: SheetJob, { sheets, unplaced }: SheetAnswer): string[] {
  const due = new Map<string, string[]>();
  for (const { id, length, width } of pieces) due.set(id, [...(due.get(id) ?? []), `${length} x ${width}`]);
  const wrong: string[] = [];
  const settle = (id: string, size: string | null) => {
    const sizes = due.get(id) ?? [];
    const at = size === null ? sizes.length - 1 : sizes.indexOf(size);
    if (at < 0) wrong.push(`piece ${id} is not in the job like this, or once too often`);
    else sizes.splice(at, 1);
  };
  for (const { placements } of sheets)
    for (const { pieceId, length, width, turned } of placements)
      settle(pieceId, turned ? `${width} x ${length}` : `${length} x ${width}`);
  const sizes = sold.filter(
    ({ price }) => price === null || (Number.isInteger(price) && price >= 0 && price <= MOST),
  );
  const left = new Set(unplaced);
  for (const { id, length, width, grain } of pieces) {
    if (!left.has(id) || ![length, width, kerf + 1].every(isSide)) continue;
    const fits = (sheet: { length: number; width: number; grain: boolean }) =>
      [sheet.length, sheet.width].every(isSide) &&
      ((length <= sheet.length && width <= sheet.width) ||
        (!(sheet.grain && grain === "along") && width <= sheet.length && length <= sheet.width));
    if (sizes.some(fits)) wrong.push(`piece ${id} is left out though a sheet sold would take it`);
  }
  for (const id of unplaced) settle(id, null);
  for (const [id, sizes] of due) if (sizes.length > 0) wrong.push(`piece ${id} is missing`);
  return wrong;
}

function isSide(n: number): boolean {
  return Number.isInteger(n) && n > 0 && n <= LONGEST_SIDE;
}

function wrongSheet(job: SheetJob, sheet: SheetLayout): string[] {
  const { sheetId, kind, length, width, placements } = sheet;
  const wrong: string[] = [];
  const known = (kind === "bought" ? job.sold : job.onHand).find(({ id }) => id === sheetId);
  if (known?.length !== length || known.width !== width)
    wrong.push(`sheet ${sheetId} is not one of the job's`);
  if (placements.length === 0) wrong.push(`sheet ${sheetId}: nothing is cut from it`);
  const along = new Set(job.pieces.filter(({ grain }) => grain === "along").map(({ id }) => id));
  for (const { pieceId, x, y, turned, ...size } of placements) {
    const inside = x >= 0 && y >= 0 && x + size.length <= length && y + size.width <= width;
    if (
      ![x, y, size.length, size.width].every(Number.isInteger) ||
      !inside ||
      size.length < 1 ||
      size.width < 1
    )
      wrong.push(`sheet ${sheetId}: piece ${pieceId} does not lie on it`);
    if (known?.grain && turned && along.has(pieceId))
      wrong.push(`sheet ${sheetId}: ${pieceId} lies across the grain`);
  }
  if (!comesApart(placements, job.kerf))
    wrong.push(`sheet ${sheetId} does not come apart by cuts from edge to edge`);
  return wrong;
}

/**
 * Cuts wherever a kerf's width is free from edge to edge, and so on with each part. A cut never spoils a later one, so
 * taking them in any order finds out.
 */
function comesApart(placements: readonly Placement[], kerf: number): boolean {
  const parts: (readonly Placement[])[] = [placements];
  for (let part = parts.pop(); part; part = parts.pop()) {
    if (part.length < 2) continue;
    const byX = split(part, kerf, (p) => [p.x, p.x + p.length]);
    const pieces = byX.length > 1 ? byX : split(part, kerf, (p) => [p.y, p.y + p.width]);
    if (pieces.length < 2) return false;
    parts.push(...pieces);
  }
  return true;
}

function split(
  part: readonly Placement[],
  kerf: number,
  reach: (p: Placement) => readonly [from: number, to: number],
): Placement[][] {
  const groups: Placement[][] = [];
  let end = Number.NEGATIVE_INFINITY;
  for (const placement of [...part].sort((a, b) => reach(a)[0] - reach(b)[0])) {
    const [from, to] = reach(placement);
    if (from >= end + kerf) groups.push([placement]);
    else groups.at(-1)!.push(placement);
    end = Math.max(end, to);
  }
  return groups;
}

function wrongSums({ sold, kerf }: SheetJob, { sheets, buy, cost }: SheetAnswer): string[] {
  const wrong: string[] = [];
  const used = sheets.filter(({ kind }) => kind === "on hand").map(({ sheetId }) => sheetId);
  if (new Set(used).size < used.length) wrong.push("a sheet on hand is used twice");
  if (sheets.length > 0 && !(Number.isInteger(kerf) && kerf >= 0))
    wrong.push("nothing can be cut with that kerf");
  const bought = sheets.filter(({ kind }) => kind === "bought");
  let [cents, count]: [number | null, number] = [0, 0];
  for (const row of buy) {
    const price = sold.find(({ id }) => id === row.id)?.price ?? null;
    const total = price === null ? null : price * row.count;
    const right = bought.filter(({ sheetId }) => sheetId === row.id).length === row.count && row.count > 0;
    if (!right || total !== row.price) wrong.push(`bought ${row.id}: the count or the price is wrong`);
    cents = cents === null || total === null ? null : cents + total;
    count += row.count;
  }
  if (cents !== cost || count !== bought.length) wrong.push("the totals do not add up");
  if (sheets.some(({ length, width }) => length > LONGEST_SIDE || width > LONGEST_SIDE))
    wrong.push("a side too long");
  return wrong;
}
