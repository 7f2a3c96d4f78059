/** Finishes and liners as the sheet tells them: how much, how large, and how they are laid. */
import { type At, ifKnown } from "../plan";
import {
  type Display,
  lengthText,
  liquidText,
  MILLIMETRES,
  type Quantity,
  quantityText,
  roughly,
  SIXTEENTHS,
} from "../units";
import type { CoatWork, LiningWork, Worked } from "../worked";
import type { Place, SheetFinish, SheetLining } from "./data";
import type { Identities } from "./identity";
import { both, marked } from "./marks";
import type { SheetWords } from "./words";

const SQUARE_MM = 1e6;
const CUBIC_MM = 1e6;

export function finishRows(
  worked: Worked,
  identities: Identities,
  place: (at: At) => Place,
  { work: words }: SheetWords,
): readonly SheetFinish[] {
  const { display, make } = worked.settings;
  return worked.coats.flatMap((coat): SheetFinish[] => {
    const area = ifKnown(coat.exposed);
    const amount = ifKnown(coat.amount);
    const coats = ifKnown(coat.coats);
    if (!coat.finish || coats === undefined) return [];
    const all = amount && times(amount, make);
    return [
      {
        what: coat.finish.name,
        parts: partsOf(coat, worked, identities),
        area: area ? { m2: area.approx / SQUARE_MM, text: both(area, display) } : null,
        coats,
        amount: all ? { litres: all.approx / CUBIC_MM, text: bothLiquids(all, display) } : null,
        dries: coat.dries ? quantityText(coat.dries, display) : "",
        notes: coatNotes(coat, worked, words),
        assumed: coat.assumed.map((one) => words.assumed(one, display)),
        place: place(coat.at),
      },
    ];
  });
}

/** Parts with their marks, each once. */
function partsOf({ pieces, loose, things }: CoatWork, worked: Worked, identities: Identities): string[] {
  const placed = pieces.flatMap((id) => {
    const found = identities.ofPlaced(id);
    return found ? [`${found.row.mark} ${found.part}`] : [];
  });
  const rest = loose.flatMap(({ part }) => {
    const own = worked.parts.get(part);
    return own ? identities.rowsOf(own).map(({ mark }) => `${mark} ${part}`) : [part];
  });
  const all = [...new Set([...placed, ...rest])];
  return all.length > 0 ? all : [...things];
}

function coatNotes(coat: CoatWork, { settings, shopping }: Worked, words: SheetWords["work"]): string[] {
  const { display } = settings;
  const { hidden, ends, least, amount, loose, finish } = coat;
  const need = shopping.finishes.find((f) => f.finish === finish);
  const most = ifKnown(amount);
  return [
    ...(hidden && hidden.approx > 0 ? [words.hiddenLeftOut(both(hidden, display))] : []),
    ...(ends && ends.approx > 0 ? [words.endGrain(both(ends, display))] : []),
    ...(least && most && liquidText(least, display) !== liquidText(most, display)
      ? [words.atLeast(bothLiquids(times(least, settings.make), display))]
      : []),
    ...(loose.length > 0 ? [words.countedWhole(loose.map(({ part }) => part).join(", "))] : []),
    ...(need && words.tinsOf(need, display) !== "" ? [words.tins(words.tinsOf(need, display))] : []),
  ];
}

export function liningRows(
  { linings, settings, shopping }: Worked,
  place: (at: At) => Place,
  { work: words }: SheetWords,
): readonly SheetLining[] {
  const { display } = settings;
  return linings.flatMap((lining): SheetLining[] => {
    const { roll, name, cuts, at } = lining;
    if (!roll) return [];
    return [
      {
        what: roll.name,
        box: name,
        cuts: (ifKnown(cuts) ?? []).map(({ what, count, length, width }) => ({
          what: what === "sheet" ? words.oneSheet : words.strip,
          count,
          length: marked(length, display),
          width: marked(width, display),
        })),
        notes: [
          ...liningNotes(lining, display, words),
          ...shopping.liners
            .filter((need) => need.roll === roll)
            .flatMap(({ sideBySide }) => sideBySide)
            .filter(({ boxes }) => boxes.includes(name))
            .map(({ boxes, along }) => words.besideOnRoll(boxes, lengthText(along, display))),
        ],
        assumed: lining.assumed.map((one) => words.assumed(one, display)),
        place: place(at),
      },
    ];
  });
}

function liningNotes(lining: LiningWork, display: Display, words: SheetWords["work"]): string[] {
  const { fold, overlap, cuts, along, opening } = lining;
  const [over, past, length] = [ifKnown(overlap), ifKnown(fold), ifKnown(along)];
  const strips = (ifKnown(cuts) ?? []).some(({ what }) => what === "strip");
  return [
    ...(length ? [words.offTheRoll(lengthText(length, display))] : []),
    ...(past ? [words.foldOver(lengthText(past, display))] : []),
    ...(strips && over ? [words.overlapped(lengthText(over, display))] : []),
    words.openingOf(opening, display),
    words.staples(words.staplesOf(lining, display)),
  ];
}

/** A volume as it is sold, in both systems: `2.4 qt (2.3 L)`. */
function bothLiquids(q: Quantity, display: Display): string {
  const [own, other] = display.system === "inches" ? [SIXTEENTHS, MILLIMETRES] : [MILLIMETRES, SIXTEENTHS];
  const { numbers } = display;
  return `${liquidText(q, { ...own, numbers })} (${liquidText(q, { ...other, numbers })})`;
}

const times = (q: Quantity, n: number): Quantity => (n === 1 ? q : roughly(q.dim, q.approx * n));
