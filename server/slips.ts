/** The door for measuring-up slips: what to measure at another place, filled in, and what comes of it. */
import { adapt, compare } from "./exchange";
import { textChanges, type Wish } from "./features/adapting";
import type { LoadOptions, Reader } from "./plan";
import { type Evaluated, evaluate, type SheetFormat, sheetOf } from "./service";
import type { Drawing } from "./sheet/display";
import { SHEET_STYLE, type SheetParts, sheetPage, sheetParts } from "./sheet/html";
import { sheetMarkdown } from "./sheet/markdown";
import { asMeasured } from "./sheet/slip/measured";
import { outcomeSections } from "./sheet/slip/outcome";
import { slipRows } from "./sheet/slip/rows";
import {
  drawingSection,
  type RowWords,
  rowWords,
  type Slip,
  slipDocument,
  slipDrawings,
} from "./sheet/slip/slip";
import { type Span, spanOf } from "./sheet/slip/spans";
import { sheetText } from "./sheet/text";
import { type SheetLanguage, wordsIn } from "./sheet/words";

export type { Slip } from "./sheet/slip/slip";

/**
 * What is to be measured at another place, with where it is seen: the plan is worked out once more for each measure, with
 * room between for other work. `read` and `options` are those it was worked out with.
 */
export function* slipInSteps(
  { file, text, worked }: Evaluated,
  read: Reader,
  options: LoadOptions = {},
): Generator<undefined, Slip, void> {
  const rows = slipRows(worked);
  const spans = new Map<string, Span>();
  const { system } = worked.settings.display;
  const [longer, more] = system === "inches" ? ['1/16"', 25.4 / 16] : ["1 mm", 1];
  for (const { what, value, at } of worked.pieces.all.length === 0 ? [] : rows.slice(0, MOST_SEEN)) {
    const source = worked.loaded.files.find((one) => one.file === at.file)!.tree.text.slice(at.start, at.end);
    const made = adapt(file, text, read, [{ kind: "set", what, value: `(${source}) + ${longer}` }], options);
    if ("refused" in made) continue;
    const span = spanOf(worked, evaluate(file, made.text, made.read, options).worked, value.approx, more);
    if (span) spans.set(what, span);
    yield;
  }
  return { rows, spans };
}

/** The same at once. */
export function slipOf(...of: Parameters<typeof slipInSteps>): Slip {
  const steps = slipInSteps(...of);
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

/** One row as it is filled in: what it is called in a wish, its words, and in words what is wrong with what was typed. */
export interface FilledRow extends RowWords {
  readonly what: string;
  readonly wrong?: string;
}

export interface Filled {
  readonly rows: readonly FilledRow[];
  /** What is to be set, of the rows that can be read. */
  readonly wishes: readonly Wish[];
}

/** `typed` is what stands in the rows, by what they are called; a number alone is in the plan's own units. */
export function filledSlip(
  slip: Slip,
  { worked }: Evaluated,
  typed: (what: string) => string,
  language: SheetLanguage,
): Filled {
  const words = wordsIn(language);
  const wishes: Wish[] = [];
  const rows = rowWords(slip, worked, words).map((row, i): FilledRow => {
    const { what, value } = slip.rows[i]!;
    const text = typed(what).trim();
    if (text === "") return { ...row, what };
    const measured = asMeasured(text, value, worked.settings.display.system);
    if (measured === undefined) return { ...row, what, wrong: words.slip.unreadable(text) };
    wishes.push({ kind: "set", what, value: measured });
    return { ...row, what };
  });
  return { rows, wishes };
}

/** The page of a slip that is being filled in: the drawings with what is known, and what comes of it. */
export function slipParts(
  before: Evaluated,
  after: Evaluated | undefined,
  drawings: readonly Drawing[],
  language: SheetLanguage,
): SheetParts & { readonly title: string; readonly key: string; readonly style: string } {
  const words = wordsIn(language);
  const changes = after && compare(before, after, {}, language).changes;
  const data = (e: Evaluated) => sheetOf(e, undefined, language);
  const title = words.slip.of(before.worked.settings.title);
  const sections = [
    ...outcomeSections(data(before), after && changes && { data: data(after), changes }, words),
    ...drawingSection(drawings, words),
  ];
  const { parts } = sheetParts({ language: words.tag, title, plan: "", under: "", sections, words });
  // Its head stands above the rows.
  return { title, key: words.slip.key, language: words.tag, parts: parts.slice(1), style: SHEET_STYLE };
}

/** The drawings of a slip, in steps; `typed` as for `filledSlip`. */
export const slipDrawingsInSteps = (
  slip: Slip,
  { worked }: Evaluated,
  { wishes }: Filled,
  language: SheetLanguage,
): ReturnType<typeof slipDrawings> =>
  slipDrawings(
    slip,
    new Map(wishes.flatMap((wish) => (wish.kind === "set" ? [[wish.what, wish.value] as const] : []))),
    worked,
    wordsIn(language),
  );

/** The changes of the plan's texts that are wished for. */
export const wishedChanges = ({ worked }: Evaluated, wishes: readonly Wish[]) =>
  textChanges(worked.loaded, wishes);

/** Each of them takes as long as working the plan out. */
const MOST_SEEN = 40;

/** A slip to be filled in by hand; `called` is how the plan's file is told. */
export function writeSlip(
  slip: Slip,
  { worked }: Evaluated,
  called: string,
  format: Exclude<SheetFormat, "json">,
  language: SheetLanguage = "en",
): string {
  const document = slipDocument(slip, worked, called, wordsIn(language), format === "html");
  if (format === "html") return sheetPage(document);
  return format === "markdown" ? sheetMarkdown(document) : sheetText(document);
}
