/** What a hover says of measures, properties, functions and values as typed, in every language. Arguments are Markdown. */
import type { Comparison } from "../../../grammar/tree";
import type { Language } from "../../checks";
import { fr } from "../../checks/french/type";
import { code, escaped } from "../markdown";
import { COMMON } from "./common";

const ENGLISH = {
  measure: (name: string, value: string) => `${name}, a measure: ${value}`,
  typed: (comparison: Comparison, value: string, kept: boolean) =>
    `You typed ${COMMON.en.comparison(comparison)} ${value}${kept ? "" : ", which it breaks"}`,
  /** What a property asks for is plan text, not Markdown. */
  property: (asked: string, value: string) => `${escaped(asked)}: **${value}**`,
  angle: (angle: string, offSquare: string, fromEdge: string) =>
    `${angle}: ${offSquare} off square, ${fromEdge} from the edge`,
  kind: (literal: string, kind: string, value: string) => `${literal}: ${kind}, ${value}`,
  screw: (size: string, length: string, shank: string) => `${size}: ${length} long, shank ${shank}`,
};

const FRENCH: typeof ENGLISH = {
  measure: (name, value) => fr`${name}, une mesure : ${value}`,
  typed: (comparison, value, kept) =>
    fr`Vous avez écrit ${COMMON.fr.comparison(comparison)} ${value}${kept ? "" : fr`, ce qu'elle ne respecte pas`}`,
  property: (asked, value) => fr`${code(asked)} : **${value}**`,
  angle: (angle, offSquare, fromEdge) => fr`${angle} : à ${offSquare} de l'équerre, à ${fromEdge} du chant`,
  kind: (literal, kind, value) => fr`${literal} : ${kind}, ${value}`,
  screw: (size, length, shank) => fr`${size} : longueur ${length}, fût ${shank}`,
};

export const VALUES: Readonly<Record<Language, typeof ENGLISH>> = { en: ENGLISH, fr: FRENCH };
