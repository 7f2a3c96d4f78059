/** How hovers tell the strength of a board and of a screw: each formula with its numbers, and where these come from. */
import { rectangle, shearStress } from "../strength/section";
import { MM_PER_INCH, MPA_PER_PSI, NEWTONS_PER_POUND } from "../strength/units";
import {
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
} from "../worked";
import { COMMON } from "./hover-texts/common";
import { STRENGTH } from "./hover-texts/strength";
import type { Voice } from "./hover-texts/voice";
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

/** To three figures, with its unit in the plan's system. */
const written = (
  what: keyof (typeof STRENGTH)["en"]["units"],
  { language, display }: Voice,
  inInches: number,
  metric: number,
): string => {
  const [first, second] = STRENGTH[language].units[what];
  return inches(display) ? `${three(inInches)} ${first}` : `${three(metric)} ${second}`;
};

/** From N/mm2. */
const stress = (mpa: number, voice: Voice): string => written("stress", voice, mpa / MPA_PER_PSI, mpa);

/** From N·mm. */
const moment = (nmm: number, voice: Voice): string =>
  written("moment", voice, nmm / (NEWTONS_PER_POUND * MM_PER_INCH), nmm / 1000);

const modulus = (mm3: number, voice: Voice): string =>
  written("modulus", voice, mm3 / MM_PER_INCH ** 3, mm3 / 1000);

const area = (mm2: number, voice: Voice): string => written("area", voice, mm2 / MM_PER_INCH ** 2, mm2 / 100);

const short = (mm: number, display: Display): string => lengthText(roughly(LENGTH, mm), display);

/** A bend: to the plan's mark, or in decimals where that shows nothing. */
export function bendText(mm: number, display: Display): string {
  const text = short(mm, display);
  if (text !== short(0, display) || mm === 0) return text;
  return inches(display) ? `${three(mm / MM_PER_INCH)}"` : `${three(mm)} mm`;
}

/** The lines of a board: what bends it most against what it may be stressed to, what that comes from, and how far it bends. */
export function memberLines(member: Member, { strain, sag }: Judged, span: number, voice: Voice): string[] {
  const lines = member.values
    ? [stressLine(member, strain, span, voice), allowedLine(member, member.values, strain, voice)]
    : [panelLine(member, strain, span, voice)];
  return [...lines, sagLine(member, sag, voice), takenLine(member, voice)].map(escaped);
}

function stressLine(member: Member, { what, size, limit }: Strain, span: number, voice: Voice): string {
  const { language, display } = voice;
  const says = STRENGTH[language];
  if (what === "shear") {
    const of = rectangle(member.wide, member.deep)!;
    const [is, may] = [shearStress(size, of), shearStress(limit, of)];
    return says.shear(weightText(size, display), area(of.area, voice), stress(is, voice), stress(may, voice));
  }
  const s = member.stress!.modulus;
  return says.bending(
    short(span, display),
    moment(size, voice),
    modulus(s, voice),
    stress(size / s, voice),
    stress(limit / s, voice),
  );
}

function allowedLine(
  { wet, from }: Member,
  { steps, shear, wet: factors, shearFrom }: NonNullable<Member["values"]>,
  { what, lasting }: Strain,
  voice: Voice,
): string {
  const says = STRENGTH[voice.language];
  const shears = what === "shear";
  const printed = stress(shears ? shear : steps.printed * MPA_PER_PSI, voice);
  const times = [
    ...(shears ? [] : steps.times.map((f) => says.factor(f.what, three(f.by)))),
    ...wetFactor(wet, shears ? factors.shear : factors.bending, voice),
    ...lastingFactor(lasting, voice),
  ];
  const sources = [shears ? shearFrom : from, ...factorSources(wet, lasting)];
  return says.allowed([printed, ...times].join(" x "), cited(sources, voice));
}

const wetFactor = (wet: boolean, by: number, { language }: Voice): string[] =>
  wet && by !== 1 ? [STRENGTH[language].wet(three(by))] : [];
const lastingFactor = (lasting: boolean, { language }: Voice): string[] =>
  lasting ? [STRENGTH[language].lasting(String(durationFactors.permanent.value))] : [];

const factorSources = (wet: boolean, lasting: boolean): Source[] => [
  ...(wet ? [wetFactors.bending.source] : []),
  ...(lasting ? [durationFactors.permanent.source] : []),
];

const cited = (sources: readonly Source[], { language }: Voice): string =>
  [...new Set(sources.map(STRENGTH[language].cite))].join(COMMON[language].between);

function panelLine(
  { panel, wide, wet, from, of }: Member,
  { size, limit, lasting }: Strain,
  span: number,
  voice: Voice,
): string {
  const { language, display } = voice;
  const says = STRENGTH[language];
  const { capacity, wet: factors } = panel!;
  const each = perWidth(
    written("moment", voice, (capacity.strength * 12) / NEWTONS_PER_POUND, capacity.strength),
    voice,
  );
  const times = [
    short(wide, display),
    ...wetFactor(wet, factors.strength, voice),
    ...lastingFactor(lasting, voice),
  ];
  return says.panel(
    short(span, display),
    moment(size, voice),
    moment(limit, voice),
    of,
    [each, ...times].join(" x "),
    cited([from], voice),
  );
}

function sagLine(member: Member, sag: Judged["sag"], voice: Voice): string {
  const { language, display } = voice;
  const part = sag.limit > 0 ? Math.round(sag.span / sag.limit) : sagLimit.value;
  const creep = member.wet ? creepFactors.wet : creepFactors.seasonedDry;
  const stiff = member.values
    ? `E ${stress(member.values.elasticity, voice)}`
    : panelStiffness(member.panel!.capacity.stiffness, voice);
  const wet = member.wet ? (member.values?.wet.elasticity ?? member.panel?.wet.stiffness ?? 1) : 1;
  const sources = [member.values?.elasticityFrom ?? member.from, sagLimit.source, creep.source];
  return STRENGTH[language].sag(
    bendText(sag.size, display),
    bendText(sag.limit, display),
    part,
    short(sag.span, display),
    [stiff, ...wetFactor(true, wet, voice)].join(" x "),
    creep.value,
    cited(sources, voice),
  );
}

/** E I of a strip. */
const panelStiffness = (stiffness: number, voice: Voice): string => {
  const inInches = (stiffness * 12) / (NEWTONS_PER_POUND * MM_PER_INCH);
  return perWidth(`E I ${written("stiffness", voice, inInches, stiffness / 1000)}`, voice);
};

const perWidth = (strength: string, { language, display }: Voice): string =>
  inches(display) ? STRENGTH[language].perFoot(strength) : STRENGTH[language].perMetre(strength);

/** What was taken for granted of a board. */
function takenLine(member: Member, { language }: Voice): string {
  const { kind, wet, values } = member;
  const says = STRENGTH[language];
  const knots = values?.steps.times.some((f) => f.what === "knots") ?? false;
  return says.taken(kind, says.woodOf(member), knots, wet);
}

const kindOf = ({ joint }: HeldJoint): string => joint.fastener?.kind ?? "screw";

/** `6 screws`, `1 bolt`. */
export const countedScrews = (held: HeldJoint, { language }: Voice): string =>
  COMMON[language].screws(held.screws, kindOf(held));

/** The lines of a joint: one of its screws by the tables, what its place takes of that, and all of them together. */
export function jointLines(held: HeldJoint, voice: Voice): string[] {
  const { joint, grip, demand, screws, holds, duration } = held;
  const { language, display } = voice;
  const says = STRENGTH[language];
  const { steps } = grip;
  const name = says.screw(joint.size!.text, kindOf(held));
  if (!steps)
    return [
      says.noClaim(
        name,
        exactText(roughly(LENGTH, grip.bite), display),
        exactText(roughly(LENGTH, grip.least), display),
        thick(joint, voice),
      ),
    ].map(escaped);
  const [side, main] = steps.gravities;
  const through = says.through(name, short(steps.side, display), side, short(grip.bite, display), main);
  const one = grip[demand.way];
  const sum = one * screws * duration;
  const alike = Math.abs(sum - holds) <= 0.01 * Math.max(sum, holds);
  const factors = [
    ...factorsOf(steps.factors[demand.way], voice),
    ...(duration === 1 ? [] : [says.lasting(three(duration))]),
  ];
  const each = [weightText(demand.way === "across" ? steps.across : pulls(steps), display), ...factors].join(
    " x ",
  );
  const all = alike
    ? says.together(each, countedScrews(held, voice), weightText(holds, display))
    : says.shared(each, screws, weightText(holds, display));
  const sources = cited([wetService.lateral.source], voice);
  return [says.holds(through, wayText(held, voice)), `${all}${COMMON[language].between}${sources}`].map(
    escaped,
  );
}

function thick(joint: HeldJoint["joint"], { language }: Voice): string {
  const says = STRENGTH[language];
  return isLag(joint)
    ? says.thickness(lagPenetration.value.least, true)
    : says.thickness(leastPenetration.value, false);
}

const pulls = ({ thread, head }: NonNullable<HeldJoint["grip"]["steps"]>): number =>
  Math.min(thread ?? Number.MAX_VALUE, head ?? Number.MAX_VALUE);

function wayText({ grip, demand }: HeldJoint, { language, display }: Voice): string {
  const says = STRENGTH[language];
  const { mode, across, thread, head } = grip.steps!;
  if (demand.way === "across") return says.across(weightText(across, display), mode ?? "?");
  return says.pulled([
    ...(thread === undefined ? [] : [says.byThread(weightText(thread, display))]),
    ...(head === undefined ? [] : [says.byHead(weightText(head, display))]),
  ]);
}

const factorsOf = ({ wet, endGrain, toe }: GripFactors, { language }: Voice): string[] => {
  const says = STRENGTH[language];
  return [
    ...(wet === 1 ? [] : [says.wet(three(wet))]),
    ...(endGrain === 1 ? [] : [says.endGrain(three(endGrain))]),
    ...(toe === 1 ? [] : [says.slant(three(toe))]),
  ];
};
