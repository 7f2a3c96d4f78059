/** `rim-overhang` where `rim - overhang` is meant: a hyphen belongs to a name, so a minus has a blank on both sides. */
import type { Fault, Worked } from "../worked";

type Unknown = Extract<Fault, { kind: "unknown-name" }>;

export interface Minus {
  /** The measure that something is taken from. */
  readonly from: string;
  /** The measure that is taken away; undefined for a length. */
  readonly less: string | undefined;
  /** `rim - overhang`, `rim - 1/2"` */
  readonly better: string;
  /** Where the hyphen stands in the text. */
  readonly hyphen: number;
}

/** The subtraction an unknown name was likely meant as: of a measure or a length from a measure. */
export function minusIn({ at, name, wants }: Unknown, { scope, loaded }: Worked): Minus | undefined {
  if (wants !== "a measure") return undefined;
  const text = loaded.files.find((f) => f.file === at.file)?.tree.text ?? "";
  const measured = (word: string) => scope.declared.get(word)?.kind === "measure";
  for (let i = name.indexOf("-"); i >= 0; i = name.indexOf("-", i + 1)) {
    const from = name.slice(0, i);
    const rest = name.slice(i + 1);
    if (!measured(from)) continue;
    const hyphen = at.start + i;
    if (measured(rest)) return { from, less: rest, better: `${from} - ${rest}`, hyphen };
    // A fraction's lower number and its mark are not part of the name.
    const length = LENGTH.exec(text.slice(hyphen + 1, at.end + 12))?.[0];
    if (length && length.length >= rest.length)
      return { from, less: undefined, better: `${from} - ${length}`, hyphen };
  }
  return undefined;
}

const LENGTH = /^(?:\d+-)?\d+(?:\/\d+)?(?:["″”'′’]|(?:mm|cm|m|in|ft)(?![a-z0-9]))/;
