/** How problems speak of placed pieces, and of directions in space. */
import type { Vec3 } from "../solid/vector";
import { LENGTH, type Quantity, roughly } from "../units";
import type { Piece } from "../worked";

/** `leg (front left)`, `side 1 (in front of legs)`, `ledger`: the part's name first, then what tells the piece from others. */
export function pieceName({ id, part }: Pick<Piece, "id" | "part">): string {
  const [, ...rest] = id.split(" / ");
  const owner = id.startsWith(`${part} / `) || id === part ? "" : id.split(" / ")[0]!;
  const words = rest.filter((w) => w !== part);
  const numbers = words.filter((w) => /^\d+$/.test(w));
  const others = words.filter((w) => !/^\d+$/.test(w));
  const told = [...(owner ? [`of ${owner}`] : []), ...others];
  return `${[part, ...numbers].join(" ")}${told.length > 0 ? ` (${told.join(", ")})` : ""}`;
}

const WAYS: readonly (readonly [Vec3, string])[] = [
  [[1, 0, 0], "to the right"],
  [[-1, 0, 0], "to the left"],
  [[0, 1, 0], "to the back"],
  [[0, -1, 0], "to the front"],
  [[0, 0, 1], "up"],
  [[0, 0, -1], "down"],
];

/** "to the right", "up"; "at an angle" for what is none of the six. */
export function wayWords([x, y, z]: Vec3): string {
  const size = Math.hypot(x, y, z);
  const found = WAYS.find(([[a, b, c]]) => a * x + b * y + c * z > 0.999 * size);
  return found?.[1] ?? "at an angle";
}

/** Millimetres as a value. */
export const mm = (value: number): Quantity => roughly(LENGTH, value);
