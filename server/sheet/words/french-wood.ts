/** What the sheet says of wood: what it is, how it is cut, laid out and bought; and of the screws that hold it. In French. */

import { CONDITIONS } from "../../checks/french/names";
import { fr, one } from "../../checks/french/type";
import { CUTS, marks, sizeFrom } from "../../checks/french/wood";
import type { ToolSetting } from "../../worked";
import type { SheetWords } from "./english";

const REACH: Readonly<Record<ToolSetting["what"], string>> = {
  miter: "onglet",
  bevel: "biseau",
  "longest cut along": "plus longue coupe en long",
  "widest cut across": "plus large coupe en travers",
  "thickest cut": "plus forte épaisseur",
};

export const FRENCH_WOOD: SheetWords["wood"] = {
  materials: {
    thick: (length) => `épaisseur ${length}`,
    condition: (condition) => CONDITIONS[condition] ?? condition,
    sizeFrom: ({ sizeFrom: from }) => sizeFrom(from),
  },

  cuts: CUTS,

  layouts: {
    board: (length) => `planche de ${length}`,
    boardOnHand: (length) => `en réserve, ${length}`,
    sheet: (size) => `panneau de ${size}`,
    sheetOnHand: (size) => `en réserve, panneau de ${size}`,
    spare: (part) => `${part} (rechange)`,
    kerf: (kerf, assumed) =>
      fr`${kerf} perdus à chaque trait de scie${assumed ? " (le plan ne donne pas le trait)" : ""}`,
    trim: (trim, assumed) =>
      fr`${trim} ôtés à un bout de chaque planche achetée pour l'affranchir${assumed ? " (le plan n’en dit rien)" : ""}`,
    spares: (n) =>
      one(n) ? `${n} pièce de rechange comptée aussi` : `${n} pièces de rechange comptées aussi`,
    useUp: "la réserve sert d’abord",
    keep: "la réserve est gardée pour ce que rien de vendu ne peut donner",
    wholeWidth: "une pièce délignée prend ici toute la largeur de sa planche",
    sharedWidth: fr`les pièces délignées d'une même longueur sont côte à côte là où la planche est assez large : couper d'abord à longueur, puis déligner`,
    edgeToEdge: fr`chaque coupe va d'un bord à l'autre`,
    tipToTip: fr`une pièce à bout oblique compte de pointe à pointe : deux bouts faits d'un seul trait de scie ne sont pas prévus`,
    sideBySide: (counts) => `${counts.map(([n, part]) => `${n} ${part}`).join(", ")} côte à côte`,
    firstAnswer: fr`c'est une première réponse, il peut en exister une moins chère`,
    cheapest: fr`vérifié : avec ces traits de scie, ces affranchissements, ces rechanges et ces prix, aucun débit n'est moins cher`,
    leastWood: fr`vérifié : avec ces traits de scie, ces affranchissements et ces rechanges, aucun débit ne prend moins de bois ; il manque un prix`,
    withinMoney: (most) =>
      fr`avec ces traits de scie, ces affranchissements, ces rechanges et ces prix, cela coûte au plus ${most} de plus que le moins cher possible`,
    withinWood: (most) =>
      fr`avec ces traits de scie, ces affranchissements et ces rechanges, cela prend au plus ${most} de plus que le moins possible ; il manque un prix`,
    rest: (stock, from, to) => (from === to ? `${stock} chute ${from}` : `${stock} chutes ${from} à ${to}`),
  },

  aisles: {
    boards: "planches",
    sheets: "panneaux",
    fasteners: "quincaillerie",
    finish: "finition",
    liner: "doublure",
  },
  boxOf: (count) => `boîte de ${count}`,
  pile: (count, length, stock) => `${count} de ${length} en ${stock}`,

  holes: {
    pilot: (size) => `avant-trou ${size}`,
    clearance: (size) => `trou de passage ${size}`,
    drain: (size) => `trous d’écoulement ${size}`,
  },
  offSquare: (angle) => fr`à ${angle} de l'équerre`,
  setOut: (pattern, spacing) => (spacing === "" ? pattern : `${pattern}, entraxe ${spacing}`),
  marks,

  reach: REACH,
  asDrawn: (angle) => `(${angle} sur le dessin)`,
  holeDeep: (where, depth) => `${where}, sur ${depth} de profondeur`,
};
