/** What a hover says of finishes, liners and drains, in every language. Arguments are Markdown, unless it says words. */
import type { Language } from "../../checks";
import * as french from "../../checks/french/lining";
import { fr, many } from "../../checks/french/type";
import * as english from "../../checks/lining-words";
import type { Display } from "../../units";
import { assumedWords, type CoatWork, type FinishNeed } from "../../worked";

const ENGLISH = {
  coat: (title: string, finish: string) => `**Finished**: ${title}${finish === "" ? "" : ` with ${finish}`}`,
  pieces: "Pieces",
  oneCoat: "One coat",
  endGrain: "of it end grain",
  leftOut: "left out, on other wood",
  coats: "Coats",
  coatsFrom: (from: CoatWork["coatsFrom"]) =>
    ({ line: "", finish: ", as its finish says", assumed: ", taken for granted" })[from],
  takes: (make: number): string => (make > 1 ? "Takes, for one" : "Takes"),
  atLeast: (most: string, least: string) => `${most}, at the least ${least}`,
  dries: "A coat dries in",
  inAll: (make: number) => `In all${make > 1 ? `, for ${make}` : ""}`,
  andMoreFinish: ", and more: what some line takes is not known",
  toBuy: "To buy",
  noTins: "not known: the plan does not say what tins are sold",

  finish: (name: string, usual: boolean) => `${name}, a finish${usual ? " every plan knows" : ""}`,
  covers: "Covers",
  soldIn: "Sold in",
  tins: (size: string, price: string) => `tins of ${size}${price}`,
  on: (title: string) => `On ${title}`,
  moreLines: (count: number) => `and on ${count} more lines`,
  unused: "No line here uses it",
  range: (least: string, most: string) => `${least} to ${most}`,

  lined: (name: string, roll: string) => `**Lined**: ${name}${roll === "" ? "" : ` with ${roll}`}`,
  sheet: "Lining it takes",
  fold: "of it past the rim",
  cut: "Cut",
  offRoll: "Off the roll",
  staples: "Staples",
  drains: "Drains",
  openLiner: "Open the liner",
  usualHoles: "Usual holes",
  toBuyLiner: (all: boolean, make: number) =>
    `To buy${all ? ", in all" : ""}${make > 1 ? `, for ${make}` : ""}`,
  andMoreLiner: ", and more: what some box takes is not known",

  roll: (name: string, declared: boolean) => `${name}, a ${declared ? "roll" : "liner every plan knows"}`,
  width: "Width",
  price: "Price",
  per: (price: string, unit: string) => `${price} per ${unit}`,
  noPrice: "not said",
  food: "Touch soil for food",
  foodSafe: {
    yes: "the maker says it may, as the plan tells",
    no: "it must not",
    unsaid: "not known",
  },
  water: "Water",
  holdsWater: (holds: boolean): string => (holds ? "it holds it" : "it lets it through"),
  forBox: (name: string) => `For ${name}`,
  moreBoxes: (count: number) => `and for ${count} more boxes`,

  drainsNot: "Drains: the plan does not say how",
  drainsLine: (how: string, usual: string) =>
    `Drains: ${how}${usual === "" ? "" : `; usual for its size: ${usual}`}`,

  /** In words: what the sheet and hovers say alike. */
  assumedWords,
  cutWords: english.cutWords,
  stapleWords: english.stapleWords,
  openingWords: english.openingWords,
  drainWords: english.drainWords,
  advisedWords: english.advisedWords,
  tinWords: (need: FinishNeed, _display: Display) => english.tinWords(need),
};

const FRENCH: typeof ENGLISH = {
  coat: (title, finish) => fr`**Finition** : ${title}${finish === "" ? "" : ` avec ${finish}`}`,
  pieces: "Pièces",
  oneCoat: "Une couche",
  endGrain: "dont bois de bout",
  leftOut: fr`laissé de côté, contre d'autre bois`,
  coats: "Couches",
  coatsFrom: (from) => ({ line: "", finish: fr`, d'après sa finition`, assumed: ", supposé" })[from],
  takes: (make) => (make > 1 ? "Il en faut, pour un exemplaire" : "Il en faut"),
  atLeast: (most, least) => `${most}, au moins ${least}`,
  dries: fr`Séchage d'une couche`,
  inAll: (make) => `En tout${make > 1 ? `, pour ${make} exemplaires` : ""}`,
  andMoreFinish: fr`, et davantage : on ne sait pas ce que demande une de ses lignes`,
  toBuy: "À acheter",
  noTins: fr`inconnu : le plan ne dit pas quels pots se vendent`,

  finish: (name, usual) => `${name}, une finition${usual ? " que tout plan connaît" : ""}`,
  covers: "Couvre",
  soldIn: "En vente",
  tins: (size, price) => `pots de ${size}${price}`,
  on: (title) => `Sur ${title}`,
  moreLines: (count) => `et sur ${many(count, "autre ligne", "autres lignes")}`,
  unused: fr`Aucune ligne d'ici ne l'emploie`,
  range: (least, most) => `${least} à ${most}`,

  lined: (name, roll) => fr`**Doublure** : ${name}${roll === "" ? "" : ` avec ${roll}`}`,
  sheet: "Doublure nécessaire",
  fold: "dont au-delà du bord",
  cut: "À couper",
  offRoll: "Sur le rouleau",
  staples: "Agrafes",
  drains: "Écoulement",
  openLiner: "Ouvrir la doublure",
  usualHoles: "Trous habituels",
  toBuyLiner: (all, make) =>
    `À acheter${all ? ", en tout" : ""}${make > 1 ? `, pour ${make} exemplaires` : ""}`,
  andMoreLiner: fr`, et davantage : on ne sait pas ce que demande un des bacs`,

  roll: (name, declared) => `${name}, ${declared ? "un rouleau" : "une doublure que tout plan connaît"}`,
  width: "Largeur",
  price: "Prix",
  per: (price, unit) => fr`${price} par « ${unit} »`,
  noPrice: "le plan ne le dit pas",
  food: "Contre la terre de culture",
  foodSafe: {
    yes: fr`son fabricant le permet, d'après le plan`,
    no: "il ne le faut pas",
    unsaid: "inconnu",
  },
  water: "Eau",
  holdsWater: (holds) => (holds ? "elle est retenue" : "elle passe"),
  forBox: (name) => `Pour ${name}`,
  moreBoxes: (count) => `et pour ${many(count, "autre bac", "autres bacs")}`,

  drainsNot: fr`Écoulement : le plan ne dit pas comment`,
  drainsLine: (how, usual) =>
    fr`Écoulement : ${how}${usual === "" ? "" : fr` ; habituel pour cette taille : ${usual}`}`,

  assumedWords: french.assumed,
  cutWords: french.cutOf,
  stapleWords: french.staplesOf,
  openingWords: french.openingOf,
  drainWords: french.drainOf,
  advisedWords: french.advisedOf,
  tinWords: french.tinsOf,
};

export const FINISH: Readonly<Record<Language, typeof ENGLISH>> = { en: ENGLISH, fr: FRENCH };
