/**
 * The order of work: what is new in each step, which joints are driven in it, what waits, what is lifted. By the steps of
 * the plan, or, where it says none, by a proposed order.
 */
import type { Entry } from "../../grammar/tree";
import type { At, Loaded, Scope } from "../plan";
import { exactly, fraction, type Quantity, TIME } from "../units";
import type { Box } from "./boxes";
import type { CoatWork } from "./coating";
import type { Worker } from "./expressions";
import { type CoatLine, coatLines } from "./finish-drying";
import type { Joint } from "./joints";
import type { Part } from "./parts";
import { proposedLines } from "./proposed-steps";
import type { Ring } from "./rings";
import type { Settings } from "./settings";
import type { Space } from "./space";
import { type SquareCheck, squareChecks } from "./square";
import { shortWaits } from "./step-finish";
import { type DrivenIn, jointsByStep } from "./step-joints";
import { handsFor, type Lift, liftsOf } from "./step-lift";
import { type StepCoat, type StepLine, type StepThing, stepLines } from "./step-lines";
import { squaresByStep } from "./step-squares";

export type { DrivenIn, Lift, StepCoat, StepThing };

export interface WorkStep {
  readonly title: string;
  /** Its first line; the plan's own where it is proposed. */
  readonly at: At;
  readonly entry: (Entry & { readonly kind: "step" }) | undefined;
  /** The things it names, as said. */
  readonly uses: readonly StepThing[];
  /** Pieces that no step before used, by their places among all. */
  readonly fresh: readonly number[];
  /** Pieces that it names again. */
  readonly again: readonly number[];
  /** Parts of which no piece is placed, and that no step before used. */
  readonly parts: readonly string[];
  /** Pieces that stood before, and that this step joins something to. */
  readonly standing: readonly number[];
  readonly joints: readonly DrivenIn[];
  readonly glues: readonly DrivenIn[];
  readonly coats: readonly StepCoat[];
  /** Boxes it lines. */
  readonly lines: readonly StepThing[];
  /** Parts cut to fit that are new in it. */
  readonly cutToFit: readonly string[];
  readonly takes: Quantity | undefined;
  readonly wait: Quantity | undefined;
  readonly people: number | undefined;
  /** Some of its clauses could not be read: nothing is concluded from its times and hands. */
  readonly unread: boolean;
  /** What can be measured corner to corner from this step on, before it is screwed tight. */
  readonly squares: readonly SquareCheck[];
  /** The heaviest that must be lifted in it, as far as weights are known. */
  readonly lift: Lift | undefined;
}

export interface StepsWork {
  readonly steps: readonly WorkStep[];
  /** The plan says no steps: these are a proposal. */
  readonly proposed: boolean;
  /** What no step uses; nothing where a step could not be read. */
  readonly never: { readonly pieces: readonly number[]; readonly parts: readonly string[] };
  /** For each piece the step that uses it first, as a place in `steps`; undefined where none does. */
  readonly stepOf: readonly (number | undefined)[];
  readonly coating: readonly CoatLine[];
}

/** What the steps are worked out from. */
export interface ForSteps {
  readonly loaded: Loaded;
  readonly scope: Scope;
  readonly settings: Settings;
  readonly parts: ReadonlyMap<string, Part>;
  readonly rings: readonly Ring[];
  readonly space: Space;
  readonly boxes: readonly Box[];
  readonly joints: readonly Joint[];
  readonly coats: readonly CoatWork[];
}

export function stepsOf(plan: ForSteps, worker: Worker): StepsWork {
  const { loaded, scope, space } = plan;
  const coating = coatLines(plan.coats, space, scope);
  const said = stepLines(loaded, scope, worker, space, coating);
  if (said.lines.length > 0)
    return stepsFrom(said.lines, plan, coating, { proposed: false, clear: said.clear });
  // Few ask for a proposal while a plan is being typed.
  const proposal = once(() => proposedSteps(plan, coating));
  return {
    proposed: true,
    coating,
    get steps() {
      return proposal().steps;
    },
    get never() {
      return proposal().never;
    },
    get stepOf() {
      return proposal().stepOf;
    },
  };
}

function proposedSteps(plan: ForSteps, coating: readonly CoatLine[]): StepsWork {
  const lines = proposedLines(plan, coating);
  const how = { proposed: true, clear: true } as const;
  const steps = stepsFrom(lines, plan, coating, how);
  const short = shortWaits({ ...plan, steps });
  if (short.length === 0) return steps;
  const waits = new Map(short.map((s) => [steps.steps.indexOf(s.step), s.wait]));
  const waiting = lines.map((line, n) => {
    const minutes = waits.get(n);
    return minutes === undefined
      ? line
      : { ...line, wait: exactly(TIME, fraction.rational(Math.ceil(minutes))) };
  });
  return stepsFrom(waiting, plan, coating, how);
}

/** The steps worked out from their lines. */
function stepsFrom(
  lines: readonly StepLine[],
  plan: ForSteps,
  coating: readonly CoatLine[],
  { proposed, clear }: { readonly proposed: boolean; readonly clear: boolean },
): StepsWork {
  const { space, joints, parts } = plan;
  const stepOf: (number | undefined)[] = space.pieces.map(() => undefined);
  const partStep = new Map<string, number>();
  const taken = lines.map((line, n) => {
    const fresh: number[] = [];
    const again = new Set<number>();
    const unplaced: string[] = [];
    for (const used of line.uses) {
      for (const i of used.pieces) {
        if (stepOf[i] === undefined) {
          stepOf[i] = n;
          fresh.push(i);
        } else if (stepOf[i] !== n) again.add(i);
      }
      for (const part of used.parts)
        if (!partStep.has(part)) {
          partStep.set(part, n);
          unplaced.push(part);
        }
    }
    return { fresh: fresh.sort((a, b) => a - b), again: [...again].sort((a, b) => a - b), unplaced };
  });
  const driven = jointsByStep(joints, space, stepOf, partStep, lines.length);
  const lifts = liftsOf(space, parts, joints, stepOf, taken, driven);
  const squares = once(() => squaresByStep(squareChecks(plan), stepOf, driven));
  const steps = lines.map((line, n): WorkStep => {
    const { fresh, again, unplaced } = taken[n]!;
    const own = driven[n]!;
    const partNames = [...new Set(fresh.map((i) => space.pieces[i]!.part)), ...unplaced];
    return {
      title: line.title,
      at: line.at,
      entry: line.entry,
      uses: line.uses,
      fresh,
      again,
      parts: unplaced,
      standing: standingIn(own, stepOf, n),
      joints: own.filter((d) => d.joint.entry.kind === "fasten"),
      glues: own.filter((d) => d.joint.entry.kind === "glue"),
      coats: line.coats,
      lines: line.lines,
      cutToFit: partNames.filter((name) => parts.get(name)?.fit !== undefined),
      takes: line.takes,
      wait: line.wait,
      people: proposed ? handsIn(lifts[n]) : line.people,
      unread: line.unread,
      get squares() {
        return squares()[n]!;
      },
      lift: lifts[n],
    };
  });
  const never = neverUsed(plan, stepOf, partStep);
  return { steps, proposed, never: clear && steps.length > 0 ? never : NOTHING, stepOf, coating };
}

/** How many people a proposed step asks for; unsaid where one does, and where more than a few would have to. */
function handsIn(lift: Lift | undefined): number | undefined {
  const hands = lift && handsFor(lift.kg);
  return hands === 1 ? undefined : hands;
}

const NOTHING: StepsWork["never"] = { pieces: [], parts: [] };

/** Pieces and parts of the plan that no step uses. Where some are placed, a part that stands nowhere has a problem of its own. */
function neverUsed(
  { space, parts, loaded }: ForSteps,
  stepOf: readonly (number | undefined)[],
  partStep: ReadonlyMap<string, number>,
): StepsWork["never"] {
  const pieces = space.pieces.flatMap((_, i) => (stepOf[i] === undefined ? [i] : []));
  const { file } = loaded.files[0]!;
  const own = [...parts.values()].filter((p) => p.declared.at.file === file).map((p) => p.name);
  return { pieces, parts: space.pieces.length > 0 ? [] : own.filter((name) => !partStep.has(name)) };
}

function standingIn(
  driven: readonly DrivenIn[],
  stepOf: readonly (number | undefined)[],
  n: number,
): number[] {
  const found = new Set<number>();
  for (const { crossings } of driven)
    for (const { first, through, into } of crossings)
      for (const i of [first, ...through, into]) if (stepOf[i]! < n) found.add(i);
  return [...found].sort((a, b) => a - b);
}

function once<T>(work: () => T): () => T {
  let done: { readonly value: T } | undefined;
  return () => {
    done ??= { value: work() };
    return done.value;
  };
}
