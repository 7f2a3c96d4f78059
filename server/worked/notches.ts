/** What notches and dadoes take out of a part, as its line says it. */
import { ifKnown } from "../plan";
import { LENGTH, type Quantity } from "../units";
import type { Worker } from "./expressions";
import type { Reader } from "./settings";

export interface Notch {
  readonly kind: "notch" | "dado";
  readonly along: Quantity;
  readonly into: Quantity;
  /** "at left end", or "from left" with the distance. */
  readonly where: string;
  readonly distance: Quantity | undefined;
}

export function notchesOf(read: Reader, worker: Worker, file: string): Notch[] {
  return [...read.all("notch"), ...read.all("dado")].flatMap((c): Notch[] => {
    const along = ifKnown(worker.positiveLength(c.along, file, "how far along"));
    const into = ifKnown(worker.positiveLength(c.into, file, "how far in"));
    if (!along || !into) return [];
    if (typeof c.at === "string")
      return [{ kind: c.kind, along, into, where: `at ${c.at}`, distance: undefined }];
    const distance = ifKnown(worker.expect(c.at.distance, file, LENGTH, "a length"));
    return distance ? [{ kind: c.kind, along, into, where: `from ${c.at.from}`, distance }] : [];
  });
}
