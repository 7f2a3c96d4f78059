import { syntaxCheck } from "./syntax";

export const mergeConflict = syntaxCheck(
  "merge-conflict",
  "Two versions of the same lines",
  `Where two people change the same lines of a plan, git puts both versions into the file, one below the other, between lines of seven letters. One of them has to go, with those lines. Until then the plan is read as if the first version were kept; nothing else of the file is lost.

\`\`\`sawbuck
part leg 4 of 2x4, length 30"
<<<<<<< HEAD
part rail 2 of 2x4, length 40"
=======
part rail 2 of 2x4, length 44"
>>>>>>> wider
\`\`\`

\`\`\`sawbuck
part leg 4 of 2x4, length 30"
part rail 2 of 2x4, length 44"
\`\`\``,
);
