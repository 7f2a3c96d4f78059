/** What a hover says of boxes and of the fills that go into them, in every language. Arguments are Markdown. */
import type { Language } from "../../checks";
import { de } from "../../checks/french/elision";
import { FILLS } from "../../checks/french/names";
import { fr } from "../../checks/french/type";
import type { Box, FillInfo, Wetness } from "../../worked";

const ENGLISH = {
  box: (name: string, inside: string) => `${name}, a box${inside === "" ? "" : `: inside ${inside}`}`,
  holds: (volume: string) => `Holds ${volume} to the rim`,
  howMuch: "How much it holds",
  filled: (fill: string, volume: string) => `Filled with ${fill}: ${volume}`,
  fillWeight: "What its fill weighs",
  weight: (weight: string, wetness: Wetness) => `${weight} ${wetness}`,
  weighs: (fill: string, weights: string, from: string) => `The ${fill} weighs ${weights}; ${from}`,
  fill: "fill",
  fillAssumed: ({ assumed }: FillInfo) => `The fill is ${assumed}`,
  empty: (weight: string, from: Box["ownFrom"]) =>
    `Empty it weighs ${weight}${from === "said" ? ", as typed" : ", its walls and bottom without screws"}`,
  emptyWeight: "What it weighs empty",
  outline: (size: string, from: NonNullable<Box["outline"]>["from"]) =>
    `Stands on ${size}: ${
      {
        said: "as typed",
        placed: "around its walls as they stand",
        "inside and walls": "its inside and the thickness of its walls",
        inside: "its inside alone, since its walls are not named",
      }[from]
    }`,
  pressure: "What it presses on the floor",
  presses: (pressure: string, ownLeftOut: boolean) =>
    `Presses ${pressure} on the floor it stands on, saturated${ownLeftOut ? ", its own weight left out" : ""}`,
  noLimit: "; not checked against a floor, since the plan gives no floor limit",
  uses: (number: string, left: string) => `: uses ${number} of ${left}`,
  typed: (limit: string) => `the ${limit} you typed`,
  share: (share: string, limit: string) => `the ${share} that other things leave of ${limit}`,

  declaredFill: (name: string, densities: string) => `${name}, a fill: ${densities}`,
  builtFill: (name: string, _fill: string, densities: string) =>
    `${name}, a fill every plan knows: ${densities}`,
  saidSaturated: "As the plan says. Weight on a floor is judged saturated.",
  takenSaturated: (weight: number, source: string) =>
    `Its saturated weight is taken as ${weight} lb/cuft, like soil, since the plan does not say; ${source}`,
  judged: "Weight on a floor is judged saturated.",
  row: (wetness: Wetness, source: string, range: string) =>
    `${wetness.charAt(0).toUpperCase()}${wetness.slice(1)}: ${source}${range === "" ? "" : `; ${range}`}`,
  range: (range: string, unit: string) => `${range} ${unit}`,
  noWeights: "its weights are not said",
};

const WETNESS: Readonly<Record<Wetness, string>> = {
  dry: "à sec",
  moist: "humide",
  saturated: fr`une fois gorgé d'eau`,
};

/** What is published of a fill beside its numbers. */
export const RANGES: Readonly<Record<string, string>> = {
  "loose earth; rammed 100": fr`terre meuble ; damée 100`,
  soaked: "détrempée",
  "sand and gravel": "sable et gravier",
};

const FRENCH: typeof ENGLISH = {
  box: (name, inside) => fr`${name}, un bac${inside === "" ? "" : fr` : intérieur ${inside}`}`,
  holds: (volume) => `Contient ${volume} à ras bord`,
  howMuch: "Contenance",
  filled: (fill, volume) => fr`Rempli ${de(fill)} : ${volume}`,
  fillWeight: "Poids de son contenu",
  weight: (weight, wetness) => `${weight} ${WETNESS[wetness]}`,
  weighs: (fill, weights, from) => fr`Poids, ${fill} : ${weights} ; ${from}`,
  fill: "contenu",
  fillAssumed: ({ taken }) =>
    fr`Son contenu est compté pour ${taken ?? "?"} lb/pi³ une fois gorgé d'eau, comme de la terre, puisque le plan ne le dit pas`,
  empty: (weight, from) =>
    `Vide, il pèse ${weight}${from === "said" ? ", comme écrit" : ", parois et fond, sans les vis"}`,
  emptyWeight: "Poids à vide",
  outline: (size, from) =>
    fr`Emprise ${size} : ${
      {
        said: "comme écrit",
        placed: fr`autour de ses parois, telles qu'elles sont placées`,
        "inside and walls": fr`son intérieur et l'épaisseur de ses parois`,
        inside: "son intérieur seul, puisque ses parois ne sont pas nommées",
      }[from]
    }`,
  pressure: "Pression sur le plancher",
  presses: (pressure, ownLeftOut) =>
    fr`Pression sur le plancher : ${pressure}, gorgé d'eau${ownLeftOut ? ", son propre poids laissé de côté" : ""}`,
  noLimit: fr` ; non vérifié pour un plancher, puisque le plan ne donne pas de limite`,
  uses: (number, left) => fr` : prend ${number} des ${left}`,
  typed: (limit) => `${limit} que vous avez écrits`,
  share: (share, limit) => `${share} que le reste laisse des ${limit}`,

  declaredFill: (name, densities) => fr`${name}, un contenu : ${densities}`,
  builtFill: (name, fill, densities) => {
    const french = FILLS[fill] ?? fill;
    return fr`${name}, un contenu que tout plan connaît${french === fill ? "" : `, ${french}`} : ${densities}`;
  },
  saidSaturated: fr`D'après le plan. Sur un plancher, c'est le poids gorgé d'eau qui compte.`,
  takenSaturated: (weight, source) =>
    fr`Son poids gorgé d'eau est compté pour ${weight} lb/pi³, comme celui de la terre, puisque le plan ne le dit pas ; ${source}`,
  judged: fr`Sur un plancher, c'est le poids gorgé d'eau qui compte.`,
  row: (wetness, source, range) => {
    const state = WETNESS[wetness];
    return fr`${state.charAt(0).toUpperCase()}${state.slice(1)} : ${source}${range === "" ? "" : fr` ; ${range}`}`;
  },
  range: (range, unit) => `${RANGES[range] ?? range.replace(/^(\S+) to (\S+)$/, "$1 à $2")} ${unit}`,
  noWeights: "ses poids ne sont pas dits",
};

export const BOX: Readonly<Record<Language, typeof ENGLISH>> = { en: ENGLISH, fr: FRENCH };
