/** The titles of what an editor offers to do, and why something cannot be done, in every language. */
import type { Language } from "../checks";

interface ActionWords {
  readonly mendAll: (n: number, total: number, title: string) => string;
  readonly mendSpelling: (n: number) => string;
  readonly accept: (line: string) => string;
  readonly acceptHazard: (line: string) => string;
  readonly nameMeasure: (value: string, name: string) => string;
  readonly nameEverywhere: (value: string, name: string, n: number) => string;
  readonly inline: (name: string, value: string) => string;
  readonly inlinePlain: (name: string) => string;
  readonly hasBounds: (name: string) => string;
  readonly hasNoValue: (name: string) => string;
  readonly inOtherFile: (name: string, file: string) => string;
  readonly usedElsewhere: (name: string, file: string) => string;
  readonly usedInWords: (name: string, line: "accept" | "built") => string;
  readonly usedNowhere: (name: string) => string;
  readonly notReadable: string;
  readonly valueOfItself: (name: string) => string;
  readonly otherMeaning: string;
  readonly show: (from: string, to: string, rounded: boolean) => string;
  readonly showAll: (n: number, system: System, rounded: boolean) => string;
  readonly showPlan: (system: System) => string;
  readonly notOnTape: (length: string) => string;
  readonly moveToShop: (what: string, file: string) => string;
  readonly moveToNewShop: (what: string, file: string) => string;
  readonly inShopAlready: (name: string, file: string) => string;
  readonly toolsInShop: (file: string) => string;
  readonly yardInShop: (file: string) => string;
  readonly needsPlan: (name: string) => string;
  readonly ownShop: string;
  readonly shopUnread: (file: string) => string;
  readonly noFolder: string;
  readonly makesNoFiles: string;
  readonly changed: string;
}

type System = "inches" | "millimetres";

const ENGLISH: ActionWords = {
  mendAll: (n, total, title) =>
    `Mend ${n === total ? `all ${n}` : `${n} of ${total}`} of this kind, each by its first cure: ${title}`,
  mendSpelling: (n) => (n === 1 ? "Mend what is misspelt" : `Mend the ${n} things that are misspelt`),
  accept: (line) => `Let it stand: ${line}…`,
  acceptHazard: (line) =>
    `Someone could be hurt. Let this hazard stand, with a reason that will be printed: ${line}…`,
  nameMeasure: (value, name) => `Name this measurement: ${name} = ${value}`,
  nameEverywhere: (value, name, n) => `Name this measurement everywhere (${n} places): ${name} = ${value}`,
  inline: (name, value) => `Write ${value} in place of “${name}”, and take its line out`,
  inlinePlain: (name) => `Write its value in place of “${name}”, and take its line out`,
  hasBounds: (name) => `“${name}” says how much it may be at least or at most, and that would be lost.`,
  hasNoValue: (name) => `“${name}” has no value yet.`,
  inOtherFile: (name, file) => `“${name}” is made in ${file}, which other plans may use too.`,
  usedElsewhere: (name, file) => `“${name}” is used in ${file} too.`,
  usedInWords: (name, line) => `${line === "accept" ? "An" : "A"} ${line} line is about “${name}”.`,
  usedNowhere: (name) => `Nothing uses “${name}”.`,
  notReadable: "Some of the text could not be read: mend that first.",
  valueOfItself: (name) => `The value of “${name}” leads back to itself.`,
  otherMeaning: "The lines would mean something else then.",
  show: (from, to, rounded) => `Write ${from} as ${to}${rounded ? " (rounded)" : ""}`,
  showAll: (n, system, rounded) =>
    `Write the ${n} lengths selected in ${system}${rounded ? " (rounded)" : ""}`,
  showPlan: (system) => `Write the whole plan in ${system}`,
  notOnTape: (length) => `${length} is not a fraction of an inch that a tape shows.`,
  moveToShop: (what, file) => `Move ${what} to ${file}`,
  moveToNewShop: (what, file) => `Move ${what} to a new shop file, ${file}`,
  inShopAlready: (name, file) => `There is a “${name}” in ${file} already.`,
  toolsInShop: (file) => `${file} has its tools already.`,
  yardInShop: (file) => `${file} has its yard already.`,
  needsPlan: (name) => `It uses “${name}”, which is made in this plan.`,
  ownShop: "Your own shop file is read in place of the one that the plan names.",
  shopUnread: (file) => `${file} could not be read.`,
  noFolder: "This text is in no folder yet: save it first.",
  makesNoFiles: "The plan names no shop file, and this editor makes none.",
  changed: "The text has changed meanwhile: ask again.",
};

const units = (system: System): string => (system === "inches" ? "pouces" : "millimètres");
const roundedTo = (rounded: boolean): string => (rounded ? " (arrondi)" : "");

const FRENCH: ActionWords = {
  mendAll: (n, total, title) =>
    `Corriger ${n === total ? `les ${n}` : `${n} des ${total}`} problèmes de ce genre, chacun par son premier remède\u00a0: ${title}`,
  mendSpelling: (n) =>
    n === 1 ? "Corriger ce qui est mal écrit" : `Corriger les ${n} choses qui sont mal écrites`,
  accept: (line) => `L’admettre\u00a0: ${line}…`,
  acceptHazard: (line) =>
    `Quelqu’un pourrait se blesser. Admettre ce danger, avec une raison qui sera imprimée\u00a0: ${line}…`,
  nameMeasure: (value, name) => `Donner un nom à cette mesure\u00a0: ${name} = ${value}`,
  nameEverywhere: (value, name, n) =>
    `Donner partout un nom à cette mesure (${n} endroits)\u00a0: ${name} = ${value}`,
  inline: (name, value) => `Écrire ${value} à la place de «\u00a0${name}\u00a0», et enlever sa ligne`,
  inlinePlain: (name) => `Écrire sa valeur à la place de «\u00a0${name}\u00a0», et enlever sa ligne`,
  hasBounds: (name) =>
    `«\u00a0${name}\u00a0» dit combien il peut mesurer au moins ou au plus, et cela serait perdu.`,
  hasNoValue: (name) => `«\u00a0${name}\u00a0» n’a pas encore de valeur.`,
  inOtherFile: (name, file) =>
    `«\u00a0${name}\u00a0» est défini dans ${file}, dont d’autres plans peuvent se servir.`,
  usedElsewhere: (name, file) => `${file} se sert aussi de «\u00a0${name}\u00a0».`,
  usedInWords: (name, line) => `Une ligne «\u00a0${line}\u00a0» porte sur «\u00a0${name}\u00a0».`,
  usedNowhere: (name) => `Rien ne se sert de «\u00a0${name}\u00a0».`,
  notReadable: "Une partie du texte n’a pas pu être lue\u00a0: corrigez-la d’abord.",
  valueOfItself: (name) => `La valeur de «\u00a0${name}\u00a0» ramène à elle-même.`,
  otherMeaning: "Les lignes voudraient alors dire autre chose.",
  show: (from, to, rounded) => `Écrire ${to}${roundedTo(rounded)} à la place de ${from}`,
  showAll: (n, system, rounded) =>
    `Écrire en ${units(system)} les ${n} longueurs choisies${rounded ? " (arrondies)" : ""}`,
  showPlan: (system) => `Écrire tout le plan en ${units(system)}`,
  notOnTape: (length) => `${length} n’est pas une fraction de pouce qu’un mètre ruban montre.`,
  moveToShop: (what, file) => `Déplacer ${what} vers ${file}`,
  moveToNewShop: (what, file) => `Déplacer ${what} vers un nouveau fichier d’atelier, ${file}`,
  inShopAlready: (name, file) => `Il y a déjà «\u00a0${name}\u00a0» dans ${file}.`,
  toolsInShop: (file) => `${file} a déjà ses outils.`,
  yardInShop: (file) => `${file} dit déjà où le bois est acheté.`,
  needsPlan: (name) => `La ligne se sert de «\u00a0${name}\u00a0», qui est défini dans ce plan.`,
  ownShop: "Votre propre fichier d’atelier est lu à la place de celui que le plan nomme.",
  shopUnread: (file) => `${file} n’a pas pu être lu.`,
  noFolder: "Ce texte n’est encore dans aucun dossier\u00a0: enregistrez-le d’abord.",
  makesNoFiles: "Le plan ne nomme aucun fichier d’atelier, et cet éditeur n’en crée pas.",
  changed: "Le texte a changé entre-temps\u00a0: demandez à nouveau.",
};

export const ACTION_WORDS: Readonly<Record<Language, ActionWords>> = { en: ENGLISH, fr: FRENCH };
