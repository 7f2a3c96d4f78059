/** The room that roots find in boxes, and gaps between boards through the year, as the sheet tells them. */
import type { At } from "../plan";
import {
  type Display,
  exactly,
  fraction,
  LENGTH,
  lengthText,
  liquidText,
  type Quantity,
  sameDimension,
} from "../units";
import { type RootRoom, type RowOfYear, rootRoom, type Wanted, type Worked } from "../worked";
import type { Marked, Place, SheetGap, SheetRoots } from "./data";
import { marked, ofMm } from "./marks";
import type { SheetWords } from "./words";

export const rootRows = (worked: Worked, words: SheetWords): SheetRoots[] =>
  rootRoom(worked).map((room) => rootRow(room, words, worked.settings.display));

function rootRow(room: RootRoom, { holding, shop }: SheetWords, display: Display): SheetRoots {
  const bare = (q: Quantity): string =>
    sameDimension(q.dim, LENGTH) ? lengthText(q, display) : holding.liquid(liquidText(q, display));
  const told = (words: string, { dim }: Quantity): string =>
    sameDimension(dim, LENGTH) ? holding.depth(words) : words;
  const text = (q: Quantity): string => told(bare(q), q);
  const range = ({ least, most }: Wanted): string =>
    least.approx === most.approx ? text(least) : told(holding.range(bare(least), bare(most)), least);
  const joined = (texts: readonly string[]): string =>
    texts.length === 2 ? holding.and(texts[0]!, texts[1]!) : (texts[0] ?? "");
  const { wantsDepth, wantsVolume, ground, depth, volume } = room;
  const here = [depth && text(depth), wantsVolume && volume && text(volume)].filter((t) => t !== undefined);
  const wants = [wantsDepth, wantsVolume].flatMap((w) => (w ? [range(w)] : []));
  const source = (wantsDepth ?? wantsVolume)?.source;
  return {
    crop: room.crop,
    box: room.box.name,
    here: joined(here),
    wants: joined(wants),
    ground: ground ? range(ground) : "",
    state: holding.roots[room.state],
    source: source ? shop.cite(source) : "",
  };
}

/** The narrowest gap of each row that has one, rows alike told once. */
export function gapRows(worked: Worked, place: (at: At) => Place, words: SheetWords): SheetGap[] {
  const { display } = worked.settings;
  const seen = new Set<string>();
  return worked.movement.rows.flatMap((row): SheetGap[] => {
    const gap = narrowest(row);
    if (!gap) return [];
    const length = (mm: number) => gapLength(mm, display, words);
    const told: SheetGap = {
      row: words.holding.boards(row.pieces.length, words.shop.listed(row.parts)),
      built: length(gap.built),
      wettest: length(gap.wettest),
      driest: length(gap.driest),
      where: words.holding.where[row.where],
      place: place(row.at),
    };
    const key = [told.row, told.built.text, told.wettest.text, told.driest.text, told.place.line].join("\n");
    if (seen.has(key)) return [];
    seen.add(key);
    return [told];
  });
}

/** To half a mark of the plan, as gaps move by little. */
function gapLength(mm: number, display: Display, { holding }: SheetWords): Marked {
  const fine = { ...display, mark: fraction.divide(display.mark, fraction.rational(2))! };
  const length = marked(ofMm(mm), fine);
  const shows = mm <= 0 || length.text !== lengthText(ofMm(0), fine);
  return shows ? length : { ...length, text: holding.under(lengthText(exactly(LENGTH, fine.mark), fine)) };
}

function narrowest({ gaps, ends, span }: RowOfYear): RowOfYear["gaps"][number] | undefined {
  const all = [...gaps, ...ends.flatMap((end) => (end && span !== undefined ? [end.gap] : []))];
  const open = all.filter(({ built }) => built > SHOWS);
  return open.reduce<RowOfYear["gaps"][number] | undefined>(
    (least, gap) => (least && least.wettest <= gap.wettest ? least : gap),
    undefined,
  );
}

/** mm: less is no gap that was left. */
const SHOWS = 0.79375;
