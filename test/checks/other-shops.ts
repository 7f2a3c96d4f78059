/** Plans read with a shop file of the reader's own, which has no board or sheet of a name that the plan's own has. */
import type { Case } from "./cases";

const THEIRS = `measure thick = 5/8"
stock heart-2x4 of 2x4, species western-redcedar, heartwood, sold 8' $13.20
stock 45x45, species spruce-pine-fir
stock slat of 1x4, measured thick x 3-7/16", rough, untreated
stock edge, actual 3-15/16" x 7-7/8", treated
stock old-door of 1x6, painted
sheet ply, plywood 23/32", species douglas-fir, grain along width
sheet back, thickness 6.5mm, no grain
fastener deck-2, #8 x 2" screw
`;

const parts = (...names: readonly string[]): string =>
  ["shop theirs.sawbuck", ...names.map((name, i) => `part p-${i + 1} 2 of ${name}, length 20"`)].join("\n");

const read = (text: string, mine: string): Case => ({
  text,
  files: { "theirs.sawbuck": THEIRS, "mine.sawbuck": mine },
  shop: "mine.sawbuck",
});

const part = (name: string): string => `${parts(name).replaceAll(/, length.*/g, "")}, length 20", width 10"`;

export const OTHER_SHOPS: readonly Case[] = [
  // Just the same, once, and twice.
  read(
    `${parts("heart-2x4")}\naccept never-used on heart-2x4 because it is here`,
    "stock cedar-2x4 of 2x4, species western-redcedar, heartwood, sold 8' $9\nstock fir of 2x4, species douglas-fir",
  ),
  read(
    parts("edge"),
    'stock curb, actual 3-15/16" x 7-7/8", treated\nstock border, measured 3-15/16" x 7-7/8", treated',
  ),
  // The nearest, with all that differs.
  read(
    `${parts("heart-2x4")}\naccept never-used on heart-2x4 because it is here`,
    `stock fir-2x4 of 2x4, species douglas-fir, moisture 19%
stock cedar of 2x4, species western-redcedar, treated
stock any-2x4 of 2x4
stock rough-2x4 of 2x4, measured 1-3/4" x 3-3/4", species western-redcedar, heartwood, rough
stock 2x6, species western-redcedar, heartwood`,
  ),
  read(parts("slat"), 'stock fence of 1x4, actual 5/8" x 3-1/2"\nstock 1x4, painted'),
  read(parts("old-door"), "stock 1x6"),
  read(part("ply"), 'sheet birch, plywood 23/32", species birch\nsheet boards, thickness 3/4", no grain'),
  read(part("back"), 'sheet thin, plywood 6.5mm\nsheet thinner, thickness 1/4", grain along width'),
  read(parts("edge"), 'stock curb, actual 3-15/16" x 7-7/8"'),
  // None of that size.
  read(parts("edge"), "stock 2x4"),
  // A name that means no board there, or nothing at all, is told as ever.
  read(parts("deck-2", "pine-2x4"), "stock pine-1x4 of 1x4"),
];
