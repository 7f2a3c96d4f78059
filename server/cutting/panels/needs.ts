/** What every purchase must give, for worths of the pieces: the best pattern's worth from each sheet, all worths in sum. */
import type { Need } from "../proof/least";
import { bestPattern, type Pattern } from "./pattern";
import type { Meter, PanelQuestion, Room } from "./question";

/** A sheet that differs from the others; `sold` is its place among those sold, or -1; `supply` how many are on hand. */
export interface RoomKind {
  readonly room: Room;
  readonly sold: number;
  readonly supply: number;
}

/** Sheets sold in their order, then those on hand, equal ones as one. */
export function roomKinds({ sold, own }: PanelQuestion): readonly RoomKind[] {
  const kinds: RoomKind[] = sold.map((room, s) => ({ room, sold: s, supply: Number.POSITIVE_INFINITY }));
  for (const room of own) {
    const at = kinds.findIndex(
      (kind) =>
        kind.sold < 0 &&
        kind.room.length === room.length &&
        kind.room.width === room.width &&
        kind.room.grain === room.grain,
    );
    if (at < 0) kinds.push({ room, sold: -1, supply: 1 });
    else kinds[at] = { ...kinds[at]!, supply: kinds[at]!.supply + 1 };
  }
  return kinds;
}

/** A need and the worths that it comes from, one per group. */
export interface WorthNeed extends Need {
  readonly worths: readonly number[];
  /** Groups of which no pattern uses more pieces than there are. */
  readonly held: readonly number[];
}

/** The need of these worths; `known` are best patterns found already, by kind. */
export function* needOf(
  { groups, sold }: PanelQuestion,
  kinds: readonly RoomKind[],
  worths: readonly number[],
  held: readonly number[],
  known: readonly (Pattern | undefined)[],
  meter: Meter,
): Generator<void, WorthNeed, void> {
  const gives = sold.map(() => 0);
  let least = groups.reduce((sum, { count }, g) => sum + worths[g]! * count, 0);
  for (const [k, kind] of kinds.entries()) {
    const { value } = known[k] ?? (yield* bestPattern(kind.room, groups, worths, held, meter));
    if (kind.sold >= 0) gives[kind.sold] = value;
    else least -= value * kind.supply;
  }
  return { gives, least, worths, held };
}
