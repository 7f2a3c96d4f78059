/** The headlines of problems' pages, as the titles of actions name them. */
import type { Check, Language } from "../checks";

/** A page's own headline; where a language has none, that of the page. */
export const pageTitle = ({ code, title }: Check, language: Language): string =>
  language === "fr" ? (FRENCH[code] ?? title) : title;

/** Of every code that has a cure which can be taken for all of its kind. */
const FRENCH: Readonly<Record<string, string>> = {
  "bad-name": "Un mot qui ne peut pas être un nom",
  "bad-number": "Un nombre qui ne peut pas se lire",
  "brace-short": "Une écharpe qui ne va pas d’un coin à l’autre",
  "count-differs": "Deux nombres qui ne s’accordent pas",
  "cut-never-placed": "Des pièces coupées qui ne sont nulle part",
  "fastener-rusts": "Une fixation qui rouille là où elle est",
  "gap-closes": "Des planches côte à côte avec trop peu de place pour gonfler",
  "gap-traps": "Un espace où un doigt ou une tête se prend",
  "hangs-in-air": "Une pièce que rien ne tient",
  "heavy-to-lift": "Trop lourd à lever",
  "indented-alone": "Une ligne en retrait sans rien au-dessus",
  "no-drain": "Un bac rempli d’où l’eau ne sort pas",
  "no-room": "Des pièces qui n’entrent pas là où on les met",
  "not-for-food": "De la terre de culture contre ce qui ne lui convient pas",
  "not-understood": "Quelque chose dans une ligne ne se comprend pas",
  "off-the-tape": "Une longueur entre deux traits du mètre",
  "pieces-overlap": "Deux pièces au même endroit",
  "pilot-wrong": "Un trou trop large ou trop étroit pour sa vis",
  "place-disputed": "Deux indications mettent une pièce à deux endroits",
  "place-undecided": "Où se trouve une pièce n’est pas dit",
  "placed-never-cut": "Plus de pièces placées que de pièces coupées",
  "ring-open": "Un cadre à onglets qui ne se ferme pas",
  "said-twice": "Une chose dite deux fois",
  "screw-holds-little": "Une vis qui tient trop peu dans la dernière pièce",
  "screw-near-edge": "Une vis trop près du bord d’une pièce",
  "screw-overloaded": "Des vis auxquelles on demande plus qu’elles ne tiennent",
  "screw-pokes-through": "Une vis qui sort de l’autre côté",
  "screw-splits": "Une vis sans avant-trou là où le bois se fend",
  "stray-character": "Un signe qui ne veut rien dire ici",
  "unit-mismatch": "Des valeurs de genres différents",
  "unknown-entry": "Une ligne qui s’ouvre par un mot qui ne veut rien dire",
  "unknown-name": "Un nom que rien ne déclare",
  "unknown-section": "Une planche qu’aucune scierie ne nomme ainsi",
  "wait-missing": "Pas le temps de sécher",
  "water-stays": "De l’eau qui ne s’écoule pas",
};
