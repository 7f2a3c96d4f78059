/** Plans to compare, and a comparison turned round. */
import { basename, join } from "node:path";
import { type Comparison, compare } from "../../server/exchange";
import { diskReader } from "../../server/lsp/disk";
import { type Evaluated, evaluate } from "../../server/service";
import type { Both, Moved, PieceChange, SheetChanges } from "../../server/sheet/changes/data";

export const SAMPLES = join(__dirname, "../../samples");

/** As the file of that name among the samples. */
export const planOf = (text: string, file = join(SAMPLES, "plan.sawbuck")): Evaluated =>
  evaluate(file, text, diskReader);

export const between = (old: string, now: string): SheetChanges => comparing(old, now).changes;

export const comparing = (old: string, now: string): Comparison =>
  compare(planOf(old), planOf(now), { old: named, new: named });

const named = (file: string): string => basename(file);

/** What the comparison the other way round must be. */
export function reversed(changes: SheetChanges): SheetChanges {
  return {
    ...changes,
    plans: turned(changes.plans),
    pieces: changes.pieces.map(
      (change): PieceChange => ({
        ...change,
        ...turned(change),
        fields: change.fields.map((field) => ({ ...field, ...turned(field) })),
        pieces: { old: change.pieces.new, new: change.pieces.old },
        moved: change.moved.map(back(change)),
        turned: change.turned.map((id) => renamed(id, change)),
      }),
    ),
    cutting: changes.cutting.map((row) => ({ ...row, old: row.new, new: row.old })),
    plan: changes.plan.map(toldBack),
    buying: changes.buying.map(toldBack),
    cost: changes.cost.map(toldBack),
    joining: changes.joining.map(toldBack),
    more: changes.more.map(toldBack),
    steps: changes.steps.map(toldBack),
    problems: { old: changes.problems.new, new: changes.problems.old },
    accepted: { old: changes.accepted.new, new: changes.accepted.old },
    notChecked: { old: changes.notChecked.new, new: changes.notChecked.old },
  };
}

const turned = <T>({ old, new: now }: Both<T>): Both<T> => ({ old: now, new: old });
const toldBack = <T extends Both<string>>(row: T): T => ({ ...row, ...turned(row) });

const back =
  (change: PieceChange) =>
  ({ pieces, by, words }: Moved): Moved => ({
    pieces: pieces.map((id) => renamed(id, change)),
    by: by.map((mm) => (mm === 0 ? 0 : -mm)) as unknown as Moved["by"],
    words: words
      .split(", ")
      .map((way) => way.replace(/(left|right|front|back|up|down)$/, (end) => OTHER[end]!))
      .join(", "),
  });
const OTHER: Readonly<Record<string, string>> = {
  left: "right",
  right: "left",
  front: "back",
  back: "front",
  up: "down",
  down: "up",
};

const renamed = (id: string, { old, new: now }: PieceChange): string =>
  id
    .split(" / ")
    .map((name) => (name === now?.part ? (old?.part ?? name) : name))
    .join(" / ");
