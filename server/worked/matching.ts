/**
 * What a board or a sheet of the plan's own shop file is, where the reader's shop stands in its place and has none of that
 * name; and which of the reader's come nearest, each with all that is otherwise. Nothing is put in the place of anything.
 */
import { type Declared, ifKnown, type Loaded, type Scope, scopeOf } from "../plan";
import { fraction, type Quantity } from "../units";
import { Worker } from "./expressions";
import { type Material, Materials } from "./materials";
import { lumberOf, type Settings } from "./settings";

export interface Meant {
  readonly material: Material;
  /** As the yard calls it: "2x4"; undefined where it goes by no such name. */
  readonly section: string | undefined;
  readonly size: Size;
  /** Those that are just the same, or else the nearest, best first. */
  readonly like: readonly Likeness[];
}

export interface Likeness {
  readonly material: Material;
  /** Empty where it is just the same. */
  readonly differs: readonly Difference[];
}

export interface Size {
  readonly thickness: Quantity;
  /** A sheet has none. */
  readonly width: Quantity | undefined;
}

/** What is otherwise with a board of the reader's shop. */
export type Difference =
  | { readonly is: "size"; readonly size: Size }
  /** Undefined where its species is not said. */
  | { readonly is: "species"; readonly species: string | undefined }
  | { readonly is: "more" | "less"; readonly condition: string }
  | { readonly is: "plywood" | "no plywood" }
  | { readonly is: "grain"; readonly along: Material["grain"] }
  | { readonly is: "moisture"; readonly percent: number };

/** How many that are not just the same are told. */
const MOST_NEAR = 3;
/** Millimetres; no saw tells them apart. */
const SAME = 1e-6;

interface Sized {
  readonly material: Material;
  readonly section: string | undefined;
  readonly size: Size;
}

/** Looks names up in the plan's own shop file, which is read when the first is asked for. */
export function meantIn({
  loaded,
  scope,
  materials,
  settings,
}: {
  readonly loaded: Loaded;
  readonly scope: Scope;
  readonly materials: Materials;
  readonly settings: Settings;
}): (name: string) => Meant | undefined {
  const done = new Map<string, Meant | undefined>();
  let theirs: { readonly scope: Scope; readonly materials: Materials } | undefined;
  const meant = (name: string): Meant | undefined => {
    if (!loaded.replaced || scope.declared.has(name)) return undefined;
    theirs ??= apart(loaded.replaced());
    const declared = theirs.scope.declared.get(name);
    const of = declared && sized(declared, theirs.materials);
    if (!of) return undefined;
    const mark = fraction.toNumber(settings.display.mark);
    const all = [...scope.declared.values()]
      .filter(({ role }) => role === "shop")
      .flatMap((one) => sized(one, materials) ?? [])
      .filter((one) => isNear(one, of, mark))
      .map((one) => ({
        material: one.material,
        differs: differences(one, of),
        apart: apartBy(one, of, mark),
      }))
      .sort((a, b) => ranked(a.apart, b.apart));
    const same = all.filter(({ differs }) => differs.length === 0);
    return { ...of, like: same.length > 0 ? same : all.slice(0, MOST_NEAR) };
  };
  return (name) => {
    if (!done.has(name)) done.set(name, meant(name));
    return done.get(name);
  };
}

/** Boards by themselves: what is wrong with their lines is told to nobody, since none of them is used. */
function apart(loaded: Loaded): { readonly scope: Scope; readonly materials: Materials } {
  const scope = scopeOf(loaded);
  const worker: Worker = new Worker(scope, () => undefined);
  return { scope, materials: new Materials(scope, worker, lumberOf(loaded)) };
}

/** Undefined for what is no board and no sheet, and for one whose size is not known. */
function sized(declared: Declared, materials: Materials): Sized | undefined {
  const { entry } = declared;
  if (entry.kind !== "stock" && entry.kind !== "sheet") return undefined;
  const material = materials.peek(declared);
  const thickness = material && ifKnown(material.thickness);
  const width = material?.width && ifKnown(material.width);
  if (!thickness || (material.kind === "board" && !width)) return undefined;
  const called = entry.kind === "stock" ? (entry.of ?? entry.name).text.replace("×", "x") : "";
  return { material, section: /^\d/.test(called) ? called : undefined, size: { thickness, width } };
}

const isNear = (one: Sized, of: Sized, mark: number): boolean =>
  one.material.kind === of.material.kind &&
  ((one.section !== undefined && one.section === of.section) || sizeApart(one.size, of.size) <= mark + SAME);

/** By how many millimetres the side differs that differs most. */
const sizeApart = (a: Size, b: Size): number =>
  Math.max(
    Math.abs(a.thickness.approx - b.thickness.approx),
    a.width && b.width ? Math.abs(a.width.approx - b.width.approx) : 0,
  );

function differences({ material: one, size }: Sized, of: Sized): Difference[] {
  const { material: meant } = of;
  const list: Difference[] = [];
  if (sizeApart(size, of.size) > SAME) list.push({ is: "size", size });
  if (speciesOf(one) !== speciesOf(meant)) list.push({ is: "species", species: speciesOf(one) });
  for (const condition of new Set(meant.conditions))
    if (!one.conditions.includes(condition)) list.push({ is: "less", condition });
  for (const condition of new Set(one.conditions))
    if (!meant.conditions.includes(condition)) list.push({ is: "more", condition });
  if (isPlywood(one) !== isPlywood(meant)) list.push({ is: isPlywood(one) ? "plywood" : "no plywood" });
  if (one.grain !== meant.grain) list.push({ is: "grain", along: one.grain });
  if (one.wood.moisture !== meant.wood.moisture) list.push({ is: "moisture", percent: one.wood.moisture });
  return list;
}

const speciesOf = ({ wood }: Material): string | undefined => (wood.assumed === "" ? wood.name : undefined);
const isPlywood = ({ declared }: Material): boolean =>
  declared?.entry.clauses.some(({ kind }) => kind === "plywood") ?? false;

/** How far it is from what is meant: its size, its species, its condition, all else; what comes first weighs most. */
function apartBy(one: Sized, of: Sized, mark: number): readonly number[] {
  const by = sizeApart(one.size, of.size);
  const differs = differences(one, of);
  const conditions = differs.filter(({ is }) => is === "more" || is === "less").length;
  return [
    by <= SAME ? 0 : by <= mark + SAME ? 1 : 2,
    differs.some(({ is }) => is === "species") ? 1 : 0,
    conditions,
    differs.length,
  ];
}

function ranked(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((n, i) => n !== b[i]);
  return at < 0 ? 0 : a[at]! - b[at]!;
}
