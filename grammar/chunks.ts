/**
 * A plan's text in pieces of one entry each, and a shelf of pieces read lately. A keystroke changes one entry, so all
 * others are found by their text and only moved. What a piece means depends on its own text alone, so a shelf that is
 * empty gives the same tree.
 */
import type { Entry, Tree } from "./tree";

/** What one piece was read as, where it stands. */
export interface Piece {
  readonly entries: readonly Entry[];
  readonly comments: Tree["comments"];
}

/** Where each entry's own text begins: at a line that opens with neither a blank nor a note to oneself. The first is 0. */
export function piecesOf(text: string): number[] {
  const starts = [0];
  for (let at = nextLine(text, 0); at < text.length; at = nextLine(text, at)) {
    if (!opensEntry(text, at) && !opensFile(text, starts[starts.length - 1]!, at)) continue;
    starts.push(at);
  }
  return starts;
}

/** Moves everything by an offset. */
export function moved<T>(node: T, by: number): T {
  if (by === 0 || node === null || typeof node !== "object") return node;
  return move(node, by) as T;
}

/** The same text in memory of its own: what is cut out of a long text would keep all of that alive. */
export function detached(text: string): string {
  return ` ${text}`.slice(1);
}

/** Pieces read lately, by their text: about four times what the text being read holds, at the most. */
export class Shelf {
  private most = LEAST_HELD;
  private young = new Map<string, Shelved>();
  private old = new Map<string, Shelved>();
  private held = 0;

  /** Says how long the text is whose pieces are asked for next. */
  expect(length: number): void {
    this.most = Math.max(LEAST_HELD, 2 * length);
  }

  /** The piece of that text as it stands at that offset, if it was read lately. */
  find(text: string, at: number): Piece | undefined {
    let found = this.young.get(text);
    if (!found) {
      found = this.old.get(text);
      if (!found) return undefined;
      this.keep(text, found);
    }
    if (found.at !== at) {
      found.piece = moved(found.piece, at - found.at);
      found.at = at;
    }
    return found.piece;
  }

  put(text: string, at: number, piece: Piece): void {
    this.keep(text, { at, piece });
  }

  private keep(text: string, shelved: Shelved): void {
    if (this.held > this.most) {
      this.old = this.young;
      this.young = new Map();
      this.held = 0;
    }
    this.young.set(text, shelved);
    this.held += text.length;
  }
}

interface Shelved {
  at: number;
  piece: Piece;
}

/** In characters of text. */
const LEAST_HELD = 100_000;

function nextLine(text: string, from: number): number {
  for (let at = from; at < text.length; at++) {
    const c = text.charCodeAt(at);
    if (c === 10 || c === 13) return at + 1;
  }
  return text.length;
}

/** Whether the line above is the first of the piece so far, and says that the text of another file begins below it. */
function opensFile(text: string, piece: number, at: number): boolean {
  return (
    text.startsWith("enclosed", piece) &&
    /^enclosed[^\S\r\n][^\r\n]*(?:\r\n|\r|\n)$/.test(text.slice(piece, at))
  );
}

function opensEntry(text: string, at: number): boolean {
  const c = text.charCodeAt(at);
  if (c < 33 || (c > 126 && /[\s\uFEFF]/.test(text[at]!))) return false;
  return c !== HASH || !(at + 1 === text.length || /\s/.test(text[at + 1]!));
}

const HASH = 35;

function move(node: object, by: number): unknown {
  if (Array.isArray(node)) return node.map((n) => (typeof n === "object" && n !== null ? move(n, by) : n));
  const copy: Record<string, unknown> = {};
  for (const key in node) {
    const value = (node as Record<string, unknown>)[key];
    if (key === "start" || key === "end") copy[key] = (value as number) + by;
    else copy[key] = typeof value === "object" && value !== null ? move(value, by) : value;
  }
  return copy;
}
