import { syntaxCheck } from "./syntax";

export const notUnderstood = syntaxCheck(
  "not-understood",
  "Something on a line is not understood",
  `A line says one thing after another, each after a comma or on an indented line of its own. What cannot be read is passed over;
the rest of the line still counts. The message shows how such a thing is written.

\`\`\`sawbuck
part leg 4 of 2x4, lenght 28"
\`\`\`

\`\`\`sawbuck
part leg 4 of 2x4, length 28"
\`\`\``,
);
