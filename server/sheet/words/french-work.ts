/** What the sheet says of finishes, liners and steps, in French. */
import { de } from "../../checks/french/elision";
import { ifKnown } from "../../plan";
import type { Span } from "../../trade";
import { type Display, lengthText, moneyText, type Quantity } from "../../units";
import type { Assumption, LinerOpening, LiningWork } from "../../worked";
import type { ENGLISH_WORK } from "./english-work";
import { cited } from "./french-sources";
import { et, fr } from "./french-type";

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
  assumed,
  tins: (tins) => fr`à acheter : ${tins}`,
  oneSheet: "une seule pièce",
  strip: "bande",
  foldOver: (fold) => `dont ${fold} rabattus par-dessus le bord de chaque côté`,
  overlapped: (overlap) => `chaque bande recouvre la suivante de ${overlap}`,
  besideOnRoll: (boxes, length) => fr`côte à côte sur ${length} de rouleau : ${boxes.join(", ")}`,
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

function assumed(assumption: Assumption, display: Display): string {
  const long = (length: Quantity): string => lengthText(length, display);
  switch (assumption.kind) {
    case "spread": {
      const { finish, smooth, rough } = assumption;
      const goes = ({ low, high }: Span): string => `de ${low} à ${high} pi² par gal US`;
      const spread = rough ? `${goes(smooth)}, sur bois brut ${goes(rough)}` : goes(smooth);
      return fr`une couche de ${finish} couvre ${spread} ; l'achat est compté avec le moins`;
    }
    case "drying": {
      const { low, high } = assumption.hours;
      return `une couche sèche en ${high} h, le plus long de ${low} à ${high}`;
    }
    case "coats":
      return `${assumption.coats} couches, puisque ni la ligne ni le produit ne le disent`;
    case "end grain": {
      const { low, high } = assumption.times;
      return fr`le bois de bout boit ${high} fois ce que boit une face, le plus de ${low} à ${high} ; ${cited(assumption.source)}`;
    }
    case "rough wood":
      return fr`le bois brut boit ${assumption.times} fois ce que boit le bois raboté ; ${cited(assumption.source)}`;
    case "whole pieces":
      return fr`chaque pièce ${de(et(assumption.parts))} est comptée en entier, puisqu'aucune ligne ne dit où elle se place`;
    case "fold":
      return fr`${long(assumption.length)} au-delà du bord de chaque côté, puisque la ligne ne dit aucun rabat ; ${cited(assumption.source)}`;
    case "overlap":
      return fr`les bandes se recouvrent de ${long(assumption.length)}, puisque la ligne ne dit aucun recouvrement ; ${cited(assumption.source)}`;
    case "sloping sides":
      return fr`ses côtés sont inclinés : le plus grand du bord et du fond est compté, avec des côtés droits`;
    case "by its name":
      return assumption.holdsWater
        ? fr`${assumption.roll} retient l'eau, puisque son nom n'est ni celui d'une toile ni celui d'un grillage`
        : fr`${assumption.roll} laisse passer l'eau, d'après son nom`;
    case "staples":
      return fr`agrafes espacées de ${long(assumption.least)} à ${long(assumption.most)} ; ${cited(assumption.source)}`;
  }
}

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
