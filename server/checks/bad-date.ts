import { syntaxCheck } from "./syntax";

export const badDate = syntaxCheck(
  "bad-date",
  "A date that cannot be read",
  `A date is written with the year first, then the month, then the day: \`2026-05-09\`. In any other order it may be read as
another day elsewhere.

\`\`\`sawbuck
measure rim = 30"
part leg 4 of 2x4, length rim
built 9/5/2026 by the garden class
\`\`\`

\`\`\`sawbuck
measure rim = 30"
part leg 4 of 2x4, length rim
built 2026-05-09 by the garden class
\`\`\``,
);
