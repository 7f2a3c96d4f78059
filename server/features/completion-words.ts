/** What is said beside an offer, in every language; what the language's own words mean stands in form-words.ts. */
import type { Language, ProblemClass } from "../checks";

export interface CompletionWords {
  readonly classes: Readonly<Record<ProblemClass, string>>;
  readonly detail: (kind: string, worth: string) => string;
  readonly from: (file: string) => string;
  readonly shopOf: (plan: string) => string;
  readonly every: (name: string) => string;
  readonly sides: (count: number) => string;
  readonly really: (size: string) => string;
  readonly known: Readonly<Record<"fills" | "finishes" | "liners", string>>;
  readonly units: Readonly<Record<string, string>>;
  readonly wholeEntry: string;
  /** Of a direction: 0 left to right, 1 front to back, 2 up and down. */
  readonly decides: readonly [string, string, string];
  readonly notPlaced: string;
  readonly touches: (name: string) => string;
  readonly open: (kind: string, title: string) => string;
  readonly concerned: string;
  readonly usualLength: string;
  readonly sold: string;
  readonly through: (through: string, bite: string, into: string) => string;
  readonly comesOut: (proud: string) => string;
  readonly nearTip: (wood: string) => string;
  readonly short: (into: string) => string;
  readonly little: (bite: string, into: string) => string;
  readonly bitFor: (size: string) => string;
  readonly longest: (name: string, length: string) => string;
  readonly narrows: Readonly<Record<string, string>>;
}

const ENGLISH: CompletionWords = {
  classes: { error: "error", hazard: "hazard", warning: "warning", hint: "hint" },
  detail: (kind, worth) => `${kind}: ${worth}`,
  from: (file) => `, from ${file}`,
  shopOf: (plan) => `shop file of ${plan}`,
  every: (name) => `every ${name}`,
  sides: (count) => `${count} sides`,
  really: (size) => `really ${size}`,
  known: {
    fills: "a fill every plan knows",
    finishes: "a finish every plan knows",
    liners: "a liner every plan knows",
  },
  units: {
    '"': "inches",
    "'": "feet",
    mm: "millimetres",
    cm: "centimetres",
    "°": "degrees, off square",
    lb: "pounds",
    kg: "kilograms",
    psf: "pounds on a square foot",
    kPa: "kilopascals",
    "lb/cuft": "pounds in a cubic foot",
    "kg/m3": "kilograms in a cubic metre",
    sqft: "square feet",
    m2: "square metres",
    qt: "quarts",
    gal: "gallons",
    cuft: "cubic feet",
    L: "litres",
    min: "minutes",
    h: "hours",
    days: "days",
    "%": "a share",
  },
  wholeEntry: "whole, with places to fill in",
  decides: ["says where left to right", "says where front to back", "says how high"],
  notPlaced: "stands nowhere yet",
  touches: (name) => `touches ${name}`,
  open: (kind, title) => `${kind} in this plan: ${title}`,
  concerned: "what the problem is about",
  usualLength: "a usual length",
  sold: "a length usually sold",
  through: (through, bite, into) => `through ${through}, ${bite} into ${into}`,
  comesOut: (proud) => `comes out ${proud}`,
  nearTip: (wood) => `only ${wood} of wood over its tip`,
  short: (into) => `does not reach ${into}`,
  little: (bite, into) => `only ${bite} in ${into}`,
  bitFor: (size) => `the bit for ${size} in this wood`,
  longest: (name, length) => `The longest ${name} on sale is ${length}.`,
  narrows: {
    left: "Those left of the middle of the group.",
    right: "Those right of the middle of the group.",
    front: "Those in front of the middle of the group.",
    back: "Those behind the middle of the group.",
    top: "Those above the middle of the group.",
    bottom: "Those below the middle of the group.",
    upper: "Those above the middle of the group.",
    lower: "Those below the middle of the group.",
    middle: "The middle one of the group.",
  },
};

const FRENCH: CompletionWords = {
  classes: { error: "erreur", hazard: "danger", warning: "avertissement", hint: "conseil" },
  detail: (kind, worth) => `${kind}\u00a0: ${worth}`,
  from: (file) => `, de ${file}`,
  shopOf: (plan) => `fichier d’atelier de ${plan}`,
  every: (name) => `chaque ${name}`,
  sides: (count) => `${count} côtés`,
  really: (size) => `en réalité ${size}`,
  known: {
    fills: "un contenu que tout plan connaît",
    finishes: "une finition que tout plan connaît",
    liners: "une doublure que tout plan connaît",
  },
  units: {
    '"': "pouces",
    "'": "pieds",
    mm: "millimètres",
    cm: "centimètres",
    "°": "degrés, par rapport à l’équerre",
    lb: "livres",
    kg: "kilogrammes",
    psf: "livres par pied carré",
    kPa: "kilopascals",
    "lb/cuft": "livres par pied cube",
    "kg/m3": "kilogrammes par mètre cube",
    sqft: "pieds carrés",
    m2: "mètres carrés",
    qt: "quarts",
    gal: "gallons",
    cuft: "pieds cubes",
    L: "litres",
    min: "minutes",
    h: "heures",
    days: "jours",
    "%": "un pourcentage",
  },
  wholeEntry: "en entier, avec des blancs à remplir",
  decides: ["dit où, de gauche à droite", "dit où, de l’avant à l’arrière", "dit à quelle hauteur"],
  notPlaced: "n’est encore placé nulle part",
  touches: (name) => `touche ${name}`,
  open: (kind, title) => `${kind} dans ce plan\u00a0: ${title}`,
  concerned: "ce dont il est question",
  usualLength: "une longueur courante",
  sold: "une longueur couramment vendue",
  through: (through, bite, into) => `traverse ${through}, ${bite} dans ${into}`,
  comesOut: (proud) => `ressort de ${proud}`,
  nearTip: (wood) => `seulement ${wood} de bois devant sa pointe`,
  short: (into) => `n’atteint pas ${into}`,
  little: (bite, into) => `seulement ${bite} dans ${into}`,
  bitFor: (size) => `la mèche pour ${size} dans ce bois`,
  longest: (name, length) => `La plus longue ${name} en vente mesure ${length}.`,
  narrows: {
    left: "Celles à gauche du milieu du groupe.",
    right: "Celles à droite du milieu du groupe.",
    front: "Celles devant le milieu du groupe.",
    back: "Celles derrière le milieu du groupe.",
    top: "Celles au-dessus du milieu du groupe.",
    bottom: "Celles au-dessous du milieu du groupe.",
    upper: "Celles au-dessus du milieu du groupe.",
    lower: "Celles au-dessous du milieu du groupe.",
    middle: "Celle du milieu du groupe.",
  },
};

export const COMPLETION_WORDS: Readonly<Record<Language, CompletionWords>> = { en: ENGLISH, fr: FRENCH };
