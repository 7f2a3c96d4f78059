/** The pieces that a name means where a line stands, perhaps narrowed by words: `legs`, `front left leg`. */
import type { Thing } from "../../../grammar/tree";
import { chain, ifKnown, known, type Value } from "../../plan";
import type { Axis } from "./axes";
import type { Inside } from "./block";
import { choicesOf, isKept } from "./narrowing";
import { compared, hull, middle, type Stretch } from "./stretch";

/** Those of the group that the words before the name choose. */
export function narrowed(group: readonly Inside[], thing: Thing): readonly Inside[] {
  const words = choicesOf(thing, (axis) => isRow(group, axis));
  if (words.length === 0) return group;
  const middles = words.map(({ axis }) =>
    chain(stretchesOf(group, axis), (all) => known(centre(hullOf(all)))),
  );
  return group.map(({ stretches, thin }): Inside => {
    const kept = (axis: Axis): Value<readonly Stretch[]> => {
      let here = stretches(axis);
      for (const [i, word] of words.entries()) {
        const chosen = chain(middles[i]!, (mid) =>
          chain(stretches(word.axis), (list) =>
            known(list.filter((s) => mid && isKept(word, centre(s)!, mid))),
          ),
        );
        if (chosen.state !== "known") return chosen;
        if (chosen.value.length === 0) return known([]);
        if (word.axis === axis) {
          const set = new Set(chosen.value);
          here = chain(here, (list) => known(list.filter((s) => set.has(s))));
        }
      }
      return here;
    };
    return { stretches: kept, thin };
  });
}

function isRow(group: readonly Inside[], axis: Axis): boolean {
  const all = ifKnown(stretchesOf(group, axis)) ?? [];
  return all.some((s) => compared(centre(s)!, centre(all[0])!) !== 0);
}

const centre = (s: Stretch | undefined) => s && middle(s.low, s.high);
const hullOf = (list: readonly Stretch[]) => (list.length > 0 ? hull(list) : undefined);

/** All the places of a group along one direction. */
export function stretchesOf(group: readonly Inside[], axis: Axis): Value<readonly Stretch[]> {
  const all: Stretch[] = [];
  for (const one of group) {
    const list = one.stretches(axis);
    if (list.state !== "known") return list;
    for (const s of list.value) all.push(s);
  }
  return known(all);
}

/** From the first to the last of a group; undefined inside for a group of nothing. */
export const reach = (group: readonly Inside[], axis: Axis): Value<Stretch | undefined> =>
  chain(stretchesOf(group, axis), (all) => known(hullOf(all)));
