/** What a hover says of boxes, and of of the fills that go into them. */
import { type Declared, ifKnown } from "../plan";
import { cite, fill, structuralCaution } from "../trade";
import { DENSITY, type Display, type Quantity, quantityText, roughly } from "../units";
import { type Box, floorShare, type Worked } from "../worked";
import { drainLine } from "./hover-finish";
import { boxHolds } from "./hover-holding";
import { rootLines } from "./hover-roots";
import { escaped, list, paragraphs, strong } from "./markdown";
import { bothTexts, evaluatorOf, LB_CUFT, valueOr, whyNot } from "./values";

type Densities = Readonly<Record<"dry" | "moist" | "saturated", Quantity | undefined>>;

export function describeBox(box: Box, worked: Worked): string {
  const { display } = worked.settings;
  const { inside, weights, fill: filling } = box;
  const sides = [inside?.wide, inside?.deep, inside?.high];
  const size = sides.every((s) => s !== undefined)
    ? sides.map((s) => bothTexts(s!, display)).join(" x ")
    : undefined;
  return paragraphs(
    `${strong(box.name)}, a box${size ? `: inside ${escaped(size)}` : ""}`,
    box.volume.state === "known"
      ? `Holds ${valueOr(box.volume, display)} to the rim`
      : `How much it holds: ${whyNot(box.volume)}`,
    list([
      filling && box.level
        ? `Filled with ${escaped(filling.name)}: ${valueOr(box.filled, display)}`
        : undefined,
      filling ? fillWeights(box, display) : `What its fill weighs: ${whyNot(weights.saturated)}`,
      filling?.assumed ? `The fill is ${escaped(filling.assumed)}` : undefined,
      box.own.state === "known"
        ? `Empty it weighs ${valueOr(box.own, display)}${ownFrom(box)}`
        : `What it weighs empty: ${whyNot(box.own)}`,
      outlineLine(box, worked),
      pressureLine(box, worked),
      drainLine(box, worked),
      ...rootLines(box, display),
    ]),
    boxHolds(box, worked),
    `_${escaped(structuralCaution.value.text)}_`,
  );
}

function fillWeights({ fill: filling, weights }: Box, display: Display): string {
  const states = (["dry", "moist", "saturated"] as const).map((state) => ({ state, weight: weights[state] }));
  const known = states.flatMap(({ state, weight }) =>
    weight.state === "known" ? [`${valueOr(weight, display)} ${state}`] : [],
  );
  const missing = states.find(({ weight }) => weight.state !== "known");
  if (known.length === 0) return `What its fill weighs: ${whyNot(weights.saturated)}`;
  return `The ${escaped(filling?.name ?? "fill")} weighs ${known.join(", ")}; ${[
    escaped(filling?.source ?? ""),
    missing ? whyNot(missing.weight) : "",
  ]
    .filter(Boolean)
    .join("; ")}`;
}

function ownFrom(box: Box): string {
  return box.ownFrom === "said" ? ", as typed" : ", its walls and bottom without screws";
}

function outlineLine({ outline }: Box, { settings }: Worked): string | undefined {
  if (!outline) return undefined;
  const size = `${bothTexts(outline.wide, settings.display)} x ${bothTexts(outline.deep, settings.display)}`;
  const from = {
    said: "as typed",
    placed: "around its walls as they stand",
    "inside and walls": "its inside and the thickness of its walls",
    inside: "its inside alone, since its walls are not named",
  }[outline.from];
  return `Stands on ${escaped(size)}: ${from}`;
}

function pressureLine(box: Box, { settings }: Worked): string {
  const { display } = settings;
  const pressure = ifKnown(box.pressure);
  if (!pressure) return `What it presses on the floor: ${whyNot(box.pressure)}`;
  const presses = `Presses ${escaped(bothTexts(pressure, display))} on the floor it stands on, saturated`;
  const own = box.own.state === "known" ? "" : ", its own weight left out";
  const limit = settings.floorLimit;
  if (!limit) return `${presses}${own}; not checked against a floor, since the plan gives no floor limit`;
  const uses = quantityText(pressure, display);
  const typed = quantityText(limit.value, display);
  // Both are in the plan's own unit, which is said once.
  const number = uses.slice(0, uses.lastIndexOf(" "));
  const share = floorShare(settings)!;
  const left =
    settings.shares.length > 0
      ? `the ${quantityText(share, display)} that other things leave of the ${typed} you typed`
      : `the ${typed} you typed`;
  return `${presses}${own}: uses ${escaped(`${number} of ${left}`)}`;
}

/** A fill the plan declares, or one of the built-in table. */
export function describeFill(
  name: string,
  declared: Declared | undefined,
  worked: Worked,
): string | undefined {
  const { display } = worked.settings;
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
      `${strong(name)}, a fill: ${densities(own, display)}`,
      own.saturated
        ? "As the plan says. Weight on a floor is judged saturated."
        : `Its saturated weight is taken as ${soil.value} lb/cuft, like soil, since the plan does not say; ${escaped(cite(soil.source))}`,
    );
  }
  if (!built) return undefined;
  const row = (r: { readonly value: number } | undefined) => r && roughly(DENSITY, r.value * LB_CUFT);
  const known = { dry: row(built.dry), moist: row(built.moist), saturated: row(built.saturated) };
  return paragraphs(
    `${strong(name)}, a fill every plan knows: ${densities(known, display)}`,
    "Weight on a floor is judged saturated.",
    list(
      [built.dry, built.moist, built.saturated].map(
        (r, i) =>
          r &&
          `${["Dry", "Moist", "Saturated"][i]}: ${escaped(cite(r.source))}${r.range ? `; ${escaped(`${r.range} ${r.unit}`)}` : ""}`,
      ),
    ),
  );
}

function densities(d: Densities, display: Display): string {
  const said = (["dry", "moist", "saturated"] as const).flatMap((state) => {
    const value = d[state];
    return value ? [`${bothTexts(value, display)} ${state}`] : [];
  });
  return escaped(said.join(", ") || "its weights are not said");
}
