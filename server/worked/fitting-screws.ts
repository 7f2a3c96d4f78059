/** What a joint that does not say its screws yet could take: how each size would go through its wood, and the holes for one that it says. */
import { lookUp } from "../plan";
import { boltHole, clearanceHole, type Hole, nailHole, pilotHole, type Thread } from "../trade";
import { ANGLE, exactly, fraction } from "../units";
import { screwsOf } from "./driving";
import { type Fastener, type Size, screwSize } from "./fasteners";
import { partsOf } from "./groups";
import { pathsInSpace } from "./joint-space";
import { type Joint, pathOf, type Side } from "./joints";
import { isNail } from "./operations";
import type { Path } from "./paths";
import { fitsAt, isBolt, type ScrewFit, usualSizes } from "./screws";
import { gravityOf, lastParts, nearParts } from "./splitting";
import type { Worked } from "./work";

export interface FittingScrew {
  readonly size: Size;
  /** The shop's own, where it has that size. */
  readonly fastener: Fastener | undefined;
  /** Of the ways through the joint the one that it fits worst; undefined where nothing is known of them. */
  readonly fit: ScrewFit | undefined;
}

/**
 * The screws of the shop and those usually sold, for one joint: first those that fit it, of them what the shop has, then what
 * other joints use, the longest of each first.
 */
export function fittingScrews(joint: Joint | undefined, worked: Worked): FittingScrew[] {
  const paths = joint ? waysThrough(joint, worked) : [];
  const shop = worked.fasteners.flatMap((fastener) =>
    fastener.size && !/\bbolts?\b|\bnails?\b/.test(fastener.kind) ? [{ size: fastener.size, fastener }] : [],
  );
  const had = new Set(shop.map(({ size }) => size.text));
  const usual = GAUGES.flatMap(usualSizes).filter(({ size }) => !had.has(size.text));
  const screws = [...shop, ...usual].map(({ size, fastener }): FittingScrew => {
    const fits = fitsAt(paths, size, joint?.angle ?? SQUARE);
    return { size, fastener, fit: fits.find((f) => f.trouble) ?? fits[0] };
  });
  const used = new Set(
    worked.joints.flatMap((j) => (j === joint || !j.size ? [] : [j.size.diameter.approx])),
  );
  const keys = (s: FittingScrew): readonly number[] => [
    s.fit && !s.fit.trouble ? 0 : 1,
    s.fastener ? 0 : 1,
    used.has(s.size.diameter.approx) ? 0 : 1,
    s.fit && !s.fit.trouble ? Math.abs((s.size.gauge ?? USUAL_GAUGE) - USUAL_GAUGE) : 0,
    s.fit && !s.fit.trouble ? -s.size.length.approx : 0,
  ];
  return screws
    .map((screw) => ({ screw, key: keys(screw) }))
    .sort((a, b) => a.key.reduce((order, k, i) => order || k - b.key[i]!, 0))
    .map(({ screw }) => screw);
}

/** Gauges of which sizes are offered, and the one that is taken where nothing speaks for another (common practice). */
const GAUGES = [6, 8, 10];
const USUAL_GAUGE = 8;
const SQUARE = exactly(ANGLE, fraction.ZERO);
/** Drives far enough to meet all wood that any screw would. */
const PROBE = screwSize('#8 x 6"')!;
/** Crossings whose ways are looked at; a joint of more repeats itself. */
const MOST_CROSSINGS = 24;

/** The ways of a joint through wood, also where its line says no size yet. */
function waysThrough(joint: Joint, { space, scope, parts }: Worked): readonly Path[] {
  if (joint.size) return joint.paths;
  const { placed, angle, entry } = joint;
  if (placed) {
    const pattern = {
      count: 1,
      place: undefined,
      spacing: undefined,
      angle: angle.approx,
      length: PROBE.length.approx,
      diameter: PROBE.diameter.approx,
    };
    const screws = screwsOf(space, placed.crossings.slice(0, MOST_CROSSINGS), pattern);
    return pathsInSpace({ ...placed, screws }, space, PROBE, angle);
  }
  const sides = (list: typeof entry.first): Side[] =>
    list.flatMap(({ thing, face }) => {
      const found = lookUp(scope, thing.name.text);
      return found ? partsOf(found, scope).map((part) => ({ part, face })) : [];
    });
  const through = sides(entry.through);
  const into = sides(entry.into);
  return sides(entry.first).flatMap((a) => into.map((b) => pathOf(a, through, b, parts, PROBE, angle)));
}

/** The hole to drill for a joint's screw, nail or bolt; undefined while its size is not said. */
export function holeFor(joint: Joint, hole: "pilot" | "clearance", worked: Worked): Hole | undefined {
  if (!joint.size) return undefined;
  const { system } = worked.settings.display;
  const thread: Thread = { gauge: joint.size.gauge, diameter: joint.size.diameter.approx };
  const near = nearParts(joint, worked);
  const bored = hole === "clearance" ? near : [...near, ...lastParts(joint, worked)];
  const gravities = bored.map((p) => gravityOf(p.material?.wood.name ?? ""));
  const gravity = gravities.length > 0 ? Math.max(...gravities) : gravityOf("");
  if (isBolt(joint)) return boltHole(thread.diameter, system);
  if (hole === "clearance") return clearanceHole(thread, gravity, system);
  return isNail(joint) ? nailHole(thread.diameter, gravity, system) : pilotHole(thread, gravity, system);
}
