/** The units that a number may take, `36` becoming `36"` or `36mm`. */
import type { Asking, Offer } from "./completion-offer";
import { offer, RANK } from "./completion-offer";
import type { Unit } from "./completion-patterns";
import { COMPLETION_WORDS } from "./completion-words";

/** For a number of one of these kinds, the plan's own unit first. */
export function unitOffers(number: string, units: readonly Unit[], { plan, language }: Asking): Offer[] {
  const metric = plan.worked.settings.display.system === "millimetres";
  const spelled = units.flatMap((u) => (metric ? METRIC : INCHES)[u] ?? []);
  const words = COMPLETION_WORDS[language].units;
  return [...new Set(spelled)].map((unit, i) =>
    offer(`${number}${unit}`, "unit", RANK.open + i / 100, { detail: words[unit.trim()] ?? "" }),
  );
}

type Spelled = Readonly<Partial<Record<Unit, readonly string[]>>>;
const INCHES: Spelled = {
  length: ['"', "'", "mm", "cm"],
  inches: ['"'],
  any: ['"', "'", "mm", "cm", "°"],
  angle: ["°"],
  weight: [" lb", " kg"],
  pressure: [" psf", " kPa"],
  density: [" lb/cuft", " kg/m3"],
  area: [" sqft", " m2"],
  volume: [" qt", " gal", " cuft", " L"],
  time: [" min", " h", " days"],
  share: ["%"],
};
const METRIC: Spelled = {
  ...INCHES,
  length: ["mm", "cm", '"', "'"],
  any: ["mm", "cm", '"', "'", "°"],
  weight: [" kg", " lb"],
  pressure: [" kPa", " psf"],
  density: [" kg/m3", " lb/cuft"],
  area: [" m2", " sqft"],
  volume: [" L", " gal", " cuft"],
};
