/** What a hover says of finishes and liners: their lines, what they take, and what is bought. */
import {
  advisedWords,
  cutWords,
  drainWords,
  openingWords,
  rollWords,
  sheetWords,
  stapleWords,
  tinWords,
} from "../checks/lining-words";
import { ifKnown, type Value } from "../plan";
import {
  type Display,
  liquidText,
  MILLIMETRES,
  moneyText,
  type Quantity,
  quantityText,
  SIXTEENTHS,
} from "../units";
import {
  type Assumption,
  assumedWords,
  type Box,
  type CoatWork,
  type Finish,
  type LiningWork,
  type Roll,
  type Worked,
} from "../worked";
import { escaped, list, paragraphs, strong, table } from "./markdown";
import { bothTexts, valueOr, whyNot } from "./values";

/** A volume as it is sold, in both systems: `2.4 qt (2.3 L)`. */
function bothLiquids(q: Quantity, display: Display): string {
  const [own, other] = display.system === "inches" ? [SIXTEENTHS, MILLIMETRES] : [MILLIMETRES, SIXTEENTHS];
  return `${liquidText(q, own)} (${liquidText(q, other)})`;
}

/** A `coat` line: what is seen of its pieces, and how much finish that takes. */
export function describeCoat(coat: CoatWork, worked: Worked): string {
  const { display, make } = worked.settings;
  const { finish, pieces, loose, hidden, ends, assumed } = coat;
  const loosely = loose.reduce((sum, { count }) => sum + count, 0);
  return paragraphs(
    `**Finished**: ${escaped(coat.title)}${finish ? ` with ${escaped(finish.name)}` : ""}`,
    table([
      ["Pieces", pieces.length + loosely > 0 ? String(pieces.length + loosely) : undefined],
      ["One coat", valueOr(coat.exposed, display)],
      ["of it end grain", ends && ends.approx > 0 ? escaped(bothTexts(ends, display)) : undefined],
      [
        "left out, on other wood",
        hidden && hidden.approx > 0 ? escaped(bothTexts(hidden, display)) : undefined,
      ],
      ["Coats", coatsText(coat)],
      [make > 1 ? "Takes, for one" : "Takes", amountText(coat, display)],
      ...boughtRows(finish, worked),
      ["A coat dries in", coat.dries && escaped(quantityText(coat.dries, display))],
    ]),
    takenForGranted(assumed, display),
  );
}

const COATS_FROM = { line: "", finish: ", as its finish says", assumed: ", taken for granted" } as const;

const coatsText = ({ coats, coatsFrom }: CoatWork): string =>
  coats.state === "known" ? `${coats.value}${COATS_FROM[coatsFrom]}` : whyNot(coats);

function amountText({ amount, least }: CoatWork, display: Display): string {
  if (amount.state !== "known") return whyNot(amount);
  const most = bothLiquids(amount.value, display);
  if (!least || liquidText(least, display) === liquidText(amount.value, display)) return escaped(most);
  return escaped(`${most}, at the least ${bothLiquids(least, display)}`);
}

function boughtRows(
  finish: Finish | undefined,
  { shopping, settings }: Worked,
): [string, string | undefined][] {
  const need = finish && shopping.finishes.find((f) => f.finish === finish);
  if (!need) return [];
  const { display, make } = settings;
  const copies = make > 1 ? `, for ${make}` : "";
  const part = need.complete ? "" : ", and more: what some line takes is not known";
  return [
    [`In all${copies}`, escaped(`${bothLiquids(need.amount, display)}${part}`)],
    ["To buy", escaped(tinWords(need) || "not known: the plan does not say what tins are sold")],
  ];
}

const takenForGranted = (assumed: readonly Assumption[], display: Display): string =>
  list(assumed.map((one) => `Taken for granted: ${escaped(assumedWords(one, display))}`));

/** A finish: how far it goes and how it is sold, and all that its lines take. */
export function describeFinish(finish: Finish, worked: Worked): string {
  const { display } = worked.settings;
  const { name, coats, tins } = finish;
  const dries = ifKnown(finish.dries)?.most;
  const used = worked.coats.filter((c) => c.finish === finish);
  return paragraphs(
    `${strong(name)}, a finish${finish.declared ? "" : " every plan knows"}`,
    table([
      ["Covers", coversText(finish, display)],
      ["Coats", coats && (coats.state === "known" ? String(coats.value) : whyNot(coats))],
      ["A coat dries in", dries && escaped(quantityText(dries, display))],
      ["Sold in", tins.length > 0 ? escaped(tins.map(soldAs).join(", ")) : undefined],
      ...used
        .slice(0, MOST_LINES)
        .map((c): [string, string] => [`On ${escaped(c.title)}`, amountText(c, display)]),
      ...boughtRows(finish, worked),
    ]),
    used.length > MOST_LINES ? `and on ${used.length - MOST_LINES} more lines` : undefined,
    used.length === 0 ? "No line here uses it" : undefined,
    takenForGranted(finish.assumed, display),
  );
}

/** The most lines that use one thing, and are told. */
const MOST_LINES = 8;

function coversText({ covers, source, assumed }: Finish, display: Display): string {
  if (covers.state !== "known") return whyNot(covers);
  const [least, most] = [quantityText(covers.value.least, display), quantityText(covers.value.most, display)];
  const goes = least === most ? bothTexts(covers.value.least, display) : `${least.split(" ")[0]} to ${most}`;
  return escaped(assumed.length > 0 ? `${goes}; ${source}` : goes);
}

const soldAs = ({ text, price }: Finish["tins"][number]): string =>
  `tins of ${text}${price ? ` for ${moneyText(price)}` : ", without a price"}`;

/** A `line` entry: for each of its boxes what to cut, to buy, to staple, and how the drain stays open. */
export function describeLinings(linings: readonly LiningWork[], worked: Worked): string {
  return paragraphs(...linings.map((lining) => describeLining(lining, worked)));
}

function describeLining(lining: LiningWork, worked: Worked): string {
  const { display } = worked.settings;
  const { roll, sheet, cuts, fold, assumed, opening } = lining;
  const drain = worked.drainage.find((d) => d.box === lining.box);
  return paragraphs(
    `**Lined**: ${escaped(lining.name)}${roll ? ` with ${escaped(roll.name)}` : ""}`,
    table([
      [
        "Lining it takes",
        sheet.state === "known" ? escaped(sheetWords(sheet.value, display)) : whyNot(sheet),
      ],
      ["of it past the rim", lengthOr(fold, display)],
      ["Cut", cuts.state === "known" ? escaped(cutWords(lining, display)) : whyNot(cuts)],
      ["Off the roll", lengthOr(lining.along, display)],
      ...linerRows(roll, worked),
      ["Staples", escaped(stapleWords(lining, display))],
      ["Drains", drain && escaped(drainWords(drain, display))],
      ["Open the liner", escaped(openingWords(opening, display))],
      ["Usual holes", drain?.how === "holes" ? escaped(advisedWords(drain, display)) : undefined],
    ]),
    takenForGranted(assumed, display),
  );
}

const lengthOr = (value: Value<Quantity>, display: Display): string =>
  value.state === "known" ? escaped(bothTexts(value.value, display)) : whyNot(value);

function linerRows(
  roll: Roll | undefined,
  { shopping, settings, linings }: Worked,
): [string, string | undefined][] {
  const need = roll && shopping.liners.find((l) => l.roll === roll);
  if (!need) return [];
  const { display, make } = settings;
  const price = need.price ? ` for ${moneyText(need.price)}` : ", without a price";
  const part = need.complete ? "" : ", and more: what some box takes is not known";
  const copies = make > 1 ? `, for ${make}` : "";
  const all = linings.filter((l) => l.roll === roll).length > 1 ? ", in all" : "";
  return [[`To buy${all}${copies}`, escaped(`${rollWords(need.bought, display)}${price}${part}`)]];
}

/** A roll: how wide it is, what it costs, and what the boxes take of it. */
export function describeRoll(roll: Roll, worked: Worked): string {
  const { display } = worked.settings;
  const { name, width, price, foodSafe } = roll;
  const used = worked.linings.filter((l) => l.roll === roll);
  const food = { yes: "the maker says it may, as the plan tells", no: "it must not", unsaid: "not known" };
  return paragraphs(
    `${strong(name)}, a ${roll.declared ? "roll" : "liner every plan knows"}`,
    table([
      ["Width", lengthOr(width, display)],
      ["Price", price ? escaped(`${moneyText(price.each)} per ${price.word}`) : "not said"],
      ["Touch soil for food", food[foodSafe === undefined ? "unsaid" : foodSafe ? "yes" : "no"]],
      ["Water", roll.holdsWater ? "it holds it" : "it lets it through"],
      ...used
        .slice(0, MOST_LINES)
        .map((l): [string, string] => [`For ${escaped(l.name)}`, lengthOr(l.along, display)]),
      ...linerRows(roll, worked),
    ]),
    used.length > MOST_LINES ? `and for ${used.length - MOST_LINES} more boxes` : undefined,
    used.length === 0 ? "No line here uses it" : undefined,
    takenForGranted(roll.assumed ? [roll.assumed] : [], display),
  );
}

/** How a box drains, and what is usual for its size. */
export function drainLine(box: Box, worked: Worked): string {
  const { display } = worked.settings;
  const drain = worked.drainage.find((d) => d.box === box);
  if (!drain) return "Drains: the plan does not say how";
  const usual = drain.how === "holes" ? `; usual for its size: ${advisedWords(drain, display)}` : "";
  return `Drains: ${escaped(drainWords(drain, display) + usual)}`;
}
