/** How problems speak of placed pieces, and of directions in space. */
import type { Vec3 } from "../solid/vector";
import { ANGLE, LENGTH, type Quantity, roughly } from "../units";
import type { Piece } from "../worked";
import type { Slot } from "./check";
import { type PhraseKey, phrase } from "./phrases";

/**
 * `leg (front left)`, `side 1 (in front of legs)`, `post-board 2 (of the front left post)`: the part's name, its place in a
 * row, and what tells it from others, in the words of its line.
 */
export function pieceSlot({ id, part, owners }: Pick<Piece, "id" | "part" | "owners">): Slot {
  const owner = owners.at(-1);
  const own = owner && id.startsWith(`${owner.id} / `) ? id.slice(owner.id.length + 3) : id;
  const words = own.split(" / ").filter((w) => w !== part);
  const numbers = words.filter((w) => /^\d+$/.test(w));
  const name = [part, ...numbers].join(" ");
  const told = [...words.filter((w) => !/^\d+$/.test(w)), ...(owner ? [ownerSlot(owner)] : [])];
  return told.length > 0 ? phrase("piece", { name, told: { row: told, by: ", " } }) : name;
}

/** "of the front left post", "of cap": which copy of a ring or an assembly. */
function ownerSlot({ name, id }: Piece["owners"][number]): Slot {
  const segments = id.split(" / ");
  const place = segments.slice(segments.lastIndexOf(name) + 1);
  const numbers = place.filter((w) => /^\d+$/.test(w));
  const corner = place.filter((w) => /^((front|back) (left|right)|mirrored)$/.test(w));
  const owner = [...corner, name, ...numbers].join(" ");
  return phrase(corner.length > 0 ? "of the" : "of", { owner });
}

const WAYS = [
  [[1, 0, 0], "to the right"],
  [[-1, 0, 0], "to the left"],
  [[0, 1, 0], "to the back"],
  [[0, -1, 0], "to the front"],
  [[0, 0, 1], "up"],
  [[0, 0, -1], "down"],
] as const satisfies readonly (readonly [Vec3, PhraseKey])[];

export type Way = (typeof WAYS)[number][1] | "at an angle";

/** "to the right", "up"; "at an angle" for what is none of the six. */
export function wayWords([x, y, z]: Vec3): Way {
  const size = Math.hypot(x, y, z);
  const found = WAYS.find(([[a, b, c]]) => a * x + b * y + c * z > 0.999 * size);
  return found?.[1] ?? "at an angle";
}

/** Millimetres as a value. */
export const mm = (value: number): Quantity => roughly(LENGTH, value);
/** Degrees as a value. */
export const degrees = (value: number): Quantity => roughly(ANGLE, value);
