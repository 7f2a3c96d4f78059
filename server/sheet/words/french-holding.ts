/** What the sheet says of loads and of what bears them, of roots, and of gaps through the year, in French. */
import { de } from "../../checks/french/elision";
import { STATES } from "../../checks/french/states";
import { fr } from "../../checks/french/type";
import type { Wetting } from "../../trade";
import type { RootRoom, Try } from "../../worked";
import type { ENGLISH_HOLDING } from "./english-holding";

const TIPS: Readonly<Record<Try["by"], string>> = {
  itself: "basculement sans rien",
  narrow: "basculement, poussée en haut",
  tall: "basculement, poussée en haut",
  push: "basculement, poussée en haut",
  seat: fr`basculement, quelqu'un au bord`,
  load: "basculement, sous sa charge",
  wind: "basculement, par une rafale",
  leaned: "basculement, une fois un peu penché",
};

const FASTENERS = {
  screw: ["vis", "vis"],
  nail: ["clou", "clous"],
  bolt: ["boulon", "boulons"],
} as const;

const PULLED = { screw: ["arrachée", "arrachées"], other: ["arraché", "arrachés"] } as const;

const ROOTS: Readonly<Record<RootRoom["state"], string>> = {
  enough: "assez",
  "less deep": "moins profond",
  less: "moins de terre",
  open: "ouvert sur le sol dessous",
  "no table": "dans aucune table",
  "no room known": "inconnu",
};

const WHERE: Readonly<Record<Wetting, string>> = {
  outdoors: fr`à l'extérieur`,
  indoors: fr`à l'intérieur`,
  "wet soil": "en terre mouillée",
};

export const FRENCH_HOLDING: typeof ENGLISH_HOLDING = {
  columns: {
    what: "Quoi",
    load: "Charge portée",
    limit: "Charge possible",
    uses: "Part prise",
    state: "État",
    crop: "Culture",
    here: "Ici",
    wants: "Demande en bac",
    ground: "En pleine terre",
    row: "Rangée",
    built: "À la pose",
    wettest: "Au plus humide",
    driest: "Au plus sec",
    where: "Milieu",
  },

  floor: (box) => fr`${box}, plein et gorgé d'eau, sur le sol`,
  worst: (part, count) => `${part}, la plus chargée des ${count}`,
  wall: (part, box) => `${part}, paroi ${de(box)}`,
  joint: (title, count, kind, way) => {
    const n = count === 1 ? 0 : 1;
    const pulled = PULLED[kind === "screw" ? "screw" : "other"][n];
    return fr`${title} : ${count} ${FASTENERS[kind][n]}, ${way === "across" ? "en travers" : pulled}`;
  },
  foot: (part) => `${part}, le pied qui appuie le plus`,
  tipping: (by, part) => `${TIPS[by]}, autour ${de(part)}`,

  bends: (load, bend) => `${load}, fléchit de ${bend}`,
  mayBend: (load, bend) => `${load}, flèche de ${bend}`,
  percent: (n) => fr`${n} %`,
  times: (n) => `${n} fois`,
  less: (n) => fr`moins de ${n} %`,

  states: STATES,
  nothing: "rien",
  little: (percent, things) => fr`Moins de ${percent} % chacun : ${things}.`,

  taken: {
    somebody: (weight, low, high) =>
      fr`Quelqu'un de ${weight} s'assied ou monte sur tout dessus plat entre ${low} et ${high} de haut, au pire endroit, si aucune ligne load ne dit autre chose.`,
    blocked: fr`Une paroi doit porter ce qui remplit le bac, gorgé d'eau, écoulement bouché ; elle bombe sous ce qui est humide, écoulement libre.`,
    wet: fr`Ce qui est dehors ou dans la terre mouillée est compté mouillé, donc plus faible.`,
    graded: (thick) =>
      fr`Les planches dès ${thick} d'épaisseur sont comptées comme de qualité No. 2, sans marque vérifiée.`,
    clearWood: fr`Les planches plus minces sont comptées d'après le bois sans défaut, réduit, faute de table.`,
    panel: "Les panneaux fléchissent selon la résistance de leur portée nominale.",
    sag: (part, buried) =>
      fr`Une planche peut fléchir de 1/${part} de sa portée, une paroi et ce qui est sous la terre de 1/${buried}.`,
    screws: fr`Les vis tiennent selon les équations de plastification et l'arrachement ; la colle n'est pas jugée.`,
    margin: (margin) =>
      `Ce qui est posé librement doit tenir ${String(margin).replace(".", ",")} fois ce qui le bascule.`,
  },

  roots: ROOTS,
  inBox: (crop, box) => `${crop} dans ${box}`,
  liquid: (volume) => volume.replace(/ gal$/, " gallons US"),
  depth: (depth) => `${depth} de profondeur`,
  and: (a, b) => `${a} et ${b}`,
  range: (least, most) => `${least} à ${most}`,

  boards: (count, parts) => `${count} de ${parts}`,
  rootsFrom: (source) => fr`Ce que demande un bac : ${source}.`,
  under: (mark) => `moins de ${mark}`,
  closed: (push) => (push === "" ? "fermé" : `fermé, poussé de ${push}`),
  where: WHERE,
};
