/**
 * What every piece is called on the sheet: its mark, a letter for each row of the cut list, and its identity. Marks go by
 * the order of the parts in the text, so that a part added at the end leaves all letters as they were.
 */
import { ifKnown } from "../plan";
import { type Part, pieceIds, type Worked } from "../worked";
import type { CutRow } from "./data";

export type Hand = CutRow["hand"];

/** Pieces of a part that are cut alike. */
export interface Row {
  readonly hand: Hand;
  readonly mark: string;
  /** Of one copy of the plan, in order: `leg / front left` where it is placed, `leg / 1` where not. */
  readonly pieces: readonly string[];
}

export interface Identities {
  /** Left ones before right ones; one row where there are no hands. */
  readonly rowsOf: (part: Part) => readonly Row[];
  /** From a layout's name for a piece, `copy 2 / leg / 3`: its identity, its part and its mark. */
  readonly ofLayout: (id: string) => { readonly id: string; readonly part: string; readonly mark: string };
  /** The row of a placed piece. */
  readonly ofPlaced: (id: string) => { readonly part: string; readonly row: Row } | undefined;
}

export function identitiesOf(worked: Worked): Identities {
  const rows = new Map<string, readonly Row[]>();
  const placed = new Map<string, { part: string; row: Row }>();
  const main = worked.loaded.files[0]!.file;
  const parts = [...worked.parts.values()].filter(
    (p) => p.declared.at.file === main || p.count.state === "known",
  );
  const own = (p: Part): number => (p.declared.at.file === main ? 0 : 1);
  let next = 0;
  for (const part of [...parts].sort(
    (a, b) => own(a) - own(b) || a.declared.at.start - b.declared.at.start,
  )) {
    const list = piecesOf(part, worked);
    const made = handsOf(part).map(([hand, from, to]): Row => {
      return { hand, mark: letters(next++), pieces: list.slice(from, to) };
    });
    rows.set(part.name, made);
    for (const row of made) for (const id of row.pieces) placed.set(id, { part: part.name, row });
  }
  for (const { id, part } of worked.pieces.all) {
    const row = rows.get(part)?.at(-1);
    if (row && !placed.has(id)) placed.set(id, { part, row });
  }
  // As a layout counts them: by place among the pieces of the part.
  const inOrder = new Map(
    [...rows].map(([part, own]) => [part, own.flatMap((row) => row.pieces.map((name) => ({ name, row })))]),
  );
  const ofLayout = (id: string) => {
    const names = id.split(" / ");
    const [part, n] = [names.at(-2) ?? id, Number(names.at(-1))];
    const found = names[0] === "spare" ? undefined : inOrder.get(part)?.[n - 1];
    const row = found?.row ?? rows.get(part)?.[0];
    return {
      id: found ? [...names.slice(0, -2), found.name].join(" / ") : id,
      part,
      mark: row?.mark ?? "",
    };
  };
  return { rowsOf: (part) => rows.get(part.name) ?? [], ofLayout, ofPlaced: (id) => placed.get(id) };
}

/** As many identities as the part has pieces: those placed, mirror images last, then numbers for the rest. */
function piecesOf(part: Part, { pieces }: Worked): string[] {
  const count = ifKnown(part.count) ?? 0;
  const own = pieces.all.filter((p) => p.part === part.name);
  const ids = [...own.filter((p) => !p.mirrored), ...own.filter((p) => p.mirrored)].map((p) => p.id);
  const rest = pieceIds(part.name, count + ids.length).filter((id) => !ids.includes(id));
  return [...ids, ...rest].slice(0, count);
}

/** Each hand with its share of the pieces. */
function handsOf({ left, right, count }: Part): readonly (readonly [Hand, number, number])[] {
  const n = ifKnown(count) ?? 0;
  if (left + right !== n || n === 0) return [["", 0, n]];
  const both = [
    ["left", 0, left],
    ["right", left, n],
  ] as const;
  return both.filter(([, from, to]) => to > from);
}

/** A … Z, AA, AB …, from 0. */
export function letters(n: number): string {
  const last = String.fromCharCode(65 + (n % 26));
  return n < 26 ? last : letters(Math.floor(n / 26) - 1) + last;
}
