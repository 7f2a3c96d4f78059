/** How a board or a sheet of a shop file is told, in French. */
import type { SHOP_PHRASES } from "../shop-phrases";
import type { Template } from "../telling";

export const FRENCH_SHOP_PHRASES: Readonly<Record<keyof typeof SHOP_PHRASES, Template>> = {
  "a section": "un {section}",
  "a section, really": "un {section} qui mesure en réalité {thickness} x {width}",
  "a board of this size": "une planche de {thickness} x {width}",
  "a sheet of this size": "un panneau de {thickness} d’épaisseur",
  "size of board": "{thickness} x {width}",
  "size of sheet": "{thickness} d’épaisseur",
  "no species said": "d’une essence non précisée",
  treated: "bois traité",
  untreated: "bois non traité",
  heartwood: "bois de cœur",
  rough: "bois brut de sciage",
  painted: "bois peint",
  "not treated": "pas du bois traité",
  "not untreated": "rien ne dit qu’il n’est pas traité",
  "not heartwood": "pas du bois de cœur",
  "not rough": "pas du bois brut de sciage",
  "not painted": "pas du bois peint",
  plywood: "du contreplaqué",
  "no plywood": "pas du contreplaqué",
  "grain length": "le fil dans sa longueur",
  "grain width": "le fil dans sa largeur",
  "grain none": "sans fil",
  "at moisture": "à {n} % d’humidité",
  differing: "« {name} » ({differs})",
};
