/** The wood that a joint's screws and nails go into: how dense it is, and whether it splits easily. */
import { ifKnown } from "../plan";
import { assumedSpecies, fasteningGravity, isBrittle, species } from "../trade";
import type { Joint } from "./joints";
import type { Part } from "./parts";
import type { Path } from "./paths";
import type { ShopWords } from "./shop-words";
import type { Worked } from "./work";

/** Parts that the joint's screws end in: these get the pilot. */
export const lastParts = ({ paths }: Joint, { parts }: Worked): Part[] =>
  partsNamed(paths, parts, (at, layers) => at === layers - 1);
/** Parts that they go through: these get the clearance. */
export const nearParts = ({ paths }: Joint, { parts }: Worked): Part[] =>
  partsNamed(paths, parts, (at, layers) => at < layers - 1);

function partsNamed(
  paths: readonly Path[],
  parts: Worked["parts"],
  wanted: (at: number, layers: number) => boolean,
): Part[] {
  const names = new Set<string>();
  for (const { layers } of paths)
    for (let i = 0; i < layers.length; i++) if (wanted(i, layers.length)) names.add(layers[i]!.part);
  return [...names].flatMap((n) => parts.get(n) ?? []);
}

export interface Dense {
  /** Oven-dry. */
  readonly gravity: number;
  readonly assumed: string;
}

const tabledGravity = (wood: string): number | undefined => {
  const found = species(wood);
  return found && fasteningGravity(found)?.gravity;
};

/** Oven-dry gravity that fasteners count on in a wood of that name: that of unnamed boards where no table has its own. */
export const gravityOf = (wood: string): number => tabledGravity(wood) ?? assumedSpecies.value.gravity;

/** The densest wood of these parts: it splits first, and its hole is the widest. */
export function densest(parts: readonly Part[], words: ShopWords): Dense {
  const taken = assumedSpecies.value;
  const woods = parts.flatMap((p): Dense[] => {
    const wood = p.material?.wood;
    if (!wood) return [];
    const title = words.wood(wood);
    const why = tabledGravity(wood.name) ? "" : words.taken.noGravity(title, taken.gravity);
    const assumed = wood.assumed ? words.taken.wood(p.name, title) : why;
    return [{ gravity: gravityOf(wood.name), assumed }];
  });
  const unsaid = { gravity: taken.gravity, assumed: words.taken.gravity(taken.gravity) };
  return (
    woods.reduce<Dense | undefined>((most, w) => (most && most.gravity >= w.gravity ? most : w), undefined) ??
    unsaid
  );
}

/** mm: boards up to this are thin, 3/4 in (common practice). */
export const THIN = 19.05;

/** Whether a nail splits the wood of a joint: thin or brittle boards, and nails into an end or an edge. */
export function splitsEasily(joint: Joint, worked: Worked): boolean {
  const near = nearParts(joint, worked);
  const thin = near.some((p) => (ifKnown(p.thickness)?.approx ?? 0) <= THIN);
  const brittle = [...near, ...lastParts(joint, worked)].some((p) => isBrittle(p.material?.wood.name ?? ""));
  return thin || brittle || joint.paths.some((p) => p.layers.at(-1)?.face !== "face");
}
