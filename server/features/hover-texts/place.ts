/** What a hover says of place lines and assemblies, in every language. */
import type { Language } from "../../checks";
import { de } from "../../checks/french/elision";
import { fr, many } from "../../checks/french/type";
import { code } from "../markdown";

/** One of the three directions: left to right, front to back, up and down. */
type Axis = 0 | 1 | 2;

const ENGLISH = {
  placed: (name: string, inside: string) => `**Placed**: ${name}${inside}`,
  inside: (assembly: string) => `, measured inside ${assembly}`,
  standsNot: (why: string) => `Where it stands is ${why}.`,
  /** Across, deep and high, in that order. */
  stands: ([across, deep, high]: readonly string[]) => `Stands ${high}, ${across}, ${deep}.`,
  span: (from: string, to: string, axis: Axis) =>
    `from ${from} to ${to} ${["from the left", "from the front", "above the floor"][axis]}`,
  row: (count: number, axis: Axis, gap: string) => `${count} ${["across", "deep", "high"][axis]}${gap}`,
  tight: ", tight",
  gaps: (gap: string) => ` with gaps of ${gap}`,
  inCorners: "one in each corner",
  mirrored: "and their mirror images",
  howMany: (how: string) => `How many: ${how}`,
  pieces: (count: number) => `${count} ${count === 1 ? "piece" : "pieces"}`,
  begins: (sides: readonly ("left" | "front")[]) =>
    `it begins at the ${sides.join(" and the ")}, since no line says otherwise`,
  onFloor: "it stands on the floor, as its own pieces do",
  /** In the line's own words, each Markdown still to be escaped. */
  lies: (words: readonly string[], escaped: (text: string) => string) =>
    `It lies ${escaped(words.join(", "))}`,
  floor: "the floor",
  touches: (names: string) => `It touches ${names}`,
  touchesNothing: "It touches nothing",

  assembly: (name: string, parts: string) => `${name}, an assembly${parts === "" ? "" : ` of ${parts}`}`,
  size: (wide: string, deep: string, high: string) => `${wide} wide, ${deep} deep, ${high} high`,
  placedBy: (lines: number) => `Placed by ${lines === 1 ? "one line" : `${lines} lines`}`,
  placedByNone: "No line places it",
};

const FRENCH: typeof ENGLISH = {
  placed: (name, inside) => fr`**Place** : ${name}${inside}`,
  inside: (assembly) => fr`, mesurée à l'intérieur ${de(assembly)}`,
  standsNot: (why) => fr`L'endroit : ${why}.`,
  stands: ([across, deep, high]) => `Va ${high}, ${across}, ${deep}.`,
  span: (from, to, axis) =>
    fr`${de(from)} à ${to} ${["depuis la gauche", fr`depuis l'avant`, "au-dessus du sol"][axis]!}`,
  row: (count, axis, gap) => `${count} en ${["largeur", "profondeur", "hauteur"][axis]}${gap}`,
  tight: ", jointives",
  gaps: (gap) => ` avec des jours ${de(gap)}`,
  inCorners: "une dans chaque coin",
  mirrored: "et leurs images en miroir",
  howMany: (how) => fr`Nombre : ${how}`,
  pieces: (count) => many(count, "pièce", "pièces"),
  begins: (sides) =>
    fr`cela commence ${sides.map((side) => (side === "left" ? "à gauche" : fr`à l'avant`)).join(" et ")}, puisqu'aucune ligne ne dit autre chose`,
  onFloor: "cela repose sur le sol, comme ses propres pièces",
  lies: (words) => fr`Position : ${words.map(code).join(", ")}`,
  floor: "le sol",
  touches: (names) => `Touche ${names}`,
  touchesNothing: "Ne touche rien",

  assembly: (name, parts) => `${name}, un sous-ensemble${parts === "" ? "" : ` ${de(parts)}`}`,
  size: (wide, deep, high) => `${wide} de large, ${deep} de profondeur, ${high} de haut`,
  placedBy: (lines) => (lines === 1 ? "Placé par une ligne" : `Placé par ${lines} lignes`),
  placedByNone: "Aucune ligne ne le place",
};

export const PLACE: Readonly<Record<Language, typeof ENGLISH>> = { en: ENGLISH, fr: FRENCH };
