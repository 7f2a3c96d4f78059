/** Wood that rots where it is: sapwood on the ground or against wet soil, and bare sapwood on a floor outdoors. */
import type { DecayClass } from "../../trade";
import type { Box } from "../boxes";
import type { Material } from "../materials";
import type { Part } from "../parts";
import type { Piece } from "../pieces";
import { isForFloor, isForSoil, type Resistance, resistanceOf } from "./resistance";
import { type Known, onFloor, standsOn, wetBoxes } from "./wet";

export interface Rot {
  readonly where: "ground" | "floor" | "soil";
  /** Whose soil. */
  readonly box: Box | undefined;
  /** In the order of the plan. */
  readonly parts: readonly Part[];
  /** Those that stand there, those on end before others; of unplaced parts none. */
  readonly pieces: readonly Piece[];
  /** What each of these parts is cut from. */
  readonly materials: readonly Material[];
  /** The least of them. */
  readonly resists: DecayClass;
  /** The same parts would rot on the ground as well. */
  readonly onGround: boolean;
  /** All of the pieces stand on their end grain. */
  readonly onEnd: boolean;
}

/** What rots, one of each box and of each kind of board on the floor. */
export function rotsOf(worked: Known): Rot[] {
  const soil = inSoil(worked);
  const told = new Set(soil.flatMap((r) => r.parts.map((p) => p.name)));
  return [...soil, ...atFloor(worked, told)];
}

function inSoil(worked: Known): Rot[] {
  const { space } = worked;
  const grounded = new Set(
    standsOn(worked) === "ground" ? onFloor(worked).map((i) => partAt(i, worked)) : [],
  );
  return wetBoxes(worked).flatMap(({ box, parts: names, lined }): Rot[] => {
    const parts = lined ? [] : unfit(names, isForSoil, worked);
    if (parts.length === 0) return [];
    const pieces = parts.flatMap((p) => (space.named.get(p.name) ?? []).map((i) => space.pieces[i]!));
    const onGround = parts.some((p) => grounded.has(p));
    return [{ where: "soil", box, parts, pieces, onGround, onEnd: false, ...woodsOf(parts) }];
  });
}

/** Pieces on the floor by what they are cut from, without parts that were told already. */
function atFloor(worked: Known, told: ReadonlySet<string>): Rot[] {
  const stands = standsOn(worked);
  if (!stands) return [];
  const fits = stands === "ground" ? isForSoil : isForFloor;
  const coated = new Set(stands === "built" ? worked.coats.flatMap((c) => c.pieces) : []);
  const byMaterial = new Map<Material, Piece[]>();
  for (const i of onFloor(worked)) {
    const piece = worked.space.pieces[i]!;
    const material = partAt(i, worked)?.material;
    const resists = material && resistanceOf(material);
    if (!resists || fits(resists) || told.has(piece.part) || coated.has(piece.id)) continue;
    const list = byMaterial.get(material);
    if (list) list.push(piece);
    else byMaterial.set(material, [piece]);
  }
  return [...byMaterial.values()].map((list): Rot => {
    const pieces = [...list.filter(isOnEnd), ...list.filter((p) => !isOnEnd(p))];
    const parts = [...new Set(list.map((p) => worked.parts.get(p.part)!))];
    const where = stands === "ground" ? "ground" : "floor";
    const onEnd = pieces.every(isOnEnd);
    return { where, box: undefined, parts, pieces, onGround: stands === "ground", onEnd, ...woodsOf(parts) };
  });
}

const partAt = (i: number, { space, parts }: Known): Part | undefined => parts.get(space.pieces[i]!.part);

function unfit(names: readonly string[], fits: (r: Resistance) => boolean, { parts }: Known): Part[] {
  return names.flatMap((name) => {
    const part = parts.get(name);
    const resists = part?.material && resistanceOf(part.material);
    return part && resists && !fits(resists) ? [part] : [];
  });
}

function woodsOf(parts: readonly Part[]): Pick<Rot, "materials" | "resists"> {
  const materials = [...new Set(parts.flatMap((p) => p.material ?? []))];
  const all = materials.map(resistanceOf);
  return { materials, resists: all.includes("slight") ? "slight" : "moderate" };
}

/** It stands more on its end than on a side. */
const isOnEnd = ({ pose }: Piece): boolean => Math.abs(pose.length[2]) > Math.SQRT1_2;
