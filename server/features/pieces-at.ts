/** Which placed pieces a line of the plan is about, and which a name stands for: what is marked in the drawing; and where its entry begins and ends. */
import type { Entry, Tree } from "../../grammar/tree";
import { type Declared, lookUp } from "../plan";
import type { Joint, Piece, Placement, Worked } from "../worked";
import { standingAt } from "./at";
import type { Checked } from "./checked";
import { declaredAs } from "./values";

/** The identities of the pieces of the line at an offset of the plan's own file, in their order; none for other lines. */
export function piecesAtLine({ worked }: Checked, offset: number): string[] {
  const entry = entryAt(worked.loaded.whole, offset);
  return entry ? idsOf(worked, ofEntry(worked, entry)) : [];
}

/** The first and the last line, counted from 1, of the entry that the line at an offset belongs to; undefined where it belongs to none. */
export function linesOfEntry({ worked }: Checked, offset: number): [first: number, last: number] | undefined {
  const { whole } = worked.loaded;
  const entry = entryAt(whole, offset);
  if (!entry) return undefined;
  const lineOf = (at: number): number => whole.text.slice(0, at).split("\n").length;
  const first = lineOf(entry.start);
  // Of an assembly only the line that opens it: the others are entries of their own.
  return [first, entry.kind === "assembly" ? first : lineOf(Math.max(entry.start, entry.end - 1))];
}

/** The entry that has something on the line at an offset; of an assembly, the line of its own. */
function entryAt({ text, entries }: Tree, offset: number): Entry | undefined {
  const from = text.lastIndexOf("\n", offset - 1) + 1;
  const next = text.indexOf("\n", offset);
  const to = next < 0 ? text.length : next;
  const onLine = (e: Entry): boolean => e.start <= to && e.end > from;
  const outer = entries.find(onLine);
  const inner = outer?.kind === "assembly" ? outer.body.find(onLine) : undefined;
  return inner ?? outer;
}

/** What a name, or the word that opens a place line, stands for: its pieces and what it is called. */
export interface Named {
  readonly name: string;
  readonly pieces: readonly string[];
}

/** Of a part, a ring, an assembly or a place line at an offset; undefined for anything else, and where nothing of it is placed. */
export function namedAt({ worked }: Checked, offset: number): Named | undefined {
  const { entry, spot } = standingAt(worked.loaded.whole, offset);
  const named = (name: string, own: (piece: Piece) => boolean): Named | undefined => {
    const pieces = idsOf(worked, own);
    return pieces.length > 0 ? { name, pieces } : undefined;
  };
  if (spot.is === "entry word" && entry?.kind === "place")
    return named(entry.subject.name.text, ofEntry(worked, entry));
  if (spot.is !== "declared" && spot.is !== "use") return undefined;
  const declared = declaredAs(worked, spot.span.text);
  return declared && DRAWN.has(declared.kind) ? named(declared.name, ofThing(declared)) : undefined;
}

const DRAWN: ReadonlySet<Declared["kind"]> = new Set<Declared["kind"]>(["part", "ring", "assembly"]);

const idsOf = ({ pieces }: Worked, own: (piece: Piece) => boolean): string[] =>
  pieces.all.filter(own).map(({ id }) => id);

const ofThing =
  ({ name }: Declared) =>
  ({ part, owners }: Piece): boolean =>
    part === name || owners.some((o) => o.name === name);

function ofEntry(worked: Worked, entry: Entry): (piece: Piece) => boolean {
  switch (entry.kind) {
    case "place":
      return ofPlace(worked, entry);
    case "part":
    case "ring":
    case "assembly": {
      const declared = lookUp(worked.scope, entry.name.text);
      return declared ? ofThing(declared) : () => false;
    }
    case "fasten":
    case "glue": {
      const joint = worked.joints.find((j) => j.entry === entry);
      const ids = new Set(joint ? joinedIds(joint, worked) : []);
      return ({ id }) => ids.has(id);
    }
    default:
      return () => false;
  }
}

/** The pieces of a line of the plan, or of an assembly's own line in all copies. */
function ofPlace(
  { pieces, placing, scope }: Worked,
  entry: Entry & { kind: "place" },
): (piece: Piece) => boolean {
  const line = pieces.lines.find(({ placement }) => placement.entry === entry);
  if (line) {
    const own = new Set(line.pieces);
    return (piece) => own.has(piece);
  }
  const isIt = (p: Placement): boolean => p.entry === entry;
  const subject = lookUp(scope, entry.subject.name.text);
  const key = subject && placing.linesOf(subject.name).find(isIt)?.key;
  return (piece) => key !== undefined && piece.line === key;
}

const joinedIds = ({ placed }: Joint, { space }: Worked): string[] =>
  (placed?.crossings ?? []).flatMap(({ first, through, into }) =>
    [first, ...through, into].map((i) => space.pieces[i]!.id),
  );
