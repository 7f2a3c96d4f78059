export const USAGE = `Usage:
  sawbuck check FILES|FOLDERS [--shop FILE] [--format text|json]
      Finds the mistakes it can name. Exit 0 when there are no errors and no hazards,
      1 when there are, 2 when something cannot be read.
  sawbuck sheet FILE [--shop FILE] [--format html|json|text] [--out FILE]
      Prints the shop sheet, or writes it to a file, in the format its name ends with
      (.html, .json, else text) when none is asked for.
  sawbuck lsp --stdio
      Serves an editor over standard input and output.

  --shop FILE   your own shop file, in place of the one a plan names
`;
