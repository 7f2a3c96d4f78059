/** What a hover says of loads: what a part, a box, a joint or a load line carries beside what it can bear. */
import type { Entry } from "../../grammar/tree";
import { seatLoad } from "../trade";
import { LENGTH, lengthText, quantityText, roughly } from "../units";
import {
  type Box,
  boardLines,
  carriesMore,
  claimsNothing,
  type FootLine,
  footLine,
  type HeldPiece,
  type HeldWall,
  heldBy,
  type Joint,
  SEAT,
  shownPercent,
  type Verdict,
  verdictOn,
  verdictOnWall,
  type Worked,
  wallLines,
} from "../worked";
import { chosen } from "../worked/choose";
import { bendText, countedScrews, jointLines, memberLines, weightText } from "./hover-strength";
import { COMMON } from "./hover-texts/common";
import { HOLDING } from "./hover-texts/holding";
import type { Voice } from "./hover-texts/voice";
import { escaped, list, paragraphs, table } from "./markdown";

const caution = ({ language }: Voice): string => `_${escaped(COMMON[language].caution)}_`;

/** Of a part: the worst of its boards, as it lies and as a wall, and the foot that presses hardest where it is one. */
export function partHolds(part: string, worked: Worked, voice: Voice): string | undefined {
  const own = boardLines(worked).find(({ held }) => nameOf(held.piece, worked) === part);
  const walls = wallLines(worked).filter(({ wall }) => nameOf(wall.work.piece, worked) === part);
  const foot = footLine(worked);
  const told = [
    own && tellPiece(own.held, own.count, worked, voice),
    ...walls.map(({ wall, count }) => tellWall(wall, count, worked, voice)),
    foot && nameOf(foot.foot.piece, worked) === part && isTold(foot, worked)
      ? footText(foot, worked, voice)
      : undefined,
  ].filter((t) => t !== undefined);
  return told.length > 0 ? paragraphs(...told, caution(voice)) : undefined;
}

/** A foot that carries nothing but its own wood is told where there is a limit alone. */
const isTold = ({ foot, limit }: FootLine, { holding }: Worked): boolean =>
  limit !== undefined || carriesMore(holding.pieces[foot.piece]!);

const nameOf = (piece: number, { space }: Worked): string => space.pieces[piece]!.part;

const pieceOf = (piece: number, { space }: Worked, { language }: Voice): string =>
  COMMON[language].piece(space.pieces[piece]!.id);

/** Of the pieces that one place line of the plan puts there. */
export function placeHolds(entry: PlaceEntry, worked: Worked, voice: Voice): string | undefined {
  const line = worked.pieces.lines.find(({ placement }) => placement.entry === entry);
  if (!line) return undefined;
  const own = new Set(line.pieces);
  const pieces = new Set(worked.space.pieces.flatMap((piece, i) => (own.has(piece) ? [i] : [])));
  const held = worked.holding.pieces.filter((h) => pieces.has(h.piece) && h.carried.bends && carriesMore(h));
  const uses = (h: HeldPiece): number => verdictOn(h)?.uses ?? -1;
  const [first, ...others] = held;
  if (!first) return undefined;
  const worst = others.reduce((most, h) => (uses(h) > uses(most) ? h : most), first);
  return paragraphs(tellPiece(worst, held.length, worked, voice), caution(voice));
}

function tellPiece(held: HeldPiece, count: number, worked: Worked, voice: Voice): string {
  const says = HOLDING[voice.language];
  const { member, judged, carried } = held;
  const verdict = verdictOn(held);
  const which = worstOf(held.piece, count, worked, voice);
  const title = says.carries(escaped(`${carriedText(held, voice)}${which}`));
  if (!verdict || !member || !judged) return paragraphs(title, says.noStrength);
  return paragraphs(
    title,
    verdictTable(verdict, voice),
    list(memberLines(member, judged, carried.span, voice)),
  );
}

const worstOf = (piece: number, count: number, worked: Worked, voice: Voice): string =>
  count > 1 ? HOLDING[voice.language].worst(pieceOf(piece, worked, voice), count) : "";

/** `24 lb: 1.2 lb its own, 23 lb of fill`. */
function carriedText(
  { carried: { weighs, moving }, loads }: HeldPiece,
  { language, display }: Voice,
): string {
  const says = HOLDING[language];
  const usual = loads.roaming.some((r) => r.from === "usual");
  const parts = [
    [weighs.own, "own"],
    [weighs.fill, "fill"],
    [weighs.said, "said"],
    [weighs.passed, "passed"],
    [moving, usual ? "usual" : "moving"],
  ] as const;
  const said = parts.flatMap(([force, from]) =>
    force > 0 ? [says.part(weightText(force, display), from)] : [],
  );
  const all = parts.reduce((sum, [force]) => sum + force, 0);
  return says.carried(weightText(all, display), said);
}

function tellWall(wall: HeldWall, count: number, worked: Worked, voice: Voice): string {
  const says = HOLDING[voice.language];
  const { work, member, judged } = wall;
  const verdict = verdictOnWall(wall);
  const which = worstOf(work.piece, count, worked, voice);
  const title = says.wallOf(escaped(work.box.name), escaped(which));
  if (!work.bends) return paragraphs(title, says.fewSupports);
  if (!verdict || !member || !judged) return paragraphs(title, says.noStrength);
  return paragraphs(
    title,
    verdictTable(verdict, voice),
    list([...memberLines(member, judged, work.span, voice), says.wallFill]),
  );
}

/** Load, limit, share and state; the table is short. */
function verdictTable({ force, bears, uses, sag, state }: Verdict, voice: Voice): string {
  const { language, display } = voice;
  const says = HOLDING[language];
  const [bends, may] = sag
    ? [says.bends(bendText(sag.size, display)), says.mayBend(bendText(sag.limit, display))]
    : ["", ""];
  return table([
    [says.loadRow, escaped(`${weightText(force, display)}${bends}`)],
    [says.canBear, escaped(`${weightText(bears, display)}${may}`)],
    [says.uses, usesText(uses, voice)],
    [says.soItIs, says.state(state)],
  ]);
}

function usesText(uses: number, { language }: Voice): string {
  const says = HOLDING[language];
  const percent = shownPercent(uses);
  return percent < 1 ? says.little : percent >= 1000 ? says.times(Math.round(uses)) : says.percent(percent);
}

function footText({ foot, presses, limit, count }: FootLine, worked: Worked, voice: Voice): string {
  const { language, display } = voice;
  const says = HOLDING[language];
  const piece = pieceOf(foot.piece, worked, voice);
  const said = says.presses(escaped(says.onFloor(weightText(presses, display), count, piece)));
  if (limit === undefined) return `${said}${says.noFootLimit}`;
  const uses = limit > 0 ? usesText(presses / limit, voice) : "";
  return `${said}${escaped(says.footLimit(weightText(limit, display), uses))}`;
}

/** Of a joint: what hangs on its screws where that is the worst. */
export function jointHolds(joint: Joint, worked: Worked, voice: Voice): string | undefined {
  const { language, display } = voice;
  const says = HOLDING[language];
  const held = heldBy(worked.holding, joint);
  if (!held) return worked.holding.unknownJoints.includes(joint) ? says.jointUnknown : undefined;
  const { demand, asked, holds, uses } = held;
  const nothing = claimsNothing(held);
  const state = nothing ? "claims nothing" : uses > 1 + HAIR ? "overloaded" : "within";
  const onScrews = says.onScrews(
    demand.from,
    demand.way,
    countedScrews(held, voice),
    pieceOf(demand.piece, worked, voice),
    pieceOf(demand.by, worked, voice),
  );
  return paragraphs(
    `**${escaped(weightText(asked, display))}**${escaped(onScrews)}`,
    table([
      [says.loadRow, escaped(weightText(asked, display))],
      [says.canHold, nothing ? says.nothing : escaped(weightText(holds, display))],
      [says.uses, nothing ? "" : usesText(uses, voice)],
      [says.soItIs, says.state(state)],
    ]),
    list(jointLines(held, voice)),
    caution(voice),
  );
}

/** What arithmetic leaves of a share. */
const HAIR = 1e-9;

/** A row for each part that carries a box's fill or holds it in, short; the caution stands with the rest of the box. */
export function boxHolds(box: Box, worked: Worked, voice: Voice): string | undefined {
  const says = HOLDING[voice.language];
  const floors = boardLines(worked).filter(
    ({ held }) => held.carried.weighs.fill > 0 && isOf(box, held.piece, worked),
  );
  const rows = [
    ...floors.map(
      ({ held, verdict }) => [says.underFill(nameOf(held.piece, worked)), rowText(verdict, voice)] as const,
    ),
    ...wallLines(worked)
      .filter(({ wall }) => wall.work.box === box)
      .map(
        ({ wall, verdict }) =>
          [says.asWall(nameOf(wall.work.piece, worked)), rowText(verdict, voice)] as const,
      ),
  ];
  return table(rows.map(([label, text]) => [escaped(label), escaped(text)]));
}

/** Whether a piece is of the bottom that the box's line names. */
const isOf = ({ declared }: Box, piece: number, worked: Worked): boolean =>
  declared.entry.clauses.some(
    (c) =>
      c.kind === "floor" &&
      c.things.some((thing) => chosen(thing, worked.space, worked.scope).includes(piece)),
  );

function rowText(verdict: Verdict | undefined, voice: Voice): string {
  const { language, display } = voice;
  const says = HOLDING[language];
  if (!verdict) return says.rowNot;
  const { force, bears, uses, state, sag } = verdict;
  const bend = sag ? says.bendOf(bendText(sag.size, display), bendText(sag.limit, display)) : "";
  return says.row(
    weightText(force, display),
    weightText(bears, display),
    bend,
    usesText(uses, voice),
    says.state(state),
  );
}

type PlaceEntry = Entry & { readonly kind: "place" };
type LoadEntry = Entry & { readonly kind: "load" };

/** Of a load line: where it stands, what carries it, and what would be taken without it. */
export function describeLoad(entry: LoadEntry, worked: Worked, voice: Voice): string | undefined {
  const said = worked.loads.find(({ at }) => at.start === entry.keyword.start);
  if (said?.weight.state !== "known") return undefined;
  const { language, display } = voice;
  const says = HOLDING[language];
  const { how, thing, weight } = said;
  const pieces = new Set(chosen(thing, worked.space, worked.scope));
  const parts = new Set([...pieces].map((i) => nameOf(i, worked)));
  const rows = boardLines(worked)
    .filter(({ held }) => parts.has(nameOf(held.piece, worked)))
    .map(
      ({ held, verdict }) => [escaped(nameOf(held.piece, worked)), escaped(rowText(verdict, voice))] as const,
    );
  const long = (mm: number): string => lengthText(roughly(LENGTH, mm), display);
  const seat = says.seat(
    weightText(SEAT.force, display),
    long(SEAT.low),
    long(SEAT.high),
    COMMON[language].cite(seatLoad.source),
  );
  return paragraphs(
    says.load(escaped(says.loadOn(quantityText(weight.value, display), how, thing.name.text))),
    table(rows),
    rows.length === 0 ? says.nothingBends : undefined,
    list([how === "anywhere" ? says.anywhere : says.stays, escaped(seat)]),
    caution(voice),
  );
}
