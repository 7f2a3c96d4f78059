/** What the sheet says of finishes, liners and steps, in French. */
import { assumed, openingOf, staplesOf, tinsOf } from "../../checks/french/lining";
import { fr } from "../../checks/french/type";
import type { ENGLISH_WORK } from "./english-work";

export const FRENCH_WORK: typeof ENGLISH_WORK = {
  tin: (size) => `pot de ${size}`,
  offRoll: (length) => `${length} au rouleau`,
  tinsOf,
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
