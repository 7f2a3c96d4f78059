/** What the soil lies against where something eaten grows: old paint, wood of which nobody knows what is in it, a liner that is not for food. */
import type { Name } from "../../../grammar/tree";
import { type At, type Declared, lookUp, type Scope } from "../../plan";
import { plantUse } from "../../trade";
import type { Box } from "../boxes";
import type { CoatWork } from "../coating";
import { partsOf } from "../groups";
import type { LiningWork } from "../lining";
import type { Material } from "../materials";
import type { Part } from "../parts";
import type { Roll } from "../rolls";

export interface FoodInput {
  readonly scope: Scope;
  readonly boxes: readonly Box[];
  readonly parts: ReadonlyMap<string, Part>;
  readonly linings: readonly LiningWork[];
  readonly rolls: readonly Roll[];
  readonly coats: readonly CoatWork[];
}

export interface Unfit {
  readonly why: "painted" | "unknown" | "old treated" | "liner";
  readonly box: Box;
  /** What grows there and is eaten. */
  readonly plants: readonly string[];
  /** Where the plan says that, and where it chooses what is unfit. */
  readonly growsAt: At;
  readonly at: At;
  /** The stock, and the parts of the box that are cut from it; undefined for a liner. */
  readonly material: Material | undefined;
  readonly parts: readonly Part[];
  /** The liner's own line; undefined for wood. */
  readonly lining: LiningWork | undefined;
  /** Rolls that would keep the soil from it: said to be food safe, and for wood letting no water through. */
  readonly fitRolls: readonly Roll[];
  /** Lines that line the box now. */
  readonly lined: readonly LiningWork[];
}

/** What is not known of a box that grows something: a plant's use, a liner, a finish, or what it is made of. */
export type Unsure =
  | { readonly is: "plant"; readonly box: Box; readonly name: string }
  | { readonly is: "liner" | "finish" | "panel"; readonly box: Box; readonly name: string }
  | { readonly is: "walls"; readonly box: Box };

export interface Food {
  readonly unfit: readonly Unfit[];
  readonly unsure: readonly Unsure[];
}

export function foodOf(input: FoodInput): Food {
  const all = input.boxes.map((box) => boxFood(box, input));
  return { unfit: all.flatMap((f) => f.unfit), unsure: all.flatMap((f) => f.unsure) };
}

const NOTHING: Food = { unfit: [], unsure: [] };

function boxFood(box: Box, input: FoodInput): Food {
  const plants = box.grows.filter((name) => plantUse(name) === "eaten");
  const unknown = box.grows.filter((name) => plantUse(name) === undefined);
  if (plants.length === 0)
    return { unfit: [], unsure: unknown.map((name) => ({ is: "plant", box, name }) as const) };
  const { file } = box.declared.at;
  const grows = box.declared.entry.clauses.find((c) => c.kind === "grows");
  if (!grows) return NOTHING;
  const lined = input.linings.filter((l) => l.box === box);
  const common = { box, plants, growsAt: { file, start: grows.start, end: grows.end }, lined };
  const liners = linersOf(common, input);
  // Behind a liner that lets no water through, no soil touches the wood.
  if (lined.some((l) => l.roll?.holdsWater)) return liners;
  const wood = woodOf(common, input);
  return { unfit: [...liners.unfit, ...wood.unfit], unsure: [...liners.unsure, ...wood.unsure] };
}

type Common = Pick<Unfit, "box" | "plants" | "growsAt" | "lined">;

function linersOf(common: Common, { rolls }: FoodInput): Food {
  const unfit: Unfit[] = [];
  const unsure: Unsure[] = [];
  for (const lining of common.lined) {
    const { roll, entry, at } = lining;
    if (!roll || roll.foodSafe) continue;
    if (roll.foodSafe === undefined) unsure.push({ is: "liner", box: common.box, name: roll.name });
    else
      unfit.push({
        ...common,
        why: "liner",
        at: atName(entry.with, at.file),
        material: undefined,
        parts: [],
        lining,
        fitRolls: rolls.filter((r) => r.foodSafe && r.holdsWater === roll.holdsWater),
      });
  }
  return { unfit, unsure };
}

function woodOf(common: Common, input: FoodInput): Food {
  const { box } = common;
  const names = partsOf(box.declared, input.scope);
  if (names.length === 0) return { unfit: [], unsure: [{ is: "walls", box }] };
  const parts = names.flatMap((n) => input.parts.get(n) ?? []);
  const unfit: Unfit[] = [];
  const unsure: Unsure[] = [];
  for (const material of new Set(parts.flatMap((p) => p.material ?? []))) {
    const why = whyNot(material);
    if (why === "panel") unsure.push({ is: "panel", box, name: material.name });
    if (!why || why === "panel") continue;
    const cut = parts.filter((p) => p.material === material);
    const { declared } = cut[0]!;
    unfit.push({
      ...common,
      why,
      at: declared.entry.kind === "part" ? atName(declared.entry.of, declared.at.file) : declared.at,
      material,
      parts: cut,
      lining: undefined,
      fitRolls: input.rolls.filter((r) => r.foodSafe && r.holdsWater),
    });
  }
  // How a finish does beside what is eaten, no table here says.
  const coated = input.coats.filter((c) => c.entry.things.some((t) => coats(t.name, names, input.scope)));
  for (const { entry } of coated) unsure.push({ is: "finish", box, name: entry.with.text });
  return { unfit, unsure };
}

/** Why a material is not for soil that grows food; undefined where nothing is known against it. */
function whyNot({ kind, conditions, sold, onHand }: Material): Unfit["why"] | "panel" | undefined {
  if (conditions.includes("painted")) return "painted";
  if (onHand.length === 0 || sold.length > 0) return undefined;
  if (kind === "sheet") return "panel";
  // Treated wood that is sold today holds no arsenic; what lies about may be older.
  if (conditions.includes("treated")) return "old treated";
  return conditions.includes("untreated") ? undefined : "unknown";
}

const atName = ({ start, end }: Name, file: string): At => ({ file, start, end });

/** Whether a coat on this thing lies on one of these parts. */
function coats({ text }: Name, parts: readonly string[], scope: Scope): boolean {
  const declared: Declared | undefined = lookUp(scope, text);
  return declared !== undefined && partsOf(declared, scope).some((p) => parts.includes(p));
}
