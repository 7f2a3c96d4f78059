/** Fasteners that rust where they are driven: plain steel in the wet, and zinc in wood that eats it. */
import { isBrittle } from "../../trade";
import type { Box } from "../boxes";
import type { Fastener } from "../fasteners";
import type { Joint } from "../joints";
import type { Part } from "../parts";
import { type Known, wetBoxes } from "./wet";

/** In the order in which they are asked for: from the cheapest. */
export type Coating = "coated" | "galvanized" | "stainless";

export interface Rust {
  readonly fastener: Fastener;
  /** bare: plain steel; stains: zinc in cedar, redwood or oak. */
  readonly is: "bare" | "stains";
  /** The lines that drive it in the wet, in the order of the plan. */
  readonly joints: readonly Joint[];
  /** The box in whose soil it is, where it does not stand outdoors. */
  readonly box: Box | undefined;
  /** A wood that stains; empty where none does. */
  readonly wood: string;
  /** What would last there. */
  readonly lasts: readonly Coating[];
  /** One of the shop's own in that size that lasts: the cheapest. */
  readonly instead: Fastener | undefined;
}

/** Joints that are driven in the wet, with the box in whose soil they are where the whole does not stand outdoors. */
export function wetJoints(worked: Known): { readonly joint: Joint; readonly box: Box | undefined }[] {
  const outdoors = worked.settings.place === "outdoors";
  const boxes = outdoors ? [] : wetBoxes(worked);
  return worked.joints.flatMap((joint) => {
    if (joint.entry.kind !== "fasten" || !joint.size) return [];
    const wet = boxes.find((b) => joint.parts.some((p) => b.parts.includes(p)));
    return outdoors || wet ? [{ joint, box: wet?.box }] : [];
  });
}

/** One of each fastener that rusts, or stains. */
export function rustsOf(worked: Known): Rust[] {
  const byFastener = new Map<Fastener, ReturnType<typeof wetJoints>>();
  for (const wet of wetJoints(worked)) {
    const { fastener } = wet.joint;
    if (!fastener || !(isPlain(fastener) || isZincInTannin(wet.joint, worked))) continue;
    const list = byFastener.get(fastener);
    if (list) list.push(wet);
    else byFastener.set(fastener, [wet]);
  }
  return [...byFastener].map(([fastener, wet]): Rust => {
    const joints = wet.map((w) => w.joint);
    const wood = joints.map((j) => tanninIn(j, worked)).find((w) => w !== "") ?? "";
    const treated = joints.some((j) => isTreated(j, worked));
    const lasts = (["coated", "galvanized", "stainless"] as const).filter(
      (c) => c === "stainless" || (c === "coated" ? !treated : wood === ""),
    );
    return {
      fastener,
      is: isPlain(fastener) ? "bare" : "stains",
      joints,
      box: wet[0]!.box,
      wood,
      lasts,
      instead: sameSizeIn(worked.fasteners, fastener, lasts),
    };
  });
}

const isPlain = ({ coating }: Fastener): boolean => coating === "plain";
const isZincInTannin = (joint: Joint, worked: Known): boolean =>
  joint.fastener?.coating === "galvanized" && tanninIn(joint, worked) !== "";

const partsIn = ({ parts }: Joint, worked: Known): Part[] =>
  parts.flatMap((name) => worked.parts.get(name) ?? []);

/** A wood of the joint that stains round steel: the same woods split easily. */
export const tanninIn = (joint: Joint, worked: Known): string =>
  partsIn(joint, worked)
    .flatMap((p) => (p.material && p.material.wood.assumed === "" ? [p.material.wood.name] : []))
    .find(isBrittle) ?? "";

export const isTreated = (joint: Joint, worked: Known): boolean =>
  partsIn(joint, worked).some((p) => p.material?.conditions.includes("treated") ?? false);

function sameSizeIn(
  all: readonly Fastener[],
  { size, kind }: Fastener,
  lasts: readonly string[],
): Fastener | undefined {
  return all
    .filter(
      (f) =>
        f.kind === kind &&
        lasts.includes(f.coating) &&
        f.size?.diameter.approx === size?.diameter.approx &&
        f.size?.length.approx === size?.length.approx,
    )
    .sort((a, b) => each(a) - each(b) || 0)[0];
}

/** What one costs; more than any where no price is given. */
const each = ({ pack }: Fastener): number =>
  pack?.price ? pack.price.approx / pack.count : Number.MAX_VALUE;
