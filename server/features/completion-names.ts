/** Names that are offered: those in scope by what they come to, then what tables know; what a clause says of them. */
import { clauseForm, type Form } from "../../grammar/forms";
import { phraseText } from "../checks";
import { type Declared, holderOf, ifKnown, pluralOf, toldName } from "../plan";
import {
  ANGLE,
  AREA,
  DENSITY,
  type Dimension,
  LENGTH,
  lengthText,
  moneyText,
  NUMBER,
  PRESSURE,
  sameDimension,
  TIME,
  VOLUME,
  WEIGHT,
} from "../units";
import { copiesOf, kindWord, type Worked } from "../worked";
import { type Asking, type Offer, offer, RANK } from "./completion-offer";
import type { Next, Unit } from "./completion-patterns";
import { narrowsGroup, standsNow, standsWithWords, subjectRank, targetRank } from "./completion-place";
import { namedFit } from "./completion-screws";
import { tableOffers } from "./completion-tables";
import { COMPLETION_WORDS } from "./completion-words";
import { formText } from "./form-words";
import { escaped, paragraphs, planBlock } from "./markdown";
import { detailOf } from "./symbols";
import { exactText } from "./values";

type NameWanted = Extract<Next, { kind: "name" }>;

/** Names of the kinds that are wanted, then those of the table. */
export function nameOffers(next: NameWanted, asking: Asking): Offer[] {
  const where = narrowingWords(asking);
  const declared = [...asking.plan.worked.scope.declared.values()]
    .filter((d) => next.declared.includes(d.kind) && fitsHere(d, next, where, asking))
    .flatMap((d) => declaredOffers(d, next, asking));
  return [...declared, ...(where.length > 0 ? [] : tableOffers(next.table, asking))];
}

function fitsHere(d: Declared, next: NameWanted, where: readonly string[], asking: Asking): boolean {
  if (next.unit === "count" && d.kind === "measure" && measureRank(d, next.unit, asking) > RANK.name)
    return false;
  if (isOwn(d, asking)) return false;
  if (where.length > 0 && standsNow(asking)) return standsWithWords(d, where, asking);
  return next.role !== "target" || targetRank(d.name, asking) !== undefined;
}

/** A thing is not made of itself, nor a measure. */
const isOwn = ({ entry, at }: Declared, { plan, typed }: Asking): boolean =>
  typed !== undefined &&
  holderOf(at.file) === plan.file &&
  entry.kind === typed.entry &&
  entry.start === typed.at;

function declaredOffers(d: Declared, next: NameWanted, asking: Asking): Offer[] {
  const { plan, language } = asking;
  const { worked, file } = plan;
  const words = COMPLETION_WORDS[language];
  const from = d.at.file === file ? "" : words.from(toldName(d.at.file).replace(/^.*[/\\]/, ""));
  const fit = d.kind === "fastener" ? namedFit(d.name, asking) : undefined;
  const [place, note] = placeOf(d, next, asking);
  const comesTo = worth(d, asking);
  const kind = phraseText(kindWord(d.kind), worked.settings.display, language);
  const detail =
    [comesTo ? words.detail(kind, comesTo) : kind, fit?.detail, note].filter(Boolean).join("; ") + from;
  const look = d.kind === "measure" ? "measure" : "thing";
  const rank = fit ? (fit.fits ? RANK.open : RANK.other) : place;
  const single = offer(d.name, look, rank, { detail });
  const all = pluralOf(d.name);
  if (!next.plurals || worked.scope.declared.has(all)) return [single];
  const many = next.role === "target" && copiesOf(worked.space, d.name).length > 1;
  const plural = offer(all, look, many ? rank - JUST_BEFORE : rank + PLURAL_AFTER, {
    detail: words.every(d.name),
  });
  return [single, plural];
}

/** Less than what parts a name from the next. */
const JUST_BEFORE = 0.00005;
/** From the rank of a name to that of its plural, where nothing speaks for several. */
const PLURAL_AFTER = RANK.plural - RANK.name;

/** Where a name stands in the list, and what speaks for or against it. */
function placeOf(d: Declared, { role, unit }: NameWanted, asking: Asking): [rank: number, note: string] {
  const words = COMPLETION_WORDS[asking.language];
  if (d.kind === "measure") return [measureRank(d, unit, asking), ""];
  if (role === "subject") return subjectRank(d, asking) ? [RANK.open, words.notPlaced] : [RANK.name, ""];
  if (role === "target") {
    const rank = targetRank(d.name, asking) ?? RANK.other;
    return [rank, rank >= RANK.other && standsNow(asking) ? words.notPlaced : ""];
  }
  if (role === "first") {
    const joined = asking.plan.worked.joints.some(
      (j) => j.entry.start !== asking.typed?.at && j.parts.includes(d.name),
    );
    return [joined || d.kind === "box" ? RANK.name + 0.5 : RANK.name, ""];
  }
  if (role === "into") {
    const other = touched(d.name, asking);
    return other === undefined ? [RANK.name, ""] : [RANK.open, words.touches(other)];
  }
  return [RANK.name, ""];
}

/** The thing before `into` or `and` that pieces of this name touch. */
function touched(name: string, { plan, typed }: Asking): string | undefined {
  const { named, meetingsOf, meetings } = plan.worked.space;
  const own = new Set(named.get(name) ?? []);
  return typed?.current
    .map((t) => t.image)
    .find(
      (first) =>
        first !== name &&
        (named.get(first) ?? []).some((i) =>
          meetingsOf[i]!.some((m) => own.has(meetings[m]!.a === i ? meetings[m]!.b : meetings[m]!.a)),
        ),
    );
}

/** What a declared thing comes to, in a few words. */
function worth(d: Declared, asking: Asking): string {
  const { plan, language } = asking;
  const { worked } = plan;
  const { display } = worked.settings;
  if (d.kind === "fastener") {
    const size = worked.fasteners.find((f) => f.name === d.name)?.size?.text ?? "";
    return size === d.name ? "" : size;
  }
  if (d.kind === "ring") {
    const ring = worked.rings.find((r) => r.name === d.name);
    return ring ? COMPLETION_WORDS[language].sides(ring.sides.length) : "";
  }
  if (d.kind !== "stock" && d.kind !== "sheet") return detailOf(d.entry, worked);
  const material = worked.materialOf(d);
  const sides = [ifKnown(material?.thickness), ifKnown(material?.width)];
  const size = sides.flatMap((q) => (q ? [exactText(q, display)] : [])).join(" x ");
  const cheapest = material?.sold.find((s) => s.price);
  const price =
    cheapest?.price && !cheapest.width
      ? `${lengthText(cheapest.length, display)} ${moneyText(cheapest.price)}`
      : "";
  return [size, price].filter(Boolean).join(", ");
}

function measureRank(declared: Declared, unit: Unit | undefined, { plan }: Asking): number {
  const value = ifKnown(plan.worked.measures.get(declared.name)?.value);
  const wanted = unit && DIMENSIONS[unit];
  return !wanted || !value || sameDimension(value.dim, wanted) ? RANK.name : RANK.other;
}

const DIMENSIONS: Readonly<Partial<Record<Unit, Dimension>>> = {
  length: LENGTH,
  angle: ANGLE,
  weight: WEIGHT,
  pressure: PRESSURE,
  density: DENSITY,
  area: AREA,
  volume: VOLUME,
  time: TIME,
  count: NUMBER,
  share: NUMBER,
};

/** The words typed before a name that choose among its pieces: `front left`. */
export function narrowingWords({ typed }: Asking): string[] {
  const current = typed?.current ?? [];
  const opens = typed && !typed.inHead && clauseForm(typed.entry, (i) => current[i]?.image);
  const images = current.slice(opens ? opens.opens.length : 0).map((t) => t.image);
  const from = images.findLastIndex((w) => !Object.hasOwn(COMPLETION_WORDS.en.narrows, w));
  return images.slice(from + 1);
}

/** Whether the word chooses some pieces of anything that stands; of a plan where nothing stands yet, anything may be said. */
export const narrowable = (asking: Asking, word: string): boolean =>
  !standsNow(asking) || narrowsGroup(asking, [...narrowingWords(asking), word]);

/** What a clause says, with its example; of a part's length also how long a board there is. */
export function clauseDocument(form: Form, asking: Asking): string {
  const longest = form.opens.join(" ") === "length" ? longestBoard(asking) : undefined;
  return paragraphs(formText(form, asking.language), planBlock(form.example), longest);
}

function longestBoard({ plan, typed, language }: Asking): string | undefined {
  const { worked } = plan;
  const part = typed?.entry === "part" ? partAt(worked, typed.at, plan.file) : undefined;
  const material = part?.material;
  const longest = material?.sold.reduce<(typeof material.sold)[number] | undefined>(
    (most, s) => (most && most.length.approx >= s.length.approx ? most : s),
    undefined,
  );
  if (!material || !longest || material.kind !== "board") return undefined;
  const length = lengthText(longest.length, worked.settings.display);
  return COMPLETION_WORDS[language].longest(escaped(material.name), escaped(length));
}

const partAt = (worked: Worked, at: number, file: string) =>
  [...worked.parts.values()].find(
    (p) => holderOf(p.declared.at.file) === file && p.declared.entry.start === at,
  );
