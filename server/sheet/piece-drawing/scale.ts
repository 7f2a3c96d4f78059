/** Scales a drawing office uses: the drawing is to be measured with a rule. */
export type System = "inches" | "millimetres";

/** So many mm of wood are one mm of paper, smallest first, the largest scale in which a width and a height in mm fit the room. */
export function standardScale(
  width: number,
  height: number,
  room: { readonly width: number; readonly height: number },
  system: System,
): number {
  const least = Math.max(width / room.width, height / room.height);
  return nextScale(least, system, true);
}

/** The first scale above (or at) so many mm of wood for one of paper. */
export function nextScale(above: number, system: System, orAt = false): number {
  if (!Number.isFinite(above)) return 1;
  for (let decade = 1; ; decade *= system === "inches" ? 96 : 100)
    for (const step of STEPS[system]) {
      const scale = step * decade;
      if (scale > above * (1 + ROUNDING) || (orAt && scale >= above * (1 - ROUNDING))) return scale;
    }
}

/** Words of a scale that are never broken over two lines. */
export const unbroken = (words: string): string => words.replaceAll(" ", "\u00a0");

/** A foot of wood as 12, 6, 4, 3, 2, 1½, 1, ¾, ½, ⅜ or ¼ inch of paper; and the metric series. */
const STEPS: Readonly<Record<System, readonly number[]>> = {
  inches: [1, 2, 3, 4, 6, 8, 12, 16, 24, 32, 48, 64],
  millimetres: [1, 2, 2.5, 5, 10, 15, 20, 25, 50, 75],
};
const ROUNDING = 1e-9;
