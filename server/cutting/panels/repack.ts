/** What lies on one or two sheets, and what found no place, shared out anew in the best way there is. */

import type { Dice } from "../dice";
import { partings } from "./bundles";
import { type BundleShelf, shareOut, slackOf, stock } from "./exhaust";
import type { Lie, Packing, Sheet } from "./pack";
import type { Group, Meter } from "./question";

/** More partings of bundles than these are not tried at once. */
const MOST_PARTINGS = 200_000;

/** The packing made better, two sheets at a time, until none of these steps leaves over less. */
export function* repack(
  groups: readonly Group[],
  sheets: readonly Sheet[],
  counts: readonly number[],
  packing: Pick<Packing, "lies">,
  dice: Dice,
  meter: Meter,
  until: number,
): Generator<void, readonly Lie[], void> {
  let lies = packing.lies;
  const untried = pairsOf(sheets.length, dice);
  while (meter.used < until) {
    const pair = untried.pop();
    if (!pair) break;
    const left = leftOf(counts, lies);
    const area = left.reduce((sum, n, g) => sum + n * groups[g]!.length * groups[g]!.width, 0);
    if (area === 0) break;
    const [kept, moved] = [lies.filter(({ sheet }) => !pair.includes(sheet)), [...left]];
    for (const { group, sheet } of lies) if (pair.includes(sheet)) moved[group]!++;
    if (partings(moved) > MOST_PARTINGS) continue;
    const some = pair.map((sheet) => sheets[sheet]!);
    const shelf: BundleShelf = { grain: null, plain: null };
    if (!(yield* stock(groups, some, moved, slackOf(groups, some, moved) + area - 1, shelf, meter, until)))
      break;
    const shared = yield* shareOut(some, moved, area - 1, shelf, meter, until);
    if (!shared) continue;
    lies = [...kept, ...shared.lies.map((lie) => ({ ...lie, sheet: pair[lie.sheet]! }))];
    untried.splice(0, untried.length, ...pairsOf(sheets.length, dice));
  }
  return lies;
}

/** Per group, how many pieces do not lie. */
export function leftOf(counts: readonly number[], lies: readonly Lie[]): readonly number[] {
  const left = [...counts];
  for (const { group } of lies) left[group]!--;
  return left;
}

/** All pairs of sheets, or the one sheet, in an order thrown. */
function pairsOf(sheets: number, dice: Dice): (readonly number[])[] {
  const pairs: (readonly number[])[] = sheets === 1 ? [[0]] : [];
  for (let a = 0; a < sheets && sheets <= MOST_SHEETS; a++)
    for (let b = a + 1; b < sheets; b++) pairs.splice(dice(pairs.length + 1), 0, [a, b]);
  return pairs;
}

const MOST_SHEETS = 20;
