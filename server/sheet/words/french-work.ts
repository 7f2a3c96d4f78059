/** What the sheet says of finishes, liners and steps, in French. */
import { ifKnown } from "../../plan";
import { type Display, lengthText, moneyText } from "../../units";
import type { LinerOpening, LiningWork } from "../../worked";
import type { ENGLISH_WORK } from "./english-work";
import { fr } from "./french-type";

export const FRENCH_WORK: typeof ENGLISH_WORK = {
  tin: (size) => `pot de ${size}`,
  offRoll: (length) => `${length} au rouleau`,
  tinsOf: ({ tins }, display) =>
    tins
      .map(({ tin, count }) => {
        const price = tin.price ? ` à ${moneyText(tin.price, display)}${count > 1 ? " l’un" : ""}` : "";
        return `${count === 1 ? "un pot" : `${count} pots`} de ${tin.text}${price}`;
      })
      .join(" et "),
  openingOf,
  staplesOf,
  hiddenLeftOut: (area) => fr`ce qui touche un autre bois n’est pas compté : ${area}`,
  endGrain: (area) => `dont ${area} de bois de bout, qui boit davantage`,
  atLeast: (amount) => `ou, si le produit va plus loin, ${amount}`,
  countedWhole: (parts) => fr`comptés en entier, puisqu’ils ne sont placés nulle part : ${parts}`,
  taken: fr`admis : `,
  tins: (tins) => fr`à acheter : ${tins}`,
  oneSheet: "une seule pièce",
  strip: "bande",
  foldOver: (fold) => `dont ${fold} rabattus par-dessus le bord de chaque côté`,
  overlapped: (overlap) => `chaque bande recouvre la suivante de ${overlap}`,
  offTheRoll: (length) => `${length} de rouleau pour un exemplaire`,
  staples: (how) => fr`agrafes : ${how}`,
  finishedWith: (finish, coats) => `${finish}, ${coats}`,
  time: (minutes) => {
    const [hours, rest] = [Math.floor(minutes / 60), minutes % 60];
    if (minutes >= 48 * 60 && minutes % (24 * 60) === 0) return `${minutes / (24 * 60)} jours`;
    return [hours > 0 ? `${hours} h` : "", rest > 0 || hours === 0 ? `${rest} min` : ""]
      .filter(Boolean)
      .join(" ");
  },
  coats: (n) => `${n} couche${n === 1 ? "" : "s"}`,
  linedWith: (box, liner) => `${box} avec ${liner}`,
  fitNow: (part) => fr`${part} : présenter en place, marquer et couper`,
  lifts: (what, weight) => `${what}, ${weight}`,
  lifted: { piece: "une pièce", unit: "ce qui était déjà assemblé", assembly: "le sous-ensemble" },
  liftOf: (is, part) => fr`${is} : ${part}`,
};

function openingOf(opening: LinerOpening, display: Display): string {
  switch (opening.how) {
    case "whole":
      return opening.why === "no drain"
        ? "la doublure reste entière, puisque le bac ne doit pas se vider"
        : "elle laisse passer l’eau, on ne la coupe donc pas";
    case "over gaps": {
      const { gaps, each, diameter, apart } = opening;
      if (gaps === 0)
        return fr`aucun jour n'a été trouvé entre les planches du fond ; la couper là où l'eau doit sortir`;
      const over =
        gaps === undefined ? "de chaque jour" : gaps === 1 ? "du jour" : `de chacun des ${gaps} jours`;
      const holes = each === undefined ? "des trous" : each === 1 ? "un trou" : `${each} trous`;
      const spaced =
        each === 1 ? "" : `, tous les ${lengthText(apart[0], display)} à ${lengthText(apart[1], display)}`;
      return `au-dessus ${over} entre les planches du fond, percer ${holes} de ${lengthText(diameter, display)}${spaced}`;
    }
    case "over holes": {
      const holes = ifKnown(opening.holes);
      if (!holes) return "au-dessus de chaque trou du fond, en percer un aussi grand";
      const which = holes.count === 1 ? "du trou" : `de chacun des ${holes.count} trous`;
      return `au-dessus ${which} du fond, en percer un de ${lengthText(holes.diameter, display)}`;
    }
    case "unsaid":
      return "rien n’est dit de l’ouverture, puisque le bac ne dit pas comment il se vide";
  }
}

function staplesOf(
  { staples, staplesApart: [close, wide], stapleHeight }: LiningWork,
  display: Display,
): string {
  const count = ifKnown(staples);
  const apart = `tous les ${lengthText(close, display)} (${lengthText(wide, display)} au plus)`;
  const where =
    stapleHeight.approx > 0
      ? `${lengthText(stapleHeight, display)} sous le bord, au-dessus du remplissage`
      : "sur le dessus du bord, puisque le remplissage y arrive";
  return `${count === undefined ? "" : fr`${count} : `}${apart}, ${where}`;
}
