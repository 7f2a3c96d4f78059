// Tape text of this room's own tables ("5-1/2", "3/4", "6", "0.688") as plain numbers, for ordering and comparing.
// Exact arithmetic on lengths belongs to the units room.

const TAPE = /^(?:(\d+(?:\.\d+)?)|(?:(\d+)-)?(\d+)\/(\d+))$/;

/** Tape text to a number, or undefined when it is no such text. */
export function tapeNumber(text: string): number | undefined {
  const match = TAPE.exec(text);
  if (match === null) return undefined;
  const [, plain, whole = "0", above, below] = match;
  if (plain !== undefined) return Number(plain);
  const value = Number(whole) + Number(above) / Number(below);
  return Number.isFinite(value) ? value : undefined;
}

/** The nearest 1/64 in as tape text: 0.0917 is "3/32". Halves go up. */
export function nearest64th(inches: number): string {
  const parts = Math.round(inches * 64);
  const whole = Math.floor(parts / 64);
  let above = parts % 64;
  let below = 64;
  while (above > 0 && above % 2 === 0) {
    above /= 2;
    below /= 2;
  }
  if (above === 0) return String(whole);
  return whole === 0 ? `${above}/${below}` : `${whole}-${above}/${below}`;
}
