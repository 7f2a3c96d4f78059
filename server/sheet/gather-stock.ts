/** Of each stock how good its layouts are, which lengths are cut more than once, what is left of it, and what its pile gives. */
import { writtenLength } from "../checks/writing";
import { moneyText, type Quantity, quantityText } from "../units";
import {
  afterwards,
  type BoardWork,
  currencyOf,
  type OnHandAfter,
  ofCents,
  ofTicks,
  pileUsed,
  type SheetWork,
  squareTicks,
  TICKS_PER_MM,
  type Worked,
} from "../worked";
import type { SheetBoard, SheetPile, SheetProof, SheetStop } from "./data";
import { marked } from "./marks";
import type { SheetWords } from "./words";

type Work = BoardWork | SheetWork;

/** How good the layout is, in its own unit. */
export function proofOf(work: Work): SheetProof {
  const { proof, answer, job } = work;
  const priced = proof ? proof.money : job.sold.every(({ price }) => price !== null);
  const sheets = "sheets" in answer;
  const unit = priced ? "cents" : sheets ? "mm2" : "mm";
  // Ticks of a whole mm are few, and those of a square mm are their square.
  const whole = unit === "cents" ? 1 : unit === "mm" ? TICKS_PER_MM : TICKS_PER_MM ** 2;
  const common = { unit, currency: (priced && currencyOf(work)) || "" } as const;
  if (!proof) {
    const cost = priced ? (answer.cost ?? 0) : boughtTicks(work);
    return { ...common, status: "first", cost: cost / whole, bound: null, work: 0, certificate: null };
  }
  const { status, cost, bound, certificate } = proof;
  return {
    ...common,
    status,
    cost: cost / whole,
    bound: bound / whole,
    work: proof.work,
    certificate: certificate && { held: [], refuted: [], ...certificate },
  };
}

/** Bought, in ticks; of sheets in square ticks. */
const boughtTicks = ({ answer }: Work): number =>
  "sheets" in answer
    ? answer.sheets.reduce((sum, s) => sum + (s.kind === "bought" ? s.length * s.width : 0), 0)
    : answer.length;

/** The same in words, as something the layout allows for; nothing where nothing is bought, since nothing is cheaper. */
export function proofWords(work: Work, { display }: Worked["settings"], words: SheetWords): string[] {
  const { proof, answer } = work;
  const { layouts } = words.wood;
  if (answer.buy.length === 0) return [];
  // That nothing is cheaper than nothing says nothing.
  if (!proof || (proof.bound === 0 && proof.cost > 0)) return [layouts.firstAnswer];
  if (proof.status === "proven") return [proof.money ? layouts.cheapest : layouts.leastWood];
  const over = proof.cost - proof.bound;
  if (proof.money) return [layouts.withinMoney(moneyText(ofCents(over, currencyOf(work) ?? ""), display))];
  const wood: Quantity = "sheets" in answer ? squareTicks(over) : ofTicks(over);
  return [layouts.withinWood(quantityText(wood, display))];
}

/** Lengths cut more than once, longest first. */
export function stopsOf(boards: readonly SheetBoard[]): SheetStop[] {
  const lengths = new Map<number, { stop: SheetStop; marks: Set<string> }>();
  for (const { cuts, count, label } of boards) {
    const here = new Set<number>();
    for (const { length, mark } of cuts) {
      const found = lengths.get(length.mm);
      const stop = found?.stop ?? { length, count: 0, marks: "", boards: [] };
      const marks = found?.marks ?? new Set<string>();
      if (mark !== "") for (const one of mark.split(", ")) marks.add(one);
      lengths.set(length.mm, {
        stop: {
          ...stop,
          count: stop.count + count,
          boards: here.has(length.mm) ? stop.boards : [...stop.boards, { label, count }],
        },
        marks,
      });
      here.add(length.mm);
    }
  }
  return [...lengths.values()]
    .filter(({ stop }) => stop.count > 1)
    .map(({ stop, marks }) => ({ ...stop, marks: [...marks].join(", ") }))
    .sort((a, b) => b.length.mm - a.length.mm);
}

/** As a plan writes it, whatever the sheet's language: `on hand 1 of 28-1/2", 2 of 41"`; empty where nothing is left. */
export function onHandLine(work: Work, { display: { system, mark } }: Worked["settings"]): string {
  const written = (q: Quantity): string => writtenLength(q, { system, mark });
  const lines = afterwards(work, { system, mark }).map(({ count, length, width, bad }: OnHandAfter) => {
    const size = [...(width ? [width] : []), length].map(written).join(" x ");
    return `${count} of ${size}${bad.map((b) => ` bad ${written(b.from)} to ${written(b.to)}`).join("")}`;
  });
  return lines.length > 0 ? `on hand ${lines.join(", ")}` : "";
}

export function pileRows({ boards, sheets, settings: { display } }: Worked): SheetPile[] {
  return [...boards, ...sheets].flatMap((work) =>
    pileUsed(work).map(({ pile, count, pieces, saves }) => ({
      stock: work.material.name,
      count,
      length: marked(pile.length, display),
      width: pile.width ? marked(pile.width, display) : null,
      pieces,
      saves: saves ? moneyText(saves, display) : null,
    })),
  );
}
