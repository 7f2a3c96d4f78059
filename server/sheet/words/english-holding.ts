/** What the sheet says of loads and of what bears them, of roots, and of gaps through the year, in English. */
import type { Wetting } from "../../trade";
import type { RootRoom, Try } from "../../worked";

const TIPS: Readonly<Record<Try["by"], string>> = {
  itself: "tipping by itself",
  narrow: "tipping, by a push at its top",
  tall: "tipping, by a push at its top",
  push: "tipping, by a push at its top",
  seat: "tipping, by somebody on its edge",
  load: "tipping, by its load",
  wind: "tipping, by a gust",
  leaned: "tipping, leaned a little",
};

const ROOTS: Readonly<Record<RootRoom["state"], string>> = {
  enough: "enough",
  "less deep": "less deep",
  less: "less",
  open: "open to the ground below",
  "no table": "in no table",
  "no room known": "not known",
};

const WHERE: Readonly<Record<Wetting, string>> = {
  outdoors: "outdoors",
  indoors: "indoors",
  "wet soil": "in wet soil",
};

export const ENGLISH_HOLDING = {
  columns: {
    what: "What",
    load: "It carries",
    limit: "It can bear",
    uses: "Uses",
    state: "So it is",
    crop: "In it",
    here: "Here",
    wants: "Wants in a container",
    ground: "In open ground",
    row: "Boards",
    built: "As built",
    wettest: "Wettest",
    driest: "Driest",
    where: "Where",
  },

  floor: (box: string) => `${box}, full and wet, on the floor`,
  worst: (part: string, count: number) => `${part}, the worst of ${count}`,
  wall: (part: string, box: string) => `${part}, as a wall of ${box}`,
  /** So many of a joint that share a load, and which way it goes. */
  joint: (title: string, count: number, kind: "screw" | "nail" | "bolt", way: "across" | "pulled") =>
    `${title}: ${count} ${kind}${count === 1 ? "" : "s"}, ${way === "across" ? "loaded across" : "pulled"}`,
  foot: (part: string) => `${part}, the foot that presses hardest`,
  tipping: (by: Try["by"], part: string) => `${TIPS[by]}, about ${part}`,

  /** How far it bends, where that is what counts. */
  bends: (load: string, bend: string) => `${load}, bends ${bend}`,
  mayBend: (load: string, bend: string) => `${load}, a bend of ${bend}`,
  percent: (n: number) => `${n}%`,
  times: (n: number) => `${n} times`,
  less: (n: number) => `under ${n}%`,

  states: {
    within: "within",
    tooWeak: "too weak",
    bendsTooFar: "bends too far",
    overloaded: "overloaded",
    claimsNothing: "claims nothing",
    overLimit: "over the limit",
    noLimit: "no limit typed",
    notKnown: "not known",
    heldByNothing: "nothing holds it up",
    heldOnce: "held in one place, tips off",
    tips: "tips over",
    anchor: "to be anchored",
  },
  nothing: "nothing",
  /** Things that use less than so many percent. */
  little: (percent: number, things: string) => `Each under ${percent}%: ${things}.`,

  taken: {
    somebody: (weight: string, low: string, high: string) =>
      `Somebody of ${weight} sits or stands on any flat top ${low} to ${high} high, at the worst place, where no load line says otherwise.`,
    blocked: "A wall must bear wet fill with a blocked drain; it bows under moist fill with an open one.",
    wet: "What stands outdoors or lies in wet soil is taken as wet, and weaker.",
    graded: (thick: string) => `Boards from ${thick} thick are taken as grade No. 2; no stamp is looked for.`,
    clearWood: "Thinner boards, of which no table tells, are brought down from clear wood.",
    panel: "Panels bend by the capacity of their span rating.",
    sag: (part: number, buried: number) =>
      `A board may bend 1/${part} of its span, a wall and what is under soil 1/${buried}.`,
    screws: "Screws hold by yield equations and withdrawal; glue is not judged.",
    margin: (margin: number) => `What stands free must stand ${margin} times what tips it.`,
  },

  roots: ROOTS,
  inBox: (crop: string, box: string) => `${crop} in ${box}`,
  /** A volume as it is sold: "1 gal". */
  liquid: (volume: string) => volume,
  depth: (depth: string) => `${depth} deep`,
  and: (a: string, b: string) => `${a} and ${b}`,
  range: (least: string, most: string) => `${least} to ${most}`,

  boards: (count: number, parts: string) => `${count} of ${parts}`,
  /** What a container must have, and where that is said. */
  rootsFrom: (source: string) => `What containers must have: ${source}.`,
  /** Less than any mark shows. */
  under: (mark: string) => `under ${mark}`,
  closed: (push: string) => (push === "" ? "closed" : `closed, pushed ${push}`),
  where: WHERE,
};
