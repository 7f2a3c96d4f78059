/** What hovers of every kind say: why there is no value, what was taken for granted, what woods, joints and sources are called. */
import type { Comparison } from "../../../grammar/tree";
import type { Language } from "../../checks";
import { JOINT } from "../../checks/french/joints";
import { woodNamed } from "../../checks/french/names";
import { STRUCTURAL_CAUTION } from "../../checks/french/phrases";
import { frenchPiece } from "../../checks/french/pieces";
import { citedInFull } from "../../checks/french/sources";
import { et, fr } from "../../checks/french/type";
import { sizeFrom } from "../../checks/french/wood";
import { allOf, setOut } from "../../checks/writing";
import { cite, type Source, structuralCaution } from "../../trade";
import { type Display, lengthText } from "../../units";
import { type Joint, jointTitle, type Material, type Size } from "../../worked";

const ENGLISH = {
  /** Before a length that is rounded. */
  about: (length: string) => `about ${length}`,
  notChecked: (why: string) => `not checked: ${why}`,
  outsideTable: (range: string) => `not checked: its table only holds for ${range}`,
  mistake: "not worked out: a mistake stands in the way",
  /** `Length 12"`, and `Length: not checked: …`. */
  worth: (what: string, value: string) => `${what} ${value}`,
  lacks: (what: string, why: string) => `${what}: ${why}`,
  inFull: (length: string) => `; in full ${length}`,
  toTheMark: (length: string) => `; to the plan's mark ${length}`,
  comesTo: (value: string) => `What it comes to: ${value}`,
  size: (source: string) => `Size: ${source}`,
  assumed: (what: string) => `Taken for granted: ${what}`,
  /** `a, b and c`; and the same of few words, each joined alike. */
  all: allOf,
  each: (words: readonly string[]) => words.join(" and "),
  between: "; ",
  withoutPrice: ", without a price",
  forPrice: (money: string) => ` for ${money}`,
  comparison: (comparison: Comparison): string => comparison,
  piece: (id: string) => id,
  /** A wood by its species; `title` is its English name. */
  wood: (_species: string, title: string) => title,
  cite: (source: Source): string => cite(source),
  asThePlanSays: "as the plan says",
  sizeOf: ({ source }: Material) => source,
  screwSize: ({ from }: Size) => {
    if (from === "as written") return from;
    return from === "by its number" ? "diameter 0.060 + 0.013 for each gauge number" : cite(from);
  },
  joint: ({ title }: Joint) => title,
  setOut: (joint: Joint, display: Display) => setOut(joint, display),
  screws: (count: number, kind: string) => `${count} ${kind}${count === 1 ? "" : "s"}`,
  caution: structuralCaution.value.text,
};

const FRENCH: typeof ENGLISH = {
  about: (length) => `environ ${length}`,
  notChecked: (why) => `non vérifié (${why})`,
  outsideTable: (range) => `non vérifié (sa table ne vaut que pour ${range})`,
  mistake: "non calculé (une faute y fait obstacle)",
  worth: (what, value) => `${what} ${value}`,
  lacks: (what, why) => fr`${what} : ${why}`,
  inFull: (length) => fr` ; en entier ${length}`,
  toTheMark: (length) => fr` ; au trait du plan ${length}`,
  comesTo: (value) => fr`Valeur : ${value}`,
  size: (source) => fr`Dimensions : ${source}`,
  assumed: (what) => fr`Supposé : ${what}`,
  all: et,
  each: et,
  between: fr` ; `,
  withoutPrice: ", sans prix",
  forPrice: (money) => ` à ${money}`,
  comparison: (comparison) => COMPARISONS[comparison],
  piece: frenchPiece,
  wood: woodNamed,
  cite: citedInFull,
  asThePlanSays: fr`d'après le plan`,
  sizeOf: ({ sizeFrom: from }) => sizeFrom(from, citedInFull, "."),
  screwSize: ({ from }) => {
    if (from === "as written") return "comme écrit";
    return from === "by its number" ? "diamètre de 0.060 + 0.013 par numéro de calibre" : citedInFull(from);
  },
  joint: ({ entry }) => jointTitle(entry, JOINT),
  setOut: ({ setting, spacing }, display) => {
    const pattern = JOINT.pattern(setting);
    return spacing ? `${pattern}, entraxe ${lengthText(spacing, display)}` : pattern;
  },
  screws: (count, kind) => `${count} ${frenchFastener(kind, count)}`,
  caution: STRUCTURAL_CAUTION,
};

const COMPARISONS: Readonly<Record<Comparison, string>> = {
  "at most": "au plus",
  "at least": "au moins",
  "less than": "moins de",
  "more than": "plus de",
  exactly: "exactement",
};

const FASTENERS: Readonly<Record<string, readonly [one: string, several: string]>> = {
  screw: ["vis", "vis"],
  nail: ["clou", "clous"],
  bolt: ["boulon", "boulons"],
};

/** What a line calls a fastener: beside its kind, other words of its own stay as they are typed. */
export function frenchFastener(kind: string, count: number): string {
  const said = FASTENERS[kind.split(" ").at(-1)!]?.[count < 2 ? 0 : 1];
  if (said === undefined) return kind;
  return kind.includes(" ") ? fr`${said} « ${kind} »` : said;
}

export const COMMON: Readonly<Record<Language, typeof ENGLISH>> = { en: ENGLISH, fr: FRENCH };
