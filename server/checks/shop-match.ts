/** A name of the plan's own shop file that the reader's shop, which stands in its place, does not have: what it is there is asked. */
import type { Entry } from "../../grammar/tree";
import { type At, usesOf } from "../plan";
import type { Difference, Fault, Likeness, Meant, Worked } from "../worked";
import type { Cure, Edit, Finding, Says, Slot } from "./check";
import { type PhraseKey, phrase } from "./phrases";

type Unknown = Extract<Fault, { kind: "unknown-name" }>;

/** A place where a name stands, and whether its line tells something of that very board: what was built, what is accepted. */
interface Standing {
  readonly at: At;
  readonly ofItself: boolean;
}

/**
 * What is asked of a name, once for all lines that use it, and once for all that tell something of that very board; `asked`
 * holds those that were. Nothing to tell where it was asked before; undefined for any other name.
 */
export function askedInstead(fault: Unknown, worked: Worked, asked: Set<string>): Finding[] | undefined {
  const name = fault.name.replace("×", "x");
  const meant = fault.fixed ? undefined : worked.meantBy(name);
  const all = meant ? standsIn(worked, name, meant) : [];
  const here = all.find(({ at }) => at.file === fault.at.file && at.start === fault.at.start);
  if (!meant || !here) return undefined;
  const key = `${name}\n${here.ofItself}`;
  if (asked.has(key)) return [];
  asked.add(key);
  const slots = { name, what: meantText(meant) };
  const place = { at: fault.at, about: [name] };
  const same = meant.like.filter(({ differs }) => differs.length === 0);
  if (same.length > 0) {
    const near = { any: same.map(({ material }) => phrase("quoted", { name: material.name })) };
    const cures = same.map(({ material: { name: to } }): Cure => {
      return { says: "here", slots: { name, to }, edits: editsTo(to, all) };
    });
    return [{ ...place, says: "same-here", slots: { ...slots, near }, cures }];
  }
  const line = { says: "own-line", slots: { name }, edits: [] };
  if (meant.like.length === 0) return [{ ...place, says: "none-here", slots, cures: [line] }];
  const near = { any: meant.like.map((one) => phrase("differing", differing(one))) };
  const used = all.filter(({ ofItself }) => !ofItself);
  const cures = here.ofItself
    ? []
    : meant.like.map(
        (one): Cure => ({
          says: "instead",
          slots: { old: name, ...differing(one) },
          edits: editsTo(one.material.name, used),
        }),
      );
  return [{ ...place, says: "near-here", slots: { ...slots, near }, cures: [...cures, line] }];
}

/** All places of the plan and of what it brings where such a board may be named so. */
function standsIn({ loaded }: Worked, name: string, { material }: Meant): Standing[] {
  const kind = material.kind === "sheet" ? "sheet" : "stock";
  const inEntry = (entry: Entry, file: string): Standing[] =>
    entry.kind === "assembly"
      ? entry.body.flatMap((inner) => inEntry(inner, file))
      : usesOf(entry)
          .filter((use) => use.name.text.replace("×", "x") === name && use.kinds.includes(kind))
          .map(({ name: { start, end } }) => ({
            at: { file, start, end },
            ofItself: entry.kind === "built" || entry.kind === "accept",
          }));
  return loaded.files
    .filter(({ role }) => role !== "shop")
    .flatMap(({ file, tree }) => tree.entries.flatMap((entry) => inEntry(entry, file)));
}

const editsTo = (text: string, places: readonly Standing[]): Edit[] =>
  places.map(({ at }) => ({ ...at, text }));

function meantText({ material, section, size, ...of }: Meant): Slot {
  const { wood, conditions, declared, grain, sizeFrom } = material;
  const thickness = { full: size.thickness };
  const width = size.width && { full: size.width };
  const board = width
    ? section === undefined
      ? phrase("a board of this size", { thickness, width })
      : sizeFrom.by === "table"
        ? phrase("a section", { section })
        : phrase("a section, really", { section, thickness, width })
    : phrase("a sheet of this size", { thickness });
  const said = (kind: string): boolean => declared?.entry.clauses.some((c) => c.kind === kind) ?? false;
  return row([
    board,
    ...(said("plywood") ? [phrase("plywood")] : []),
    ...(wood.assumed === "" ? [wood.name] : []),
    ...[...new Set(conditions)].map((condition) => phrase(condition as PhraseKey)),
    ...(grain === "length" ? [] : [phrase(`grain ${grain}`)]),
    ...(said("moisture") || of.like.some(isOtherwiseWet)
      ? [phrase("at moisture", { n: wood.moisture })]
      : []),
  ]);
}

const isOtherwiseWet = ({ differs }: Likeness): boolean => differs.some(({ is }) => is === "moisture");

const differing = ({ material, differs }: Likeness) => ({
  name: material.name,
  differs: row(differs.map(difference)),
});

function difference(one: Difference): Says | string {
  switch (one.is) {
    case "size": {
      const { thickness, width } = one.size;
      return width
        ? phrase("size of board", { thickness: { full: thickness }, width: { full: width } })
        : phrase("size of sheet", { thickness: { full: thickness } });
    }
    case "species":
      return one.species ?? phrase("no species said");
    case "more":
      return phrase(one.condition as PhraseKey);
    case "less":
      return phrase(`not ${one.condition}` as PhraseKey);
    case "grain":
      return phrase(`grain ${one.along}`);
    case "moisture":
      return phrase("at moisture", { n: one.percent });
    default:
      return phrase(one.is);
  }
}

const row = (list: readonly Slot[]): Slot => ({ row: list, by: ", " });
