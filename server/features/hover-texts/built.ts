/** What a hover says of how a plan was built, in every language. Arguments are Markdown. */
import type { Language } from "../../checks";
import { de } from "../../checks/french/elision";
import { fr } from "../../checks/french/type";

const ENGLISH = {
  built: (date: string, by: string) => `**Built on ${date}**${by === "" ? "" : ` by ${by}`}`,
  asPlanned: "As planned, as far as the plan says.",
  lengthOf: (part: string) => `length of ${part}`,
  cameOut: (what: string, planned: string, built: string) => `${what}: planned ${planned}, built ${built}`,
  /** `parts` follow from it. */
  follows: (parts: string) => `; what follows from it: ${parts}`,
  insteadOf: (used: string, planned: string, parts: string) =>
    `${used} instead of ${planned}${parts === "" ? "" : ` (${parts})`}`,
  changed: (words: string) => `Changed: ${words}`,
  wear: (date: string, words: string) => `Wear found on ${date}: ${words}`,
  because: (reason: string) => `, because ${reason}`,
  compare: "`sawbuck diff` with `--built` tells what comes of it.",
};

const FRENCH: typeof ENGLISH = {
  built: (date, by) => `**Construit le ${date}**${by === "" ? "" : fr` par « ${by} »`}`,
  asPlanned: "Comme prévu, pour autant que le plan le dise.",
  lengthOf: (part) => `longueur ${de(part)}`,
  cameOut: (what, planned, built) => fr`${what} : prévu ${planned}, construit ${built}`,
  follows: (parts) => fr` ; en découle : ${parts}`,
  insteadOf: (used, planned, parts) =>
    `${used} à la place ${de(planned)}${parts === "" ? "" : ` (${parts})`}`,
  changed: (words) => fr`Changé : « ${words} »`,
  wear: (date, words) => fr`Usure vue le ${date} : « ${words} »`,
  because: (reason) => fr`, parce que « ${reason} »`,
  compare: "`sawbuck diff` avec `--built` dit ce qui en découle.",
};

export const BUILT: Readonly<Record<Language, typeof ENGLISH>> = { en: ENGLISH, fr: FRENCH };
