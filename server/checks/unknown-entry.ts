import { syntaxCheck } from "./syntax";

export const unknownEntry = syntaxCheck(
  "unknown-entry",
  "A line opens with a word that means nothing",
  `A line that begins at the left edge opens with a word that says what it is: \`part\`, \`stock\`, \`measure\`, \`place\`, \`fasten\`,
\`box\` and so on. Nothing on a line with another first word is read, so what it meant to say is missing everywhere else.

\`\`\`sawbuck
prat leg 4 of 2x4, length 28"
\`\`\`

\`\`\`sawbuck
part leg 4 of 2x4, length 28"
\`\`\``,
);
