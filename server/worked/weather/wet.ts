/** Where wood stays wet so long that it rots or its screws rust. What counts as wet for its strength is another question: ../holding/wet.ts. */
import { HAIRLINE } from "../../solid/contact";
import type { Box } from "../boxes";
import { partsOf } from "../groups";
import type { Worked } from "../work";

/** What is worked out before the not-checked list. */
export type Known = Omit<Worked, "unchecked">;

export interface WetBox {
  readonly box: Box;
  /** Parts of its walls and its bottom, and of what stands in its fill. */
  readonly parts: readonly string[];
  /** Something that holds water lies between its wood and the fill. */
  readonly lined: boolean;
}

/** Boxes whose fill is wet: water, outdoors, or watered, which one that grows something or drains is. */
export function wetBoxes(worked: Known): WetBox[] {
  const { boxes, settings, linings, scope } = worked;
  return boxes.flatMap((box): WetBox[] => {
    const watered = box.grows.length > 0 || box.drains === "gaps" || box.drains === "holes";
    const isWater = box.fill?.name === "water";
    if (!box.fill || !(isWater || watered || settings.place === "outdoors")) return [];
    const own = partsOf(box.declared, scope);
    const parts = [...new Set([...own, ...standingIn(box, own, worked)])];
    // A liner that is not known is a mistake of its own.
    const lined = linings.some((l) => l.box === box && (l.roll?.holdsWater ?? true));
    return [{ box, parts, lined }];
  });
}

/** Parts of other pieces that reach into the fill of a placed box. */
function standingIn({ placed, fillBelowRim }: Box, own: readonly string[], { space }: Known): string[] {
  if (!placed) return [];
  const { rim, foot, low, high } = placed.room;
  const top = high - (fillBelowRim?.approx ?? 0);
  const [x, y] = [0, 1].map((k) => ({
    from: Math.max(rim[k]!.from, foot[k]!.from) + HAIRLINE,
    to: Math.min(rim[k]!.to, foot[k]!.to) - HAIRLINE,
  })) as [{ from: number; to: number }, { from: number; to: number }];
  const room = {
    least: [x.from, y.from, low + HAIRLINE],
    most: [x.to, y.to, top - HAIRLINE],
  } as const;
  return space.grid.near(room, 0).flatMap((i) => {
    const { part, bounds } = space.pieces[i]!;
    const inside = ([0, 1, 2] as const).every(
      (k) => bounds.least[k] < room.most[k] && bounds.most[k] > room.least[k],
    );
    return inside && !own.includes(part) ? [part] : [];
  });
}

/** What the pieces that touch the floor stand on outdoors; `built` where someone said what the floor carries: paving, a deck. */
export type Standing = "ground" | "built";

/** Undefined where nothing stands outdoors on a floor: also for a gate, which hangs clear of it. */
export function standsOn({ settings }: Known): Standing | undefined {
  if (settings.place !== "outdoors" || isGate(settings.title)) return undefined;
  return settings.floorLimit || settings.footLimit ? "built" : "ground";
}

/** What hangs is told by its name only, since a hinge is no part of the language. */
export const isGate = (title: string): boolean => /\bgates?\b/i.test(title);

/** Places among all pieces of those that touch the floor. */
export const onFloor = ({ space }: Known): number[] =>
  space.pieces.flatMap(({ bounds }, i) => (bounds.least[2] <= HAIRLINE ? [i] : []));
