/** What a plan has its builder do: saw, bore, drive, glue, coat, line. Tools, bits, cautions and care follow from it. */
import { ifKnown } from "../plan";
import { NUMERIC } from "../solid/angle";
import { isAmong, SAW_WORDS } from "../trade";
import { wordsOf } from "./coated";
import { partNames } from "./finish-drying";
import type { Joint } from "./joints";
import type { Material } from "./materials";
import type { Part } from "./parts";
import { isBolt } from "./screws";
import type { Tools } from "./settings";
import type { Angles } from "./shapes";
import type { Worked } from "./work";

/** A slanted end of a part; angles in degrees off square, 0 for none. */
export interface SlantedEnd {
  readonly part: Part;
  readonly angles: Angles;
  readonly kind: "miter" | "bevel" | "compound";
}

/** What a `coat` line says: on which things, with what. */
export interface Coating {
  readonly things: readonly string[];
  /** Names of the parts that these things are made of. */
  readonly parts: readonly string[];
  readonly with: string;
  /** As the line says, else as its finish does; undefined where neither does, or not rightly. */
  readonly coats: number | undefined;
}

/** What a `line` entry says: which boxes, with what. */
export interface Lined {
  readonly things: readonly string[];
  readonly with: string;
}

export interface Operations {
  readonly boards: readonly Part[];
  readonly panels: readonly Part[];
  /** Parts of boards that are cut along their length. */
  readonly ripped: readonly Part[];
  /** Of boards; a slanted end of a panel is one of its cuts. */
  readonly slanted: readonly SlantedEnd[];
  readonly notched: readonly Part[];
  /** Pieces too short to hold at a saw. */
  readonly short: readonly Part[];
  readonly screwed: readonly Joint[];
  readonly nailed: readonly Joint[];
  readonly bolted: readonly Joint[];
  readonly glued: readonly Joint[];
  readonly coats: readonly Coating[];
  readonly liners: readonly Lined[];
  /** What some part is cut from. */
  readonly woods: readonly Material[];
  /** Of these, wood on hand that the layouts cut from, and wood with old paint. */
  readonly salvage: readonly Material[];
  readonly saws: Saws;
}

/** Saws at hand, as far as the plan tells. */
export interface Saws {
  /** "no" when hand saws are told and no machine is. */
  readonly power: "yes" | "no" | "unsaid";
  readonly circular: boolean;
  readonly table: boolean;
}

/** Shorter pieces are cut from a long board and clamped: 6 in (trade-facts section 9). */
export const SHORT_MM = 6 * 25.4;
/** Degrees below which an end is square. */
const SQUARE = 1e-6;

export function operationsOf(worked: Worked): Operations {
  const parts = [...worked.parts.values()];
  const boards = parts.filter((p) => p.material?.kind === "board");
  const panels = parts.filter((p) => p.material?.kind === "sheet");
  const fastened = worked.joints.filter((j) => j.entry.kind === "fasten");
  const bolted = fastened.filter(isBolt);
  const nailed = fastened.filter((j) => !isBolt(j) && isNail(j));
  return {
    boards,
    panels,
    ripped: boards.filter(isRipped),
    slanted: boards.flatMap(slantedEnds),
    notched: parts.filter((p) => p.notches.length > 0),
    short: parts.filter((p) => (ifKnown(p.needs)?.approx ?? SHORT_MM) < SHORT_MM - NUMERIC),
    screwed: fastened.filter((j) => !isBolt(j) && !isNail(j)),
    nailed,
    bolted,
    glued: worked.joints.filter((j) => j.entry.kind === "glue"),
    coats: coatedIn(worked),
    liners: linedIn(worked),
    woods: [...new Set(parts.flatMap((p) => p.material ?? []))],
    salvage: salvageOf(worked),
    saws: sawsOf(worked.settings.tools),
  };
}

/** What its hole is drilled for: a lag screw's is that of a screw. */
export const sortOf = (joint: Joint): "screw" | "nail" | "bolt" =>
  isBolt(joint) ? "bolt" : isNail(joint) ? "nail" : "screw";

export const isNail = ({ fastener }: Joint): boolean => /\b(nail|pin|brad)s?\b/.test(fastener?.kind ?? "");

/** The width is less than its board's: one that is the board's own needs no cut. */
function isRipped({ ripped, width, material }: Part): boolean {
  const [own, board] = [ifKnown(width), ifKnown(material?.width)];
  return (
    ripped !== undefined && own !== undefined && board !== undefined && own.approx < board.approx - NUMERIC
  );
}

/** An end of it is mitered or beveled. */
export const isSlanted = (part: Part): boolean => slantedEnds(part).length > 0;

function slantedEnds(part: Part): SlantedEnd[] {
  const { leftEnd, rightEnd } = part;
  const ends = leftEnd === rightEnd ? [leftEnd] : [leftEnd, rightEnd];
  return ends.flatMap((angles): SlantedEnd[] => {
    const miter = (angles?.miter?.approx ?? 0) > SQUARE;
    const bevel = (angles?.bevel?.approx ?? 0) > SQUARE;
    if (!angles || !(miter || bevel)) return [];
    return [{ part, angles, kind: miter && bevel ? "compound" : miter ? "miter" : "bevel" }];
  });
}

const coatedIn = ({ coats, scope }: Worked): Coating[] =>
  coats.map(({ entry, things, coats, coatsFrom }) => ({
    things,
    parts: entry.things.flatMap((t) => partNames(t, scope)),
    with: entry.with.text,
    coats: coatsFrom === "assumed" ? undefined : ifKnown(coats),
  }));

const linedIn = ({ loaded }: Worked): Lined[] =>
  loaded.files[0]!.tree.entries.flatMap((entry) =>
    entry.kind === "line" ? [{ things: entry.things.map(wordsOf), with: entry.with.text }] : [],
  );

function salvageOf({ boards, sheets, parts }: Worked): Material[] {
  const onHand = new Set<Material>();
  for (const { material, answer } of [...boards, ...sheets]) {
    const cut = "boards" in answer ? answer.boards : answer.sheets;
    if (cut.some(({ kind }) => kind === "on hand")) onHand.add(material);
  }
  for (const { material } of parts.values())
    if (material?.conditions.includes("painted")) onHand.add(material);
  return [...onHand];
}

function sawsOf(tools: Tools | undefined): Saws {
  const has = tools?.has ?? [];
  const { hand, box, circular, table, miter, compound, other } = SAW_WORDS;
  const machine = isAmong(has, [...circular, ...table, ...miter, ...compound, ...other]);
  const byHand = isAmong(has, [...hand, ...box]);
  // A saw whose angles are told by degree is a machine.
  const told =
    tools !== undefined && (tools.miters !== undefined || tools.bevels !== undefined || tools.rips === true);
  return {
    power: machine || told ? "yes" : byHand ? "no" : "unsaid",
    circular: isAmong(has, circular),
    table: isAmong(has, table),
  };
}

/** `a, b and c` */
export const listed = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
