/** What a hover says of loads: what a part, a box, a joint or a load line carries beside what it can bear. */
import type { Entry } from "../../grammar/tree";
import { cite, seatLoad, structuralCaution } from "../trade";
import { type Display, LENGTH, lengthText, quantityText, roughly } from "../units";
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
import { escaped, list, paragraphs, table } from "./markdown";

const CAUTION = `_${escaped(structuralCaution.value.text)}_`;

/** Of a part: the worst of its boards, as it lies and as a wall, and the foot that presses hardest where it is one. */
export function partHolds(part: string, worked: Worked): string | undefined {
  const own = boardLines(worked).find(({ held }) => nameOf(held.piece, worked) === part);
  const walls = wallLines(worked).filter(({ wall }) => nameOf(wall.work.piece, worked) === part);
  const foot = footLine(worked);
  const told = [
    own && tellPiece(own.held, own.count, worked),
    ...walls.map(({ wall, count }) => tellWall(wall, count, worked)),
    foot && nameOf(foot.foot.piece, worked) === part && isTold(foot, worked)
      ? footText(foot, worked)
      : undefined,
  ].filter((t) => t !== undefined);
  return told.length > 0 ? paragraphs(...told, CAUTION) : undefined;
}

/** A foot that carries nothing but its own wood is told where there is a limit alone. */
const isTold = ({ foot, limit }: FootLine, { holding }: Worked): boolean =>
  limit !== undefined || carriesMore(holding.pieces[foot.piece]!);

const nameOf = (piece: number, { space }: Worked): string => space.pieces[piece]!.part;

/** Of the pieces that one place line of the plan puts there. */
export function placeHolds(entry: PlaceEntry, worked: Worked): string | undefined {
  const line = worked.pieces.lines.find(({ placement }) => placement.entry === entry);
  if (!line) return undefined;
  const own = new Set(line.pieces);
  const pieces = new Set(worked.space.pieces.flatMap((piece, i) => (own.has(piece) ? [i] : [])));
  const held = worked.holding.pieces.filter((h) => pieces.has(h.piece) && h.carried.bends && carriesMore(h));
  const uses = (h: HeldPiece): number => verdictOn(h)?.uses ?? -1;
  const [first, ...others] = held;
  if (!first) return undefined;
  const worst = others.reduce((most, h) => (uses(h) > uses(most) ? h : most), first);
  return paragraphs(tellPiece(worst, held.length, worked), CAUTION);
}

function tellPiece(held: HeldPiece, count: number, worked: Worked): string {
  const { display } = worked.settings;
  const { member, judged, carried } = held;
  const verdict = verdictOn(held);
  const which = count > 1 ? ` (${worked.space.pieces[held.piece]!.id}, the worst of ${count})` : "";
  const title = `**Carries** ${escaped(`${carriedText(held, display)}${which}`)}`;
  if (!verdict || !member || !judged)
    return paragraphs(title, "What it can bear is not known: no strength is printed for its wood and size");
  return paragraphs(
    title,
    verdictTable(verdict, display),
    list(memberLines(member, judged, carried.span, display)),
  );
}

/** `24 lb: 1.2 lb its own, 23 lb of fill`. */
function carriedText({ carried: { weighs, moving }, loads }: HeldPiece, display: Display): string {
  const usual = loads.roaming.some((r) => r.from === "usual");
  const parts = [
    [weighs.own, "its own"],
    [weighs.fill, "of wet fill"],
    [weighs.said, "that the plan puts on it"],
    [weighs.passed, "handed down to it"],
    [moving, usual ? "of somebody at the worst place" : "that comes and goes"],
  ] as const;
  const said = parts.flatMap(([force, what]) => (force > 0 ? [`${weightText(force, display)} ${what}`] : []));
  const all = parts.reduce((sum, [force]) => sum + force, 0);
  return `${weightText(all, display)}: ${said.join(", ")}`;
}

function tellWall(wall: HeldWall, count: number, worked: Worked): string {
  const { display } = worked.settings;
  const { work, member, judged } = wall;
  const verdict = verdictOnWall(wall);
  const which = count > 1 ? ` (${worked.space.pieces[work.piece]!.id}, the worst of ${count})` : "";
  const title = `**As a wall of ${escaped(work.box.name)}** it is pressed outwards by its fill${escaped(which)}`;
  if (!work.bends) return paragraphs(title, "What it can bear is not known: fewer than two places hold it");
  if (!verdict || !member || !judged)
    return paragraphs(title, "What it can bear is not known: no strength is printed for its wood and size");
  return paragraphs(
    title,
    verdictTable(verdict, display),
    list([
      ...memberLines(member, judged, work.span, display),
      "It must bear wet fill with a blocked drain; how far it bows is told of moist fill and an open one",
    ]),
  );
}

/** Load, limit, share and state; the table is short. */
function verdictTable({ force, bears, uses, sag, state }: Verdict, display: Display): string {
  const bends = sag
    ? [`, bends ${bendText(sag.size, display)}`, `, a bend of ${bendText(sag.limit, display)}`]
    : ["", ""];
  return table([
    ["Load", escaped(`${weightText(force, display)}${bends[0]}`)],
    ["Can bear", escaped(`${weightText(bears, display)}${bends[1]}`)],
    ["Uses", usesText(uses)],
    ["So it is", state],
  ]);
}

function usesText(uses: number): string {
  const percent = shownPercent(uses);
  return percent < 1 ? "under 1%" : percent >= 1000 ? `${Math.round(uses)} times` : `${percent}%`;
}

function footText({ foot, presses, limit, count }: FootLine, worked: Worked): string {
  const { display } = worked.settings;
  const which = count > 1 ? `, of ${count} feet the one that presses hardest` : "";
  const said = `**Presses** ${escaped(`${weightText(presses, display)} on the floor${which}: ${worked.space.pieces[foot.piece]!.id}`)}`;
  if (limit === undefined) return `${said}; not compared, since the plan gives no foot limit`;
  const uses = limit > 0 ? `, uses ${usesText(presses / limit)}` : "";
  return `${said}; ${escaped(`${weightText(limit, display)} is the foot limit you typed${uses}`)}`;
}

/** Of a joint: what hangs on its screws where that is the worst. */
export function jointHolds(joint: Joint, worked: Worked): string | undefined {
  const { display } = worked.settings;
  const held = heldBy(worked.holding, joint);
  if (!held)
    return worked.holding.unknownJoints.includes(joint)
      ? "What its screws hold is not known: no table has the gravity of the wood, or the strength of the screw"
      : undefined;
  const { demand, asked, holds, uses } = held;
  const way = demand.way === "across" ? "hangs on" : "pulls at";
  const what = demand.from === "fill" ? " of wet fill, its drain blocked," : "";
  const nothing = claimsNothing(held);
  const state = nothing ? "claims nothing" : uses > 1 + HAIR ? "overloaded" : "within";
  return paragraphs(
    `**${escaped(weightText(asked, display))}**${escaped(`${what} ${way} ${countedScrews(held)} between ${worked.space.pieces[demand.piece]!.id} and ${worked.space.pieces[demand.by]!.id}`)}`,
    table([
      ["Load", escaped(weightText(asked, display))],
      ["Can hold", nothing ? "nothing" : escaped(weightText(holds, display))],
      ["Uses", nothing ? "" : usesText(uses)],
      ["So it is", state],
    ]),
    list(jointLines(held, worked)),
    CAUTION,
  );
}

/** What arithmetic leaves of a share. */
const HAIR = 1e-9;

/** A row for each part that carries a box's fill or holds it in, short; the caution stands with the rest of the box. */
export function boxHolds(box: Box, worked: Worked): string | undefined {
  const { display } = worked.settings;
  const floors = boardLines(worked).filter(
    ({ held }) => held.carried.weighs.fill > 0 && isOf(box, held.piece, worked),
  );
  const rows = [
    ...floors.map(
      ({ held, verdict }) =>
        [`${nameOf(held.piece, worked)}, under its fill`, rowText(verdict, display)] as const,
    ),
    ...wallLines(worked)
      .filter(({ wall }) => wall.work.box === box)
      .map(
        ({ wall, verdict }) =>
          [`${nameOf(wall.work.piece, worked)}, as a wall`, rowText(verdict, display)] as const,
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

function rowText(verdict: Verdict | undefined, display: Display): string {
  if (!verdict) return "what it can bear is not known";
  const { force, bears, uses, state, sag } = verdict;
  const bend = sag ? `, bends ${bendText(sag.size, display)} of ${bendText(sag.limit, display)}` : "";
  return `${weightText(force, display)} of ${weightText(bears, display)}${bend}, ${usesText(uses)}: ${state}`;
}

type PlaceEntry = Entry & { readonly kind: "place" };
type LoadEntry = Entry & { readonly kind: "load" };

/** Of a load line: where it stands, what carries it, and what would be taken without it. */
export function describeLoad(entry: LoadEntry, worked: Worked): string | undefined {
  const said = worked.loads.find(({ at }) => at.start === entry.keyword.start);
  if (said?.weight.state !== "known") return undefined;
  const { display } = worked.settings;
  const { how, thing, weight } = said;
  const on = {
    spread: `spread over ${thing.name.text}`,
    middle: `on the middle of ${thing.name.text}`,
    anywhere: `on the worst place of ${thing.name.text}`,
  }[how];
  const pieces = new Set(chosen(thing, worked.space, worked.scope));
  const parts = new Set([...pieces].map((i) => nameOf(i, worked)));
  const rows = boardLines(worked)
    .filter(({ held }) => parts.has(nameOf(held.piece, worked)))
    .map(
      ({ held, verdict }) =>
        [escaped(nameOf(held.piece, worked)), escaped(rowText(verdict, display))] as const,
    );
  const long = (mm: number): string => lengthText(roughly(LENGTH, mm), display);
  return paragraphs(
    `**Load**: ${escaped(`${quantityText(weight.value, display)} ${on}`)}`,
    table(rows),
    rows.length === 0 ? "Nothing that is placed bends under it" : undefined,
    list([
      how === "anywhere"
        ? "It may stand anywhere, and counts as what comes and goes"
        : "It stays there, and counts in the long run",
      escaped(
        `Where no load line says otherwise, somebody of ${weightText(SEAT.force, display)} is taken to sit or stand on any flat top ${long(SEAT.low)} to ${long(SEAT.high)} high, at the worst place; ${cite(seatLoad.source)}`,
      ),
    ]),
    CAUTION,
  );
}
