/** What a hover says of the room that roots find, in every language. */
import type { Language } from "../../checks";
import { fr } from "../../checks/french/type";

const ENGLISH = {
  ground: (range: string) => ` In open ground its roots go ${range} deep`,
  noTable: (crop: string) => `Grows ${crop}: no table says what it wants in a container.`,
  open: (crop: string) => `Grows ${crop}: no bottom is named, so it roots in the ground.`,
  depth: (range: string) => `${range} of depth`,
  wants: (crop: string, wanted: readonly string[]) =>
    `Grows ${crop}, which wants ${wanted.join(" and ")} in a container`,
  hereUnknown: "; how much is here is not known",
  here: (depth: string, volume: string, enough: boolean) =>
    `: ${depth} and ${volume} here${enough ? "" : ", which is less"}`,
  source: (source: string) => `; ${source}.`,
  range: (least: string, most: string) => `${least} to ${most}`,
};

const FRENCH: typeof ENGLISH = {
  ground: (range) => fr` En pleine terre, profondeur de ses racines : ${range}`,
  noTable: (crop) => fr`Culture : ${crop}. Aucune table ne dit ce que cela demande en bac.`,
  open: (crop) => fr`Culture : ${crop}. Aucun fond n'est nommé, cela s'enracine donc dans le sol.`,
  depth: (range) => `${range} de profondeur`,
  wants: (crop, wanted) => fr`Culture : ${crop}, qui demande en bac ${wanted.join(" et ")}`,
  hereUnknown: fr` ; on ne sait pas ce qu'il y en a ici`,
  here: (depth, volume, enough) => fr` ; ici ${depth} et ${volume}${enough ? "" : ", soit moins"}`,
  source: (source) => fr` ; ${source}.`,
  range: (least, most) => `${least} à ${most}`,
};

export const ROOTS: Readonly<Record<Language, typeof ENGLISH>> = { en: ENGLISH, fr: FRENCH };
