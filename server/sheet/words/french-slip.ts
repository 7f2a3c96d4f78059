/** What a measuring-up slip says, in French. */
import type { ENGLISH_SLIP } from "./english-slip";

export const FRENCH_SLIP: typeof ENGLISH_SLIP = {
  of: (title) => `Prise de mesures : ${title}`,
  headings: { drawings: "Où l’on mesure", rows: "À mesurer, dans cet ordre" },
  key: "Écrivez ce que dit votre propre mètre. Les lignes des dessins portent ces numéros, là où une mesure se voit sur l’ouvrage lui-même.",
  columns: { number: "N°", what: "Quoi", now: "Dans le plan", bounds: "Bornes", measured: "Mesuré ici" },
  sides: {
    space: { wide: "l’espace : largeur", deep: "l’espace : profondeur", high: "l’espace : hauteur" },
    "way in": { wide: "l’accès : largeur", deep: "l’accès : profondeur", high: "l’accès : hauteur" },
  },
  between: (least, most) => `de ${least} à ${most}`,
  least: (least) => `au moins ${least}`,
  most: (most) => `au plus ${most}`,
  tips: [
    "Mesurez un espace aux deux bouts et au milieu : le plus petit compte. Deux diagonales de même longueur disent qu’il est d’équerre (usage courant).",
    "Accrochez le mètre chaque fois à la même arête, et lisez-le de face. Un ruban plié dans un coin indique trop long.",
    "Laissez vide une ligne où la mesure du plan doit rester.",
  ],
  headingTips: "Avant de mesurer",
  headingOutcome: "Ce qui en résulte",
  empty:
    "Rien n’est encore rempli. Remplissez une ligne, et l’on dira ici ce que devient le plan. Le plan lui-même reste comme il est jusqu’à ce que vous y écriviez les mesures.",
  cost: "Coût",
  problems: "Problèmes",
  unreadable: (text) => `« ${text} » n’est pas une mesure telle que 28-1/2" ou 724 mm`,
  nothing: "Ce plan n’a aucune mesure à lui : rien n’y est à mesurer à un autre endroit.",
};
