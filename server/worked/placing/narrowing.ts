/** Words that narrow a name, `front left leg`, `middle leg`: one rule for what place lines lean on and for what joints join. */
import type { Thing } from "../../../grammar/tree";
import type { Quantity } from "../../units";
import { AXES, type Axis } from "./axes";
import { NARROWING } from "./clauses";
import { compared } from "./stretch";

/** In which direction a word chooses, and whether what lies before the group's middle (-1), at it (0) or beyond it (1). */
export interface Choice {
  readonly axis: Axis;
  readonly keeps: -1 | 0 | 1;
}

/**
 * What the words before a name choose: of what fits all of them, nothing where there are no words. `isRow` tells whether
 * the group stands in several places along a direction; `middle` chooses in the first in which it does.
 */
export function choicesOf({ where }: Thing, isRow: (axis: Axis) => boolean): Choice[] {
  return where.flatMap(({ text }): Choice[] => {
    const side = NARROWING[text];
    if (side) return [{ axis: side.axis, keeps: side.far ? 1 : -1 }];
    const axis = text === "middle" ? AXES.find(isRow) : undefined;
    return axis === undefined ? [] : [{ axis, keeps: 0 }];
  });
}

/** Whether a choice keeps what has its own middle there, of a group with that middle. */
export const isKept = ({ keeps }: Choice, own: Quantity, middle: Quantity): boolean =>
  Math.sign(compared(own, middle)) === keeps;
