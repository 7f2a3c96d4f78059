// What lasts outdoors and in wet soil: which wood by where it is.
import { COMMON_PRACTICE, type Row, remembered } from "./row";
import type { DecayClass } from "./wood";

/** Use categories that are stamped on treated wood. */
export const groundContact = useCategory("treated wood on the ground or in soil", "UC4A");
export const aboveGround = useCategory("treated wood above the ground, in the weather", "UC3B");

/** Heartwood that may stand on the ground, or against wet soil. */
export const lastsInSoil: Row<readonly DecayClass[]> = {
  key: "heartwood that lasts on the ground and in soil",
  value: ["exceptional", "resistant"],
  unit: "",
  source: COMMON_PRACTICE,
  range: "for some years; only treated wood lasts long",
};

/** Heartwood that may stand bare on paving or a deck, where water runs off but end grain drinks it. */
export const lastsOnFloor: Row<readonly DecayClass[]> = {
  key: "heartwood that lasts bare on a built floor",
  value: [...lastsInSoil.value, "moderate"],
  unit: "",
  source: COMMON_PRACTICE,
};

export const weatherRows: readonly Row<unknown>[] = [groundContact, aboveGround, lastsInSoil, lastsOnFloor];

function useCategory(key: string, value: string): Row<string> {
  return { key, value, unit: "", source: remembered("AWPA U1", "use categories") };
}
