/** What is left open of a rectangle that others cover in part. Any unit. */

export interface Rectangle {
  readonly u: readonly [from: number, to: number];
  readonly v: readonly [from: number, to: number];
}

/** Whether an open rectangle inside of the whole is one that is looked for. O(n³) in the covers, of which there are few. */
export function someOpen(
  whole: Rectangle,
  covers: readonly Rectangle[],
  wanted: (open: Rectangle) => boolean,
): boolean {
  const us = cuts(
    covers.map((c) => c.u),
    whole.u,
  );
  const vs = cuts(
    covers.map((c) => c.v),
    whole.v,
  );
  const [across, up] = [us.length - 1, vs.length - 1];
  const closed = new Uint8Array(across * up);
  for (const { u, v } of covers)
    for (let j = 0; j < up; j++) {
      const y = (vs[j]! + vs[j + 1]!) / 2;
      if (y < v[0] || y > v[1]) continue;
      for (let i = 0; i < across; i++) {
        const x = (us[i]! + us[i + 1]!) / 2;
        if (x > u[0] && x < u[1]) closed[j * across + i] = 1;
      }
    }
  for (let i = 0; i < across; i++)
    for (let j = 0; j < up; j++) {
      // Every largest rectangle whose corner is here: each row more leaves it as wide or narrower.
      let most = across;
      for (let row = j; row < up && most > i; row++) {
        let right = i;
        while (right < most && closed[row * across + right] === 0) right++;
        most = right;
        if (most > i && wanted({ u: [us[i]!, us[most]!], v: [vs[j]!, vs[row + 1]!] })) return true;
      }
    }
  return false;
}

/** What of a stretch is left between these, in order. */
export function gapsIn(
  [from, to]: readonly [number, number],
  closed: readonly (readonly [number, number])[],
): [number, number][] {
  const open: [number, number][] = [];
  let at = from;
  for (const [a, b] of [...closed].sort((p, q) => p[0] - q[0])) {
    if (a > at) open.push([at, Math.min(a, to)]);
    at = Math.max(at, b);
    if (at >= to) return open;
  }
  open.push([at, to]);
  return open;
}

/** Where edges cut a stretch, both its ends included. */
function cuts(
  edges: readonly (readonly [number, number])[],
  [from, to]: readonly [number, number],
): number[] {
  const all = [from, ...edges.flat().filter((x) => x > from && x < to), to].sort((a, b) => a - b);
  return all.filter((x, i) => i === 0 || x > all[i - 1]!);
}
