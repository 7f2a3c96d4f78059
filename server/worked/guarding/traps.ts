/** Openings that catch a child's finger or head, told once for all those of a line, or of two parts. */
import type { Settings } from "../settings";
import type { Space } from "../space";
import { type Opening, openingsIn } from "./openings";
import type { Soil } from "./soil";

export interface Trap {
  readonly catches: Opening["catches"];
  /** One of them. */
  readonly opening: Opening;
  /** How many more there are in that line, or between these parts. */
  readonly more: number;
}

/** Nothing where no children are near. */
export function trapsOf(settings: Settings, space: Space, soils: readonly Soil[]): Trap[] {
  if (!settings.nearChildren) return [];
  const groups = new Map<string, { opening: Opening; more: number }>();
  for (const opening of openingsIn(space, soils)) {
    const [p, q] = [space.pieces[opening.first]!, space.pieces[opening.second]!];
    const sides = p.line === q.line ? [p.part, q.part, p.line] : [p.part, q.part].sort();
    const key = [opening.catches, ...sides].join("\n");
    const group = groups.get(key);
    if (group) group.more++;
    else groups.set(key, { opening, more: 0 });
  }
  return [...groups.values()].map(({ opening, more }) => ({ catches: opening.catches, opening, more }));
}

/** Names of parts that stand at a slant, whose openings are not looked at; nothing where no children are near. */
export function slantedParts({ nearChildren }: Settings, { pieces }: Space): string[] {
  if (!nearChildren) return [];
  const slanted = pieces.filter(({ pose: { length, width, thickness } }) =>
    [length, width, thickness].some((way) => way.every((x) => Math.abs(x) < SQUARE)),
  );
  return [...new Set(slanted.map((p) => p.part))];
}

/** Cosine from which a direction is one of the world's. */
const SQUARE = 1 - 1e-9;
