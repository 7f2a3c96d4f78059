/** What a hover says of finishes and liners: their lines, what they take, and what is bought. */
import { rollWords, sheetWords } from "../checks/lining-words";
import { ifKnown } from "../plan";
import {
  type Display,
  liquidText,
  MILLIMETRES,
  moneyText,
  type Quantity,
  quantityText,
  SIXTEENTHS,
} from "../units";
import type { Assumption, Box, CoatWork, Finish, LiningWork, Roll, Worked } from "../worked";
import { COMMON } from "./hover-texts/common";
import { FINISH } from "./hover-texts/finish";
import type { Voice } from "./hover-texts/voice";
import { escaped, list, paragraphs, strong, table } from "./markdown";
import { bothTexts, valueOr, whyNot } from "./values";

/** A volume as it is sold, in both systems: `2.4 qt (2.3 L)`. */
function bothLiquids(q: Quantity, display: Display): string {
  const [own, other] = display.system === "inches" ? [SIXTEENTHS, MILLIMETRES] : [MILLIMETRES, SIXTEENTHS];
  return `${liquidText(q, own)} (${liquidText(q, other)})`;
}

/** A `coat` line: what is seen of its pieces, and how much finish that takes. */
export function describeCoat(coat: CoatWork, worked: Worked, voice: Voice): string {
  const { make } = worked.settings;
  const { language, display } = voice;
  const says = FINISH[language];
  const { finish, pieces, loose, hidden, ends, assumed } = coat;
  const loosely = loose.reduce((sum, { count }) => sum + count, 0);
  const some = (area: Quantity | undefined): string | undefined =>
    area && area.approx > 0 ? escaped(bothTexts(area, display)) : undefined;
  return paragraphs(
    says.coat(titleOf(coat, voice), finish ? escaped(finish.name) : ""),
    table([
      [says.pieces, pieces.length + loosely > 0 ? String(pieces.length + loosely) : undefined],
      [says.oneCoat, valueOr(coat.exposed, voice)],
      [says.endGrain, some(ends)],
      [says.leftOut, some(hidden)],
      [says.coats, coatsText(coat, voice)],
      [says.takes(make), amountText(coat, voice)],
      ...boughtRows(finish, worked, voice),
      [says.dries, coat.dries && escaped(quantityText(coat.dries, display))],
    ]),
    takenForGranted(assumed, voice),
  );
}

const titleOf = ({ things }: CoatWork, { language }: Voice): string => escaped(COMMON[language].each(things));

const coatsText = ({ coats, coatsFrom }: CoatWork, voice: Voice): string =>
  coats.state === "known"
    ? `${coats.value}${FINISH[voice.language].coatsFrom(coatsFrom)}`
    : whyNot(coats, voice);

function amountText({ amount, least }: CoatWork, voice: Voice): string {
  const { language, display } = voice;
  if (amount.state !== "known") return whyNot(amount, voice);
  const most = bothLiquids(amount.value, display);
  if (!least || liquidText(least, display) === liquidText(amount.value, display)) return escaped(most);
  return escaped(FINISH[language].atLeast(most, bothLiquids(least, display)));
}

function boughtRows(
  finish: Finish | undefined,
  { shopping, settings }: Worked,
  { language, display }: Voice,
): [string, string | undefined][] {
  const need = finish && shopping.finishes.find((f) => f.finish === finish);
  if (!need) return [];
  const says = FINISH[language];
  const part = need.complete ? "" : says.andMoreFinish;
  return [
    [says.inAll(settings.make), escaped(`${bothLiquids(need.amount, display)}${part}`)],
    [says.toBuy, escaped(says.tinWords(need, display) || says.noTins)],
  ];
}

const takenForGranted = (assumed: readonly Assumption[], { language, display }: Voice): string =>
  list(assumed.map((one) => COMMON[language].assumed(escaped(FINISH[language].assumedWords(one, display)))));

/** A finish: how far it goes and how it is sold, and all that its lines take. */
export function describeFinish(finish: Finish, worked: Worked, voice: Voice): string {
  const { language, display } = voice;
  const says = FINISH[language];
  const { name, coats, tins } = finish;
  const dries = ifKnown(finish.dries)?.most;
  const used = worked.coats.filter((c) => c.finish === finish);
  return paragraphs(
    says.finish(strong(name), !finish.declared),
    table([
      [says.covers, coversText(finish, voice)],
      [says.coats, coats && (coats.state === "known" ? String(coats.value) : whyNot(coats, voice))],
      [says.dries, dries && escaped(quantityText(dries, display))],
      [
        says.soldIn,
        tins.length > 0
          ? escaped(tins.map(({ text, price }) => says.tins(text, priceText(price, voice))).join(", "))
          : undefined,
      ],
      ...used
        .slice(0, MOST_LINES)
        .map((c): [string, string] => [says.on(titleOf(c, voice)), amountText(c, voice)]),
      ...boughtRows(finish, worked, voice),
    ]),
    used.length > MOST_LINES ? says.moreLines(used.length - MOST_LINES) : undefined,
    used.length === 0 ? says.unused : undefined,
    takenForGranted(finish.assumed, voice),
  );
}

/** The most lines that use one thing, and are told. */
const MOST_LINES = 8;

function priceText(price: Quantity | undefined, { language }: Voice): string {
  const { forPrice, withoutPrice } = COMMON[language];
  return price ? forPrice(moneyText(price)) : withoutPrice;
}

function coversText({ covers, from, assumed }: Finish, voice: Voice): string {
  const { language, display } = voice;
  if (covers.state !== "known") return whyNot(covers, voice);
  const [least, most] = [quantityText(covers.value.least, display), quantityText(covers.value.most, display)];
  const goes =
    least === most
      ? bothTexts(covers.value.least, display)
      : FINISH[language].range(least.split(" ")[0]!, most);
  const { cite, between, asThePlanSays } = COMMON[language];
  const source = from ? cite(from) : asThePlanSays;
  return escaped(assumed.length > 0 ? `${goes}${between}${source}` : goes);
}

/** A `line` entry: for each of its boxes what to cut, to buy, to staple, and how the drain stays open. */
export function describeLinings(linings: readonly LiningWork[], worked: Worked, voice: Voice): string {
  return paragraphs(...linings.map((lining) => describeLining(lining, worked, voice)));
}

function describeLining(lining: LiningWork, worked: Worked, voice: Voice): string {
  const { language, display } = voice;
  const says = FINISH[language];
  const { roll, sheet, cuts, fold, assumed, opening } = lining;
  const drain = worked.drainage.find((d) => d.box === lining.box);
  return paragraphs(
    says.lined(escaped(lining.name), roll ? escaped(roll.name) : ""),
    table([
      [
        says.sheet,
        sheet.state === "known" ? escaped(sheetWords(sheet.value, display)) : whyNot(sheet, voice),
      ],
      [says.fold, valueOr(fold, voice)],
      [says.cut, cuts.state === "known" ? escaped(says.cutWords(lining, display)) : whyNot(cuts, voice)],
      [says.offRoll, valueOr(lining.along, voice)],
      ...linerRows(roll, worked, voice),
      [says.staples, escaped(says.stapleWords(lining, display))],
      [says.drains, drain && escaped(says.drainWords(drain, display))],
      [says.openLiner, escaped(says.openingWords(opening, display))],
      [says.usualHoles, drain?.how === "holes" ? escaped(says.advisedWords(drain, display)) : undefined],
    ]),
    takenForGranted(assumed, voice),
  );
}

function linerRows(
  roll: Roll | undefined,
  { shopping, settings, linings }: Worked,
  voice: Voice,
): [string, string | undefined][] {
  const need = roll && shopping.liners.find((l) => l.roll === roll);
  if (!need) return [];
  const says = FINISH[voice.language];
  const part = need.complete ? "" : says.andMoreLiner;
  const all = linings.filter((l) => l.roll === roll).length > 1;
  const bought = `${rollWords(need.bought, voice.display)}${priceText(need.price, voice)}${part}`;
  return [[says.toBuyLiner(all, settings.make), escaped(bought)]];
}

/** A roll: how wide it is, what it costs, and what the boxes take of it. */
export function describeRoll(roll: Roll, worked: Worked, voice: Voice): string {
  const says = FINISH[voice.language];
  const { name, width, price, foodSafe } = roll;
  const used = worked.linings.filter((l) => l.roll === roll);
  return paragraphs(
    says.roll(strong(name), roll.declared !== undefined),
    table([
      [says.width, valueOr(width, voice)],
      [says.price, price ? escaped(says.per(moneyText(price.each), price.word)) : says.noPrice],
      [says.food, says.foodSafe[foodSafe === undefined ? "unsaid" : foodSafe ? "yes" : "no"]],
      [says.water, says.holdsWater(roll.holdsWater)],
      ...used
        .slice(0, MOST_LINES)
        .map((l): [string, string] => [says.forBox(escaped(l.name)), valueOr(l.along, voice)]),
      ...linerRows(roll, worked, voice),
    ]),
    used.length > MOST_LINES ? says.moreBoxes(used.length - MOST_LINES) : undefined,
    used.length === 0 ? says.unused : undefined,
    takenForGranted(roll.assumed ? [roll.assumed] : [], voice),
  );
}

/** How a box drains, and what is usual for its size. */
export function drainLine(box: Box, worked: Worked, { language, display }: Voice): string {
  const says = FINISH[language];
  const drain = worked.drainage.find((d) => d.box === box);
  if (!drain) return says.drainsNot;
  const usual = drain.how === "holes" ? says.advisedWords(drain, display) : "";
  return escaped(says.drainsLine(says.drainWords(drain, display), usual));
}
