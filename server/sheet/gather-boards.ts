/** Board and sheet layouts: like boards told once, with every mark along them. */

import { soldLength } from "../checks/writing";
import type { BoardLayout } from "../cutting/job";
import { type Display, lengthText } from "../units";
import {
  type BoardWork,
  boardRests,
  isSlanted,
  ofTicks,
  partOfPiece,
  piecesOf,
  type SheetWork,
  sheetRests,
  type Worked,
} from "../worked";
import type { BoardPlan, PanelPlan, SheetBoard, SheetPanel, SheetRest } from "./data";
import { materialTitle } from "./gather-cuts";
import { onHandLine, proofOf, proofWords, stopsOf } from "./gather-stock";
import type { Identities } from "./identity";
import { marked } from "./marks";
import type { SheetWords } from "./words";

export function boardPlans(worked: Worked, { ofLayout }: Identities, words: SheetWords): BoardPlan[] {
  const { display } = worked.settings;
  return worked.boards.flatMap((work) => {
    if (work.answer.boards.length === 0 && work.answer.unplaced.length === 0) return [];
    if (work.material.sold.length === 0 && work.material.onHand.length === 0) return [];
    const named = new Rests(work.material.name, words);
    const boards = grouped(work.answer.boards, (board) => boardKey(board, work)).map((same) =>
      boardOf(same, work, display, ofLayout, named, words),
    );
    return [
      {
        stock: work.material.name,
        title: materialTitle(work.material, display, words),
        boards,
        assumed: assumptions(work, worked, words),
        unplaced: work.answer.unplaced.flatMap((id) => piecesOf(work, id)).map((id) => ofLayout(id).id),
        proof: proofOf(work),
        stops: stopsOf(boards),
        onHandAfter: onHandLine(work, worked.settings),
      },
    ];
  });
}

/** Names the rests of a stock, one after the other. */
class Rests {
  private named = 0;

  constructor(
    private readonly stock: string,
    private readonly words: SheetWords,
  ) {}

  /** Of so many cut alike. */
  next(count: number): Pick<SheetRest, "name" | "count"> {
    const first = this.named + 1;
    this.named += count;
    return { name: this.words.wood.layouts.rest(this.stock, first, this.named), count };
  }
}

/** `D`; `D, E` where boards that are cut alike give a left piece on one and a right piece on another. */
const marksOf = (ids: readonly string[], ofLayout: Identities["ofLayout"]): string =>
  [...new Set(ids.map((id) => ofLayout(id).mark))].filter(Boolean).join(", ");

const boardKey = (b: BoardLayout, work: BoardWork): string =>
  JSON.stringify([
    b.kind === "bought" ? b.boardId : b.length,
    b.bad,
    b.cuts.map((c) => [piecesOf(work, c.pieceId).map(partOfPiece), c.from, c.to]),
  ]);

/** `slat`, `slat (spare)`; of pieces side by side how many of each. */
function cutLabel(pieces: readonly string[], { wood: { layouts } }: SheetWords): string {
  const labels = pieces.map((id) =>
    id.startsWith("spare") ? layouts.spare(partOfPiece(id)) : partOfPiece(id),
  );
  if (labels.length === 1) return labels[0]!;
  const counts = [...new Set(labels)].map(
    (label) => [labels.filter((l) => l === label).length, label] as const,
  );
  return layouts.sideBySide(counts);
}

/** Runs of equal things, in the order of the first of each. */
function grouped<T>(list: readonly T[], key: (t: T) => string): T[][] {
  const groups = new Map<string, T[]>();
  for (const one of list) {
    const k = key(one);
    const group = groups.get(k);
    if (group) group.push(one);
    else groups.set(k, [one]);
  }
  return [...groups.values()];
}

function boardOf(
  same: readonly BoardLayout[],
  work: BoardWork,
  display: Display,
  ofLayout: Identities["ofLayout"],
  named: Rests,
  words: SheetWords,
): SheetBoard {
  const { layouts } = words.wood;
  const [board] = same as [BoardLayout];
  const idsAt = (i: number): string[] => same.flatMap((b) => piecesOf(work, b.cuts[i]!.pieceId));
  const length = ofTicks(board.length);
  const sold =
    board.kind === "bought" ? work.material.sold[Number(board.boardId.slice("sold ".length))] : undefined;
  const rests = boardRests(board);
  const longest = Math.max(0, ...rests.map((rest) => rest.length));
  return {
    label: sold
      ? layouts.board(soldLength(sold.length, display))
      : layouts.boardOnHand(lengthText(length, display)),
    kind: board.kind,
    count: same.length,
    length: marked(length, display),
    cuts: board.cuts.map((cut, i) => ({
      piece: idsAt(i)
        .map((id) => ofLayout(id).id)
        .join(", "),
      label: cutLabel(piecesOf(work, cut.pieceId), words),
      mark: marksOf(idsAt(i), ofLayout),
      from: marked(ofTicks(cut.from), display),
      to: marked(ofTicks(cut.to), display),
      length: marked(ofTicks(cut.to - cut.from), display),
    })),
    waste: board.waste.map((w) => ({ from: ofTicks(w.from).approx, to: ofTicks(w.to).approx, why: w.why })),
    offcut: longest > 0 ? marked(ofTicks(longest), display) : null,
    rests: rests.map((rest) => ({
      ...named.next(same.length),
      x: ofTicks(rest.from).approx,
      y: 0,
      length: marked(ofTicks(rest.length), display),
      width: null,
    })),
  };
}

function assumptions(work: BoardWork | SheetWork, { settings, parts }: Worked, words: SheetWords): string[] {
  const { layouts } = words.wood;
  const { display } = settings;
  const { material } = work;
  const kerf = lengthText(settings.kerf.value, display);
  const list = [layouts.kerf(kerf, settings.kerf.from === "assumed")];
  if (material.kind === "board" && material.sold.length > 0) {
    const trim = lengthText(material.endTrim.value, display);
    list.push(layouts.trim(trim, material.endTrim.assumed));
  }
  if (work.spares > 0) list.push(layouts.spares(work.spares));
  if (material.onHand.length > 0) list.push(material.salvage === "use up" ? layouts.useUp : layouts.keep);
  if ("ripped" in work && work.ripped)
    list.push(work.sideBySide.size > 0 ? layouts.sharedWidth : layouts.wholeWidth);
  if (!("ripped" in work)) list.push(layouts.edgeToEdge);
  if ([...parts.values()].some((p) => p.material === material && isSlanted(p))) list.push(layouts.tipToTip);
  return [...list, ...proofWords(work, settings, words)];
}

export function panelPlans(worked: Worked, { ofLayout }: Identities, words: SheetWords): PanelPlan[] {
  const { display } = worked.settings;
  return worked.sheets.flatMap((work) => {
    if (work.material.sold.length === 0 && work.material.onHand.length === 0) return [];
    const { sheets, unplaced } = work.answer;
    const named = new Rests(work.material.name, words);
    return [
      {
        stock: work.material.name,
        title: materialTitle(work.material, display, words),
        sheets: grouped(sheets, panelKey).map((same) => panelOf(same, work, display, ofLayout, named, words)),
        assumed: assumptions(work, worked, words),
        unplaced: unplaced.map((id) => ofLayout(id).id),
        proof: proofOf(work),
        onHandAfter: onHandLine(work, worked.settings),
      },
    ];
  });
}

type Panel = SheetWork["answer"]["sheets"][number];

const panelKey = (s: Panel): string =>
  JSON.stringify([
    s.kind,
    s.length,
    s.width,
    s.placements.map((p) => [partOfPiece(p.pieceId), p.x, p.y, p.length, p.width]),
  ]);

function panelOf(
  same: readonly Panel[],
  work: SheetWork,
  display: Display,
  ofLayout: Identities["ofLayout"],
  named: Rests,
  words: SheetWords,
): SheetPanel {
  const { layouts } = words.wood;
  const [panel] = same as [Panel];
  const length = marked(ofTicks(panel.length), display);
  const width = marked(ofTicks(panel.width), display);
  const size = [width.text, length.text].join(words.by);
  return {
    label: panel.kind === "on hand" ? layouts.sheetOnHand(size) : layouts.sheet(size),
    kind: panel.kind,
    count: same.length,
    length,
    width,
    cuts: panel.placements.map((p, i) => ({
      piece: same.map((s) => ofLayout(s.placements[i]!.pieceId).id).join(", "),
      label: p.pieceId.startsWith("spare") ? layouts.spare(partOfPiece(p.pieceId)) : partOfPiece(p.pieceId),
      mark: marksOf(
        same.map((s) => s.placements[i]!.pieceId),
        ofLayout,
      ),
      x: ofTicks(p.x).approx,
      y: ofTicks(p.y).approx,
      length: marked(ofTicks(p.length), display),
      width: marked(ofTicks(p.width), display),
    })),
    rests: sheetRests(panel, work.job.kerf).map((rest) => ({
      ...named.next(same.length),
      x: ofTicks(rest.x).approx,
      y: ofTicks(rest.y).approx,
      length: marked(ofTicks(rest.length), display),
      width: marked(ofTicks(rest.width), display),
    })),
  };
}
