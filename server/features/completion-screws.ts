/** Screws and holes for the joint whose line is typed: what fits its wood comes first, with how it goes through it. */
import { holderOf } from "../plan";
import { LENGTH, lengthInFull, lengthText, type Quantity, roughly } from "../units";
import { type FittingScrew, fittingScrews, holeFor, type Joint, type ScrewFit, type Size } from "../worked";
import { type Asking, distinct, type Offer, offer, RANK } from "./completion-offer";
import type { Next } from "./completion-patterns";
import type { Typed } from "./completion-typed";
import { COMPLETION_WORDS } from "./completion-words";

/** Screw sizes. `typed` is what stands there already: `#8 x 1`. */
export function screwOffers(typed: string, asking: Asking): Offer[] {
  const gauge = /^#(\d+)/.exec(typed)?.[1];
  const across = /^(\d[\d.]*) ?[x×]/.exec(typed)?.[1];
  const begun = ({ text, gauge: own }: Size): boolean =>
    (!gauge || String(own ?? "").startsWith(gauge)) && (!across || text.startsWith(`${across} `));
  const sorted = fitting(asking).filter((s) => begun(s.size));
  const exact = gauge && sorted.some((s) => s.size.gauge === Number(gauge));
  return distinct(
    sorted
      .filter(({ size }) => /[x×]/.test(size.text) && (!exact || size.gauge === Number(gauge)))
      .map((screw, i) => {
        const fits = screw.fit && !screw.fit.trouble;
        const rank = (fits ? RANK.likely : screw.fastener ? RANK.name : RANK.table) + i / 1000;
        return offer(screw.size.text, "size", rank, { detail: detailOf(screw, asking) });
      }),
  );
}

/** How a fastener that the shop has goes through the joint that is typed; undefined where nothing is known of that. */
export const namedFit = (name: string, asking: Asking): { detail: string; fits: boolean } | undefined => {
  const screw = fitting(asking).find((s) => s.fastener?.name === name);
  return screw?.fit && { detail: fitText(screw.fit, asking), fits: !screw.fit.trouble };
};

/** The clause that drives the screws, whole: the best size, twice at each crossing. */
export function drivenOffer(asking: Asking): Offer | undefined {
  const [best] = fitting(asking);
  if (!best || !/[x×]/.test(best.size.text)) return undefined;
  const fits = best.fit && !best.fit.trouble;
  return offer(`2 ${best.size.text} at each crossing`, "clause", fits ? RANK.likely : RANK.open, {
    detail: detailOf(best, asking),
  });
}

/** What a line of a joint has said of its screws. */
export interface Said {
  readonly driven: boolean;
  readonly spacing: boolean;
  /** Where they go: at each crossing and the like, which no spacing goes with. */
  readonly place: boolean;
}

export function saidOfScrews({ clauses }: Typed): Said {
  const images = clauses.map((tokens) => tokens.map((t) => t.image));
  const spacing = (c: readonly string[]) => c.includes("center");
  const other = (c: readonly string[]) => /^(?:pilot|clearance|angled)$/.test(c[0] ?? "");
  return {
    driven: images.some((c) => c.length > 0 && !other(c) && !spacing(c)),
    spacing: images.some(spacing),
    place: images.some(
      (c) => c.includes("crossing") || c.includes("end") || c.includes("along") || c.includes("all"),
    ),
  };
}

/** A line drives its screws once. */
export const unlessDriven = (expected: readonly Next[], typed: Typed): readonly Next[] =>
  saidOfScrews(typed).driven ? expected.filter((n) => n.kind !== "screw" && n.kind !== "name") : expected;

/** The bit for the hole, where the line already says its screws. */
export function holeOffers(hole: "pilot" | "clearance", asking: Asking): Offer[] {
  const joint = jointAt(asking);
  const found = joint && holeFor(joint, hole, asking.plan.worked);
  if (!joint?.size || !found?.bit) return [];
  const { size, unit } = found.bit;
  const label = unit === "in" ? `${size}"` : `${size}mm`;
  const detail = COMPLETION_WORDS[asking.language].bitFor(joint.size.text);
  return [offer(label, "size", RANK.likely, { detail, documentation: () => found.rule })];
}

/** Worked out once for each time that is asked: every fastener of the shop wants to know. */
function fitting(asking: Asking): readonly FittingScrew[] {
  const before = FITTING.get(asking);
  if (before) return before;
  const found = fittingScrews(jointAt(asking), asking.plan.worked);
  FITTING.set(asking, found);
  return found;
}

const FITTING = new WeakMap<Asking, readonly FittingScrew[]>();

/** The joint whose line the cursor stands in, once its head can be read. */
function jointAt({ plan, typed }: Asking): Joint | undefined {
  if (typed?.entry !== "fasten") return undefined;
  return plan.worked.joints.find((j) => holderOf(j.at.file) === plan.file && j.entry.start === typed.at);
}

function detailOf({ fastener, fit, size }: FittingScrew, asking: Asking): string {
  const words = COMPLETION_WORDS[asking.language];
  const shop = fastener && fastener.name !== size.text ? fastener.name : "";
  if (!fit) return shop || words.usualLength;
  return [fitText(fit, asking), shop].filter(Boolean).join("; ");
}

/** `through 3/4", 7/8" into leg`, or what is wrong with it. */
function fitText({ path, trouble, over, bite }: ScrewFit, { plan, language }: Asking): string {
  const words = COMPLETION_WORDS[language];
  const length = (q: Quantity) => lengthText(q, plan.worked.settings.display);
  const through = path.layers.slice(0, -1).reduce((sum, l) => sum + l.depth.approx, 0);
  switch (trouble) {
    case undefined:
      return words.through(length(roughly(LENGTH, through)), length(bite), path.into);
    case "out":
      return words.comesOut(length(roughly(LENGTH, -over.approx)));
    case "near":
      return words.nearTip(lengthInFull(over, plan.worked.settings.display));
    case "unreached":
      return words.short(path.into);
    case "little":
      return words.little(length(bite), path.into);
  }
}
