/** What is written on drawings, in French. */

import { et, FRENCH_NUMBERS, fr } from "../../checks/french/type";
import type { Side } from "../piece-drawing";
import type { DrawingWords } from "./english-drawings";

const SEEN: Readonly<Record<Side, string>> = {
  turned: "vu de gauche, de devant et d’en haut",
  front: "vu de devant",
  left: "vu de gauche",
  right: "vu de droite",
  above: "vu d’en haut",
  back: "vu de derrière",
};

export const FRENCH_DRAWINGS: DrawingWords = {
  thePlan: "le plan",
  handed: (part, hand) => `${part} ${hand === "left" ? "gauche" : "droite"}`,
  scale: (scale) => fr`1 : ${String(scale).replace(".", FRENCH_NUMBERS.decimal)}`,
  seen: SEEN,
  apart: "éclaté",
  overAll: (width, depth, height) => fr`Hors tout : largeur ${width}, profondeur ${depth}, hauteur ${height}`,
  marked: (mark, name, count) => `${mark} ${name}${count > 1 ? `, ${count} pièces` : ""}`,
  between: fr` ; `,
  unseen: (marks) => fr`cachés d'ici : ${marks}`,
  nothing: "rien à montrer",
  noPieces: fr`rien à dessiner : aucune pièce n'est placée. Une ligne « place » dit où va une pièce.`,
  noAssembly: (assembly, there) =>
    fr`aucun sous-ensemble « ${assembly} » n'est placé dans ce plan. ${there.length > 0 ? `Il y a ${et(there)}.` : fr`Il n'en place aucun.`}`,

  longPoints: (length) => `pointes longues ${length}`,
  shortPoints: (length) => `pointes courtes ${length}`,

  keep: (length) => `${length}, à garder`,
  size: (length, width) => `${length} x ${width}`,
  inARow: (label, count) => `${label}, ${count} de suite`,
  piece: (label, length, mark) => `${label} ${length}, trait à ${mark}`,
  restToKeep: (name, length) => fr`${name} : ${length}, à garder`,
  rest: (name) => fr`${name} :`,
  holds: (label, cuts) => fr`${label} : ${cuts.join(fr` ; `)}`,
  tooSmall: (label) => `${label} (trop petite pour un numéro)`,
  marks: fr`Traits : `,
};
