/** What differs about the pieces of two cut lists, and where they stand. */
import type { CutRow, Marked, SheetData, SheetPiece } from "../data";
import type { SheetWords } from "../words";
import type { Moved, PieceChange, PieceFacts, Told } from "./data";
import { only, type Pair, paired, toldOtherwise } from "./rows";

interface Row extends CutRow {
  /** As the plan calls it, and as it is told: "2x4", "2x4, 1-1/2" x 3-1/2", spruce". */
  readonly stock: string;
  readonly title: string;
}

/** `mark` writes a length in mm as the plan does. */
export function pieceChanges(
  old: SheetData,
  now: SheetData,
  words: SheetWords,
  mark: (mm: number) => Marked,
): PieceChange[] {
  const pairs = withNewNames(paired(rowsOf(old), rowsOf(now), ({ part, hand }) => `${part}\n${hand}`));
  const [before, after] = [placesOf(old), placesOf(now)];
  return pairs.flatMap((pair): PieceChange[] => {
    const change: PieceChange = {
      old: pair.old ? factsOf(pair.old) : null,
      new: pair.new ? factsOf(pair.new) : null,
      fields: pair.old && pair.new ? fieldsOf(pair.old, pair.new, words) : [],
      pieces: { old: [], new: [] },
      moved: [],
      turned: [],
    };
    if (!pair.old || !pair.new) return [change];
    const whole = { ...change, ...stood(pair.old, pair.new, before, after, words, mark) };
    return isNews(whole) ? [whole] : [];
  });
}

const isNews = ({ old, new: now, fields, pieces, moved, turned }: PieceChange): boolean =>
  old?.part !== now?.part || [fields, pieces.old, pieces.new, moved, turned].some((list) => list.length > 0);

const rowsOf = ({ cutList }: SheetData): Row[] =>
  cutList.flatMap(({ stock, title, rows }) => rows.map((row) => ({ ...row, stock, title })));

const factsOf = ({ part, mark, hand, count, stock, length, pieces }: Row): PieceFacts => ({
  part,
  mark,
  hand,
  count,
  stock,
  length,
  pieces,
});

function fieldsOf(old: Row, now: Row, words: SheetWords): Told[] {
  const { fields } = words.changes;
  const lines = (row: Row) => [
    { what: fields.count, text: String(row.count) },
    { what: fields.stock, text: row.title },
    { what: fields.length, text: row.length?.text ?? words.notKnown },
    { what: fields.measured, text: row.measured },
    { what: fields.width, text: row.width?.text ?? words.notKnown },
    { what: fields.thickness, text: row.thickness?.text ?? words.notKnown },
    { what: fields.ends, text: row.ends },
    { what: fields.shortPoint, text: row.shortPoint?.text ?? "" },
    ...row.notes.map((note) => ({ what: fields.note, text: note })),
  ];
  return toldOtherwise(lines(old), lines(now)).filter((told) => Boolean(told.old) || Boolean(told.new));
}

/** A row that went and one that came, cut alike, when no other is cut so: the part has another name now. */
function withNewNames(pairs: readonly Pair<Row>[]): Pair<Row>[] {
  const gone = byCut(pairs.filter((pair) => !pair.new).map((pair) => pair.old!));
  const come = byCut(pairs.filter((pair) => !pair.old).map((pair) => pair.new!));
  const joined = new Set<Row>();
  return pairs.flatMap((pair): Pair<Row>[] => {
    const row = (pair.old ?? pair.new)!;
    if (joined.has(row)) return [];
    const [old, now] = [gone.get(cutAs(row)), come.get(cutAs(row))];
    if ((pair.old && pair.new) || !old || !now) return [pair];
    joined.add(old).add(now);
    return [{ ...pair, old, new: now }];
  });
}

/** The rows that are cut as no other is. */
function byCut(rows: readonly Row[]): ReadonlyMap<string, Row> {
  const found = new Map<string, Row[]>();
  for (const row of rows) found.set(cutAs(row), [...(found.get(cutAs(row)) ?? []), row]);
  return new Map([...found].flatMap(([key, [row, second]]) => (row && !second ? [[key, row]] : [])));
}

/** All that the saw sees of a row. */
const cutAs = ({ title, count, hand, length, width, thickness, ends, measured, notes }: Row): string =>
  JSON.stringify([title, count, hand, length?.mm, width?.mm, thickness?.mm, ends, measured, notes]);

/** Placed pieces by their identities. */
const placesOf = ({ pieces }: SheetData): ReadonlyMap<string, SheetPiece> =>
  new Map(pieces.map((piece) => [piece.id, piece]));

/** Where the pieces of a row stand that there are on both sides; those that there are on one alone. */
function stood(
  old: Row,
  now: Row,
  before: ReadonlyMap<string, SheetPiece>,
  after: ReadonlyMap<string, SheetPiece>,
  words: SheetWords,
  mark: (mm: number) => Marked,
): Pick<PieceChange, "pieces" | "moved" | "turned"> {
  const called = (id: string): string => (old.part === now.part ? id : renamedId(id, old.part, now.part));
  const ids = only(old.pieces, now.pieces, (id) => id);
  const ways = new Map<string, { by: Moved["by"]; pieces: string[] }>();
  const turned: string[] = [];
  const sameSize = sizeOf(old) === sizeOf(now);
  for (const id of now.pieces) {
    const there = after.get(id);
    const was = old.pieces.find((one) => called(one) === id);
    const here = was === undefined ? undefined : before.get(was);
    if (!there || !here || !sameSize) continue;
    const by = ([0, 1, 2] as const).map((k) => rounded(there.from[k] - here.from[k]));
    const grown = ([0, 1, 2] as const).some(
      (k) => Math.abs(there.to[k] - there.from[k] - (here.to[k] - here.from[k])) > SEEN,
    );
    if (grown) turned.push(id);
    else if (by.some((mm) => mm !== 0)) {
      const way = ways.get(by.join()) ?? { by: by as unknown as Moved["by"], pieces: [] };
      ways.set(by.join(), way);
      way.pieces.push(id);
    }
  }
  return {
    pieces: old.part === now.part ? ids : { old: [], new: [] },
    moved: [...ways.values()].map(({ by, pieces }) => ({ pieces, by, words: wayWords(by, words, mark) })),
    turned,
  };
}

const sizeOf = ({ length, width, thickness, ends }: Row): string =>
  JSON.stringify([length?.mm, width?.mm, thickness?.mm, ends]);

/** `post / front left` of `leg / front left`. */
const renamedId = (id: string, from: string, to: string): string =>
  id
    .split(" / ")
    .map((name) => (name === from ? to : name))
    .join(" / ");

/** Less than a tenth of a millimetre is nobody's change; so are zeros with a sign. */
const rounded = (mm: number): number =>
  Math.abs(mm) < SEEN ? 0 : (Math.sign(mm) * Math.round(Math.abs(mm) * 1000)) / 1000;
const SEEN = 0.1;

function wayWords(by: Moved["by"], words: SheetWords, mark: (mm: number) => Marked): string {
  const { ways } = words.changes;
  const names = [
    [ways.left, ways.right],
    [ways.front, ways.back],
    [ways.down, ways.up],
  ] as const;
  return by
    .flatMap((mm, k) => (mm === 0 ? [] : [names[k]![mm > 0 ? 1 : 0](mark(Math.abs(mm)).text)]))
    .join(", ");
}
