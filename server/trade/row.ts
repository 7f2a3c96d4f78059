// A row of a trade table: one value, its unit, and where it comes from. Every table in this room is made of these.

export type Confidence = "read" | "secondary" | "memory" | "common practice";

/**
 * Where a value comes from. "read": read in the document, or in the copy named by `via`. "secondary": read only in a
 * page of low authority. "memory": recalled, so it may be off. "common practice": what the trade does, with no
 * document behind it.
 */
export interface Source {
  readonly document: string;
  readonly edition?: string;
  readonly table?: string;
  /** Who reproduced the document, when a copy was read and not the document itself. */
  readonly via?: string;
  readonly confidence: Confidence;
}

/**
 * One value of a table. Inch lengths are tape text ("5-1/2", "3/4"; thousandths as "0.164") with unit "in";
 * metric lengths are numbers with unit "mm". A bare ratio has the unit "". `range` says where the value holds, or the
 * published spread that it was picked from.
 */
export interface Row<V> {
  readonly key: string;
  readonly value: V;
  readonly unit: string;
  readonly source: Source;
  readonly range?: string;
}

/** A published spread. */
export interface Span {
  readonly low: number;
  readonly high: number;
}

export const COMMON_PRACTICE: Source = { document: "common practice", confidence: "common practice" };
export const FROM_MEMORY: Source = { document: "from memory", confidence: "memory" };

/** A document known only from memory: cited as "…, from memory". */
export function remembered(document: string, table?: string): Source {
  return table === undefined ? { document, confidence: "memory" } : { document, table, confidence: "memory" };
}

/** One short line for a hover. */
export const cite = (source: Source): string => `${named(source)}${standing(source)}`;

/** What was cited, for the sheet: without who reproduced the document. */
export const briefly = (cited: string): string =>
  cited.replace(/ \(as reproduced by (?:[^()]|\([^()]*\))*\)/, "");

function named({ document, edition, table }: Source): string {
  return `${document}${edition === undefined ? "" : ` ${edition}`}${table === undefined ? "" : `, ${table}`}`;
}

function standing({ document, confidence, via }: Source): string {
  if (document === confidence || document === FROM_MEMORY.document) return "";
  if (confidence === "memory") return ", from memory";
  if (confidence === "common practice") return ", common practice";
  const copy = via === undefined ? "" : `as reproduced by ${via}`;
  const doubt = confidence === "secondary" ? "not confirmed" : "";
  const notes = [copy, doubt].filter((note) => note !== "");
  return notes.length === 0 ? "" : ` (${notes.join("; ")})`;
}
