import { syntaxCheck } from "./syntax";

export const badNumber = syntaxCheck(
  "bad-number",
  "A number that cannot be read",
  `Numbers have a point, never a comma, since a comma starts the next thing to say. Inches and feet stand right behind their
number: \`36"\`, \`6' 2-1/2"\`, \`36in\`. A screw says how thick and how long: \`#8 x 1-1/4"\`.

\`\`\`sawbuck
plan A bench
  units millimetres
part leg 4 of 2x4, length 1,5 m
\`\`\`

\`\`\`sawbuck
plan A bench
  units millimetres
part leg 4 of 2x4, length 1.5 m
\`\`\``,
);
