/** How boards are cut, marked and measured, in French. */
import type { Source } from "../../trade";
import type { NumberWords } from "../../units";
import type { MarkedFrom, SizeFrom } from "../../worked";
import { cited } from "./sources";
import { et, FRENCH_NUMBERS, fr } from "./type";

/** What is said of a piece's ends and of what is cut out of it. */
export const CUTS = {
  longToLong: "de pointe longue à pointe longue",
  square: fr`d'équerre`,
  angled: (miter: string | undefined, bevel: string | undefined) =>
    et([...(miter ? [`onglet à ${miter}`] : []), ...(bevel ? [`biseau à ${bevel}`] : [])]),
  bothEnds: (end: string) => `${end} aux deux bouts`,
  ends: (left: string, right: string) => fr`bout gauche : ${left}, bout droit : ${right}`,
  longPoints: (edges: "one" | "opposite") =>
    edges === "one" ? "pointes longues sur le même chant" : "pointes longues sur des chants opposés",
  toFit: (left: string) =>
    `à ajuster une fois le reste monté${left === "" ? "" : `, en laissant ${left} de plus`}`,
  notch: (kind: "notch" | "dado", along: string, into: string, where: string, distance: string) => {
    const place = NOTCH_AT[where] ?? where;
    const what = kind === "notch" ? "entaille" : "rainure";
    return fr`${what} sur ${along}, profonde de ${into}, ${distance === "" ? place : `à ${distance} ${place}`}`;
  },
  mirror: (hand: "left" | "right") =>
    hand === "left"
      ? fr`pièce gauche : l'image en miroir de la droite`
      : fr`pièce droite : l'image en miroir de la gauche`,
  pointsAssumed: fr`le plan ne dit pas entre quelles pointes ; compté de pointe longue à pointe longue`,
  spares: (n: number) => `et ${n} de rechange`,
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
export function marks({ from, which, point }: MarkedFrom, lengths: readonly string[]): string {
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

/** Where a size comes from; `cite` says how much of a source is told, and `decimal` how its figures are written. */
export function sizeFrom(
  from: SizeFrom,
  cite: (source: Source) => string = cited,
  decimal: NumberWords["decimal"] = FRENCH_NUMBERS.decimal,
): string {
  switch (from.by) {
    case "table": {
      const { source, really } = from;
      const comma = (size: string | number): string => String(size).replace(".", decimal);
      return really
        ? fr`${cite(source)} : en réalité de ${comma(really.min)} à ${comma(really.max)}${really.mark}`
        : cite(source);
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
