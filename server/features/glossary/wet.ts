/** Words of finishes, of linings, and of what holds wet soil. */
import { type Term, term } from "./term";

/** Where no source is named, what a sentence says is common practice. */
export const WET: readonly Term[] = [
  term(
    "coat",
    "coat",
    { en: "coat, coats", fr: "couche, couches" },
    {
      en: "A coat is one layer of oil, stain or paint. Two thin ones, each left to dry, last longer than a thick one.",
      fr: "Une couche est une seule épaisseur d’huile, de lasure ou de peinture. Deux minces, chacune bien sèche, durent plus qu’une épaisse.",
    },
  ),
  term(
    "liner",
    "liner",
    { en: "liner, liners, lining", fr: "doublure, bâche" },
    {
      en: "A liner is a sheet inside of a box that keeps wet soil off the wood. Staple it near the rim, above the wet, and open it where water has to leave.",
      fr: "La doublure est une feuille dans le bac qui tient la terre mouillée à l’écart du bois. Agrafez-la près du bord, et ouvrez-la là où l’eau doit sortir.",
    },
    "prose",
  ),
  term(
    "fold",
    "liner",
    { en: "fold, folds", fr: "rabat" },
    {
      en: "The fold is turned over at the top, so that staples go through two layers. It keeps the cut edge from tearing.",
      fr: "Le rabat se replie en haut, et les agrafes traversent deux épaisseurs. Il empêche le bord coupé de se déchirer.",
    },
  ),
  term(
    "overlap",
    "overlap",
    { en: "overlap, overlaps", fr: "recouvrement" },
    {
      en: "Where one width of a sheet is not enough, the next lies over its edge. The higher one goes on top, like roof tiles, so that water runs over the joint.",
      fr: "Là où une largeur ne suffit pas, la suivante couvre son bord. La plus haute va dessus, comme des tuiles, et l’eau passe par-dessus le joint.",
    },
  ),
  term(
    "drains",
    "drain",
    { en: "drains, drain, drained, drainage", fr: "drainage, drain" },
    {
      en: "Water that is poured on soil has to get out at the bottom. Where it cannot, roots rot and the box grows much heavier.",
      fr: "L’eau versée sur la terre doit ressortir par le fond. Sinon les racines pourrissent et le bac devient bien plus lourd.",
    },
  ),
  term(
    "saturated",
    "drain",
    { en: "saturated", fr: "saturée, saturé" },
    {
      en: "Soil is at its heaviest after days of rain, with water in every pore. A floor must bear that, so ask whoever knows the building, and look up the local code.",
      fr: "La terre est au plus lourd après des jours de pluie, de l’eau dans chaque pore. Le sol doit porter cela, demandez à qui connaît le bâtiment, et voyez la réglementation locale.",
    },
  ),
  term(
    "rim",
    "drain",
    { en: "rim, rims", fr: "bord" },
    {
      en: "The rim is the upper edge all round a box. Keep the soil somewhat below it, so that rain and watering do not spill over.",
      fr: "Le bord est l’arête supérieure tout autour d’un bac. Gardez la terre un peu plus bas, pour que la pluie et l’arrosage ne débordent pas.",
    },
  ),
];
