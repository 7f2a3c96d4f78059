/** What was not looked at of loads and of what bears them, and why. */
import { lookUp, type Says, say } from "../../plan";
import { chosen, wallsOf as wallPieces } from "../choose";
import type { Unchecked } from "../fault";
import type { Worked } from "../work";
import type { HeldPiece } from "./index";
import { FLOOR } from "./links";
import { isUprightWall } from "./walls";

type Input = Pick<
  Worked,
  "holding" | "pieces" | "space" | "parts" | "boxes" | "loads" | "settings" | "joints" | "scope"
>;

/** For a plan that places nothing, or whose pieces overlap, one line; else each thing that could not be worked out. */
export function holdingUnchecked(worked: Input): Unchecked[] {
  const { pieces, space, loads, settings, boxes } = worked;
  const asked = loads.length > 0 || boxes.some((b) => b.fill) || settings.footLimit !== undefined;
  if (!pieces.complete || space.clashes.length > 0) {
    // A line that could not be worked out, and pieces that overlap, are mistakes of their own.
    const why = say(pieces.lines.length === 0 ? "no line places them" : "pieces do not fit");
    const at = loads[0]?.at ?? boxes[0]?.declared.at;
    return asked ? [{ what: say("loads"), why, ...(at && { at }) }] : [];
  }
  return [
    ...unplacedOf(worked),
    ...valuesOf(worked),
    ...notchesOf(worked),
    ...wallsOf(worked),
    ...jointsOf(worked),
    ...always(worked),
  ];
}

/** Loads and boxes whose pieces stand nowhere. */
function unplacedOf({ loads, boxes, space, scope }: Input): Unchecked[] {
  const why = say("no piece placed");
  const list = loads.flatMap(({ thing, at }): Unchecked[] => {
    const { text } = thing.name;
    const stands = lookUp(scope, text)?.kind === "box" || chosen(thing, space, scope).length > 0;
    return stands ? [] : [{ what: say("bears its load", { name: text }), why, at }];
  });
  const empty = boxes.flatMap((box): Unchecked[] =>
    box.fill && !box.placed
      ? [{ what: say("walls hold", { box: box.name }), why: say("walls stand nowhere"), at: box.declared.at }]
      : [],
  );
  return [...list, ...empty];
}

/** Boards that bend, of a wood and a size that no table has; and those that bear a load of their own on one place. */
function valuesOf({ holding, space }: Input): Unchecked[] {
  const without = [
    ...holding.pieces.filter((p) => p.carried.bends && !p.member).map((p) => p.piece),
    ...holding.walls.filter((w) => w.work.bends && !w.member).map((w) => w.work.piece),
  ];
  const onOnePlace = holding.pieces.filter(isOnOnePlace).map((p) => p.piece);
  const told = (pieces: readonly number[], why: string): Unchecked[] =>
    onceEach(pieces, space, (part) => ({ what: say("bears its load", { name: part }), why: say(why) }));
  return [...told(without, "no strength printed"), ...told(onOnePlace, "held in few places")];
}

const isOnOnePlace = ({ carried, loads }: HeldPiece): boolean =>
  carried.lie.is === "beam" &&
  !carried.bends &&
  !carried.trouble &&
  carried.links.every(({ link }) => link.by !== FLOOR) &&
  (loads.roaming.length > 0 || carried.weighs.fill + carried.weighs.said > 0);

/** Boards that bend, and from which a notch or a dado takes wood. */
function notchesOf({ holding, space }: Input): Unchecked[] {
  const notched = holding.pieces.filter((p) => p.carried.bends && (p.part?.notches.length ?? 0) > 0);
  return onceEach(
    notched.map((p) => p.piece),
    space,
    (part) => ({ what: say("weak at notches", { name: part }), why: say("boards whole") }),
  );
}

function wallsOf({ holding, space, boxes, scope }: Input): Unchecked[] {
  const filled = boxes.filter((b) => b.fill && b.placed);
  const loose = [
    ...holding.walls.filter((w) => !w.work.bends).map((w) => w.work.piece),
    ...filled.flatMap((b) => wallPieces(b.declared, space, scope).filter((i) => isUprightWall(i, space))),
  ];
  return onceEach(loose, space, (part) => ({
    what: say("wall holds", { name: part }),
    why: say("held in few places"),
  }));
}

function onceEach(
  pieces: readonly number[],
  { pieces: all }: Input["space"],
  told: (part: string) => { readonly what: Says; readonly why: Says },
): Unchecked[] {
  const parts = new Map(pieces.map((i) => [all[i]!.part, all[i]!.at]));
  return [...parts].map(([part, at]) => ({ ...told(part), at }));
}

/** Screws of which something is asked that cannot be compared with what they hold. */
function jointsOf({ holding }: Input): Unchecked[] {
  return holding.unknownJoints.map((joint) => ({
    what: say("screws hold", { joint: joint.title }),
    why: say("no hold known"),
    at: joint.at,
  }));
}

/** What is never looked at, said where something is borne. */
function always({ holding, loads }: Input): Unchecked[] {
  const bends = holding.pieces.some((p) => p.carried.bends);
  if (!bends) return [];
  const list: Unchecked[] = [{ what: say("twisting"), why: say("boards as beams") }];
  if (loads.length === 0) list.push({ what: say("what is put on it"), why: say("no load line") });
  return list;
}
