import { syntaxCheck } from "./syntax";

export const notText = syntaxCheck(
  "not-text",
  "A file that is not text",
  `A plan is a plain-text file. One with a byte of value 0 in it is something else, a picture or a program, and is not read.

\`\`\`sawbuck
note a picture, not a plan: NUL
\`\`\`

\`\`\`sawbuck
note a plan
\`\`\``,
);
