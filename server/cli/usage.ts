import { EFFORT } from "../cutting/improve";
import { tables } from "../sheet/csv";

export const USAGE = `Usage:
  sawbuck check FILES|FOLDERS [--shop FILE] [--format text|json]
      Finds the mistakes it can name. Exit 0 when there are no errors and no hazards,
      1 when there are, 2 when something cannot be read.
  sawbuck sheet FILE [--shop FILE] [--format text|html|pdf|markdown|json] [--out FILE]
      [--for builder|stations|learners] [--units inches|millimetres] [--language en|fr]
      [--paper Letter|A4]
      Prints the shop sheet, or writes it to a file, in the format its name ends with
      (.html, .pdf, .md, .json, else text) when none is asked for. --paper is for PDF.
      stations: in the order of a group that marks, cuts, drills, finishes and assembles;
      learners: with blanks for the lengths that follow from others, and an answer page.
  sawbuck sheet FILE --table TABLE [--shop FILE] [--units inches|millimetres]
      [--language en|fr] [--out FILE.csv]
      Prints one of its tables as CSV:
      ${tables.join(", ")}.
  sawbuck sheet FILE --drawing turned|front|left|right|back|above|apart
      [--assembly NAME] [--shop FILE] [--units inches|millimetres] [--language en|fr]
      [--out FILE.svg]
      Prints one drawing of what is placed, or of one assembly alone, as SVG.
  sawbuck lsp --stdio
      Serves an editor over standard input and output.

  --shop FILE   your own shop file, in place of the one a plan names
  --effort N    how long check and sheet look for the cheapest way to cut each stock, in
                millions of steps; ${EFFORT / 1e6} when it is not said, 0 for first answers
`;
