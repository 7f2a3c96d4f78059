/** Why something cannot be renamed, in every language. */
import type { Language } from "../checks";

interface RenameWords {
  readonly noName: string;
  readonly undeclared: (name: string) => string;
  readonly size: (size: string) => string;
  readonly lost: (name: string) => string;
  readonly twice: (name: string, file: string, line: number) => string;
  readonly form: (name: string) => string;
  /** `kind`: "a part". */
  readonly taken: (name: string, kind: string, file: string, line: number) => string;
  readonly meansElse: (text: string, file: string, line: number) => string;
  readonly unreadable: (name: string, file: string) => string;
  readonly changed: string;
}

const ENGLISH: RenameWords = {
  noName: "There is no name here that could be changed.",
  undeclared: (name) => `“${name}” is a word that no line of the plan gives, so it cannot be changed here.`,
  size: (size) =>
    `“${size}” is a size, not a name. To name the boards, write “stock NAME of ${size}” and use that name.`,
  lost: (name) =>
    `“${name}” is not changed while a file that the plan names cannot be read: it may be used there.`,
  twice: (name, file, line) =>
    `“${name}” is given twice, the second time in ${file}, line ${line}. Give one of them another name by hand first.`,
  form: (name) =>
    `“${name}” cannot be a name. Names are small letters, digits and hyphens, and begin with a letter.`,
  taken: (name, kind, file, line) => `“${name}” is ${kind} already, in ${file}, line ${line}.`,
  meansElse: (text, file, line) =>
    `With that name, “${text}” in ${file}, line ${line}, would mean something else.`,
  unreadable: (name, file) => `With the name “${name}”, ${file} would no longer be read as it is now.`,
  changed: "Nothing was renamed, since a file changed meanwhile. Try once more.",
};

const FRENCH: RenameWords = {
  noName: "Il n’y a ici aucun nom à changer.",
  undeclared: (name) =>
    `«\u00a0${name}\u00a0» est un mot qu’aucune ligne du plan ne donne\u00a0: il ne peut pas être changé ici.`,
  size: (size) =>
    `«\u00a0${size}\u00a0» est une section, pas un nom. Pour nommer ces planches, écrivez «\u00a0stock NOM of ${size}\u00a0» et employez ce nom.`,
  lost: (name) =>
    `«\u00a0${name}\u00a0» reste tel quel tant qu’un fichier nommé par le plan ne peut pas être lu\u00a0: il y est peut-être employé.`,
  twice: (name, file, line) =>
    `«\u00a0${name}\u00a0» est donné deux fois, la seconde dans ${file}, ligne ${line}. Donnez d’abord vous-même un autre nom à l’un des deux.`,
  form: (name) =>
    `«\u00a0${name}\u00a0» ne peut pas être un nom. Un nom se compose de petites lettres, de chiffres et de traits d’union, et commence par une lettre.`,
  taken: (name, kind, file, line) => `«\u00a0${name}\u00a0» est déjà ${kind}, dans ${file}, ligne ${line}.`,
  meansElse: (text, file, line) =>
    `Avec ce nom, «\u00a0${text}\u00a0» dans ${file}, ligne ${line}, voudrait dire autre chose.`,
  unreadable: (name, file) => `Avec le nom «\u00a0${name}\u00a0», ${file} se lirait autrement qu’à présent.`,
  changed: "Rien n’a été renommé, car un fichier a changé entre-temps. Essayez encore une fois.",
};

export const RENAME_WORDS: Readonly<Record<Language, RenameWords>> = { en: ENGLISH, fr: FRENCH };
