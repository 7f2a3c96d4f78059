/** What notches and dadoes take out of a part, as its line says it. */
import type { Clause } from "../../grammar/tree";
import { known, type Value } from "../plan";
import { NUMERIC } from "../solid/angle";
import { LENGTH, type Quantity, roughly } from "../units";
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

/** The piece that they are cut into, from tip to tip. */
interface Piece {
  readonly length: Quantity;
  readonly width: Quantity;
  readonly thickness: Quantity;
}

/** Unknown when one of them cannot be, or is not known. `piece` is undefined where its sizes are not known. */
export function notchesOf(
  read: Reader,
  worker: Worker,
  file: string,
  piece: Piece | undefined,
): Value<readonly Notch[]> {
  const notches: Notch[] = [];
  for (const clause of [...read.all("notch"), ...read.all("dado")]) {
    const notch = notchOf(clause, worker, file);
    if (notch.state !== "known") return notch;
    const fault = piece && faultOf(notch.value, piece);
    if (fault) return worker.fault({ kind: "impossible", at: read.at(clause), what: clause.kind, ...fault });
    notches.push(notch.value);
  }
  return known(notches);
}

type NotchClause = Clause & { kind: "notch" | "dado" };

function notchOf({ kind, along: a, into: i, at }: NotchClause, worker: Worker, file: string): Value<Notch> {
  const along = worker.positiveLength(a, file, "how far along");
  const into = worker.positiveLength(i, file, "how far in");
  if (along.state !== "known") return along;
  if (into.state !== "known") return into;
  const notch = { kind, along: along.value, into: into.value };
  if (typeof at === "string") return known({ ...notch, where: `at ${at}`, distance: undefined });
  const distance = worker.expect(at.distance, file, LENGTH, "a length");
  if (distance.state !== "known") return distance;
  return known({ ...notch, where: `from ${at.from}`, distance: distance.value });
}

/** A notch leaves some of the width, a dado some of the thickness, and both end on the piece. */
function faultOf({ kind, along, into, where, distance }: Notch, { length, width, thickness }: Piece) {
  const deep = kind === "notch" ? width : thickness;
  if (into.approx > deep.approx - NUMERIC) return { why: "too deep", found: into, most: deep } as const;
  const both = where === "at both ends";
  const end = both ? 2 * along.approx : (distance?.approx ?? 0) + along.approx;
  if (end <= length.approx + NUMERIC) return undefined;
  const why = both ? ("too long together" as const) : ("too far along" as const);
  return { why, found: roughly(LENGTH, end), most: length };
}
