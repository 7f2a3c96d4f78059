/** How hovers tell the strength of a board and of a screw: each formula with its numbers, and where these come from. */
import { rectangle, shearStress } from "../strength/section";
import { MM_PER_INCH, MPA_PER_PSI, NEWTONS_PER_POUND } from "../strength/units";
import {
  type BendingFactor,
  briefly,
  cite,
  creepFactors,
  durationFactors,
  lagPenetration,
  leastPenetration,
  type Source,
  sagLimit,
  wetFactors,
  wetService,
} from "../trade";
import { type Display, LENGTH, lengthText, quantityText, roughly } from "../units";
import {
  type GripFactors,
  type HeldJoint,
  isLag,
  type Judged,
  type Member,
  type Strain,
  shownLoad,
  type Worked,
} from "../worked";
import { escaped } from "./markdown";
import { exactText } from "./values";

/** Three figures, as nothing of strength is known better. */
export function three(n: number): string {
  const text = Number(n.toPrecision(3));
  return Number.isFinite(text) ? String(text) : "?";
}

/** A weight, from newtons. */
export const weightText = (newtons: number, display: Display): string =>
  quantityText(shownLoad(newtons, display), display);

const inches = ({ system }: Display): boolean => system === "inches";

/** N/mm2 as psi where lengths are inches. */
const stress = (mpa: number, display: Display): string =>
  inches(display) ? `${three(mpa / MPA_PER_PSI)} psi` : `${three(mpa)} N/mm2`;

/** N·mm as in-lb, or as N m. */
const moment = (nmm: number, display: Display): string =>
  inches(display) ? `${three(nmm / (NEWTONS_PER_POUND * MM_PER_INCH))} in-lb` : `${three(nmm / 1000)} N m`;

const modulus = (mm3: number, display: Display): string =>
  inches(display) ? `${three(mm3 / MM_PER_INCH ** 3)} in3` : `${three(mm3 / 1000)} cm3`;

const area = (mm2: number, display: Display): string =>
  inches(display) ? `${three(mm2 / MM_PER_INCH ** 2)} in2` : `${three(mm2 / 100)} cm2`;

const short = (mm: number, display: Display): string => lengthText(roughly(LENGTH, mm), display);

/** A bend: to the plan's mark, or in decimals where that shows nothing. */
export function bendText(mm: number, display: Display): string {
  const text = short(mm, display);
  if (text !== short(0, display) || mm === 0) return text;
  return inches(display) ? `${three(mm / MM_PER_INCH)}"` : `${three(mm)} mm`;
}

/** The lines of a board: what bends it most against what it may be stressed to, what that comes from, and how far it bends. */
export function memberLines(
  member: Member,
  { strain, sag }: Judged,
  span: number,
  display: Display,
): string[] {
  const lines = member.values
    ? [stressLine(member, strain, span, display), allowedLine(member, member.values, strain, display)]
    : [panelLine(member, strain, span, display)];
  return [...lines, sagLine(member, sag, display), takenLine(member)].map(escaped);
}

function stressLine(member: Member, { what, size, limit }: Strain, span: number, display: Display): string {
  if (what === "shear") {
    const of = rectangle(member.wide, member.deep)!;
    const [is, may] = [shearStress(size, of), shearStress(limit, of)];
    return `Shear beside what holds it: 1.5 x V ${weightText(size, display)} / A ${area(of.area, display)} = ${stress(is, display)} of ${stress(may, display)} allowed`;
  }
  const s = member.stress!.modulus;
  return `Bending over ${short(span, display)}: M ${moment(size, display)} / S ${modulus(s, display)} = ${stress(size / s, display)} of ${stress(limit / s, display)} allowed`;
}

const FACTORS: Readonly<Record<BendingFactor["what"], string>> = {
  size: "size",
  "flat use": "laid flat",
  "one in twenty": "the weakest twentieth",
  margin: "ten years and margin",
  knots: "knots",
  dry: "dried",
};

function allowedLine(
  { wet, from }: Member,
  { steps, shear, wet: factors, shearFrom }: NonNullable<Member["values"]>,
  { what, lasting }: Strain,
  display: Display,
): string {
  const shears = what === "shear";
  const printed = shears ? stress(shear, display) : stress(steps.printed * MPA_PER_PSI, display);
  const times = [
    ...(shears ? [] : steps.times.map((f) => `${FACTORS[f.what]} ${three(f.by)}`)),
    ...wetFactor(wet, shears ? factors.shear : factors.bending),
    ...lastingFactor(lasting),
  ];
  const sources = [shears ? shearFrom : from, ...factorSources(wet, lasting)];
  return `Allowed: ${[printed, ...times].join(" x ")}; ${cited(sources)}`;
}

const wetFactor = (wet: boolean, by: number): string[] => (wet && by !== 1 ? [`wet ${three(by)}`] : []);
const lastingFactor = (lasting: boolean): string[] =>
  lasting ? [`${durationFactors.permanent.value} for a load that stays`] : [];

const factorSources = (wet: boolean, lasting: boolean): Source[] => [
  ...(wet ? [wetFactors.bending.source] : []),
  ...(lasting ? [durationFactors.permanent.source] : []),
];

/** Without who reproduced them: a line is long enough. */
const cited = (sources: readonly Source[]): string =>
  [...new Set(sources.map((s) => briefly(cite(s))))].join("; ");

function panelLine(
  { panel, wide, wet, from, of }: Member,
  { size, limit, lasting }: Strain,
  span: number,
  display: Display,
): string {
  const { capacity, wet: factors } = panel!;
  const each = inches(display)
    ? `${three((capacity.strength * 12) / NEWTONS_PER_POUND)} in-lb on each foot of width`
    : `${three(capacity.strength)} N m on each metre of width`;
  const times = [short(wide, display), ...wetFactor(wet, factors.strength), ...lastingFactor(lasting)];
  return `Bending over ${short(span, display)}: M ${moment(size, display)} of ${moment(limit, display)} allowed: ${of} panel, ${[each, ...times].join(" x ")}; ${cited([from])}`;
}

function sagLine(member: Member, sag: Judged["sag"], display: Display): string {
  const part = sag.limit > 0 ? Math.round(sag.span / sag.limit) : sagLimit.value;
  const creep = member.wet ? creepFactors.wet : creepFactors.seasonedDry;
  const stiff = member.values
    ? `E ${stress(member.values.elasticity, display)}`
    : panelStiffness(member.panel!.capacity.stiffness, display);
  const wet = member.wet ? (member.values?.wet.elasticity ?? member.panel?.wet.stiffness ?? 1) : 1;
  const sources = [member.values?.elasticityFrom ?? member.from, sagLimit.source, creep.source];
  return `Bends ${bendText(sag.size, display)} of the ${bendText(sag.limit, display)} it may, 1/${part} of ${short(sag.span, display)}: ${[stiff, ...wetFactor(true, wet)].join(" x ")}; what stays counts ${creep.value} times; ${cited(sources)}`;
}

/** E I of a strip. */
const panelStiffness = (stiffness: number, display: Display): string =>
  inches(display)
    ? `E I ${three((stiffness * 12) / (NEWTONS_PER_POUND * MM_PER_INCH))} lb-in2 on each foot of width`
    : `E I ${three(stiffness / 1000)} N m2 on each metre of width`;

/** What was taken for granted of a board. */
function takenLine({ kind, of, by, wet, values }: Member): string {
  const wood = by === undefined ? of : `${of}, by the values of ${by}`;
  const as = {
    graded: `${wood}, as lumber of grade No. 2; no stamp is looked for`,
    "clear wood": values?.steps.times.some((f) => f.what === "knots")
      ? `${wood}, as a thin board brought down from clear wood`
      : `${wood}, as a thin board, which bears no more than lumber of its width`,
    panel: `a ${of} panel`,
  }[kind];
  return `Taken as ${as}${wet ? ", wet in use" : ""}`;
}

const kindOf = ({ joint }: HeldJoint): string => joint.fastener?.kind ?? "screw";

/** `6 screws`, `1 bolt`. */
export const countedScrews = (held: HeldJoint): string =>
  `${held.screws} ${kindOf(held)}${held.screws === 1 ? "" : "s"}`;

/** The lines of a joint: one of its screws by the tables, what its place takes of that, and all of them together. */
export function jointLines(held: HeldJoint, worked: Worked): string[] {
  const { joint, grip, demand, screws, holds, duration } = held;
  const { display } = worked.settings;
  const { steps } = grip;
  const name = `${joint.size!.text} ${kindOf(held)}`;
  const bite = exactText(roughly(LENGTH, grip.bite), display);
  if (!steps)
    return [
      `${name}: goes in ${bite}; below ${exactText(roughly(LENGTH, grip.least), display)}, ${thick(joint)}, no strength is claimed`,
    ].map(escaped);
  const [side, main] = steps.gravities;
  const through = `${name} through ${short(steps.side, display)} (gravity ${side}) ${short(grip.bite, display)} into gravity ${main}`;
  const one = grip[demand.way];
  const sum = one * screws * duration;
  const alike = Math.abs(sum - holds) <= 0.01 * Math.max(sum, holds);
  const factors = [
    ...factorsOf(steps.factors[demand.way]),
    ...(duration === 1 ? [] : [`${three(duration)} for a load that stays`]),
  ];
  const each = [weightText(demand.way === "across" ? steps.across : pulls(steps), display), ...factors].join(
    " x ",
  );
  const all = alike
    ? `${each} x ${countedScrews(held)} = ${weightText(holds, display)}`
    : `${each} for this one; the ${screws} that share it, each by its own wood, hold ${weightText(holds, display)}`;
  return [`${through}: ${wayText(held, display)}`, `${all}; ${cited([wetService.lateral.source])}`].map(
    escaped,
  );
}

const thick = (joint: HeldJoint["joint"]): string =>
  isLag(joint)
    ? `${lagPenetration.value.least} times its thickness and the tip`
    : `${leastPenetration.value} times its thickness`;

const pulls = ({ thread, head }: NonNullable<HeldJoint["grip"]["steps"]>): number =>
  Math.min(thread ?? Number.MAX_VALUE, head ?? Number.MAX_VALUE);

function wayText({ grip, demand }: HeldJoint, display: Display): string {
  const { mode, across, thread, head } = grip.steps!;
  if (demand.way === "across")
    return `${weightText(across, display)} across by NDS yield mode ${mode ?? "?"} (NDS 2018, Table 12.3.1A)`;
  const said = [
    ...(thread === undefined ? [] : [`${weightText(thread, display)} by its thread (NDS 12.2)`]),
    ...(head === undefined
      ? []
      : [`${weightText(head, display)} by its head (NDS 2018 12.2.5, from memory)`]),
  ];
  return `pulled, ${said.join(", ")}`;
}

const factorsOf = ({ wet, endGrain, toe }: GripFactors): string[] => [
  ...(wet === 1 ? [] : [`wet ${three(wet)}`]),
  ...(endGrain === 1 ? [] : [`end grain ${three(endGrain)}`]),
  ...(toe === 1 ? [] : [`slant ${three(toe)}`]),
];
