/**
 * Where the labels under a drawing go. Each hangs on a straight leader down from its place and stands beside the
 * leader's foot like a flag; rows are chosen so that no label meets another and no leader runs through a label.
 * Units are the caller's: millimetres of paper, or columns of a terminal.
 */

export interface Flag {
  /** Where the leader comes down. */
  readonly x: number;
  /** Width of the label with the room it wants on both sides. */
  readonly width: number;
}

export interface PlacedFlag {
  /** From 0, downwards. */
  readonly row: number;
  /** The label stands on this side of its leader. */
  readonly side: "left" | "right";
}

/**
 * Rows and sides for flags given from left to right, between 0 and `pageWidth`; null when no arrangement of this kind
 * exists, and shorter labels must be tried. Labels stand left of their leaders (a tape is read up to its mark); those
 * that would run off the left edge, and such as stand in their way, stand right.
 */
export function placeFlags(flags: readonly Flag[], pageWidth: number): readonly PlacedFlag[] | null {
  const first = firstLeft(flags);
  for (let i = 0; i < first; i++) if (flags[i]!.x + flags[i]!.width > pageWidth) return null;
  const spans = flags.map(({ x, width }, i) =>
    i < first ? { from: x, to: x + width } : { from: x - width, to: x },
  );
  const rows: number[] = [];
  /** Left flags wait for the leaders on their left, right flags for those on their right: deeper than all of them. */
  const rowOf = (i: number): number => {
    const known = rows[i];
    if (known !== undefined) return known;
    const span = spans[i]!;
    let row = 0;
    const under = (j: number) => {
      row = Math.max(row, rowOf(j) + 1);
    };
    if (i < first) for (let j = i + 1; j < flags.length && flags[j]!.x < span.to; j++) under(j);
    else for (let j = i - 1; j >= 0 && flags[j]!.x > span.from; j--) under(j);
    while (rows.some((r, j) => r === row && spans[j]!.from < span.to && spans[j]!.to > span.from)) row++;
    rows[i] = row;
    return row;
  };
  return flags.map((_, i) => ({ row: rowOf(i), side: i < first ? "right" : "left" }));
}

/** The first flag that can stand left, and all after it: none crosses one before it both ways. */
function firstLeft(flags: readonly Flag[]): number {
  let first = 0;
  flags.forEach(({ x, width }, i) => {
    if (x < width) first = i + 1;
  });
  const facing = (i: number, j: number) => {
    const [a, b] = [flags[i]!, flags[j]!];
    return a.x + a.width > b.x && b.x - b.width < a.x;
  };
  for (let j = first; j < flags.length; j++) {
    for (let i = 0; i < first; i++) {
      if (facing(i, j)) {
        first = j + 1;
        break;
      }
    }
  }
  return first;
}
