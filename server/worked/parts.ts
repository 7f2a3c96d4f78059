/** The parts of a plan: each shape with how many of it there are, of which hand, and the identity of every piece. */
import { type At, type Declared, ifKnown, known, MISTAKE, say, unknown, type Value } from "../plan";
import type { Worker } from "./expressions";
import { Reader } from "./settings";
import type { Shape } from "./shapes";

/** The most pieces one plan is worked out for. */
export const MOST_PIECES = 20_000;

export interface Part extends Shape {
  readonly name: string;
  readonly declared: Declared;
  readonly count: Value<number>;
  /** Where the count comes from. */
  readonly counted: "stated" | "ring" | "placed" | "unknown";
  readonly statedCount: number | undefined;
  /** How many pieces the lines that place it ask for; undefined when none does. */
  readonly placed: Value<number> | undefined;
  readonly left: number;
  readonly right: number;
  /** An odd number of pieces, of which half were to be mirror images. */
  readonly pairs: boolean;
  /** How many left and right pieces were typed, to compare with the count. */
  readonly hands: { readonly left: number; readonly right: number; readonly at: At } | undefined;
}

/** Identities of a part's pieces, in order: `leg / 1` … A new piece never changes the name of an old one. */
export const pieceIds = (part: string, count: number): string[] =>
  Array.from({ length: count }, (_, i) => `${part} / ${i + 1}`);

/** How many pieces of a part its places and its rings ask for. */
export interface Asked {
  readonly count: Value<number>;
  readonly by: "ring" | "placed";
  /** Of these, pieces that are mirror images of how the part is drawn. */
  readonly mirrored: number;
}

export function workPart(declared: Declared, worker: Worker, shape: Shape, asked: Asked | undefined): Part {
  const { entry, at } = declared;
  if (entry.kind !== "part") throw new TypeError("not a part");
  const { file } = at;
  const read = new Reader(worker, file, entry.clauses);
  const stated =
    entry.count &&
    ifKnown(worker.wholeNumber(entry.count, file, say("how many of", { name: declared.name }), MOST_PIECES));
  const hands = handsOf(read, worker, file);
  const count: Value<number> =
    stated !== undefined ? known(stated) : entry.count ? MISTAKE : (asked?.count ?? NOT_COUNTED);
  const pairs = read.all("handed").some((h) => h.pairs);
  const total = ifKnown(count) ?? 0;
  const mirrored = asked?.mirrored ?? 0;
  const [left, right] = pairs
    ? [Math.ceil(total / 2), Math.floor(total / 2)]
    : mirrored > 0
      ? [Math.max(0, total - mirrored), Math.min(total, mirrored)]
      : [0, 0];
  return {
    // One by one: an object spread here takes twenty times as long, of every part with every key.
    material: shape.material,
    length: shape.length,
    lengthAt: shape.lengthAt,
    measured: shape.measured,
    measuredAssumed: shape.measuredAssumed,
    width: shape.width,
    thickness: shape.thickness,
    ripped: shape.ripped,
    leftEnd: shape.leftEnd,
    rightEnd: shape.rightEnd,
    edges: shape.edges,
    cut: shape.cut,
    needs: shape.needs,
    fit: shape.fit,
    notches: shape.notches,
    weight: shape.weight,
    name: declared.name,
    declared,
    count,
    counted: stated !== undefined ? "stated" : (asked?.by ?? "unknown"),
    statedCount: stated,
    placed: asked?.by === "placed" ? asked.count : undefined,
    left: hands?.left ?? left,
    right: hands?.right ?? right,
    pairs: pairs && total % 2 === 1,
    hands:
      hands ??
      (pairs && total % 2 === 1 ? { left: total, right: 0, at: read.at(read.all("handed")[0]!) } : undefined),
  };
}

const NOT_COUNTED = unknown("placing", "not counted");

function handsOf(read: Reader, worker: Worker, file: string): Part["hands"] {
  const clause = read.all("handed").find((h) => !h.pairs);
  if (!clause) return undefined;
  const side = (e: typeof clause.left) =>
    e ? (ifKnown(worker.wholeNumber(e, file, "how many", MOST_PIECES)) ?? 0) : 0;
  return { left: side(clause.left), right: side(clause.right), at: read.at(clause) };
}
