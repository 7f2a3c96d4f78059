/** The cure of a line that puts its pieces a little off: another distance, where moving them spoils nothing else. */
import { lengthText, plus, type Quantity, refused } from "../units";
import { hangingFreely, type LineAt, movedBy, type Piece, type Worked } from "../worked";
import type { Cure } from "./check";
import { mm } from "./piece-words";
import { edit, markAbove, markBelow, writtenLength } from "./writing";

/** In how many places other distances are tried: each is a whole plan to compare. */
export const MOST_TRIED = 4;

/**
 * Rewrites the typed distance of a line in that direction so that its pieces move at least that far (mm); template
 * `distance` with slots `new` and `old`. No piece may then hang in the air that does not now, nor any of `held`.
 */
export function distanceCure(
  { placement, at }: LineAt,
  axis: 0 | 1 | 2,
  shift: number,
  worked: Worked,
  held: readonly Piece[],
  slots: Cure["slots"],
): Cure[] {
  const { display } = worked.settings;
  const claim = placement?.claims.find((c) => c.axis === axis && c.distance?.value.kind === "literal");
  if (!placement || !claim?.distance) return [];
  const { value, sign } = claim.distance;
  const old = worked.evaluate(value, at.file);
  const moved = old.state === "known" ? plus(old.value, mm(sign * shift)) : "none";
  if (old.state !== "known" || typeof moved === "string" || refused(moved)) return [];
  const to: Quantity = sign * shift > 0 ? markAbove(moved, display) : markBelow(moved, display);
  if (to.approx < 0) return [];
  const hanging = movedBy(worked, placement, axis, sign * (to.approx - old.value.approx));
  const now = new Set(hangingFreely(worked.space).flat());
  const mayHang = (i: number): boolean => now.has(i) && !held.includes(worked.space.pieces[i]!);
  if (!hanging?.every(mayHang)) return [];
  const place = { file: at.file, start: value.start, end: value.end };
  const told = { ...slots, new: lengthText(to, display), old: old.value };
  return [{ says: "distance", slots: told, edits: [edit(place, writtenLength(to, display))] }];
}
