/** Names that a misspelt word was likely meant to be. */

/**
 * Those of `known` within a third of the word's length in edits (insert, delete, replace, swap neighbours), nearest
 * first, ties in the order given; nothing when nothing is near. Single letters and words over 40 letters have no neighbours.
 */
export function nearest(word: string, known: Iterable<string>, most = 3): string[] {
  if (word.length < 2 || word.length > 40) return [];
  const reach = Math.max(1, Math.floor(word.length / 3));
  const found: { name: string; far: number }[] = [];
  for (const name of known) {
    if (name === word || Math.abs(name.length - word.length) > reach) continue;
    const far = distance(word, name, reach);
    if (far <= reach) found.push({ name, far });
  }
  return found
    .sort((a, b) => a.far - b.far)
    .slice(0, most)
    .map((f) => f.name);
}

/** Damerau's distance with only neighbouring swaps, stopped once it must exceed `reach`. */
function distance(a: string, b: string, reach: number): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let best = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        best = Math.min(best, before[j - 2]! + 1);
      row.push(best);
    }
    if (Math.min(...row) > reach) return reach + 1;
    before = last;
    last = row;
  }
  return last[b.length]!;
}
