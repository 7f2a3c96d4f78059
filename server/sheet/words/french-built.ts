/** What the sheet says in French of the thing as it was built. */
import { de } from "../../checks/french/elision";
import type { SheetWords } from ".";

export const FRENCH_BUILT: SheetWords["built"] = {
  on: (date, by) => `Construit le ${date}${by === "" ? "" : ` par ${by}`}`,
  asPlanned: "Comme prévu, pour autant que le plan le dise.",
  lengthOf: (part) => `longueur ${de(part)}`,
  cameOut: (planned, built) =>
    planned === "" ? `construit ${built}` : `prévu ${planned}, construit ${built}`,
  board: "Planche",
  insteadOf: (used, planned) => `${used} à la place ${de(planned)}`,
  changed: "Changé",
  wear: (date) => `Usure vue le ${date}`,
  asBuilt: (file, date) => `${file}, construit le ${date}`,
};
