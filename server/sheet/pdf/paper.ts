/** Sizes of paper, type, lines and gaps on a printed sheet, in points of 1/72 inch unless a name says mm. */

export type Paper = "Letter" | "A4";

/** Points in a millimetre. */
export const MM = 72 / 25.4;

/** Width and height of a page. Letter is 8-1/2 x 11 in, A4 is 210 x 297 mm (ISO 216). */
export const PAPERS: Readonly<Record<Paper, readonly [width: number, height: number]>> = {
  Letter: [612, 792],
  A4: [210 * MM, 297 * MM],
};

export const MARGIN = 15 * MM;
/** Above the first line. */
export const HEAD = 13 * MM;

/** Where the foot's line of type stands, from the lower edge: out of reach of what printers cannot print. */
export const FOOT = 8.5 * MM;

/** Type is set this share of its width: the condensed cut of DejaVu Sans is the plain one at 90%. */
export const CONDENSED = 0.9;

export interface Style {
  /** Height of type. */
  readonly size: number;
  readonly bold: boolean;
}

/** Type read at arm's length: small letters of DejaVu are 0.547 of its size high, at 10.5 points 2 mm. */
export const BODY: Style = { size: 10.5, bold: false };
export const STRONG: Style = { size: 10.5, bold: true };
/** Keys, sources, heads of columns, what is said beside. */
export const SMALL: Style = { size: 9.2, bold: false };
export const TITLE: Style = { size: 22, bold: true };
export const HEADING: Style = { size: 14, bold: true };

/** From line to line, as a share of the type's height. */
export const LEADING = 1.25;
/** Half the height of capitals: the middle of a line of type lies so far above its baseline. */
export const MIDDLE = 0.365;

/** Weights of rules: around a section and a hazard, under the heads of columns, under a row. */
export const HEAVY = 0.4 * MM;
export const INNER = 0.22 * MM;
export const THIN = 0.15 * MM;
export const GRAY = "#999999";

/** A square to tick with a pencil: its side, the line around it, and where the next one begins. */
export const BOX = 3.6 * MM;
export const BOX_LINE = 0.3 * MM;
export const BOX_STEP = 5.2 * MM;

/** A line to write on. */
export const BLANK = 34 * MM;

/** Between two columns. */
export const GAP = 3 * MM;
