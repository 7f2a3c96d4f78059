/** What a hover says of a step, in every language. */
import type { Language } from "../../checks";
import { fr, many, one } from "../../checks/french/type";

const ENGLISH = {
  step: (n: number, of: number) => `Step ${n} of ${of}`,
  fresh: (parts: string) => `New: ${parts}`,
  part: (count: number | undefined, part: string) => `${count ?? "some"} ${part}`,
  screws: (count: number | undefined, joints: string) =>
    `Screws: ${count ?? "not known how many"}, of ${joints}`,
  glues: (joints: string) => `Glues ${joints}`,
  more: (count: number) => ` and ${count} more`,
  coats: (things: string) => `Coats ${things}`,
  lines: (boxes: string) => `Lines ${boxes}`,
  fit: (parts: string) => `Cut to fit here: ${parts}`,
  feet: "the feet",
  square: (names: string) => `Before the last screws are tight, measure from corner to corner: ${names}`,
  lift: (weight: string, part: string, joined: boolean) =>
    `The heaviest to lift is about ${weight}: ${part}${joined ? " and what it is joined to" : ""}`,
  takes: (time: string) => `takes ${time}`,
  wait: (time: string) => `then wait ${time}`,
  people: (count: number) => (count === 1 ? "one person" : `${count} people`),
};

const FRENCH: typeof ENGLISH = {
  step: (n, of) => `Étape ${n} sur ${of}`,
  fresh: (parts) => fr`Nouveau : ${parts}`,
  part: (count, part) => (count === undefined ? `${part} (nombre inconnu)` : `${count} ${part}`),
  screws: (count, joints) => fr`Vis : ${count ?? "nombre inconnu"}, ${joints}`,
  glues: (joints) => fr`Coller : ${joints}`,
  more: (count) => ` et ${many(count, "autre", "autres")}`,
  coats: (things) => fr`Finition : ${things}`,
  lines: (boxes) => fr`Doubler : ${boxes}`,
  fit: (parts) => fr`À ajuster ici : ${parts}`,
  feet: "les pieds",
  square: (names) => fr`Avant de serrer à fond, mesurer d'angle à angle : ${names}`,
  lift: (weight, part, joined) =>
    fr`Le plus lourd à soulever pèse environ ${weight} : ${part}${joined ? " et ce qui y est assemblé" : ""}`,
  takes: (time) => `durée ${time}`,
  wait: (time) => `puis attendre ${time}`,
  people: (count) => (one(count) ? "une seule personne" : `${count} personnes`),
};

export const STEP: Readonly<Record<Language, typeof ENGLISH>> = { en: ENGLISH, fr: FRENCH };
