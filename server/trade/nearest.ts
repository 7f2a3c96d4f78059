// Near names: what a builder may have meant by a name that no table knows.

/** Letters to add, drop or change to turn one word into the other. */
export function editDistance(from: string, to: string): number {
  let previous = Array.from({ length: to.length + 1 }, (_, column) => column);
  for (let row = 1; row <= from.length; row++) {
    const current = [row];
    for (let column = 1; column <= to.length; column++) {
      const change = (previous[column - 1] ?? 0) + (from[row - 1] === to[column - 1] ? 0 : 1);
      current.push(Math.min(change, (previous[column] ?? 0) + 1, (current[column - 1] ?? 0) + 1));
    }
    previous = current;
  }
  return previous[to.length] ?? 0;
}

/** At most `n` of `names` that are spelled nearly like `name`, nearest first; none when nothing is near. */
export function nearestNames(name: string, names: readonly string[], n: number): string[] {
  const allowed = Math.max(1, Math.floor(name.length / 3));
  return names
    .map((known, order) => ({ known, order, distance: editDistance(name, known) }))
    .filter(({ distance }) => distance <= allowed)
    .sort((a, b) => a.distance - b.distance || a.order - b.order)
    .slice(0, Math.max(0, n))
    .map(({ known }) => known);
}
