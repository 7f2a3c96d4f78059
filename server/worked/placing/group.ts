/** The pieces that a name means where a line stands, perhaps narrowed by words: `legs`, `front left leg`. */
import type { Thing } from "../../../grammar/tree";
import { chain, ifKnown, known, type Value } from "../../plan";
import { AXES, type Axis } from "./axes";
import type { Inside } from "./block";
import { NARROWING } from "./clauses";
import { compared, hull, middle, type Stretch } from "./stretch";

/** Those of the group that the words before the name choose. */
export function narrowed(group: readonly Inside[], thing: Thing): readonly Inside[] {
  const words = thing.where.flatMap(({ text }) => choiceOf(text, group));
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
            known(
              list.filter((s) => {
                const o = mid ? Math.sign(compared(centre(s)!, mid)) : 0;
                return o === word.keeps;
              }),
            ),
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

/** In which direction a word chooses, and whether what lies before the middle (-1), at it (0) or beyond it (1). */
interface Choice {
  readonly axis: Axis;
  readonly keeps: -1 | 0 | 1;
}

function choiceOf(word: string, group: readonly Inside[]): Choice[] {
  const side = NARROWING[word];
  if (side) return [{ axis: side.axis, keeps: side.far ? 1 : -1 }];
  // The middle ones are those of the first direction in which there are several.
  const axis = word === "middle" ? AXES.find((k) => isRow(group, k)) : undefined;
  return axis === undefined ? [] : [{ axis, keeps: 0 }];
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
