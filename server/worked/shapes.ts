/** One piece of a part, whatever their number and wherever they stand: how long, how its ends are cut, what it weighs. */
import type { Clause } from "../../grammar/tree";
import {
  type At,
  chain,
  type Declared,
  ifKnown,
  known,
  MISTAKE,
  map,
  say,
  unknown,
  type Value,
} from "../plan";
import { type CutBoard, lengths } from "../solid/ends";
import { woodWeight } from "../strength/weight";
import { ANGLE, exactly, fraction, LENGTH, type Quantity, roughly, WEIGHT } from "../units";
import type { Worker } from "./expressions";
import type { Material, Materials } from "./materials";
import { type Notch, notchesOf } from "./notches";
import { Reader } from "./settings";

export interface Angles {
  readonly miter: Quantity | undefined;
  readonly bevel: Quantity | undefined;
  readonly at: At;
}

export type Measured = "overall" | "long to long" | "short to short" | "long to short";

/** One piece of a part: its sizes and its cuts, however many there are and wherever they stand. */
export interface Shape {
  readonly material: Material | undefined;
  /** The length as written, or as it follows from a diagonal; and between which points. */
  readonly length: Value<Quantity>;
  readonly lengthAt: At;
  readonly measured: Measured;
  readonly measuredAssumed: boolean;
  readonly width: Value<Quantity>;
  readonly thickness: Value<Quantity>;
  readonly ripped: At | undefined;
  readonly leftEnd: Angles | undefined;
  readonly rightEnd: Angles | undefined;
  readonly edges: "one" | "opposite";
  /** The piece with its ends cut; unknown when a size is. */
  readonly cut: Value<CutBoard>;
  /** Tip to tip: what is cut from the board, with what is left on to fit. */
  readonly needs: Value<Quantity>;
  readonly fit: { readonly allowance: Quantity | undefined } | undefined;
  readonly notches: readonly Notch[];
  /** One piece; what its notches take out still counts. */
  readonly weight: Value<Quantity>;
}

/** What follows from a piece that runs diagonally: its length from tip to tip, and the miter of both its ends. */
export interface DiagonalCut {
  readonly length: number;
  readonly miter: number;
}

/** Shapes of parts, each worked out once, when first asked for. */
export class Shapes {
  private readonly done = new Map<string, Shape>();

  constructor(
    private readonly worker: Worker,
    private readonly materials: Materials,
    /** What a part's diagonal place makes of it; undefined when it has none. */
    private readonly diagonal: (part: string) => Value<DiagonalCut> | undefined,
  ) {}

  of(declared: Declared): Shape {
    const { name, at } = declared;
    const before = this.done.get(name);
    if (before) return before;
    // Its cuts may ask where things stand, and that may ask for its cuts.
    const worked = this.worker.once("shape", name, say("how cut", { name }), at, () =>
      known(this.work(declared)),
    );
    const shape = ifKnown(worked) ?? lost(declared);
    this.done.set(name, shape);
    return shape;
  }

  width(declared: Declared): Value<Quantity> {
    const { entry, at } = declared;
    return entry.kind === "part"
      ? partWidth(declared, this.worker, this.materials.named(entry.of, at.file))
      : MISTAKE;
  }

  thickness(declared: Declared): Value<Quantity> {
    const { entry, at } = declared;
    const material = entry.kind === "part" ? this.materials.named(entry.of, at.file) : undefined;
    return material?.thickness ?? MISTAKE;
  }

  /** As written, or as a diagonal place makes it. */
  length(declared: Declared): Value<Quantity> {
    const written = declared.entry.clauses.some((c) => c.kind === "length" || c.kind === "broken");
    const diagonal = written ? undefined : this.diagonal(declared.name);
    return diagonal ? map(diagonal, (d) => roughly(LENGTH, d.length)) : partLength(declared, this.worker);
  }

  /** From tip to tip; exact for square ends, and where the written length runs between the tips. */
  overall(declared: Declared): Value<Quantity> {
    const { clauses } = declared.entry;
    const points = clauses.flatMap((c) =>
      (c.kind === "length" || c.kind === "points") && c.points ? [c.points] : [],
    )[0];
    const tips = points === undefined || points === "overall" || points === "long to long";
    if (tips || !clauses.some((c) => c.kind === "ends")) return this.length(declared);
    return chain(this.of(declared).cut, (cut) => known(roughly(LENGTH, cut.overall)));
  }

  private work(declared: Declared): Shape {
    const { entry, at } = declared;
    if (entry.kind !== "part") throw new TypeError("not a part");
    const { worker } = this;
    const { file } = at;
    const read = new Reader(worker, file, entry.clauses);
    const material = this.materials.named(entry.of, file);
    const lengthClause = read.clause("length");
    const measured = lengthClause?.points ?? read.clause("points")?.points;
    const length = this.length(declared);
    const thickness = material?.thickness ?? MISTAKE;
    const width = partWidth(declared, worker, material);
    const written = endsOf(read, worker, file);
    const diagonal = written.left || written.right ? undefined : ifKnown(this.diagonal(declared.name));
    const both = diagonal && { miter: roughly(ANGLE, diagonal.miter), bevel: undefined, at };
    const ends = both ? { left: both, right: both, faulty: false } : written;
    const opposite = diagonal || read.clause("long points")?.on === "opposite edges";
    const edges = opposite ? "opposite" : "one";
    const mitered = Boolean(ends.left || ends.right);
    const shape = { measured: measured ?? (mitered ? "long to long" : "overall"), ends, edges } as const;
    const whole = ends.faulty
      ? MISTAKE
      : chain(length, (l) =>
          chain(width, (w) => chain(thickness, (t) => cutPiece(declared, worker, l, w, t, shape))),
        );
    const [board, wide, thick] = [ifKnown(whole), ifKnown(width), ifKnown(thickness)];
    const piece = board &&
      wide &&
      thick && { length: roughly(LENGTH, board.overall), width: wide, thickness: thick };
    const notches = notchesOf(read, worker, file, piece);
    const cut = notches.state === "known" ? whole : notches;
    const ripClause = read.clause("width");
    const fitClause = read.clause("cut to fit");
    const allowance =
      fitClause?.allowance &&
      ifKnown(worker.positiveLength(fitClause.allowance, file, "what is left on to fit"));
    return {
      material,
      length,
      lengthAt: lengthClause ? { file, start: lengthClause.value.start, end: lengthClause.value.end } : at,
      measured: shape.measured,
      measuredAssumed: mitered && !diagonal && measured === undefined,
      width,
      thickness,
      ripped: ripClause && read.at(ripClause),
      leftEnd: ends.left,
      rightEnd: ends.right,
      edges,
      cut,
      needs: map(cut, (board) => needed(board, length, shape.measured, allowance, mitered)),
      fit: fitClause && { allowance },
      notches: ifKnown(notches) ?? [],
      weight: weigh(cut, material),
    };
  }
}

/** The shape of a part whose own cuts lead back to themselves. */
const lost = ({ at }: Declared): Shape => ({
  material: undefined,
  length: MISTAKE,
  lengthAt: at,
  measured: "overall",
  measuredAssumed: false,
  width: MISTAKE,
  thickness: MISTAKE,
  ripped: undefined,
  leftEnd: undefined,
  rightEnd: undefined,
  edges: "one",
  cut: MISTAKE,
  needs: MISTAKE,
  fit: undefined,
  notches: [],
  weight: MISTAKE,
});

/** A part's own length as written, worked out once. */
export function partLength(declared: Declared, worker: Worker): Value<Quantity> {
  const { entry, at, name } = declared;
  const clause = entry.clauses.find((c): c is Clause & { kind: "length" } => c.kind === "length");
  return worker.once("length", name, `length of ${name}`, at, () => {
    if (clause) return worker.positiveLength(clause.value, at.file, say("the length of", { name }));
    if (entry.clauses.some((c) => c.kind === "broken")) return MISTAKE;
    return worker.fault({ kind: "size-missing", at, name, what: "length" });
  });
}

/** A part's own width: ripped, or its board's; a piece of a sheet must say. */
function partWidth(declared: Declared, worker: Worker, material: Material | undefined): Value<Quantity> {
  const { entry, at, name } = declared;
  const clause = entry.clauses.find((c): c is Clause & { kind: "width" } => c.kind === "width");
  return worker.once("width", name, `width of ${name}`, at, () => {
    if (clause) return worker.positiveLength(clause.value, at.file, say("the width of", { name }));
    if (!material) return MISTAKE;
    if (material.width) return material.width;
    return worker.fault({ kind: "size-missing", at, name, what: "width" });
  });
}

interface EndShape {
  readonly measured: Measured;
  readonly ends: { readonly left: Angles | undefined; readonly right: Angles | undefined };
  readonly edges: "one" | "opposite";
}

const WORDS = {
  overall: "overall",
  "long to long": "long-long",
  "short to short": "short-short",
  "long to short": "long-short",
} as const;

function cutPiece(
  declared: Declared,
  worker: Worker,
  l: Quantity,
  w: Quantity,
  t: Quantity,
  shape: EndShape,
): Value<CutBoard> {
  const end = (a: Angles | undefined) => ({ miter: a?.miter?.approx ?? 0, bevel: a?.bevel?.approx ?? 0 });
  const board = lengths({
    measured: WORDS[shape.measured],
    length: l.approx,
    width: w.approx,
    thickness: t.approx,
    left: end(shape.ends.left),
    right: end(shape.ends.right),
    edges: shape.edges,
  });
  if (board.kind === "cut") return known(board);
  if (board.reason === "ends-cross" && board.least !== undefined) {
    return worker.fault({
      kind: "ends-cross",
      at: declared.at,
      name: declared.name,
      least: roughly(LENGTH, board.least),
    });
  }
  return worker.fault({
    kind: "impossible",
    at: declared.at,
    why: "uncuttable",
    what: declared.name,
  });
}

function needed(
  board: CutBoard,
  length: Value<Quantity>,
  measured: Measured,
  allowance: Quantity | undefined,
  cutEnds: boolean,
): Quantity {
  const exact = ifKnown(length);
  // A square end, or a length from tip to tip, needs no trigonometry and stays exact.
  const base =
    exact && (!cutEnds || measured === "overall" || measured === "long to long")
      ? exact
      : roughly(LENGTH, board.overall);
  if (!allowance) return base;
  return base.exact && allowance.exact
    ? exactly(LENGTH, fraction.add(base.exact, allowance.exact))
    : roughly(LENGTH, base.approx + allowance.approx);
}

/** The cuts of both ends; `faulty` when an angle could not be had. */
function endsOf(read: Reader, worker: Worker, file: string): EndShape["ends"] & { readonly faulty: boolean } {
  let left: Angles | undefined;
  let right: Angles | undefined;
  let faulty = false;
  const said = read.all("ends");
  const which = (end: (typeof said)[number]["which"]) => said.filter((c) => c.which === end);
  const clauses = [
    read.once("ends", which("both")),
    read.once("left end", which("left")),
    read.once("right end", which("right")),
  ];
  for (const clause of clauses) {
    if (!clause) continue;
    const angle = (how: "mitered" | "beveled") => {
      const cut = clause.cuts.find((c) => c.how === how);
      const value = cut && ifKnown(worker.angle(cut.angle, file));
      faulty ||= cut !== undefined && value === undefined;
      return value;
    };
    const angles: Angles | undefined =
      clause.cuts.length === 0
        ? undefined
        : { miter: angle("mitered"), bevel: angle("beveled"), at: read.at(clause) };
    if (clause.which !== "right") left = angles;
    if (clause.which !== "left") right = angles;
  }
  return { left, right, faulty };
}

function weigh(cut: Value<CutBoard>, material: Material | undefined): Value<Quantity> {
  const density = material?.wood.density;
  if (!density)
    return material ? unknown("unsaid", "no weight of wood", { wood: material.wood.title }) : MISTAKE;
  return chain(cut, (board) => {
    const kg = woodWeight(board.volume, density);
    return kg === undefined ? MISTAKE : known(roughly(WEIGHT, kg));
  });
}
