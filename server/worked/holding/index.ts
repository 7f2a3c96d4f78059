/**
 * Will it hold: what every placed piece carries and hands on to the floor, how far that uses what it is, what the joints
 * are asked for, what stands on each foot, and what could not be said. Read off by checks, hovers and the sheet.
 */
import { bowLimit, sagLimit } from "../../trade";
import type { Joint } from "../joints";
import type { Part } from "../parts";
import { otherOf, type Space } from "../space";
import type { Worked } from "../work";
import { type Carried, carriedBy } from "./carrying";
import { demandsOf, type HeldJoint, jointsHeld } from "./demands";
import { fixingsOf } from "./fixings";
import { type Judged, judge, judgeWall, type Member, Members, sectionOf } from "./judging";
import { FLOOR, linksOf } from "./links";
import { loadsOf, type PieceLoads } from "./loads";
import { type WallWork, wallWork } from "./walls";
import { wetIn } from "./wet";

export { shownLoad, shownPercent } from "./amounts";
export type { Carried, LinkLoad } from "./carrying";
export { type JointCure, jointCures, type MemberCure, memberCures, wallCures } from "./curing";
export type { Demand, HeldJoint } from "./demands";
export type { Grip, GripFactors, GripSteps } from "./fastening";
export type { Judged, Member, Sag, Strain } from "./judging";
export {
  type BoardLine,
  boardLines,
  carriesMore,
  claimsNothing,
  type FootLine,
  footLine,
  type Ledger,
  ledgerOf,
  loadOn,
  marginOf,
  type SteadyLine,
  steadyLines,
  type Verdict,
  verdictOn,
  verdictOnWall,
  type WallLine,
  wallLines,
} from "./ledger";
export { FLOOR, type Link } from "./links";
export { SEAT } from "./loads";
export { type Bearing, type SaidLoad, saidLoads } from "./said";
export { holdingUnchecked } from "./unchecked";
export type { WallHolder, WallWork } from "./walls";

export interface HeldPiece {
  /** By its place among all pieces. */
  readonly piece: number;
  readonly part: Part | undefined;
  readonly loads: PieceLoads;
  readonly carried: Carried;
  /** What it is to bend; undefined where it does not, or no published value is known. */
  readonly member: Member | undefined;
  readonly judged: Judged | undefined;
}

export interface HeldWall {
  readonly work: WallWork;
  readonly part: Part | undefined;
  readonly member: Member | undefined;
  readonly judged: Judged | undefined;
}

export interface Foot {
  readonly piece: number;
  /** Newtons: what stays, and the most that comes and goes. */
  readonly steady: number;
  readonly moving: number;
}

/** A piece that carries something which nothing hands on to the floor. */
export interface NoPath {
  readonly piece: number;
  /** Newtons, with its own weight. */
  readonly force: number;
  readonly why: "held by nothing" | "held at one place";
  /** One that it touches and that leads to the floor; undefined where one place holds it. */
  readonly beside: number | undefined;
}

export interface Holding {
  readonly pieces: readonly HeldPiece[];
  readonly walls: readonly HeldWall[];
  readonly joints: readonly HeldJoint[];
  readonly feet: readonly Foot[];
  readonly noPath: readonly NoPath[];
  /** Joints of which something is asked, and no table tells what their screws hold. */
  readonly unknownJoints: readonly Joint[];
}

type Input = Pick<Worked, "space" | "scope" | "parts" | "boxes" | "loads" | "joints" | "settings" | "pieces">;

const NOTHING_HELD: Holding = {
  pieces: [],
  walls: [],
  joints: [],
  feet: [],
  noPath: [],
  unknownJoints: [],
};

/** A plan with a line that cannot be worked out, or with pieces that overlap, is not judged: what is missing is no fault of the rest. */
export function holdingOf(worked: Input): Holding {
  const { space, parts, boxes, scope } = worked;
  if (!worked.pieces.complete || space.clashes.length > 0) return NOTHING_HELD;
  const partOf = (i: number): Part | undefined => parts.get(space.pieces[i]!.part);
  const wet = wetIn(worked);
  const { isPanel, fixings, links, loads, carried } = carriedIn(worked);
  const members = new Members();
  const pieces = space.pieces.map((_, piece): HeldPiece => {
    const own = carried[piece]!;
    const part = partOf(piece);
    const member = own.bends && members.of(part?.material, sectionOf(own.lie), wet(piece));
    return {
      piece,
      part,
      loads: loads[piece]!,
      carried: own,
      member,
      judged:
        member && own.bends && judge(member, own.bends.steady, own.bends.coming, sagPart(own), own.span),
    };
  });
  const walls = wallWork(boxes, space, scope, fixings, isPanel).map((work): HeldWall => {
    const part = partOf(work.piece);
    const member = members.of(part?.material, sectionOf(work.lie), true);
    const judged = member && work.bends && judgeWall(member, work.bends.drained, work.bends.blocked);
    return { work, part, member, judged };
  });
  return {
    pieces,
    walls,
    ...jointsHeld(demandsOf(carried, walls), worked),
    feet: feetOf(carried),
    noPath: noPathOf(worked, carried, links.levels),
  };
}

function carriedIn(worked: Input) {
  const { space, parts, joints } = worked;
  const isPanel = (i: number): boolean => parts.get(space.pieces[i]!.part)?.material?.kind === "sheet";
  const fixings = fixingsOf(joints, space.pieces.length);
  const links = linksOf(space, fixings, isPanel);
  const loads = loadsOf(worked);
  return { isPanel, fixings, links, loads, carried: carriedBy(space.pieces, links, loads, isPanel) };
}

/** Whether everything is carried as well as now when the same pieces stand otherwise. */
export function carriesAsWell(worked: Worked, space: Space): boolean {
  const after = { ...worked, space };
  const { carried, links } = carriedIn(after);
  const now = new Set(worked.holding.noPath.map((n) => n.piece));
  return noPathOf(after, carried, links.levels).every((n) => now.has(n.piece));
}

/** What part of its span a board may bend: of one that nobody sees under soil, as much as a wall. */
export const sagPart = ({ weighs }: Carried): number => (weighs.fill > 0 ? bowLimit : sagLimit).value;

function feetOf(carried: readonly Carried[]): Foot[] {
  return carried.flatMap(({ links }, piece): Foot[] => {
    const floor = links.filter(({ link }) => link.by === FLOOR);
    if (floor.length === 0) return [];
    const steady = floor.reduce((sum, l) => sum + l.steady, 0);
    return [{ piece, steady, moving: Math.max(...floor.map((l) => l.moving)) }];
  });
}

/** Of pieces that hang together and are held by nothing, the one that touches what stands is told. */
function noPathOf(
  { space, joints }: Input,
  carried: readonly Carried[],
  levels: readonly (number | undefined)[],
): NoPath[] {
  const hanging = new Set(space.hanging.flat());
  const touching = (i: number): number[] => space.meetingsOf[i]!.map((m) => otherOf(space.meetings[m]!, i));
  // Before any joint is written, only what the plan says stands there is asked for.
  const coming = (moving: number): number => (joints.length > 0 ? moving : 0);
  const found: NoPath[] = [];
  const seen = new Set<number>();
  carried.forEach(({ trouble, weighs, moving }, piece) => {
    if (!trouble || hanging.has(piece) || seen.has(piece)) return;
    if (trouble === "held at one place") {
      const force = weighs.fill + weighs.said + weighs.passed + coming(moving);
      if (force > 0) found.push({ piece, force: force + weighs.own, why: trouble, beside: undefined });
      return;
    }
    const group = [piece];
    seen.add(piece);
    for (const one of group)
      for (const next of touching(one)) {
        if (levels[next] !== undefined || seen.has(next)) continue;
        seen.add(next);
        group.push(next);
      }
    const stays = group.reduce((sum, i) => sum + carried[i]!.weighs.fill + carried[i]!.weighs.said, 0);
    const put = stays + coming(Math.max(...group.map((i) => carried[i]!.moving)));
    if (put <= 0) return;
    const force = group.reduce((sum, i) => sum + carried[i]!.weighs.own, put);
    for (const one of group) {
      const beside = touching(one).find((n) => levels[n] !== undefined);
      if (beside !== undefined) {
        found.push({ piece: one, force, why: trouble, beside });
        return;
      }
    }
  });
  return found;
}

/** What a joint's line is asked for, and holds; undefined when none of its screws carries a load. */
export const heldBy = ({ joints }: Holding, joint: Joint): HeldJoint | undefined =>
  joints.find((h) => h.joint === joint);
