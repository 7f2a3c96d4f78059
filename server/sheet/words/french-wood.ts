/** What the sheet says of wood: what it is, how it is cut, laid out and bought; and of the screws that hold it. In French. */
import type { MarkedFrom, Material, ToolSetting } from "../../worked";
import type { SheetWords } from "./english";
import { CONDITIONS } from "./french-names";
import { cited } from "./french-sources";
import { et, FRENCH_NUMBERS, fr, one } from "./french-type";

const REACH: Readonly<Record<ToolSetting["what"], string>> = {
  miter: "onglet",
  bevel: "biseau",
  "longest cut along": "plus longue coupe en long",
  "widest cut across": "plus large coupe en travers",
  "thickest cut": "plus forte épaisseur",
};

const NOTCH_AT: Readonly<Record<string, string>> = {
  "at left end": "au bout gauche",
  "at right end": "au bout droit",
  "at both ends": "aux deux bouts",
  "from left": "du bout gauche",
  "from right": "du bout droit",
  "from left end": "du bout gauche",
  "from right end": "du bout droit",
};

const SIDES: Readonly<
  Record<Exclude<MarkedFrom["which"], "each" | "either">, readonly [masculine: string, feminine: string]>
> = {
  left: ["gauche", "gauche"],
  right: ["droit", "droite"],
  front: ["avant", "avant"],
  back: ["arrière", "arrière"],
  bottom: ["du bas", "du bas"],
  top: ["du haut", "du haut"],
};
const FROM = { end: "bout", edge: "chant", face: "face" } as const;

/** `depuis chaque bout : 1-3/4"`. */
function marks({ from, which, point }: MarkedFrom, lengths: readonly string[]): string {
  const what = point ? "pointe longue" : FROM[from];
  const feminine = point || from === "face";
  const where = (): string => {
    if (which === "each") return `depuis chaque ${what}`;
    if (which === "either")
      return fr`depuis ${feminine ? fr`l'une ou l'autre` : fr`l'un ou l'autre`} ${what}`;
    const [he, she] = SIDES[which];
    return `depuis ${feminine ? "la" : "le"} ${what} ${feminine ? she : he}`;
  };
  return fr`${where()} : ${et(lengths)}`;
}

function sizeFrom({ sizeFrom: from }: Material): string {
  switch (from.by) {
    case "table": {
      const { source, really } = from;
      const comma = (size: string | number): string => String(size).replace(".", FRENCH_NUMBERS.decimal);
      return really
        ? fr`${cited(source)} : en réalité de ${comma(really.min)} à ${comma(really.max)}${really.mark}`
        : cited(source);
    }
    case "measured":
      return "comme mesuré";
    case "plan":
      return "comme le dit le plan";
    case "plan, no such panel":
      return "comme le dit le plan (pas de tel panneau dans la table)";
    case "nothing":
      return "";
  }
}

export const FRENCH_WOOD: SheetWords["wood"] = {
  materials: {
    thick: (length) => `épaisseur ${length}`,
    condition: (condition) => CONDITIONS[condition] ?? condition,
    sizeFrom,
  },

  cuts: {
    longToLong: "de pointe longue à pointe longue",
    square: fr`d'équerre`,
    angled: (miter, bevel) =>
      et([...(miter ? [`onglet à ${miter}`] : []), ...(bevel ? [`biseau à ${bevel}`] : [])]),
    bothEnds: (end) => `${end} aux deux bouts`,
    ends: (left, right) => fr`bout gauche : ${left}, bout droit : ${right}`,
    longPoints: (edges) =>
      edges === "one" ? "pointes longues sur le même chant" : "pointes longues sur des chants opposés",
    toFit: (left) => `à ajuster une fois le reste monté${left === "" ? "" : `, en laissant ${left} de plus`}`,
    notch: (kind, along, into, where, distance) => {
      const place = NOTCH_AT[where] ?? where;
      const what = kind === "notch" ? "entaille" : "rainure";
      return fr`${what} sur ${along}, profonde de ${into}, ${distance === "" ? place : `à ${distance} ${place}`}`;
    },
    mirror: (hand) =>
      hand === "left"
        ? fr`pièce gauche : l'image en miroir de la droite`
        : fr`pièce droite : l'image en miroir de la gauche`,
    pointsAssumed: fr`le plan ne dit pas entre quelles pointes ; compté de pointe longue à pointe longue`,
    spares: (n) => `et ${n} de rechange`,
  },

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
