/** What has to carry something beside what it can bear, and what was taken for granted of it, as the sheet tells it. */
import { type At, ifKnown } from "../plan";
import { STANDARD_GRAVITY } from "../strength/units";
import {
  atRestShare,
  bowLimit,
  clearWoodReduction,
  type Source,
  sagLimit,
  seatLoad,
  structuralCaution,
  tippingMargin,
  tippingMarginChildren,
  wetFactors,
  wetService,
} from "../trade";
import { type Display, fraction, lengthText, type Quantity, quantityText } from "../units";
import {
  type BoardLine,
  claimsNothing,
  floorShare,
  type HeldJoint,
  type Ledger,
  ledgerOf,
  marginOf,
  SEAT,
  type SteadyLine,
  shownLoad,
  sortOf,
  type Verdict,
  type WallLine,
  type Worked,
} from "../worked";
import type { Place, SheetAmount, SheetData, SheetHeld, SheetTaken } from "./data";
import { lineOf } from "./lines";
import { ofMm, withoutNoise } from "./marks";
import type { SheetWords } from "./words";

/** Where a place of the text is on the sheet. */
type Placer = (at: At) => Place;

export function holdingOf(
  worked: Worked,
  place: Placer,
  words: SheetWords,
): Pick<SheetData, "holds" | "taken" | "holdsCaution"> {
  const ledger = ledgerOf(worked);
  const told = { worked, place, words, display: worked.settings.display };
  const holds = ledger ? heldRows(ledger, told) : [];
  return {
    holds,
    taken: ledger && holds.length > 0 ? takenFor(ledger, told) : [],
    holdsCaution: holds.length > 0 ? words.shop.caution(structuralCaution) : "",
  };
}

interface Telling {
  readonly worked: Worked;
  readonly place: Placer;
  readonly words: SheetWords;
  readonly display: Display;
}

function heldRows(ledger: Ledger, told: Telling): SheetHeld[] {
  return [
    ...floorRows(told),
    ...ledger.noPath.map((path): SheetHeld => {
      const { states } = told.words.holding;
      const state = path.why === "held by nothing" ? states.heldByNothing : states.heldOnce;
      const what = told.worked.space.pieces[path.piece]!.part;
      return {
        ...EMPTY,
        kind: "board",
        what,
        load: amount(path.force, told),
        state,
        place: linesPlace(path.piece, told),
      };
    }),
    ...ledger.boards.map((line) => boardRow(line, told)),
    ...ledger.walls.map((line) => wallRow(line, told)),
    ...ledger.joints.map((held) => jointRow(held, told)),
    ...ledger.unknownJoints.map((joint): SheetHeld => {
      const what = told.words.shop.titleOf(joint);
      return {
        ...EMPTY,
        kind: "joint",
        what,
        state: told.words.holding.states.notKnown,
        place: told.place(joint.at),
      };
    }),
    ...footRows(ledger, told),
    ...ledger.steady.flatMap((line) => steadyRow(line, told)),
  ];
}

const EMPTY = { load: null, limit: null, uses: null, place: null } as const;

/** Newtons in the plan's units; `words` may say more than the weight. */
function amount(newtons: number, { display }: Telling, words = (text: string): string => text): SheetAmount {
  const text = words(quantityText(shownLoad(newtons, display), display));
  return { value: withoutNoise(newtons / STANDARD_GRAVITY), unit: "kg", text };
}

const linesPlace = (piece: number, { worked, place }: Telling): Place =>
  place(lineOf(worked, worked.space.pieces[piece]!));

const share = (uses: number): number => Math.round(uses * 1e4) / 1e4;

/** Filled boxes on their floor, wet through. */
function floorRows(told: Telling): SheetHeld[] {
  const { worked, place, words, display } = told;
  const { states, floor } = words.holding;
  const limit = floorShare(worked.settings);
  // Without one, what it presses is told of the box alone.
  if (!limit) return [];
  return worked.boxes.flatMap((box): SheetHeld[] => {
    const pressure = box.fill && box.placed && ifKnown(box.pressure);
    if (!pressure) return [];
    const row = {
      kind: "floor" as const,
      what: floor(box.name),
      load: pressed(pressure, display),
      place: place(box.declared.at),
    };
    const uses = limit.approx > 0 ? pressure.approx / limit.approx : null;
    const over = uses === null || uses > 1 + HAIR;
    return [
      {
        ...row,
        limit: pressed(limit, display),
        uses: uses === null ? null : share(uses),
        state: over ? states.overLimit : states.within,
      },
    ];
  });
}

/** What arithmetic leaves of a share. */
const HAIR = 1e-9;

const pressed = (pressure: Quantity, display: Display): SheetAmount => ({
  value: withoutNoise(pressure.approx * 1e6),
  unit: "kg/m2",
  text: quantityText(pressure, display),
});

function boardRow({ held, count, verdict }: BoardLine, told: Telling): SheetHeld {
  const { part } = told.worked.space.pieces[held.piece]!;
  const what = count > 1 ? told.words.holding.worst(part, count) : part;
  return { kind: "board", what, ...judged(verdict, told), place: linesPlace(held.piece, told) };
}

function wallRow({ wall: { work }, verdict }: WallLine, told: Telling): SheetHeld {
  const { part } = told.worked.space.pieces[work.piece]!;
  const what = told.words.holding.wall(part, work.box.name);
  return { kind: "wall", what, ...judged(verdict, told), place: linesPlace(work.piece, told) };
}

function judged(
  verdict: Verdict | undefined,
  told: Telling,
): Pick<SheetHeld, "load" | "limit" | "uses" | "state"> {
  const { states, bends, mayBend } = told.words.holding;
  if (!verdict) return { load: null, limit: null, uses: null, state: states.notKnown };
  const { force, bears, uses, sag, state } = verdict;
  const said = { within: states.within, "too weak": states.tooWeak, "bends too far": states.bendsTooFar }[
    state
  ];
  const [size, limit] = sag ? bendTexts(sag.size, sag.limit, told.display) : ["", ""];
  return {
    load: amount(force, told, sag && ((text) => bends(text, size))),
    limit: amount(bears, told, sag && ((text) => mayBend(text, limit))),
    uses: share(uses),
    state: said,
  };
}

/** To the plan's mark, or finer where that tells them apart. */
function bendTexts(size: number, limit: number, display: Display): readonly [string, string] {
  const fine: Display =
    display.system === "inches"
      ? { ...display, mark: fraction.divide(display.mark, fraction.rational(4))! }
      : { ...display, mark: fraction.rational(1, 10) };
  const texts = (as: Display): readonly [string, string] => [
    lengthText(ofMm(size), as),
    lengthText(ofMm(limit), as),
  ];
  const plain = texts(display);
  const none = lengthText(ofMm(0), display);
  return plain[0] !== plain[1] && plain[0] !== none ? plain : texts(fine);
}

function jointRow(held: HeldJoint, told: Telling): SheetHeld {
  const { joint, screws, demand, asked, holds, uses } = held;
  const { states, joint: titled, nothing } = told.words.holding;
  const claims = !claimsNothing(held);
  const over = uses > 1 + HAIR;
  return {
    kind: "joint",
    what: titled(told.words.shop.titleOf(joint), screws, sortOf(joint), demand.way),
    load: amount(asked, told),
    limit: claims ? amount(holds, told) : { value: 0, unit: "kg", text: nothing },
    uses: claims ? share(uses) : null,
    state: claims ? (over ? states.overloaded : states.within) : states.claimsNothing,
    place: told.place(joint.at),
  };
}

function footRows({ foot: line }: Ledger, told: Telling): SheetHeld[] {
  if (!line) return [];
  const { foot, presses, limit } = line;
  const { states, foot: titled } = told.words.holding;
  const uses = limit && limit > 0 ? presses / limit : null;
  return [
    {
      kind: "foot",
      what: titled(told.worked.space.pieces[foot.piece]!.part),
      load: amount(presses, told),
      limit: limit === undefined ? null : amount(limit, told),
      uses: uses === null ? null : share(uses),
      state:
        limit === undefined
          ? states.noLimit
          : uses === null || uses > 1 + HAIR
            ? states.overLimit
            : states.within,
      place: linesPlace(foot.piece, told),
    },
  ];
}

/** A thing that nothing presses over tells nothing. */
function steadyRow({ thing, least, wanted, takes }: SteadyLine, told: Telling): SheetHeld[] {
  const { tip, untried, foot } = thing;
  const { states, tipping } = told.words.holding;
  const by = tip && tip.by !== "push" && tip.by !== "seat" ? tip.by : (least?.by ?? tip?.by ?? "push");
  const row = {
    kind: "tipping" as const,
    what: tipping(by, told.worked.space.pieces[foot]!.part),
    place: linesPlace(foot, told),
  };
  if (untried === "no weight" || untried === "feet in one line")
    return [{ ...row, load: null, limit: null, uses: null, state: states.notKnown }];
  if (tip?.by === "itself" || tip?.by === "leaned")
    return [{ ...row, load: null, limit: null, uses: null, state: states.tips }];
  if (!least) return [];
  const tall = tip?.by === "narrow" || tip?.by === "tall";
  return [
    {
      ...row,
      load: amount(wanted, told),
      limit: amount(takes, told),
      uses: share(least.uses),
      state: tall ? states.anchor : tip ? states.tips : states.within,
    },
  ];
}

function takenFor({ boards, walls, joints, steady }: Ledger, told: Telling): SheetTaken[] {
  const { worked, words, display } = told;
  const { taken } = words.holding;
  const cite = words.shop.cite;
  const members = [...boards.map(({ held }) => held.member), ...walls.map(({ wall }) => wall.member)].filter(
    (m) => m !== undefined,
  );
  const sources = (kind: "graded" | "clear wood" | "panel"): string =>
    [...new Set(members.flatMap((m) => (m.kind === kind ? [cite(m.from)] : [])))].join(words.between);
  const sat = worked.holding.pieces.some(({ loads }) => loads.roaming.some((r) => r.from === "usual"));
  const long = (mm: number): string => lengthText(ofMm(mm), display);
  const rows: (readonly [boolean, string, string])[] = [
    [
      sat,
      taken.somebody(quantityText(shownLoad(SEAT.force, display), display), long(SEAT.low), long(SEAT.high)),
      cite(seatLoad.source),
    ],
    [walls.length > 0, taken.blocked, cite(atRestShare.source)],
    [members.some((m) => m.wet), taken.wet, cite(wetFactors.bending.source)],
    [sources("graded") !== "", taken.graded(long(LUMBER)), sources("graded")],
    [
      sources("clear wood") !== "",
      taken.clearWood,
      [cite(clearWoodReduction.divisor.source), sources("clear wood")].join(words.between),
    ],
    [sources("panel") !== "", taken.panel, sources("panel")],
    [
      members.length > 0,
      taken.sag(sagLimit.value, bowLimit.value),
      bothOf(sagLimit.source, bowLimit.source, words),
    ],
    [joints.length > 0, taken.screws, cite(wetService.lateral.source)],
    [
      steady.some(({ least }) => least),
      taken.margin(marginOf(worked)),
      cite((worked.settings.nearChildren ? tippingMarginChildren : tippingMargin).source),
    ],
  ];
  return rows.flatMap(([applies, text, source]) => (applies ? [{ text, source }] : []));
}

/** mm: lumber of nominal 2 in. */
const LUMBER = 38.1;

const bothOf = (a: Source, b: Source, { shop, between }: SheetWords): string =>
  [...new Set([shop.cite(a), shop.cite(b)])].join(between);
