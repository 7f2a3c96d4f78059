/** The whole before and now, side by side in one scale, with what differs pointed out. */
import { finished, type Steps } from "../../solid/steps";
import type { Worked } from "../../worked";
import { type Drawing, type Item, OUTLINE } from "../display";
import { sceneOf } from "../drawings";
import type { SheetWords } from "../words";
import type { SheetChanges } from "./data";
import type { ChangeDrawings } from "./document";

/** Undefined for a side on which nothing stands, or so much that drawing it takes long. */
export const changeDrawings = (...of: Parameters<typeof changeDrawingsInSteps>): ChangeDrawings =>
  finished(changeDrawingsInSteps(...of));

export function* changeDrawingsInSteps(
  changes: SheetChanges,
  old: Worked,
  now: Worked,
  words: SheetWords,
): Steps<ChangeDrawings> {
  const marked = markedIn(changes);
  const sides = [
    { worked: old, marked: marked.old },
    { worked: now, marked: marked.new },
  ];
  let scale = 0;
  for (const { worked } of sides) scale = Math.max(scale, (yield* drawn(worked, words, 0))?.scale ?? 0);
  const made: (Drawing | undefined)[] = [];
  for (const side of sides) {
    const drawing = yield* drawn(side.worked, words, scale);
    made.push(drawing && { ...drawing, items: pointedOut(drawing.items, side.marked) });
  }
  return { old: made[0], new: made[1] };
}

/** The pieces that are gone, new or changed on each side; those that only moved are not. */
function markedIn({ pieces }: SheetChanges): Record<"old" | "new", ReadonlySet<string>> {
  const of = (side: "old" | "new"): ReadonlySet<string> =>
    new Set(
      pieces.flatMap((change) => {
        const { old, new: now, fields } = change;
        const counts = old?.count === now?.count ? 0 : 1;
        const otherwise = !old || !now || fields.length > counts;
        return otherwise ? (change[side]?.pieces ?? []) : change.pieces[side];
      }),
    );
  return { old: of("old"), new: of("new") };
}

function* drawn(worked: Worked, words: SheetWords, scale: number): Steps<Drawing | undefined> {
  const scene = sceneOf(worked, words);
  if (scene.pieces.length === 0 || scene.pieces.length > MOST_DRAWN) return undefined;
  return yield* scene.draw("turned", "", { scale });
}

const pointedOut = (items: readonly Item[], marked: ReadonlySet<string>): Item[] =>
  items.map((item) =>
    item.kind === "path" && item.layer === "face" && marked.has(item.piece ?? "")
      ? { ...item, fill: "marked", weight: POINTED_OUT }
      : item,
  );

const POINTED_OUT = 1.75 * OUTLINE;
const MOST_DRAWN = 1000;
