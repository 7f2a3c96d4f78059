export const USAGE = `Usage:
  sawbuck check FILES|FOLDERS [--shop FILE] [--format text|json]
      Finds the mistakes it can name. Exit 0 when there are no errors and no hazards,
      1 when there are, 2 when something cannot be read.
  sawbuck sheet FILE [--shop FILE] [--format html|json|text] [--out FILE]
      Prints the shop sheet, or writes it to a file, in the format its name ends with
      (.html, .json, else text) when none is asked for.
  sawbuck sheet FILE --drawing turned|front|left|right|back|above|apart
      [--assembly NAME] [--shop FILE] [--out FILE.svg]
      Prints one drawing of what is placed, or of one assembly alone, as SVG.
  sawbuck lsp --stdio
      Serves an editor over standard input and output.

  --shop FILE   your own shop file, in place of the one a plan names
`;
