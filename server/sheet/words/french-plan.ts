/** What the sheet says of the plan as a whole, of its rules, rings and boxes, in French. */
import { de } from "../../checks/french/elision";
import { FILLS } from "../../checks/french/names";
import { citedInFull } from "../../checks/french/sources";
import { fr } from "../../checks/french/type";
import type { LumberStandard } from "../../trade";
import type { Box, Wetness } from "../../worked";
import type { SheetWords } from "./english";

const LUMBER: Readonly<Record<LumberStandard, string>> = {
  "ps20-dry": "PS 20, raboté sec",
  "ps20-green": "PS 20, raboté vert",
  "planed-metric": "raboté, cotes métriques",
};

const DRAINS: Readonly<Record<NonNullable<Box["drains"]>, string>> = {
  gaps: "par les jours entre les planches",
  holes: "par des trous percés",
  nothing: fr`ne s'écoule pas`,
};

const WETNESS: Readonly<Record<Wetness, string>> = { dry: "sec", moist: "humide", saturated: "gorgé d’eau" };

const KERF_FROM = { plan: "(selon le plan)", tools: "(selon les outils)", assumed: "(admis)" } as const;

export const FRENCH_PLAN: SheetWords["plan"] = {
  untitled: "Plan sans titre",

  undrawn: {
    all: "un dessin",
    unplaced: fr`aucune ligne \`place\` ne dit où se tient une pièce`,
    unknown: fr`aucune ligne \`place\` n'a pu être calculée`,
    some: (parts) => `${parts} sur le dessin`,
    unknownPlaces: fr`leur place n'est pas calculée`,
  },

  facts: {
    writtenBy: "Auteur",
    licence: "Licence",
    language: "Langage",
    weight: "Poids",
    make: "Exemplaires",
    stands: "Emplacement",
    anchored: "Fixation",
    space: "Place disponible",
    wayIn: "Passage",
    floorLimit: "Charge limite du sol",
    alsoOnFloor: "Aussi sur le sol",
    footLimit: "Charge limite par pied",
    budget: "Budget",
    lumber: "Sections du bois",
    sawCut: "Trait de scie",
    spares: "Rechanges",
    shop: "Atelier",
    yard: "Marchand de bois",
    tools: "Outils",
  },
  languageVersion: (version) => `version ${version} du langage des plans`,
  dryWood: (weight) => `${weight} de bois sec`,
  dryWoodEach: (weight) => `${weight} de bois sec, chacun`,
  makes: (n) => fr`${n} fois l'ensemble`,
  settings: { outdoors: fr`à l'extérieur`, indoors: fr`à l'intérieur` },
  nearChildren: "près d’enfants",
  nearGuard: "près d’un garde-corps",
  sides: {
    wide: (length) => `largeur ${length}`,
    deep: (length) => `profondeur ${length}`,
    high: (length) => `hauteur ${length}`,
  },
  limit: (limit, by) => `${limit}${by === "" ? ", sans dire de qui" : `, selon ${by}`}`,
  lumber: LUMBER,
  kerf: (kerf, from) => `${kerf} ${KERF_FROM[from]}`,
  sparesIn: (count, per) => `${count} sur ${per}`,

  notChecked: "non vérifié",
  must: (value, holds) => fr`ici ${value}${holds ? "" : fr` : non respecté`}`,
  closes: "se ferme aux graduations du plan",

  boxes: {
    inside: "Intérieur",
    holds: "Contenance à ras bord",
    filled: (fill) => `Rempli ${de(FILLS[fill] ?? fill)}`,
    fill: (wetness) => `Remplissage, ${WETNESS[wetness]}`,
    weightsFrom: "Source des poids",
    source: citedInFull,
    asSaid: "comme le dit le plan",
    taken: (weight) =>
      fr`compté à ${weight} lb/pi³ une fois gorgé d'eau, comme de la terre, faute d'indication dans le plan`,
    empty: "Bac vide",
    onFloor: "Sur le sol, gorgé d’eau",
    limit: "Charge limite indiquée",
    uses: (used, share) => `prend ${used} des ${share} qui en restent`,
    drains: "Écoulement",
    drainsBy: DRAINS,
    grows: "Cultures",
  },

  square: {
    ring: (name, count) =>
      fr`${name}${count > 1 ? `, chacun des ${count}` : ""}, d'angle extérieur à angle extérieur`,
    box: (name) => `${name}, à l’intérieur, au bord`,
    feet: fr`les pieds, d'angle extérieur à angle extérieur au sol`,
  },
};
