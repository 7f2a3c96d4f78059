/**
 * The words of what is worked out for the shop: what tools, bits, cautions and care are called. English where no other
 * words are given; a sheet in another language brings its own.
 */
import { type Care, type Caution, cite, type Row, type Source, type Tool } from "../trade";
import { JOINT_ENGLISH } from "./joint-words";
import type { Joint } from "./joints";
import type { Wood } from "./materials";
import { listed, type SlantedEnd } from "./operations";

export const SHOP_ENGLISH = {
  listed,
  joint: JOINT_ENGLISH,
  /** "side into leg". */
  titleOf: ({ title }: Joint): string => title,
  tool: ({ value }: Row<Tool>): { readonly name: string; readonly instead: string } => value,
  caution: ({ value }: Row<Caution>): string => value.text,
  care: ({ value }: Row<Care>): string => value.text,
  wood: ({ title }: Wood): string => title,
  /** In full, with who reproduced it. */
  cite: (source: Source): string => cite(source),

  /** What tools are taken up for. */
  uses: {
    working: "sawing, drilling and driving",
    machine: "sawing by machine",
    dust: "sawing and sanding",
    nailsIn: (stock: string) => `old nails in ${stock}`,
    cuts: "every cut",
    squareEnds: "square ends",
    corners: "corners",
    ripped: (part: string, width: string) => `${part}, ${width} wide`,
    ends: { both: "both ends", left: "left end", right: "right end" },
    notches: (kinds: readonly ("notch" | "dado")[], part: string) =>
      `${listed(kinds.map((kind) => `${kind}es`))} of ${part}`,
    drains: (box: string) => `drain holes of ${box}`,
    /** One of the angles is undefined where there is none. */
    slants: (
      kind: SlantedEnd["kind"],
      parts: readonly string[],
      miter: string | undefined,
      bevel: string | undefined,
    ) =>
      kind === "compound"
        ? `slanted ends of ${listed(parts)}, miter ${miter} with bevel ${bevel}`
        : `${kind}s of ${listed(parts)}, ${miter ?? bevel}`,
    ring: (ring: string) => `${ring} while it is joined`,
    sawing: (parts: readonly string[]) => `sawing ${listed(parts)}`,
    uprights: "the uprights",
    coat: (finish: string, things: readonly string[]) => `${finish} on ${listed(things)}`,
    liner: (liner: string, things: readonly string[]) => `${liner} in ${listed(things)}`,
  },

  /** Bits and holes. */
  bits: {
    headless: "a nail without its head",
    toFit: "to fit the head",
    orWider: (size: string) => `${size} or wider`,
    thePlan: "the plan",
    /** A rule by its name or by the key of its row, and where it comes from. */
    rule: (rule: string, source: string) => `${rule}: ${source}`,
    through: "right through",
    near: "in the near piece, so that the boards pull together",
    splits: "for strength alone none is asked for; it keeps the wood from splitting",
    thinner: (least: string, most: string) =>
      `thinner than any rule: published rules go from ${least} to ${most}`,
    wider: (least: string, most: string) =>
      `wider than any rule: published rules go from ${least} to ${most}`,
    drainsSize: "the plan does not say how wide they are",
    bottom: "through the bottom",
    flatHeads: "flat heads",
    countersink: "where a head does not draw itself level with the wood",
    cross: (bit: number) => `a cross-slotted head of this gauge usually takes a No. ${bit}`,
    /** What a hole was taken by for want of a row. `assumed` is what the table itself says of it. */
    assumed: (_by: "screw" | "nail" | "bolt", _gauge: number | undefined, assumed: string) => assumed,
  },

  /** What was taken of a wood. */
  taken: {
    gravity: (gravity: number) => `gravity ${gravity} is taken`,
    noGravity: (wood: string, gravity: number) =>
      `no table gives the gravity of ${wood}: ${gravity} is taken`,
    wood: (part: string, wood: string) => `${part} taken as ${wood}, since the plan does not say`,
  },
};

export type ShopWords = typeof SHOP_ENGLISH;
