/** The drawings with what their marks mean, the marks of screws for the bench, and what is measured corner to corner. */
import type { SheetData, SheetJoint } from "./data";
import type { Drawing } from "./display";
import type { SheetDrawing } from "./drawings";
import { type Column, paragraphs, type RowGroup, section, some, table, unbroken } from "./html-parts";
import { type Child, element, type Markup } from "./markup";
import { drawingSvg, type Look } from "./svg";
import { HEADINGS, KEYS } from "./wording";
import {
  alongWords,
  drawingWords,
  jointWords,
  overallWords,
  rowsByMark,
  rowWords,
  screwsOn,
  setOutWords,
  squareWords,
} from "./wording-space";

/** Nothing where nothing is drawn. */
export function drawingSection(data: SheetData, drawings: readonly SheetDrawing[]): Child {
  if (drawings.length === 0) return null;
  const lines = placeLines(data);
  const figure = (shown: SheetDrawing): Markup => {
    const words = drawingWords(shown);
    return element(
      "figure",
      { class: shown.old ? "old" : undefined },
      words === "" ? null : element("figcaption", {}, words),
      element("div", { class: "paper" }, svgOf(shown.drawing, lines)),
    );
  };
  return section(
    "drawings",
    HEADINGS.drawing,
    data.overall ? paragraphs("overall", [overallWords(data.overall)]) : null,
    drawings.slice(0, 1).map(figure),
    marksList(data),
    drawings.slice(1).map(figure),
  );
}

function marksList(data: SheetData): Child {
  const items = rowsByMark(data).map((row) =>
    element(
      "li",
      { "data-line": row.place.file === data.file ? row.place.line : undefined },
      element("strong", {}, row.mark),
      ` ${rowWords(row)}`,
    ),
  );
  return element("ul", { class: "marks" }, items);
}

/** Written once for each drawing, while its lines stay the same: the preview asks for the same drawings over and over. */
function svgOf(drawing: Drawing, lines: Lines): Markup {
  const before = WRITTEN.get(drawing);
  if (before?.lines === lines.key) return before.svg;
  const svg = drawingSvg(drawing, { lineOf: lines.of });
  WRITTEN.set(drawing, { lines: lines.key, svg });
  return svg;
}

const WRITTEN = new WeakMap<Drawing, { readonly lines: string; readonly svg: Markup }>();

interface Lines {
  readonly of: NonNullable<Look["lineOf"]>;
  /** The same for the same lines. */
  readonly key: string;
}

/** Where a click leads: from a piece to the line that puts it there, from a balloon to the line of its part. */
function placeLines(data: SheetData): Lines {
  const places = new Map<string, number>();
  const parts = new Map<string, number>();
  const own = ({ file, line }: { file: string; line: number }) => (file === data.file ? line : undefined);
  const partLine = new Map(rowsByMark(data).map((row) => [row.part, own(row.place)]));
  for (const { id, part, place } of data.pieces) {
    const [line, of] = [own(place), partLine.get(part)];
    if (line !== undefined) places.set(id, line);
    if (of !== undefined) parts.set(id, of);
  }
  return {
    of: ({ layer, piece = "" }) => {
      if (layer === "face") return places.get(piece);
      return layer === "balloon" ? parts.get(piece) : undefined;
    },
    key: [...places, ...parts].join("\n"),
  };
}

export function setOutSection({ joints, file }: SheetData): Child {
  const groups = joints.filter(({ setOut }) => setOut.length > 0).map((joint) => groupOf(joint, file));
  if (groups.length === 0) return null;
  return section(
    "set-out",
    HEADINGS.setOut,
    paragraphs("key", [KEYS.setOut]),
    table("set-outs", SET_OUT_COLUMNS, groups, ({ line }) => ({ "data-line": line })),
  );
}

/** A grid of marks; what is said of its piece stands with the first. */
interface GridRow {
  readonly mark: string;
  readonly piece: string;
  readonly screws: string;
  readonly along: string;
  readonly across: string;
  readonly line: number | undefined;
}

function groupOf(joint: SheetJoint, file: string): RowGroup<GridRow> {
  const line = joint.place.file === file ? joint.place.line : undefined;
  const rows = joint.setOut.flatMap((set) =>
    set.grids.map((grid, i): GridRow => {
      const first = i === 0;
      return {
        mark: first ? set.mark : "",
        piece: first ? setOutWords(set, joint) : "",
        screws: first ? screwsOn(set) : "",
        along: alongWords(grid),
        across: grid.across.words,
        line,
      };
    }),
  );
  return { title: unbroken(jointWords(joint)), rows };
}

const SET_OUT_COLUMNS: readonly Column<GridRow>[] = [
  { head: "Mark", kind: "mark", cell: ({ mark }) => (mark === "" ? null : element("strong", {}, mark)) },
  { head: "Piece", kind: "name", cell: ({ piece }) => some(piece) },
  { head: "Screws", kind: "per", cell: ({ screws }) => some(screws) },
  { head: "Along it", kind: "grid", cell: ({ along }) => unbroken(along) },
  { head: "Across it", kind: "grid", cell: ({ across }) => unbroken(across) },
];

export function squareSection({ square }: SheetData): Child {
  return section(
    "square",
    HEADINGS.square,
    square.length === 0
      ? null
      : element(
          "ul",
          {},
          square.map((row) => element("li", {}, unbroken(squareWords(row)))),
        ),
  );
}
