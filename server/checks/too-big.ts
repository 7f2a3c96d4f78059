import { syntaxCheck } from "./syntax";

export const tooBig = syntaxCheck(
  "too-big",
  "A file too big to be a plan",
  `Plans are read while they are typed, so there is a limit to their size: a million characters, some twenty thousand lines. Put
parts of a very large plan into files of their own and \`bring\` them.`,
);
