/**
 * Works a plan out: measures, parts, rings, boxes, joints, layouts and cost, each once. A function of the text alone
 * (and of the files it names): no history, no clock.
 */
import type { Comparison, Entry, Expression } from "../../grammar/tree";
import type { Layouts } from "../cutting/improve";
import { type At, type Declared, ifKnown, type Loaded, type Scope, scopeOf, type Value } from "../plan";
import { order, type Quantity } from "../units";
import { type AsBuilt, builtOf } from "./as-built";
import { askedOf } from "./asked";
import { type Box, workBox } from "./boxes";
import { type CoatWork, coatsOf } from "./coating";
import { type Drainage, drainageOf } from "./drainage";
import { Worker } from "./expressions";
import { type Fastener, fastenersOf } from "./fasteners";
import type { Fault, Unchecked } from "./fault";
import { type Finish, finishesOf } from "./finishes";
import { type Guarding, guardingOf } from "./guarding";
import { type Holding, holdingOf, type SaidLoad, saidLoads } from "./holding";
import { type LoosePiece, loosePieces } from "./joined";
import { type Joint, jointLines, workJoint } from "./joints";
import {
  type BoardWork,
  boardsAnew,
  FIRST_ANSWERS,
  layOutBoards,
  layOutPanels,
  type SheetWork,
  sheetsAnew,
} from "./layouts";
import { type LiningWork, liningsOf } from "./lining";
import { type Meant, meantIn } from "./matching";
import { type Material, Materials } from "./materials";
import { type Bound, type Measure, measuresOf } from "./measures";
import { gapsThroughTheYear, type MovementWork } from "./movement";
import { MOST_PIECES, type Part, workPart } from "./parts";
import type { Pieces } from "./pieces";
import { Placing } from "./placing";
import { findProperty } from "./properties";
import { type Frame, framesOf } from "./racking";
import { type RingCornerInSpace, ringCorners } from "./ring-space";
import { type Ring, ringMembers, workRing } from "./rings";
import { type Roll, rollsOf } from "./rolls";
import { type UnevenRow, unevenRows } from "./rows";
import { lumberOf, roomOf, type Settings, settingsOf } from "./settings";
import { Shapes } from "./shapes";
import { type Shopping, shoppingOf } from "./shopping";
import { type Space, spaceOf } from "./space";
import { type StepsWork, stepsOf } from "./steps";
import { type Standing, standingOf } from "./tipping";
import { uncheckedOf } from "./unchecked";
import { checkUses } from "./uses";
import { type WaterWork, waterPathOf } from "./water";

export interface Must {
  readonly entry: Entry & { kind: "must" };
  readonly at: At;
  readonly left: Value<Quantity>;
  readonly right: Value<Quantity>;
  /** Undefined when it could not be compared. */
  readonly holds: boolean | undefined;
  readonly because: string;
}

export interface Accepted {
  readonly code: string;
  /** The thing it is accepted on; empty for the whole plan. */
  readonly on: string;
  readonly because: string;
  readonly at: At;
}

export interface Worked {
  readonly loaded: Loaded;
  readonly scope: Scope;
  readonly settings: Settings;
  readonly measures: ReadonlyMap<string, Measure>;
  readonly materials: readonly Material[];
  readonly parts: ReadonlyMap<string, Part>;
  readonly rings: readonly Ring[];
  readonly pieces: Pieces;
  readonly space: Space;
  readonly boxes: readonly Box[];
  readonly frames: readonly Frame[];
  readonly loose: readonly LoosePiece[];
  readonly standing: readonly Standing[];
  readonly rows: readonly UnevenRow[];
  readonly corners: readonly RingCornerInSpace[];
  readonly fasteners: readonly Fastener[];
  readonly joints: readonly Joint[];
  readonly finishes: readonly Finish[];
  readonly coats: readonly CoatWork[];
  readonly rolls: readonly Roll[];
  readonly linings: readonly LiningWork[];
  readonly drainage: readonly Drainage[];
  readonly loads: readonly SaidLoad[];
  readonly holding: Holding;
  readonly water: WaterWork;
  readonly movement: MovementWork;
  readonly steps: StepsWork;
  readonly boards: readonly BoardWork[];
  readonly sheets: readonly SheetWork[];
  readonly shopping: Shopping;
  readonly guarding: Guarding;
  readonly musts: readonly Must[];
  readonly accepted: readonly Accepted[];
  readonly built: readonly AsBuilt[];
  readonly faults: readonly Fault[];
  /** Works out an expression of the plan once more. */
  readonly evaluate: (e: Expression, file: string) => Value<Quantity>;
  /** A stock or a sheet worked out, also one that no part asks for; undefined where it cannot be. */
  readonly materialOf: (declared: Declared) => Material | undefined;
  /** What a name that only the plan's own shop file has means, where the reader's shop stands in its place. */
  readonly meantBy: (name: string) => Meant | undefined;
  readonly placing: Placing;
  readonly unchecked: readonly Unchecked[];
}

export type { Bound, Measure };

/** Works out what was loaded. Never throws on a plan, however wrong. */
export function work(loaded: Loaded, layouts: Layouts = FIRST_ANSWERS): Worked {
  const scope = scopeOf(loaded);
  const worker: Worker = new Worker(scope, (thing, property, at) =>
    findProperty(thing, property, at, worker, scope, materials, placing),
  );
  const materials: Materials = new Materials(scope, worker, lumberOf(loaded));
  const declared = [...scope.declared.values()];
  const ofKind = (kind: Declared["kind"]) => declared.filter((d) => d.kind === kind);
  const members = ofKind("ring").map((d) => ({ declared: d, members: ringMembers(d, scope, worker) }));
  const shapes = new Shapes(worker, materials, (part) => placing.diagonalCut(part));
  const placing: Placing = new Placing({
    files: loaded.files,
    scope,
    worker,
    shapes,
    rings: new Map(members.map((m) => [m.declared.name, m.members])),
    space: () => roomOf(loaded, worker),
  });
  const settings: Settings = settingsOf(loaded, worker);
  const measures = measuresOf(ofKind("measure"), worker);
  placing.settle();
  const asked = askedOf(placing);
  const parts = new Map(
    ofKind("part").map((d) => [d.name, workPart(d, worker, shapes.of(d), asked.of(d))] as const),
  );
  for (const kind of ["stock", "sheet"] as const) {
    for (const d of ofKind(kind)) if (d.role === "plan") materials.peek(d);
  }
  const rings = members.map((m) =>
    workRing(
      m.declared,
      m.members,
      parts,
      settings.display,
      placing.standOf(m.declared),
      placing.linesOf(m.declared.name).length > 0,
    ),
  );
  const boxes = ofKind("box").map((d) => workBox(d, scope, worker, parts, placing, asked.pieces));
  const fasteners = fastenersOf(scope, worker);
  const main = loaded.files[0]!;
  const space = spaceOf(asked.pieces.all);
  let setOut = 0;
  const joints = jointLines(loaded, scope).map((line) => {
    const joint = workJoint(line, scope, worker, parts, fasteners, space, setOut);
    setOut += joint.placed?.screws.length ?? 0;
    return joint;
  });
  const finishes = finishesOf(loaded, scope, worker);
  const coats = coatsOf({ loaded, scope, worker, parts, rings, pieces: asked.pieces, space, finishes });
  const rolls = rollsOf(loaded, scope, worker);
  const drainage = drainageOf(boxes, scope, space, worker);
  const linings = liningsOf({ loaded, scope, worker, boxes, rolls, drainage });
  const loads = saidLoads(loaded, worker);
  const pieces = asked.pieces;
  const holding = holdingOf({ space, scope, parts, boxes, loads, joints, settings, pieces });
  const water = waterPathOf({ boxes, drainage, linings, settings, space, scope, parts });
  const steps = stepsOf({ loaded, scope, settings, parts, rings, space, boxes, joints, coats }, worker);
  checkUses(main, scope, worker);
  const fits = withinCaps(parts, settings, worker, main.file);
  const cut = fits ? [...parts.values()] : [];
  const cutFrom = materials.used
    .map((material) => ({ material, from: cut.filter((p) => p.material === material) }))
    .filter(({ from }) => from.length > 0);
  const boards = cutFrom
    .filter(({ material }) => material.kind === "board")
    .map(({ material, from }) => layOutBoards(material, from, settings, layouts));
  const sheets = cutFrom
    .filter(({ material }) => material.kind === "sheet")
    .map(({ material, from }) => layOutPanels(material, from, settings, layouts));
  const whole = asked.pieces.complete && joints.every(({ placed }) => placed && placed.tooMany === undefined);
  const partial = {
    loaded,
    scope,
    settings,
    measures,
    materials: materials.used,
    parts,
    rings,
    pieces: asked.pieces,
    space,
    boxes,
    // What is missing while a line cannot be worked out is no fault of the rest.
    frames: whole ? framesOf(space, joints, parts) : [],
    loose: whole ? loosePieces(space, joints) : [],
    rows: unevenRows(space),
    corners: rings.flatMap((ring) => ringCorners(space, ring)),
    fasteners,
    joints,
    finishes,
    coats,
    rolls,
    linings,
    drainage,
    loads,
    holding,
    water,
    movement: gapsThroughTheYear({ boxes, parts, scope, settings, space, water }),
    steps,
    boards,
    sheets,
    shopping: shoppingOf(boards, sheets, joints, fasteners, coats, linings, settings),
    guarding: guardingOf({ loaded, scope, settings, space, boxes, parts, linings, rolls, coats }),
    musts: mustsOf(main, worker),
    accepted: acceptedOf(main),
    built: builtOf({ loaded, scope, worker, parts }),
    faults: [...worker.faults],
    evaluate: (e: Expression, file: string) => worker.evaluate(e, file),
    materialOf: (declared: Declared) => materials.peek(declared),
    meantBy: meantIn({ loaded, scope, materials, settings }),
    placing,
  };
  const stood = { ...partial, standing: whole ? standingOf(partial) : [] };
  return { ...stood, unchecked: uncheckedOf(stood) };
}

/** The same plan with the layouts that are known by now: all that working it out with them from the start would give. */
export function laidOutAnew(worked: Worked, layouts: Layouts): Worked {
  const { joints, fasteners, coats, linings, settings } = worked;
  const boards = worked.boards.map((one) => boardsAnew(one, layouts));
  const sheets = worked.sheets.map((one) => sheetsAnew(one, layouts));
  const shopping = shoppingOf(boards, sheets, joints, fasteners, coats, linings, settings);
  const anew = { ...worked, boards, sheets, shopping };
  return { ...anew, unchecked: uncheckedOf(anew) };
}

/** Whether there are few enough pieces to work with; a fault when not. */
function withinCaps(
  parts: ReadonlyMap<string, Part>,
  settings: Settings,
  worker: Worker,
  file: string,
): boolean {
  const pieces = [...parts.values()].reduce((sum, p) => sum + (ifKnown(p.count) ?? 0), 0) * settings.make;
  if (pieces <= MOST_PIECES) return true;
  const at = settings.at ?? { file, start: 0, end: 0 };
  worker.fault({ kind: "too-many", at, what: "the number of pieces", found: pieces, limit: MOST_PIECES });
  return false;
}

type Main = Loaded["files"][number];

function mustsOf(main: Main, worker: Worker): Must[] {
  return main.tree.entries.flatMap((entry): Must[] => {
    if (entry.kind !== "must") return [];
    const left = worker.evaluate(entry.left, main.file);
    const right = worker.evaluate(entry.right, main.file);
    const at = { file: main.file, start: entry.keyword.start, end: entry.right.end };
    const a = ifKnown(left);
    const b = ifKnown(right);
    const o = a && b ? order(a, b) : undefined;
    if (a && b && o === "kinds") {
      const place = (e: Expression): At => ({ file: main.file, start: e.start, end: e.end });
      const sides = [place(entry.left), place(entry.right)] as const;
      const { comparison } = entry;
      worker.fault({ kind: "kinds", at, doing: "compare", left: a, right: b, sides, comparison });
    }
    const holds = o === undefined || o === "kinds" ? undefined : compares(o, entry.comparison);
    return [{ entry, at, left, right, holds, because: entry.because?.text ?? "" }];
  });
}

/** Whether an order (negative, 0, positive) satisfies a comparison. */
export function compares(o: number, comparison: Comparison): boolean {
  if (comparison === "at most") return o <= 0;
  if (comparison === "at least") return o >= 0;
  if (comparison === "less than") return o < 0;
  return comparison === "more than" ? o > 0 : o === 0;
}

function acceptedOf(main: Main): Accepted[] {
  return main.tree.entries.flatMap((entry): Accepted[] => {
    if (entry.kind !== "accept") return [];
    const at = { file: main.file, start: entry.code.start, end: entry.code.end };
    return [{ code: entry.code.text, on: entry.on?.name.text ?? "", because: entry.because?.text ?? "", at }];
  });
}
