/** Words of what has to be carried, and of how things give way. */
import { type Term, term } from "./term";

/** Where no source is named, what a sentence says is common practice. */
export const LOADS: readonly Term[] = [
  term(
    "psf",
    "psf",
    { en: "psf", fr: "lb/pi²" },
    {
      en: "psf is pounds on every square foot, the way floors are judged. Small feet press harder than a wide base, and local codes say what a floor must bear.",
      fr: "psf veut dire livres sur chaque pied carré, comme on juge les planchers. De petits pieds appuient plus fort qu’une base large, et la réglementation locale fait foi.",
    },
  ),
  term(
    "load path",
    "load-path",
    { en: "load path, load, loads, carried by, carried", fr: "cheminement des charges, charge, charges" },
    {
      en: "A load goes down from piece to piece until the ground bears it. The weakest board or screw on the way decides, and where people rely on it, local codes rule.",
      fr: "Une charge descend de pièce en pièce jusqu’au sol. La planche ou la vis la plus faible décide, et là où l’on s’y fie la réglementation locale fait foi.",
    },
  ),
  term(
    "span",
    "span",
    { en: "span, spans", fr: "portée, portées" },
    {
      en: "The span is the distance between two supports, with nothing to hold the board up in between. A board twice as long sags many times as much, so a support in the middle helps a lot.",
      fr: "La portée est la distance entre deux appuis, sans rien qui soutienne la planche entre eux. Deux fois plus longue, une planche fléchit bien plus, et un appui au milieu aide beaucoup.",
    },
  ),
  term(
    "sag",
    "span",
    { en: "sag, sags, sagging", fr: "flèche, fléchir" },
    {
      en: "Sag is how far a board hangs down in the middle under its load. Under a load that stays, wood goes on sagging for years.",
      fr: "La flèche est ce dont une planche descend au milieu sous sa charge. Sous une charge qui reste, elle augmente encore pendant des années.",
    },
    "prose",
  ),
  term(
    "tipping",
    "tip",
    { en: "tipping, tips over, tip over, anchored to, anchored", fr: "basculement, basculer, ancré" },
    {
      en: "A thing tips over when a push or its own weight reaches beyond its feet. Wide feet, weight low down and an anchor at the top keep it standing.",
      fr: "Un ouvrage bascule quand une poussée ou son poids passe au-delà de ses pieds. Pieds écartés, poids en bas et ancrage en haut le tiennent debout.",
    },
  ),
  term(
    "racking",
    "brace",
    { en: "racking", fr: "déformation en losange" },
    {
      en: "A frame racks when its corners give and the rectangle leans into a slant. A brace, a panel or wide stiff corners stop it.",
      fr: "Un cadre se met en losange quand ses angles cèdent et qu’il penche. Une écharpe, un panneau ou des angles larges et rigides l’en empêchent.",
    },
    "prose",
  ),
];
