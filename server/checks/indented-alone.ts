import { syntaxCheck } from "./syntax";

export const indentedAlone = syntaxCheck(
  "indented-alone",
  "An indented line with nothing above it",
  `An indented line goes on from the line above it that begins at the left edge. At the top of a file there is no such line.

\`\`\`sawbuck
  part leg 4 of 2x4, length 28"
\`\`\`

\`\`\`sawbuck
part leg 4 of 2x4, length 28"
\`\`\``,
);
