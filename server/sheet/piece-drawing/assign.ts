/** Each row to a column of its own at the least sum of costs (the Hungarian method). */

/** Columns by row; there are at least as many columns as rows. O(rows² × columns). */
export function cheapest(costs: readonly (readonly number[])[]): readonly number[] {
  const rows = costs.length;
  const columns = costs[0]?.length ?? 0;
  const rowPrice = new Float64Array(rows + 1);
  const columnPrice = new Float64Array(columns + 1);
  /** The row that holds each column, both counted from 1; 0 for none. */
  const holder = new Int32Array(columns + 1);
  for (let row = 1; row <= rows; row++) {
    const way = new Int32Array(columns + 1);
    const least = new Float64Array(columns + 1).fill(Infinity);
    const done = new Uint8Array(columns + 1);
    holder[0] = row;
    let at = 0;
    do {
      done[at] = 1;
      const here = holder[at]!;
      let [delta, next] = [Infinity, 0];
      for (let c = 1; c <= columns; c++) {
        if (done[c]) continue;
        const cost = costs[here - 1]![c - 1]! - rowPrice[here]! - columnPrice[c]!;
        if (cost < least[c]!) [least[c], way[c]] = [cost, at];
        if (least[c]! < delta) [delta, next] = [least[c]!, c];
      }
      for (let c = 0; c <= columns; c++) {
        if (done[c]) {
          rowPrice[holder[c]!]! += delta;
          columnPrice[c]! -= delta;
        } else least[c]! -= delta;
      }
      at = next;
    } while (holder[at] !== 0);
    while (at !== 0) {
      holder[at] = holder[way[at]!]!;
      at = way[at]!;
    }
  }
  const found = new Array<number>(rows).fill(-1);
  holder.forEach((row, c) => {
    if (row > 0 && c > 0) found[row - 1] = c - 1;
  });
  return found;
}
