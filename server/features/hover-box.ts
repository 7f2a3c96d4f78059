/** What a hover says of boxes, and of the fills that go into them. */
import { type Declared, ifKnown } from "../plan";
import { fill } from "../trade";
import { DENSITY, type Quantity, quantityText, roughly } from "../units";
import { type Box, floorShare, type Wetness, type Worked } from "../worked";
import { drainLine } from "./hover-finish";
import { boxHolds } from "./hover-holding";
import { rootLines } from "./hover-roots";
import { BOX } from "./hover-texts/box";
import { COMMON } from "./hover-texts/common";
import type { Voice } from "./hover-texts/voice";
import { escaped, list, paragraphs, strong } from "./markdown";
import { bothTexts, evaluatorOf, LB_CUFT, valueOr, whyNot } from "./values";

type Densities = Readonly<Record<Wetness, Quantity | undefined>>;

export function describeBox(box: Box, worked: Worked, voice: Voice): string {
  const { language, display } = voice;
  const says = BOX[language];
  const { lacks, caution } = COMMON[language];
  const { inside, weights, fill: filling } = box;
  const sides = [inside?.wide, inside?.deep, inside?.high];
  const size = sides.every((s) => s !== undefined)
    ? sides.map((s) => bothTexts(s!, display)).join(" x ")
    : "";
  return paragraphs(
    says.box(strong(box.name), escaped(size)),
    box.volume.state === "known"
      ? says.holds(valueOr(box.volume, voice))
      : lacks(says.howMuch, whyNot(box.volume, voice)),
    list([
      filling && box.level ? says.filled(escaped(filling.name), valueOr(box.filled, voice)) : undefined,
      filling ? fillWeights(box, voice) : lacks(says.fillWeight, whyNot(weights.saturated, voice)),
      filling?.assumed ? escaped(says.fillAssumed(filling)) : undefined,
      box.own.state === "known"
        ? says.empty(valueOr(box.own, voice), box.ownFrom)
        : lacks(says.emptyWeight, whyNot(box.own, voice)),
      outlineLine(box, voice),
      pressureLine(box, worked, voice),
      drainLine(box, worked, voice),
      ...rootLines(box, voice),
    ]),
    boxHolds(box, worked, voice),
    `_${escaped(caution)}_`,
  );
}

const STATES = ["dry", "moist", "saturated"] as const;

function fillWeights({ fill: filling, weights }: Box, voice: Voice): string {
  const says = BOX[voice.language];
  const { lacks, cite, between, asThePlanSays } = COMMON[voice.language];
  const states = STATES.map((state) => ({ state, weight: weights[state] }));
  const known = states.flatMap(({ state, weight }) =>
    weight.state === "known" ? [says.weight(valueOr(weight, voice), state)] : [],
  );
  const missing = states.find(({ weight }) => weight.state !== "known");
  if (known.length === 0) return lacks(says.fillWeight, whyNot(weights.saturated, voice));
  const source = filling && (filling.from ? cite(filling.from) : asThePlanSays);
  const from = [escaped(source ?? ""), missing ? whyNot(missing.weight, voice) : ""].filter(Boolean);
  return says.weighs(escaped(filling?.name ?? says.fill), known.join(", "), from.join(between));
}

function outlineLine({ outline }: Box, { language, display }: Voice): string | undefined {
  if (!outline) return undefined;
  const size = `${bothTexts(outline.wide, display)} x ${bothTexts(outline.deep, display)}`;
  return BOX[language].outline(escaped(size), outline.from);
}

function pressureLine(box: Box, { settings }: Worked, voice: Voice): string {
  const { language, display } = voice;
  const says = BOX[language];
  const pressure = ifKnown(box.pressure);
  if (!pressure) return COMMON[language].lacks(says.pressure, whyNot(box.pressure, voice));
  const presses = says.presses(escaped(bothTexts(pressure, display)), box.own.state !== "known");
  const limit = settings.floorLimit;
  if (!limit) return `${presses}${says.noLimit}`;
  const uses = quantityText(pressure, display);
  const typed = says.typed(quantityText(limit.value, display));
  // Both are in the plan's own unit, which is said once.
  const number = uses.slice(0, uses.lastIndexOf(" "));
  const share = floorShare(settings)!;
  const left = settings.shares.length > 0 ? says.share(quantityText(share, display), typed) : typed;
  return `${presses}${escaped(says.uses(number, left))}`;
}

/** A fill the plan declares, or one of the built-in table. */
export function describeFill(
  name: string,
  declared: Declared | undefined,
  worked: Worked,
  voice: Voice,
): string | undefined {
  const { language } = voice;
  const says = BOX[language];
  const { cite } = COMMON[language];
  const built = fill(name);
  if (declared) {
    const evaluate = evaluatorOf(worked);
    const own: { -readonly [K in keyof Densities]: Densities[K] } = {
      dry: undefined,
      moist: undefined,
      saturated: undefined,
    };
    for (const clause of declared.entry.clauses)
      if (clause.kind === "density") own[clause.state] = ifKnown(evaluate(clause.value, declared.at.file));
    const soil = fill("soil")!.saturated;
    return paragraphs(
      says.declaredFill(strong(name), densities(own, voice)),
      own.saturated ? says.saidSaturated : says.takenSaturated(soil.value, escaped(cite(soil.source))),
    );
  }
  if (!built) return undefined;
  const row = (r: { readonly value: number } | undefined) => r && roughly(DENSITY, r.value * LB_CUFT);
  const known = { dry: row(built.dry), moist: row(built.moist), saturated: row(built.saturated) };
  return paragraphs(
    says.builtFill(strong(name), escaped(name), densities(known, voice)),
    says.judged,
    list(
      STATES.map((state) => {
        const r = built[state];
        const range = r?.range ? escaped(says.range(r.range, r.unit)) : "";
        return r && says.row(state, escaped(cite(r.source)), range);
      }),
    ),
  );
}

function densities(d: Densities, { language, display }: Voice): string {
  const says = BOX[language];
  const said = STATES.flatMap((state) => {
    const value = d[state];
    return value ? [says.weight(bothTexts(value, display), state)] : [];
  });
  return escaped(said.join(", ") || says.noWeights);
}
