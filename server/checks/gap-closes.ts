import { cite, type Wetting } from "../trade";
import {
  closes,
  gapThatStays,
  type HeldEnd,
  mostWidth,
  oneFewer,
  type Respaced,
  type RowOfYear,
  type RowTrouble,
  rowTrouble,
  tried,
  type Worked,
} from "../worked";
import type { Check, Cure, Finding, Says, Slots } from "./check";
import { type PhraseKey, phrase } from "./phrases";
import { mm, pieceSlot } from "./piece-words";
import { markAbove, markBelow, tellApart } from "./writing";

export const gapCloses: Check = {
  code: "gap-closes",
  class: "warning",
  title: "Boards side by side with too little room to swell",
  page: `A board becomes wider when it is wetter: from dry (12%) to the wettest of the year outdoors a flat-sawn cedar board 5-1/2"
wide gains about 7/64", in wet soil about 1/8". Its length and its thickness hardly matter. Three things are looked at in
rows of boards that lie edge to edge:

- between two things that hold them (walls, legs, posts) they need as much room as they swell together, or they buckle or
  push what holds them apart;
- gaps that a box drains through must be open when its bottom is wet;
- gaps that were left between boards in the open should not close.

A row that is free at an end pushes outward and is left alone, as are boards stacked on each other. Boards are as wet when
they are built in as their \`stock\` says: 12% where it says nothing, and wet through where it is \`green\` or \`treated\`, from where
they only shrink (say \`moisture 19%\` for boards that were dried after treatment). They become as wet as the air makes them in
the wettest part of the year, those of a box of watered soil wet through (30%), walls behind a liner apart. Widths follow the
moisture in proportion: shrinkage from green to dry across a flat-sawn board (Wood Handbook, Table 4-3) x (30 - moisture) / 30;
with 22 instead of 30 for western redcedar, northern white-cedar and redwood, which shrink from 22% down. Panels
hardly move. Whether boards cup, or are split by screws near both their edges, is not looked at.

\`\`\`sawbuck
plan Bench top
  outdoors
stock 1x6, species western-redcedar, heartwood
part slat of 1x6, length 40"
place slat across, flat, on floor, 0 from left, 0 from front, 4 deep, 1/16" apart
\`\`\`

\`\`\`sawbuck
plan Bench top
  outdoors
stock 1x6, species western-redcedar, heartwood
part slat of 1x6, length 40"
place slat across, flat, on floor, 0 from left, 0 from front, 4 deep, 1/4" apart
\`\`\``,
  templates: {
    tight:
      "{n} boards ({parts}) lie tight between {first} and {last}, and swell {swelling} together {wet}: they buckle, or push these apart.",
    pushes:
      "{n} boards ({parts}) have {room} of room between {first} and {last}, and swell {swelling} together {wet}: they buckle, or push these apart.",
    drains:
      "{box} drains through gaps of {gap}, but each board of its bottom swells {swelling} {wet}: the gaps close, and water stays.",
    closes:
      "Gaps of {gap} in this row of {n} boards ({parts}) close {wet}, when each board swells {swelling}.",
    end: "{piece} holds the row at one end.",
    moisture: "The boards are taken at {from} moisture when they are built in, and at {to} {wet}.",
    grain:
      "{wood} shrinks {percent} across a flat-sawn board from {below} moisture down to none, and swells back in proportion; quarter-sawn boards move less.",
    member: "{wood} covers several woods: the one in the tables that moves most, {member}, is taken.",
    unsaid: "The plan does not say which wood it is: {wood} is taken.",
    gap: "Leave gaps of {gap}: {left} is open at the wettest.",
    fewer:
      "Leave one board out: even gaps of {gap} give the other {count} {room} of room, and they swell {swelling} together.",
    narrower:
      "Rip the {count} boards to {width}: even gaps of {gap} give them {room} of room, and they swell {swelling} together.",
    wider: "Make the room between {first} and {last} {more} wider, and share it out between the boards.",
  },
  run: (worked) => {
    const told = new Set<string>();
    return worked.movement.rows.flatMap((row) => {
      const trouble = rowTrouble(row);
      // Of rows of one line that are alike, the first.
      const key = [trouble, row.at.file, row.at.start, row.pieces.length, ...row.parts].join("\n");
      if (!trouble || told.has(key)) return [];
      told.add(key);
      return [findingOf(row, trouble, worked)];
    });
  },
};

const WET: Readonly<Record<Wetting, PhraseKey>> = {
  outdoors: "in the wet season outdoors",
  indoors: "in the damp season indoors",
  "wet soil": "in wet soil",
};

const percent = (n: number): Says => phrase("percent", { n: Number(n.toFixed(1)) });

function findingOf(row: RowOfYear, trouble: RowTrouble, worked: Worked): Finding {
  const { space, settings } = worked;
  const most = row.movements.reduce((a, b) => (b.swells > a.swells ? b : a));
  const [first, last] = row.ends.map((end) => (end ? pieceSlot(space.pieces[end.piece]!) : ""));
  const one = Math.max(...row.widths) * most.swells;
  const gap = narrowest(row, trouble);
  const held = trouble === "pushes";
  const [has, swelling] = tellApart(
    mm(held ? row.room : gap),
    mm(held ? row.swelling : one),
    settings.display,
  );
  const says = held ? (row.room < TIGHT ? "tight" : "pushes") : trouble === "closes" ? "closes" : "drains";
  const wet = phrase(WET[row.where]);
  const box = row.box?.path.box.name;
  const slots: Slots = {
    n: row.pieces.length,
    parts: { all: row.parts },
    first: first!,
    last: last!,
    room: has,
    gap: has,
    swelling,
    wet,
    ...(box !== undefined && { box }),
  };
  return {
    at: row.at,
    about: [...row.parts, ...(box === undefined ? [] : [box])],
    says,
    slots,
    numbers: [
      held
        ? { name: "room to swell", value: mm(row.room), source: "worked out" }
        : { name: "gap as built", value: mm(gap), source: "worked out" },
      { name: "swelling", value: mm(held ? row.swelling : one), source: cite(most.shrinkage.row.source) },
      {
        name: held ? "push at the wettest" : "gap at the wettest",
        value: mm(held ? row.swelling - row.room : gap - one),
        source: cite(most.wettest.source),
      },
    ],
    related: row.ends.flatMap((end) => (end && held ? [endOf(end, worked)] : [])),
    assumed: [
      { says: "moisture", slots: { from: percent(most.built), to: percent(most.wettest.value), wet } },
      {
        says: "grain",
        slots: {
          wood: most.shrinkage.row.key,
          percent: percent(most.shrinkage.row.value.tangential),
          below: percent(most.saturation.value),
        },
      },
      ...(most.shrinkage.member === undefined
        ? []
        : [{ says: "member", slots: { wood: most.wood, member: most.shrinkage.member } }]),
      ...(most.woodSaid ? [] : [{ says: "unsaid", slots: { wood: most.wood } }]),
    ],
    cures:
      trouble === "closes"
        ? [wider(row, one, worked)]
        : respaced(row, trouble === "drains shut", { first: first!, last: last! }, worked),
  };
}

/** mm: the narrowest of those gaps that close. */
function narrowest({ gaps, ends }: RowOfYear, trouble: RowTrouble): number {
  const all = trouble === "closes" ? gaps : [...gaps, ...ends.flatMap((e) => (e ? [e.gap] : []))];
  const closing = all.filter(closes);
  return Math.min(...(closing.length > 0 ? closing : all).map((g) => g.built));
}

function endOf({ piece }: HeldEnd, { space }: Worked): Says & Pick<Finding, "at"> {
  const held = space.pieces[piece]!;
  return { says: "end", slots: { piece: pieceSlot(held) }, at: held.at };
}

/** A gap that is open at the wettest. */
function wider(row: RowOfYear, one: number, { settings }: Worked): Cure {
  const gap = markAbove(mm(gapThatStays(row)), settings.display);
  return { says: "gap", slots: { gap, left: { full: mm(gap.approx - one) } }, edits: [] };
}

/** Fewer boards or narrower ones in the same room, else more room. */
function respaced(row: RowOfYear, draining: boolean, held: Slots, { settings }: Worked): Cure[] {
  const { display } = settings;
  const share = row.swelling / row.widths.reduce((a, b) => a + b, 0);
  const told = (says: string, { count, width, gap }: Respaced): Cure => {
    const [room, swelling] = tellApart(mm(gap * (count + 1)), mm(count * width * share), display);
    return { says, slots: { count, width: mm(width), gap: mm(gap), room, swelling }, edits: [] };
  };
  const fewer = oneFewer(row, draining);
  const most = settings.tools?.rips === false ? undefined : mostWidth(row, draining);
  const ripped = most && tried(row, row.pieces.length, markBelow(mm(most), display).approx, draining);
  const more = markAbove(mm(row.swelling - row.room), display);
  return [
    ...(fewer ? [told("fewer", fewer)] : []),
    ...(ripped ? [told("narrower", ripped)] : []),
    ...(draining ? [] : [{ says: "wider", slots: { ...held, more }, edits: [] }]),
  ];
}

/** mm: what no tape shows as room. */
const TIGHT = 0.4;
