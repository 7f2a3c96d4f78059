import { syntaxCheck } from "./syntax";

export const badName = syntaxCheck(
  "bad-name",
  "A word that cannot be a name",
  `Names are small letters, digits and hyphens, and begin with a letter: \`leg\`, \`cap-side\`, \`rail-2\`. That way a name is one
word wherever it stands, and a plural in \`s\` can mean all of its pieces.

\`\`\`sawbuck
part Leg 4 of 2x4, length 28"
\`\`\`

\`\`\`sawbuck
part leg 4 of 2x4, length 28"
\`\`\``,
);
