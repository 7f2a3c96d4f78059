/** What the sheet says in English of the thing as it was built. */

export const ENGLISH_BUILT = {
  /** Over what came out otherwise; `by` is empty where the plan does not say. */
  on: (date: string, by: string) => `Built on ${date}${by === "" ? "" : ` by ${by}`}`,
  asPlanned: "As planned, as far as the plan says.",
  lengthOf: (part: string) => `length of ${part}`,
  /** `planned` is empty where it is not known. */
  cameOut: (planned: string, built: string) =>
    planned === "" ? `built ${built}` : `planned ${planned}, built ${built}`,
  board: "Board",
  insteadOf: (used: string, planned: string) => `${used} instead of ${planned}`,
  changed: "Changed",
  wear: (date: string) => `Wear found on ${date}`,
  /** How a plan is called as it was built, by its file. */
  asBuilt: (file: string, date: string) => `${file} as built on ${date}`,
};
