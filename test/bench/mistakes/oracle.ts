/**
 * Whether a changed plan can still be built, told by a general solid-modelling library (manifold-3d): what overlaps, touches
 * and stands is none of the project's own code. For screws it is plain arithmetic on depths of wood that are the plan's own,
 * and which pieces a line joined before the change is the plan's own too.
 */
import Module, { type Manifold, type ManifoldToplevel } from "manifold-3d";
import type { Piece, Worked } from "../../../server/worked";

let lib: ManifoldToplevel | undefined;

export async function ready(): Promise<void> {
  lib = await Module();
  lib.setup();
}

/** Identities of the pieces that a plan joins to what they lie on, a line's own words before each. */
export const joinedIn = (worked: Worked): ReadonlySet<string> =>
  new Set(
    worked.joints.flatMap(({ title, placed }) =>
      (placed?.crossings ?? []).map((c) => `${title}: ${worked.pieces.all[c.first]!.id}`),
    ),
  );

/** Why it cannot be built; undefined when it can. `joined` is what the plan joined before it was changed. */
export function broken(worked: Worked, joined: ReadonlySet<string>): string | undefined {
  if (worked.musts.some((m) => m.holds === false)) return "a must is broken";
  const solids = worked.pieces.all.map(solidOf);
  const all = worked.pieces.all;
  for (let i = 0; i < all.length; i++)
    for (let j = i + 1; j < all.length; j++) {
      if (!near(all[i]!, all[j]!)) continue;
      const common = lib!.Manifold.intersection(solids[i]!, solids[j]!);
      // Deeper than 1/64" over a square inch.
      if (common.volume() > 256) return `${all[i]!.id} and ${all[j]!.id} overlap`;
    }
  return standing(all, solids) ?? joints(worked, solids, joined) ?? screws(worked);
}

function solidOf({ cells }: Piece): Manifold {
  const hulls = cells.map((cell) =>
    lib!.Manifold.hull(
      [...new Set(cell.facets.flatMap((f) => f.loop))].map(
        (i) => [...cell.vertices[i]!] as [number, number, number],
      ),
    ),
  );
  return hulls.length === 1 ? hulls[0]! : lib!.Manifold.union(hulls);
}

const near = (a: Piece, b: Piece): boolean =>
  ([0, 1, 2] as const).every(
    (k) => a.bounds.least[k] < b.bounds.most[k] + 1 && b.bounds.least[k] < a.bounds.most[k] + 1,
  );

const touch = (a: Manifold, b: Manifold): boolean => a.minGap(b, 1) < 0.06;

/** Every piece leads by touching others to the floor. */
function standing(all: readonly Piece[], solids: readonly Manifold[]): string | undefined {
  const reached = all.map((p) => Math.abs(p.bounds.least[2]) < 0.06);
  for (let grown = true; grown; ) {
    grown = false;
    all.forEach((p, i) => {
      if (reached[i]) return;
      const holds = all.some((q, j) => reached[j] && near(p, q) && touch(solids[i]!, solids[j]!));
      if (holds) {
        reached[i] = true;
        grown = true;
      }
    });
  }
  const loose = reached.indexOf(false);
  return loose < 0 ? undefined : `${all[loose]!.id} hangs in the air`;
}

/** Each thing that a line joins touches one of those it is joined to, and so does every piece that did. */
function joints(
  worked: Worked,
  solids: readonly Manifold[],
  joined: ReadonlySet<string>,
): string | undefined {
  const all = worked.pieces.all;
  const of = (names: readonly string[]): number[] =>
    all.flatMap((p, i) =>
      names.includes(p.part) || p.owners.some((o) => names.includes(o.name)) ? [i] : [],
    );
  const single = (name: string): string =>
    worked.scope.declared.has(name) ? name : name.replace(/e?s$/, "");
  for (const { entry, title } of worked.joints) {
    const first = entry.first.map((s) => single(s.thing.name.text));
    const last = [...entry.through, ...entry.into].map((s) => single(s.thing.name.text));
    const targets = of(last);
    for (const name of first) {
      const meets = (i: number): boolean =>
        targets.some((j) => i !== j && near(all[i]!, all[j]!) && touch(solids[i]!, solids[j]!));
      const own = of([name]);
      if (!own.some(meets)) return `${title}: ${name} touches none of the others`;
      const lost = own.find((i) => joined.has(`${title}: ${all[i]!.id}`) && !meets(i));
      if (lost !== undefined) return `${title}: ${all[lost]!.id} touches none of the others any more`;
    }
  }
  return undefined;
}

/** By hand: wood in line from head to far side, against the screw's length. */
function screws(worked: Worked): string | undefined {
  for (const joint of worked.joints)
    for (const path of joint.paths) {
      if (!joint.size || /bolt/.test(joint.fastener?.kind ?? "")) continue;
      const along = (depth: number): number => depth / Math.cos((joint.angle.approx * Math.PI) / 180);
      const wood = along(path.layers.reduce((sum, l) => sum + l.depth.approx, 0) + path.behind);
      const before = along(path.layers.slice(0, -1).reduce((sum, l) => sum + l.depth.approx, 0));
      const length = joint.size.length.approx;
      if (wood - length < 3.1) return `${joint.title}: too little wood over the tip`;
      if (length - before < 12.6) return `${joint.title}: too little bite`;
      const last = along(path.layers.at(-1)!.depth.approx);
      const could = Math.min(wood - 3.175, 2 * last) >= 2 * before;
      if (could && Math.min(length - before, last) < length / 2 - 0.1)
        return `${joint.title}: less than half holds`;
    }
  return undefined;
}
