/** What a hover says of fasteners, joints and rings, in every language. Arguments are Markdown, unless it says words. */
import type { Language } from "../../checks";
import { de } from "../../checks/french/elision";
import { fr, many, one } from "../../checks/french/type";
import { marks } from "../../checks/french/wood";
import { marksWords, screwsInWords } from "../../checks/set-out-words";
import type { Fastener, Path, SetOut } from "../../worked";
import { frenchFastener } from "./common";

const ENGLISH = {
  fastener: (name: string, kind: string) => `${name}, a fastener: ${kind}`,
  /** In words. */
  kind: ({ coating, kind }: Fastener) => [coating, kind].filter(Boolean).join(" "),
  size: (length: string, shank: string, source: string) => `Length ${length}, shank ${shank}; ${source}`,
  noSize: "Its size is not said",
  pack: (count: number, price: string) => `Sold in boxes of ${count}${price}`,
  onHand: (count: number) => `On hand: ${count}`,
  usedIn: (joint: string, count: string) => `Used in ${joint}: ${count}`,
  moreJoints: (count: number) => `and in ${count} more joints`,
  unused: "No joint here uses it",

  glued: (joint: string) => `**Glued**: ${joint}`,
  glueUnchecked: "What glue holds is not checked.",
  fastened: (joint: string) => `**Fastened**: ${joint}`,
  screw: (size: string, length: string, shank: string, slant: string, source: string) =>
    `${size}, ${length} long, shank ${shank}${slant}; ${source}`,
  slant: (angle: string) => `, driven ${angle} off square`,
  noScrew: "not checked: the line does not say which screws",
  morePaths: (count: number) => `and ${count} more ways through it`,
  howMany: (count: string) => `How many: ${count}`,
  pilot: (size: string) => `Pilot hole ${size}`,
  clearance: (size: string) => `Clearance hole ${size}`,
  countNot: (how: string, why: string) => `${how}; ${why}`,
  count: (how: string, count: number, make: number) =>
    `${how}, ${count} in all${make > 1 ? ` for one, ${count * make} for ${make}` : ""}`,
  placed: (screws: number, crossings: number) => `Placed: ${screwsInWords(screws, crossings)}`,
  /** In words, as are the grids of marks: distances along the piece, and across it. */
  marksOn: (piece: string, grids: readonly string[]) => `${piece}: ${grids.join(". And ")}`,
  marks: (marks: string) => `Marks on ${marks}`,
  grid: (on: SetOut["grids"][number]["on"], along: string, across: string) =>
    `${on === "face" ? "" : `on the ${on}, `}${along}; ${across}`,
  from: marksWords,
  someOf: (count: number, part: string) => `${count} of ${part}`,
  moreSets: (count: number) => `and ${count} more pieces with marks of their own`,
  layers: (layers: readonly string[]) => layers.join(", then "),
  layer: (part: string, face: Path["layers"][number]["face"], depth: string) => `${part} ${face} (${depth})`,
  pathNot: (first: string, into: string) => `${first} into ${into}`,
  path: (layers: string, bite: string, into: string, percent: number, tip: string) =>
    `through ${layers}: bites ${bite} into ${into}, ${percent}% of the screw; ${tip}`,
  proud: (length: string) => `its tip comes out ${length} proud`,
  overTip: (length: string) => `${length} of wood stays over its tip`,
  noneOverTip: "no wood stays over its tip",
  wideFace: (names: string) =>
    `the screw meets ${names} at the wide face, since the line does not say face, edge or end`,

  ring: (name: string, sides: number, members: string) => `${name}, a ring of ${sides} sides: ${members}`,
  closing: (closes: boolean, opening: string, turns: string) =>
    `It ${closes ? "closes" : "does not close"}: the opening is ${opening}, and its corners turn ${turns} in all.`,
  noWayRound: "It cannot be walked round: see its problem.",
  closesNot: (why: string) => `Whether it closes: ${why}.`,
  lies: (lies: "flat" | "on edge") =>
    `Its parts ${lies === "flat" ? "lie flat, mitered across their width" : "stand on edge, beveled through their thickness"}`,
  corners: (count: number, corner: string) => `${count === 1 ? "Corner" : `${count} corners`} ${corner}`,
  corner: (from: string, to: string, angle: string) => `${from} to ${to}: turns ${angle}`,
};

const COATINGS: Readonly<Record<string, readonly [masculine: string, feminine: string]>> = {
  stainless: ["inoxydable", "inoxydable"],
  galvanized: ["galvanisé", "galvanisée"],
  coated: ["revêtu", "revêtue"],
  plain: ["nu", "nue"],
};

const BY_FACE: Readonly<Record<Path["layers"][number]["face"], string>> = {
  face: "la face",
  edge: "le chant",
  end: "le bout",
};

const FRENCH: typeof ENGLISH = {
  fastener: (name, kind) => fr`${name}, une fixation : ${kind}`,
  kind: ({ coating, kind }) => {
    const said = frenchFastener(kind, 1);
    const feminine = said.startsWith("vis") ? 1 : 0;
    return [said, COATINGS[coating]?.[feminine] ?? coating].filter(Boolean).join(" ");
  },
  size: (length, shank, source) => fr`Longueur ${length}, fût ${shank} ; ${source}`,
  noSize: fr`Sa taille n'est pas dite`,
  pack: (count, price) => `En vente par boîtes de ${count}${price}`,
  onHand: (count) => fr`En réserve : ${count}`,
  usedIn: (joint, count) => fr`Employée ici, ${joint} : ${count}`,
  moreJoints: (count) => `et dans ${many(count, "autre assemblage", "autres assemblages")}`,
  unused: fr`Aucun assemblage d'ici ne l'emploie`,

  glued: (joint) => fr`**Collage** : ${joint}`,
  glueUnchecked: fr`La tenue de la colle n'est pas vérifiée.`,
  fastened: (joint) => fr`**Fixation** : ${joint}`,
  screw: (size, length, shank, slant, source) =>
    fr`${size}, longueur ${length}, fût ${shank}${slant} ; ${source}`,
  slant: (angle) => fr`, en biais à ${angle} de l'équerre`,
  noScrew: "non vérifié (la ligne ne dit pas quelles vis)",
  morePaths: (count) => `et ${many(count, "autre passage", "autres passages")}`,
  howMany: (count) => fr`Nombre : ${count}`,
  pilot: (size) => `Avant-trou ${size}`,
  clearance: (size) => `Trou de passage ${size}`,
  countNot: (how, why) => fr`${how} ; ${why}`,
  count: (how, count, make) =>
    `${how}, ${count} en tout${make > 1 ? ` pour un exemplaire, ${count * make} pour ${make}` : ""}`,
  placed: (screws, crossings) => fr`Posées : ${screws} vis à ${many(crossings, "croisement", "croisements")}`,
  marksOn: (piece, grids) => fr`${piece} : ${grids.join(". Et ")}`,
  marks: (marks) => `Tracer sur ${marks}`,
  grid: (on, along, across) =>
    fr`${on === "face" ? "" : `sur le ${on === "edge" ? "chant" : "bout"}, `}${along} ; ${across}`,
  from: marks,
  someOf: (count, part) => `${count} ${part}`,
  moreSets: (count) =>
    one(count) ? "et une autre pièce avec ses propres tracés" : `et ${count} autres pièces avec leurs tracés`,
  layers: (layers) => layers.join(", puis "),
  layer: (part, face, depth) => `${part} par ${BY_FACE[face]} (${depth})`,
  pathNot: (first, into) => `${first} dans ${into}`,
  path: (layers, bite, into, percent, tip) =>
    fr`à travers ${layers} : prise de ${bite} dans ${into}, ${percent} % de la vis ; ${tip}`,
  proud: (length) => `sa pointe ressort de ${length}`,
  overTip: (length) => `il reste ${length} de bois devant sa pointe`,
  noneOverTip: "il ne reste pas de bois devant sa pointe",
  wideFace: (names) =>
    fr`la vis entre par la face ${de(names)}, puisque la ligne ne dit ni face, ni chant, ni bout`,

  ring: (name, sides, members) => fr`${name}, un cadre de ${sides} côtés : ${members}`,
  closing: (closes, opening, turns) =>
    fr`Il ${closes ? "ferme" : "ne ferme pas"} : il reste ${opening} d'ouverture, et ses angles tournent de ${turns} en tout.`,
  noWayRound: fr`On ne peut pas en faire le tour : voyez son problème.`,
  closesNot: (why) => fr`S'il ferme : ${why}.`,
  lies: (lies) =>
    lies === "flat"
      ? "Ses pièces sont à plat, coupées en onglet en travers de leur largeur"
      : "Ses pièces sont debout, coupées en biseau dans leur épaisseur",
  corners: (count, corner) => `${count === 1 ? "Angle" : `${count} angles`} ${corner}`,
  corner: (from, to, angle) => fr`${de(from)} à ${to} : tourne de ${angle}`,
};

export const WORK: Readonly<Record<Language, typeof ENGLISH>> = { en: ENGLISH, fr: FRENCH };
