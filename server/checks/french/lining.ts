/** Liners, drains and tins in French, and what is taken for granted of them. */
import { ifKnown } from "../../plan";
import type { Span } from "../../trade";
import {
  type Display,
  ENGLISH_NUMBERS,
  LENGTH,
  lengthText,
  moneyText,
  type Quantity,
  roughly,
} from "../../units";
import type { Assumption, Drainage, DrainHoles, FinishNeed, LinerOpening, LiningWork } from "../../worked";
import { sheetWords } from "../lining-words";
import { de } from "./elision";
import { cited } from "./sources";
import { et, fr } from "./type";

export function assumed(assumption: Assumption, display: Display): string {
  const long = (length: Quantity): string => lengthText(length, display);
  switch (assumption.kind) {
    case "spread": {
      const { finish, smooth, rough } = assumption;
      const { withUnit } = display.numbers ?? ENGLISH_NUMBERS;
      const goes = ({ low, high }: Span): string => withUnit(`de ${low} à ${high}`, "sqft per gal");
      const spread = rough ? `${goes(smooth)}, sur bois brut ${goes(rough)}` : goes(smooth);
      return fr`une couche ${de(finish)} couvre ${spread} ; l'achat est compté avec le moins`;
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

export function openingOf(opening: LinerOpening, display: Display): string {
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

export function staplesOf(
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

/** What the plan says of the drain, and where its holes go. */
export function drainOf({ how, holes, gaps }: Drainage, display: Display): string {
  if (how === undefined) return "le plan ne dit pas comment";
  if (how === "nothing") return fr`aucun, et c'est donc le contenu le plus lourd qui compte`;
  if (how === "gaps") return `par les jours entre les planches du fond${gaps ? gapsOf(gaps, display) : ""}`;
  const known = holes && ifKnown(holes);
  return known ? holesOf(known, display) : "par des trous percés";
}

function gapsOf({ count, least, most, long }: NonNullable<Drainage["gaps"]>, display: Display): string {
  if (count === 0) return fr`, mais aucun n'a été trouvé`;
  const [from, to] = [lengthText(least, display), lengthText(most, display)];
  const wide = from === to ? from : `${from} à ${to}`;
  return fr` : ${count} de ${wide}, sur ${lengthText(long, display)} de long`;
}

function holesOf({ count, diameter, grid }: DrainHoles, display: Display): string {
  const holes = `par ${count === 1 ? "un trou" : `${count} trous`} de ${lengthText(diameter, display)}`;
  if (!grid || count === 1) return holes;
  const { rows, inRow, apartInRow, apartRows } = grid;
  const near = (q: Quantity): string => lengthText(roughly(LENGTH, q.approx), display);
  const row = `${inRow} dans le sens de la longueur, tous les ${near(apartInRow)}`;
  const spread =
    rows === 1 ? `une rangée de ${row}` : `${rows} rangées de ${row}, les rangées à ${near(apartRows)}`;
  return fr`${holes} : ${spread}, et deux fois moins loin des côtés`;
}

/** What is usual for a box of that size. */
export function advisedOf({ advised }: Drainage, display: Display): string {
  const { count, diameter, apart, source } = advised;
  const few = count <= 4 ? "trous ou plus" : "trous";
  const spaced =
    count <= 4 ? "" : `, tous les ${lengthText(apart[0], display)} à ${lengthText(apart[1], display)}`;
  return `${count} ${few} de ${lengthText(diameter, display)}${spaced} (${cited(source)})`;
}

/** The sheet that a liner is cut from, or its strips side by side; empty where it is not known. */
export function cutOf({ cuts, overlap }: LiningWork, display: Display): string {
  const list = ifKnown(cuts) ?? [];
  const over = ifKnown(overlap);
  const [first] = list;
  if (!first) return "";
  if (first.what === "sheet") return `une seule pièce de ${sheetWords(first, display)}`;
  const strips = list.map((c) => `${c.count === 1 ? "une" : c.count} de ${sheetWords(c, display)}`);
  const laid = over ? `, côte à côte, chacune recouvre la suivante de ${lengthText(over, display)}` : "";
  return fr`bandes : ${et(strips)}${laid}`;
}

/** The tins to buy. */
export const tinsOf = ({ tins }: FinishNeed, display: Display): string =>
  tins
    .map(({ tin, count }) => {
      const price = tin.price ? ` à ${moneyText(tin.price, display)}${count > 1 ? " l’un" : ""}` : "";
      return `${count === 1 ? "un pot" : `${count} pots`} de ${tin.text}${price}`;
    })
    .join(" et ");
