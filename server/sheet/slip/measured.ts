/** What somebody types who reads it off a tape, as the language of plans writes it. */
import { parse } from "../../../grammar/parser";
import { ANGLE, type Quantity, sameDimension } from "../../units";
import { isTyped } from "./rows";

/**
 * `28 1/2` is 28-1/2", or 28-1/2 mm in a plan of millimetres; `28,5` is 28.5. Undefined for what is no value, and for one
 * that names something. `like` tells whether it is a length or an angle.
 */
export function asMeasured(
  typed: string,
  like: Quantity,
  system: "inches" | "millimetres",
): string | undefined {
  const plain = typed
    .trim()
    .replace(/[\u201c\u201d\u2033]/g, '"')
    .replace(/[\u2018\u2019\u2032]/g, "'")
    .replace(/(\d),(\d)/g, "$1.$2")
    .replace(/(\d)\s+(\d+\/\d)/g, "$1-$2");
  const unit = sameDimension(like.dim, ANGLE) ? "°" : system === "inches" ? '"' : " mm";
  const text = /^[\d./-]+$/.test(plain) ? `${plain}${unit}` : plain;
  if (/[\r\n,#]/.test(text)) return undefined;
  const { entries, complaints } = parse(`measure a = ${text}\n`);
  const [entry, second] = entries;
  if (complaints.length > 0 || second || entry?.kind !== "measure") return undefined;
  return entry.value && isTyped(entry.value) && entry.clauses.length === 0 ? text : undefined;
}
