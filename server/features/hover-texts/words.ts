/** What a hover says of the language's own words, of codes, rules and names, in every language. Arguments are Markdown. */
import type { Comparison } from "../../../grammar/tree";
import type { Language } from "../../checks";
import { WOODS } from "../../checks/french/names";
import { fr, one } from "../../checks/french/type";
import type { DecayClass } from "../../trade";
import { kindWord } from "../../worked";
import { COMMON } from "./common";

const ENGLISH = {
  meaning: (word: string, doc: string) => `${word}: ${doc}`,
  goesOn: (openings: readonly string[]) => `It may go on with ${openings.join(", ")}.`,
  code: (code: string, kind: string, title: string) => `${code} (${kind}): ${title}`,
  /** Below a code: the first paragraph of its page, which is in English. */
  page: (first: string) => first,

  must: (comparison: Comparison, value: string) => `Your own rule: ${comparison} ${value}.`,
  comesTo: (value: string, outcome: string) => `It comes to ${value}: ${outcome}.`,
  outcome: { kept: "the rule is kept", broken: "the rule is broken", unknown: "not checked" },
  because: (reason: string) => `Because ${reason}`,
  notChecked: (what: string, why: string) => `Not checked: ${what}, since ${why}`,

  species: (word: string, wood: string, group: string) =>
    `${word}, a species: ${wood}${group === "" ? "" : `, graded with ${group}`}`,
  group: (group: string) => group,
  density: (density: string) => `${density} at 12% moisture`,
  noDensity: "Its weight is in no table",
  decay: (value: DecayClass) =>
    `How its heartwood resists decay: ${value}; bought boards are largely sapwood`,

  every: (name: string, declared: string) => `${name}: every ${declared}`,
  floor: (name: string) => `${name}: the floor that it all stands on`,
  declaredIn: (file: string) => `Declared in ${file}`,
  notWorkedOut: (name: string, kind: "stock" | "sheet") =>
    `${name}, ${kindWord(kind)}: not worked out, since a mistake stands in the way or nothing uses it`,
};

const DECAY: Readonly<Record<DecayClass, string>> = {
  exceptional: "exceptionnelle",
  resistant: "bonne",
  moderate: "moyenne",
  slight: "faible",
};

const FRENCH: typeof ENGLISH = {
  meaning: (word, doc) => fr`${word} : ${doc}`,
  goesOn: (openings) =>
    fr`${one(openings.length) ? "Peut suivre" : "Peuvent suivre"} : ${openings.join(", ")}.`,
  code: (code, kind, title) => fr`${code} (${kind}) : ${title}`,
  page: () => "Sa page, qui est en anglais, en dit plus.",

  must: (comparison, value) => fr`Votre propre règle : ${COMMON.fr.comparison(comparison)} ${value}.`,
  comesTo: (value, outcome) => fr`Cela donne ${value} : ${outcome}.`,
  outcome: {
    kept: "la règle est respectée",
    broken: fr`la règle n'est pas respectée`,
    unknown: "non vérifié",
  },
  because: (reason) => fr`Parce que « ${reason} »`,
  notChecked: (what, why) => fr`Non vérifié : ${what}, car ${why}`,

  species: (word, wood, group) =>
    fr`${word}, une essence de bois : ${wood}${group === "" ? "" : `, classée avec ${group}`}`,
  group: (group) => WOODS[group] ?? group,
  density: (density) => fr`${density} à 12 % d'humidité`,
  noDensity: fr`Son poids n'est dans aucune table`,
  decay: (value) =>
    fr`Résistance de son bois de cœur à la pourriture : ${DECAY[value]} ; les planches du commerce sont surtout de l'aubier`,

  every: (name, declared) => fr`${name} : chaque ${declared}`,
  floor: (name) => fr`${name} : le sol sur lequel tout repose`,
  declaredIn: (file) => `Déclaré dans ${file}`,
  notWorkedOut: (name, kind) =>
    fr`${name}, ${kind === "stock" ? "un bois" : "un panneau"} : non calculé, car une faute y fait obstacle ou rien ne l'emploie`,
};

export const WORDS: Readonly<Record<Language, typeof ENGLISH>> = { en: ENGLISH, fr: FRENCH };
