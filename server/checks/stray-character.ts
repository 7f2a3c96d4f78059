import { syntaxCheck } from "./syntax";

export const strayCharacter = syntaxCheck(
  "stray-character",
  "A mark that means nothing here",
  `Plans are written with letters, digits and a few marks. There are no quotation marks: \`"\` is always inches, and \`'\` is feet.

\`\`\`sawbuck
part leg 4 of 2x4, length @ 28"
\`\`\`

\`\`\`sawbuck
part leg 4 of 2x4, length 28"
\`\`\``,
);
