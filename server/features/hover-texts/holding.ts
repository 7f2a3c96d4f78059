/** What a hover says of loads and of what bears them, in every language; in words, unless it says Markdown. */
import type { Language } from "../../checks";
import { de } from "../../checks/french/elision";
import { STATES } from "../../checks/french/states";
import { fr } from "../../checks/french/type";
import type { SaidLoad, Verdict } from "../../worked";

type State = Verdict["state"] | "overloaded" | "claims nothing";

const ENGLISH = {
  /** The first words of Markdown paragraphs; what follows is Markdown. */
  carries: (what: string) => `**Carries** ${what}`,
  wallOf: (box: string, which: string) =>
    `**As a wall of ${box}** it is pressed outwards by its fill${which}`,
  presses: (what: string) => `**Presses** ${what}`,
  load: (what: string) => `**Load**: ${what}`,

  worst: (piece: string, count: number) => ` (${piece}, the worst of ${count})`,
  noStrength: "What it can bear is not known: no strength is printed for its wood and size",
  fewSupports: "What it can bear is not known: fewer than two places hold it",
  wallFill:
    "It must bear wet fill with a blocked drain; how far it bows is told of moist fill and an open one",
  carried: (all: string, parts: readonly string[]) => `${all}: ${parts.join(", ")}`,
  part: (weight: string, from: "own" | "fill" | "said" | "passed" | "usual" | "moving") =>
    `${weight} ${
      {
        own: "its own",
        fill: "of wet fill",
        said: "that the plan puts on it",
        passed: "handed down to it",
        usual: "of somebody at the worst place",
        moving: "that comes and goes",
      }[from]
    }`,

  loadRow: "Load",
  canBear: "Can bear",
  canHold: "Can hold",
  uses: "Uses",
  soItIs: "So it is",
  bends: (bend: string) => `, bends ${bend}`,
  mayBend: (bend: string) => `, a bend of ${bend}`,
  state: (state: State): string => state,
  percent: (percent: number) => `${percent}%`,
  little: "under 1%",
  times: (times: number) => `${times} times`,
  nothing: "nothing",

  onFloor: (weight: string, feet: number, piece: string) =>
    `${weight} on the floor${feet > 1 ? `, of ${feet} feet the one that presses hardest` : ""}: ${piece}`,
  noFootLimit: "; not compared, since the plan gives no foot limit",
  footLimit: (limit: string, uses: string) =>
    `; ${limit} is the foot limit you typed${uses === "" ? "" : `, uses ${uses}`}`,

  jointUnknown:
    "What its screws hold is not known: no table has the gravity of the wood, or the strength of the screw",
  /** Behind the load. */
  onScrews: (
    from: "weight" | "fill",
    way: "across" | "pulled",
    screws: string,
    first: string,
    second: string,
  ) =>
    `${from === "fill" ? " of wet fill, its drain blocked," : ""} ${way === "across" ? "hangs on" : "pulls at"} ${screws} between ${first} and ${second}`,

  underFill: (part: string) => `${part}, under its fill`,
  asWall: (part: string) => `${part}, as a wall`,
  rowNot: "what it can bear is not known",
  row: (force: string, bears: string, bend: string, uses: string, state: string) =>
    `${force} of ${bears}${bend}, ${uses}: ${state}`,
  bendOf: (bend: string, limit: string) => `, bends ${bend} of ${limit}`,

  loadOn: (weight: string, how: SaidLoad["how"], thing: string) =>
    `${weight} ${
      {
        spread: `spread over ${thing}`,
        middle: `on the middle of ${thing}`,
        anywhere: `on the worst place of ${thing}`,
      }[how]
    }`,
  nothingBends: "Nothing that is placed bends under it",
  anywhere: "It may stand anywhere, and counts as what comes and goes",
  stays: "It stays there, and counts in the long run",
  seat: (weight: string, low: string, high: string, source: string) =>
    `Where no load line says otherwise, somebody of ${weight} is taken to sit or stand on any flat top ${low} to ${high} high, at the worst place; ${source}`,
};

const FRENCH: typeof ENGLISH = {
  carries: (what) => `**Porte** ${what}`,
  wallOf: (box, which) => fr`**Paroi ${de(box)}** : son contenu la pousse vers le dehors${which}`,
  presses: (what) => fr`**Appui** : ${what}`,
  load: (what) => fr`**Charge** : ${what}`,

  worst: (piece, count) => ` (${piece}, la plus chargée des ${count})`,
  noStrength: fr`On ne sait pas ce qu'elle peut porter : aucune table n'a la résistance de ce bois à cette taille`,
  fewSupports: fr`On ne sait pas ce qu'elle peut porter : moins de deux endroits la tiennent`,
  wallFill: fr`Elle doit retenir un contenu gorgé d'eau, l'écoulement bouché ; de combien elle bombe se dit d'un contenu humide, l'écoulement libre`,
  carried: (all, parts) => fr`${all} : ${parts.join(", ")}`,
  part: (weight, from) =>
    `${weight} ${
      {
        own: "de son propre poids",
        fill: fr`de contenu gorgé d'eau`,
        said: "que le plan y met",
        passed: fr`que d'autres pièces lui transmettent`,
        usual: fr`de quelqu'un au pire endroit`,
        moving: "qui vont et viennent",
      }[from]
    }`,

  loadRow: "Charge",
  canBear: "Peut porter",
  canHold: "Peut tenir",
  uses: "Part prise",
  soItIs: "État",
  bends: (bend) => `, fléchit de ${bend}`,
  mayBend: (bend) => `, flèche de ${bend}`,
  state: (state) =>
    ({
      within: STATES.within,
      "too weak": STATES.tooWeak,
      "bends too far": STATES.bendsTooFar,
      overloaded: STATES.overloaded,
      "claims nothing": STATES.claimsNothing,
    })[state],
  percent: (percent) => fr`${percent} %`,
  little: fr`moins de 1 %`,
  times: (times) => `${times} fois`,
  nothing: "rien",

  onFloor: (weight, feet, piece) =>
    fr`${weight} sur le plancher${feet > 1 ? `, le pied qui appuie le plus des ${feet}` : ""} : ${piece}`,
  noFootLimit: fr` ; non comparé, puisque le plan ne donne pas de limite pour un pied`,
  footLimit: (limit, uses) =>
    fr` ; ${limit} sont la limite que vous avez écrite pour un pied${uses === "" ? "" : fr`, part prise : ${uses}`}`,

  jointUnknown: fr`On ne sait pas ce que tiennent ses vis : aucune table n'a la densité du bois ou la résistance de la vis`,
  onScrews: (from, way, screws, first, second) =>
    fr`${from === "fill" ? fr` de contenu gorgé d'eau, l'écoulement bouché,` : ""} ${way === "across" ? "pendent à" : "tirent sur"} ${screws} entre ${first} et ${second}`,

  underFill: (part) => `${part}, sous son contenu`,
  asWall: (part) => `${part}, en paroi`,
  rowNot: fr`on ne sait pas ce qu'elle peut porter`,
  row: (force, bears, bend, uses, state) => fr`${force} sur ${bears}${bend}, ${uses} : ${state}`,
  bendOf: (bend, limit) => `, fléchit de ${bend} sur ${limit}`,

  loadOn: (weight, how, thing) =>
    `${weight} ${
      {
        spread: `répartis sur ${thing}`,
        middle: `au milieu ${de(thing)}`,
        anywhere: `au pire endroit ${de(thing)}`,
      }[how]
    }`,
  nothingBends: "Rien de ce qui est placé ne fléchit dessous",
  anywhere: fr`Elle peut être n'importe où, et compte pour ce qui va et vient`,
  stays: "Elle y reste, et compte à la longue",
  seat: (weight, low, high, source) =>
    fr`Là où aucune ligne load ne dit autre chose, on compte quelqu'un de ${weight} qui s'assied ou monte sur tout dessus plat entre ${low} et ${high} de haut, au pire endroit ; ${source}`,
};

export const HOLDING: Readonly<Record<Language, typeof ENGLISH>> = { en: ENGLISH, fr: FRENCH };
