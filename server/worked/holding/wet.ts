/** Which pieces count as wet for their strength. Where wood stays wet so long that it rots is another question: ../weather/wet.ts. */
import { floorsOf, wallsOf } from "../choose";
import type { Worked } from "../work";

/** Outdoors everything gets wet; elsewhere what wet soil lies against. */
export function wetIn({
  settings,
  boxes,
  space,
  scope,
}: Pick<Worked, "settings" | "boxes" | "space" | "scope">): (piece: number) => boolean {
  if (settings.place === "outdoors") return () => true;
  const filled = boxes.filter((b) => b.fill).map((b) => b.declared);
  const wet = new Set(filled.flatMap((b) => [...wallsOf(b, space, scope), ...floorsOf(b, space, scope)]));
  return (piece) => wet.has(piece);
}
