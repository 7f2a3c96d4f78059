/** The blocks of a sheet as slabs: words, terms, groups and sections here, the others beside. */
import type {
  Block,
  Figure,
  Group,
  List,
  Paragraph,
  Section,
  SheetDocument,
  Terms,
  WriterWords,
} from "../document";
import { figureFlows, figureRows, smallFigure } from "./figures";
import type { Letters } from "./letters";
import { boxesWidth, boxLines, heightOf, linesOf, widthsOf } from "./lines";
import { listFlows } from "./lists";
import { BODY, GAP, HEADING, HEAVY, MM, SMALL, STRONG, type Style, TITLE } from "./paper";
import type { Pen, Tag } from "./pen";
import { beside, evenly, type Flow, type Frame, pile, row, type Slab, slabsOf } from "./slab";
import { tableFlows } from "./tables";

/** What blocks are set with: the pen, the words of writers, and the height of a page's room in points. */
export interface Setting {
  readonly pen: Pen;
  readonly words: WriterWords;
  readonly room: number;
}

/** The whole sheet. */
export function documentFlows(document: SheetDocument, frame: Frame, setting: Setting): readonly Flow[] {
  const { pen } = setting;
  const line = (words: string, style: Style, type: string, after: number): Slab =>
    row([{ ...frame, lines: linesOf(words, style, frame.width, pen.letters), tag: pen.tag(type) }], {
      after,
      tied: true,
    });
  return [
    line(document.title, TITLE, "H1", 1 * MM),
    line(document.under, SMALL, "P", 4 * MM),
    ...document.sections.flatMap((section) => sectionFlows(section, frame, setting)),
  ];
}

function sectionFlows(section: Section, frame: Frame, setting: Setting): readonly Flow[] {
  const { pen } = setting;
  const parent = pen.tag("Sect");
  const { heading } = section;
  const { left, width } = frame;
  const stack = {
    ...frame,
    lines: linesOf(heading, HEADING, width, pen.letters),
    tag: pen.tag("H2", parent),
  };
  const line = row([stack], {
    before: 4.5 * MM,
    after: 1.5 * MM,
    top: 1.5 * MM,
    tied: true,
    rules: (ink, top) => ink.rule(left, top, left + width, HEAVY),
    placed: (ink, top) => ink.bookmark(heading, top),
  });
  const title: Slab = { ...line, begins: heading };
  // What is said first is about all that follows.
  const said = section.blocks.findIndex(({ kind }) => kind !== "paragraph");
  const blocks: Flow[] = [];
  for (let i = 0; i < section.blocks.length; i++) {
    const [block, next] = [section.blocks[i]!, section.blocks[i + 1]];
    const explained =
      block.kind === "figure" && isMarks(next) && besideMarks(block, next, frame, parent, setting);
    if (explained) {
      blocks.push(explained);
      i += 1;
    } else if (block.kind === "paragraph" && i < said)
      blocks.push({ ...paragraph(block, frame, parent, setting), tied: true });
    else blocks.push(...blockFlows(block, frame, parent, setting));
  }
  const flows = [title, ...blocks];
  return [
    ...(section.newPage ? ["page" as const] : []),
    ...(section.onePage ? [{ together: flows }] : flows),
  ];
}

/** A figure with its marks in one column at its right, where there is the room. */
function besideMarks(
  figure: Figure,
  marks: List,
  frame: Frame,
  parent: Tag,
  setting: Setting,
): Slab | undefined {
  const small = smallFigure(figure, frame, setting, 1);
  if (!small) return undefined;
  const taken = small.width + COLUMN_GAP;
  const width = frame.width - taken;
  if (width < MARKS_BESIDE) return undefined;
  const slabs = small.slabs({ left: frame.left, width: small.width }, parent);
  const column = pile(slabsOf(listFlows(marks, { left: frame.left + taken, width }, parent, setting)));
  return column.height <= setting.room ? beside([pile(slabs), column]) : undefined;
}

/** Narrower, names of parts would be broken over many lines. */
const MARKS_BESIDE = 36 * MM;

const isMarks = (block: Block | undefined): block is List =>
  block?.kind === "list" && block.style === "marks";

function blockFlows(block: Block, frame: Frame, parent: Tag, setting: Setting): readonly Flow[] {
  switch (block.kind) {
    case "paragraph":
      return [paragraph(block, frame, parent, setting)];
    case "terms":
      return termsFlows(block, frame, parent, setting);
    case "list":
      return listFlows(block, frame, parent, setting);
    case "table":
      return tableFlows(block, frame, parent, setting);
    case "figure":
      return figureFlows(block, frame, parent, setting);
    case "figures":
      return figureRows(block.figures, frame, parent, setting, true);
    case "group":
      return groupFlows(block, frame, parent, setting);
    case "progress":
      return [];
  }
}

function paragraph({ style, words }: Paragraph, frame: Frame, parent: Tag, { pen }: Setting): Slab {
  const indent = style === "caution" ? 3 * MM : 0;
  const inner = { left: frame.left + indent, width: frame.width - indent };
  const type = style === "key" || style === "source" ? SMALL : BODY;
  const lines = linesOf(words, type, inner.width, pen.letters);
  return row([{ ...inner, lines, tag: pen.tag("P", parent) }], {
    before: style === "caution" ? 1 * MM : 0,
    after: 1.5 * MM,
    tied: style === "key",
    ...(style === "caution" && {
      rules: (ink: Pen, top: number, height: number) =>
        ink.upright(frame.left + HEAVY / 2, top, top + height, HEAVY),
    }),
  });
}

function termsFlows(
  { rows, columns, light }: Terms,
  frame: Frame,
  parent: Tag,
  setting: Setting,
): readonly Slab[] {
  const style = light ? BODY : STRONG;
  if (columns === undefined) return termSlabs(rows, style, frame, parent, setting);
  const width = (frame.width - COLUMN_GAP) / 2;
  const [left, right] = evenly(termHeights(rows, style, width, setting), 2).map(([from, to], i) =>
    termSlabs(
      rows.slice(from, to),
      style,
      { left: frame.left + i * (width + COLUMN_GAP), width },
      parent,
      setting,
    ),
  );
  if (!left) return [];
  const both = beside([pile(left), ...(right ? [pile(right)] : [])]);
  return both.height <= setting.room ? [both] : termSlabs(rows, style, frame, parent, setting);
}

const COLUMN_GAP = 6 * MM;

function termSlabs(
  rows: Terms["rows"],
  style: Style,
  frame: Frame,
  parent: Tag,
  { pen }: Setting,
): readonly Slab[] {
  const { letters } = pen;
  const label = labelWidth(rows, frame.width, letters);
  const body = { left: frame.left + label + GAP, width: frame.width - label - GAP };
  const list = pen.tag("L", parent);
  return rows.map((term, i) => {
    const item = pen.tag("LI", list);
    const stacks = [
      {
        left: frame.left,
        width: label,
        lines: linesOf(term.label, BODY, label, letters),
        tag: pen.tag("Lbl", item),
      },
      { ...body, lines: linesOf(term.words, style, body.width, letters), tag: pen.tag("LBody", item) },
    ];
    return row(stacks, { top: AROUND, bottom: AROUND, after: i === rows.length - 1 ? 2 * MM : 0 });
  });
}

function labelWidth(rows: Terms["rows"], width: number, letters: Letters): number {
  const widest = Math.max(0, ...rows.map(({ label }) => widthsOf(label, BODY, letters).most));
  return Math.min(Math.max(widest, Math.min(LABEL, width / 5)), width * LABEL_SHARE);
}

function termHeights(rows: Terms["rows"], style: Style, width: number, { pen }: Setting): readonly number[] {
  const { letters } = pen;
  const label = labelWidth(rows, width, letters);
  return rows.map((term) => {
    const cells = [
      linesOf(term.label, BODY, label, letters),
      linesOf(term.words, style, width - label - GAP, letters),
    ];
    return Math.max(...cells.map(heightOf)) + 2 * AROUND;
  });
}

/** Above and below a term. */
const AROUND = 0.3 * MM;

/** Labels stand this wide at least, and take no more than this share of a line. */
const LABEL = 42 * MM;
const LABEL_SHARE = 0.4;

function groupFlows(group: Group, frame: Frame, parent: Tag, setting: Setting): readonly Flow[] {
  const { pen, words } = setting;
  const own = pen.tag("Sect", parent);
  const ticks = group.ticks ?? [];
  const boxes = ticks.length === 0 ? 0 : boxesWidth(Math.min(ticks.length, BOXES)) + GAP;
  const place = { left: frame.left + boxes, width: frame.width - boxes };
  const heading = { ...place, lines: linesOf(group.heading, STRONG, place.width, pen.letters) };
  const tag = pen.tag("H3", own);
  const stacks = [
    ...(boxes === 0
      ? []
      : [{ left: frame.left, width: boxes, lines: boxLines(ticks, boxes - GAP, words), tag }]),
    { ...heading, tag },
  ];
  const title = row(stacks, { before: 3.5 * MM, after: 0.8 * MM, tied: true });
  const flows = [title, ...groupBlocks(group.blocks, frame, own, setting)];
  return group.loose ? flows : [{ together: flows }];
}

const BOXES = 4;

/** A small figure stands at the right of the words that follow it, as long as these are no table and no figure; short boards side by side. */
function groupBlocks(blocks: Group["blocks"], frame: Frame, parent: Tag, setting: Setting): readonly Flow[] {
  const flows: Flow[] = [];
  for (let i = 0; i < blocks.length; i++) {
    const block = blocks[i]!;
    if (toScale(block)) {
      const next = blocks.findIndex((other, n) => n > i && !toScale(other));
      const run = blocks.slice(i, next < 0 ? undefined : next).filter(toScale);
      flows.push(...figureRows(run, frame, parent, setting));
      i += run.length - 1;
      continue;
    }
    const small = block.kind === "figure" && block.beside ? smallFigure(block, frame, setting) : undefined;
    if (block.kind === "paragraph" && blocks[i + 1]?.kind === "figure") {
      flows.push({ ...paragraph(block, frame, parent, setting), tied: true });
      continue;
    }
    if (!small) {
      flows.push(...blockFlows(block, frame, parent, setting));
      continue;
    }
    const width = frame.width - small.width - 2 * GAP;
    const text: Flow[] = [];
    const column = { left: frame.left + frame.width - small.width, width: small.width };
    const figure = small.slabs(column, parent);
    for (let next = blocks[i + 1]; next && isText(next); next = blocks[i + 1]) {
      text.push(...blockFlows(next, { left: frame.left, width }, parent, setting));
      i += 1;
    }
    const slabs = slabsOf(text);
    const both = beside([pile(figure), ...(slabs.length > 0 ? [pile(slabs)] : [])]);
    if (both.height <= setting.room) flows.push(both);
    else flows.push({ together: figure }, ...text);
  }
  return flows;
}

type ScaledFigure = Figure & { readonly toScale: true };
const toScale = (block: Block): block is ScaledFigure => block.kind === "figure" && block.toScale === true;
const isText = ({ kind }: Block): boolean => kind === "paragraph" || kind === "terms" || kind === "list";
