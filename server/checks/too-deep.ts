import { syntaxCheck } from "./syntax";

export const tooDeep = syntaxCheck(
  "too-deep",
  "Too many parentheses inside one another",
  `A sum with that many parentheses is beyond reading. Work a part of it out in a \`measure\` line and use its name.

\`\`\`sawbuck
measure rim = ((((((((((((((((((((((((((((((((((((((((((30"))))))))))))))))))))))))))))))))))))))))))
part leg 4 of 2x4, length rim
\`\`\`

\`\`\`sawbuck
measure rim = 30"
part leg 4 of 2x4, length rim
\`\`\``,
);
