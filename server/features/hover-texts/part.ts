/** What a hover says of a part, and of the stock or sheet it is cut from, in every language. Arguments are Markdown. */
import type { Language } from "../../checks";
import { CONDITIONS, woodTitle } from "../../checks/french/names";
import { fr } from "../../checks/french/type";
import { CUTS } from "../../checks/french/wood";
import type { Material, Part } from "../../worked";

const POINTS = {
  overall: "tip to tip",
  "long to long": "long point to long point",
  "short to short": "short point to short point",
  "long to short": "long point to short point",
} as const;

const ENGLISH = {
  part: (name: string, of: string) => `${name}, a part cut from ${of}`,
  length: (length: string, points: string, off: string) => `Length **${length}**${points}${off}`,
  lengthWord: "Length",
  measured: (between: Part["measured"]) => `, ${POINTS[between]}`,

  squareEnds: "Ends: square",
  ends: (cuts: string, edges: string) => `Ends: ${cuts}${edges}`,
  square: "square",
  angled: (miter: string | undefined, bevel: string | undefined) =>
    [miter && `${miter} miter`, bevel && `${bevel} bevel`].filter(Boolean).join(" and "),
  bothEnds: (end: string) => `${end} at both ends`,
  eachEnd: (left: string, right: string) => `left ${left}, right ${right}`,
  longPoints: (edges: "one" | "opposite") =>
    `, long points on ${edges === "one" ? "one edge" : "opposite edges"}`,
  points: (long: string, short: string) =>
    `Long point to long point ${long}, short point to short point ${short}`,

  section: "Section",
  thickness: "Thickness",
  width: "width",
  ripped: "ripped to that width, ",
  sectionOf: (thickness: string, width: string, ripped: string, material: string, source: string) =>
    `${thickness}, ${width}; ${ripped}${material}${source === "" ? "" : `; ${source}`}`,

  howMany: "How many",
  counted: (count: number, from: string, hands: string, copies: string, spares: string) =>
    `How many: ${count}, ${from}${hands}${copies}${spares}`,
  countedIn: (rings: string) => `counted in ${rings}`,
  countedPlaced: "counted where it is placed",
  asTyped: "as typed",
  hands: (left: number, right: number) => `, ${left} left and ${right} right`,
  copies: (count: number, make: number) => `; ${count} for ${make} of the whole thing`,
  spares: (count: number) => `, and ${count} spare`,

  weightWord: "Weight",
  weight: (one: string, all: string, notches: string, wood: string) =>
    `Weight, an estimate: ${one}${all}${notches}; ${wood}`,
  weightOf: (weight: string, count: number) => `, ${weight} for ${count}`,
  withNotches: ", notches not taken off",
  woodAt: (wood: string, moisture: number, source: string) => `${wood} at ${moisture}% moisture, ${source}`,
  woodAssumed: ({ assumed }: Material["wood"]) => `Wood ${assumed}`,

  notch: (kind: "notch" | "dado", along: string, into: string, where: string, distance: string | undefined) =>
    `A ${kind} ${along} along and ${into} in, ${distance === undefined ? where : `${distance} ${where}`}; not fitted to anything yet`,
  toFit: "Cut to fit when the rest stands",
  toFitWith: (more: string, first: string) =>
    `Cut to fit when the rest stands: ${more} is left on, so cut it at ${first} first`,
  pointsAssumed: "the length runs from long point to long point, since the plan does not say",

  material: (name: string, kind: "board" | "sheet" | "stock", size: string) =>
    `${name}, ${{ board: "a board by its name", sheet: "a sheet", stock: "a stock" }[kind]}: ${size}`,
  sizeNot: (why: string) => `its size is ${why}`,
  reallyThick: (thick: string) => `really ${thick} thick`,
  really: (thick: string, wide: string) => `really ${thick} x ${wide}`,
  noDensity: "its weight is in no table",
  density: (density: string, moisture: number, source: string) =>
    `${density} at ${moisture}% moisture, ${source}`,
  wood: (wood: string, density: string) => `Wood: ${wood}, ${density}`,
  conditions: (conditions: readonly string[]) => `Said of it: ${conditions.join(", ")}`,
  sold: (sold: string) => `Sold: ${sold}`,
  notSold: "neither the plan nor the shop says in what lengths",
  offer: (size: string, price: string) => (price === "" ? `${size} without a price` : `${size} for ${price}`),
  grain: (along: "length" | "width") => `Grain along its ${along}`,
  trim: (length: string, assumed: boolean) =>
    `${length} is trimmed off a bought end${assumed ? ", taken for granted" : ""}`,
  onHand: (piles: string, rule: string) => `On hand: ${piles}${rule}`,
  pile: (count: number, size: string) => `${count} of ${size}`,
  bad: (stretches: readonly string[]) => ` (bad from ${stretches.join(" and ")})`,
  stretch: (from: string, to: string) => `${from} to ${to}`,
  useUp: "; used up first",
  keep: "; kept for what nothing sold can do",
};

const FRENCH_POINTS: Readonly<Record<Part["measured"], string>> = {
  overall: "de pointe à pointe",
  "long to long": "de pointe longue à pointe longue",
  "short to short": "de pointe courte à pointe courte",
  "long to short": "de pointe longue à pointe courte",
};

const FRENCH: typeof ENGLISH = {
  part: (name, of) => `${name}, une pièce coupée dans ${of}`,
  length: (length, points, off) => `Longueur **${length}**${points}${off}`,
  lengthWord: "Longueur",
  measured: (between) => `, ${FRENCH_POINTS[between]}`,

  squareEnds: fr`Bouts : d'équerre`,
  ends: (cuts, edges) => fr`Bouts : ${cuts}${edges}`,
  square: CUTS.square,
  angled: CUTS.angled,
  bothEnds: CUTS.bothEnds,
  eachEnd: (left, right) => fr`à gauche ${left}, à droite ${right}`,
  longPoints: (edges) => `, ${CUTS.longPoints(edges)}`,
  points: (long, short) =>
    `De pointe longue à pointe longue ${long}, de pointe courte à pointe courte ${short}`,

  section: "Section",
  thickness: "Épaisseur",
  width: "largeur",
  ripped: "délignée à cette largeur, ",
  sectionOf: (thickness, width, ripped, material, source) =>
    fr`${thickness}, ${width} ; ${ripped}${material}${source === "" ? "" : fr` ; ${source}`}`,

  howMany: "Nombre",
  counted: (count, from, hands, copies, spares) => fr`Nombre : ${count}, ${from}${hands}${copies}${spares}`,
  countedIn: (rings) => `compté dans ${rings}`,
  countedPlaced: fr`compté là où elle est placée`,
  asTyped: "comme écrit",
  hands: (left, right) => `, ${left} à gauche et ${right} à droite`,
  copies: (count, make) => fr` ; ${count} pour ${make} exemplaires`,
  spares: (count) => `, et ${count} de rechange`,

  weightWord: "Poids",
  weight: (one, all, notches, wood) => fr`Poids, estimé : ${one}${all}${notches} ; ${wood}`,
  weightOf: (weight, count) => `, ${weight} pour ${count}`,
  withNotches: ", entailles non déduites",
  woodAt: (wood, moisture, source) => fr`${wood} à ${moisture} % d'humidité, ${source}`,
  woodAssumed: (wood) =>
    fr`Bois compté comme ${woodTitle(wood)} à ${wood.moisture} % d'humidité, puisque le plan ne le dit pas`,

  notch: (kind, along, into, where, distance) => {
    const cut = CUTS.notch(kind, along, into, where, distance ?? "");
    return fr`${cut.charAt(0).toUpperCase()}${cut.slice(1)} ; rien ne s'y ajuste encore`;
  },
  toFit: "À ajuster une fois le reste monté",
  toFitWith: (more, first) =>
    fr`À ajuster une fois le reste monté : on laisse ${more} de plus, donc d'abord couper à ${first}`,
  pointsAssumed: fr`la longueur va de pointe longue à pointe longue, puisque le plan ne le dit pas`,

  material: (name, kind, size) =>
    fr`${name}, ${{ board: fr`une planche d'après son nom`, sheet: "un panneau", stock: "un bois" }[kind]} : ${size}`,
  sizeNot: (why) => fr`dimensions inconnues ; ${why}`,
  reallyThick: (thick) => fr`en réalité ${thick} d'épaisseur`,
  really: (thick, wide) => `en réalité ${thick} x ${wide}`,
  noDensity: fr`son poids n'est dans aucune table`,
  density: (density, moisture, source) => fr`${density} à ${moisture} % d'humidité, ${source}`,
  wood: (wood, density) => fr`Bois : ${wood}, ${density}`,
  conditions: (conditions) => fr`Précisé : ${conditions.map((c) => CONDITIONS[c] ?? c).join(", ")}`,
  sold: (sold) => fr`En vente : ${sold}`,
  notSold: fr`ni le plan ni le fichier d'atelier ne disent quelles longueurs`,
  offer: (size, price) => (price === "" ? `${size} sans prix` : `${size} à ${price}`),
  grain: (along) => `Fil dans le sens de la ${along === "length" ? "longueur" : "largeur"}`,
  trim: (length, assumed) =>
    `${length} ôtés à un bout de chaque planche achetée${assumed ? ", supposé" : ""}`,
  onHand: (piles, rule) => fr`En réserve : ${piles}${rule}`,
  pile: (count, size) => `${count} de ${size}`,
  bad: (stretches) => ` (mauvais de ${stretches.join(" et de ")})`,
  stretch: (from, to) => `${from} à ${to}`,
  useUp: fr` ; la réserve sert d'abord`,
  keep: fr` ; gardée pour ce que rien de vendu ne peut donner`,
};

export const PART: Readonly<Record<Language, typeof ENGLISH>> = { en: ENGLISH, fr: FRENCH };
