/** Plans whose wood cannot be cut, does not suffice, costs more than it must, or is left over. */
import type { Case } from "./cases";

const boards = (of: string, parts: string): string => `stock rail-wood of 2x4, ${of}\n${parts}`;
const sheets = (of: string, size: string, more = ""): string =>
  `sheet cart-ply, plywood 1/2", ${of}${more}\npart shelf 1 of cart-ply, ${size}`;

/** Salvage whose length would do, but which cannot be cut like that. */
const TIGHT = boards('on hand 3 of 28"', 'part rail 8 of rail-wood, length 9-1/2"');
const MIXED = boards(
  "sold 6' $3.10, on hand 2 of 100\"",
  'part rail 3 of rail-wood, length 80"\npart peg 2 of rail-wood, length 12"',
);

export const STOCK_CASES: Readonly<Record<string, readonly Case[]>> = {
  "cannot-be-cut": [
    "plan A rail\n  UNITS\n  kerf 12'\nstock 2x4, sold 8' $4.20\nstock 1x4, sold 10' $6\npart rail 2 of 2x4, length 60\"\npart slat 1 of 1x4, length 30\"",
    `plan A shelf\n  UNITS\n  kerf 5'\n${sheets('sold 48" x 48" $30', 'length 40", width 12"')}`,
    boards('sold 1/16" $0.10', 'part shim 2 of rail-wood, length 1/32"'),
    boards("sold 8', end trim 9'", 'part rail 2 of rail-wood, length 60"'),
    boards('on hand 1 of 40" bad 0 to 40"', 'part rail 1 of rail-wood, length 20"'),
    sheets('on hand 1 of 20" x 60", 1 of 34" x 40"', 'length 48", width 30"'),
    sheets('sold 24" x 48" $18', 'length 30", width 50"', ", no grain"),
  ],
  "not-enough-on-hand": [
    boards('on hand 2 of 28"', 'part rail 2 of rail-wood, length 20"\npart peg 4 of rail-wood, length 12"'),
    TIGHT,
    { text: TIGHT, effort: 1_000_000_000 },
    MIXED,
    boards(
      "sold 6' $3.10, on hand 2 of 100\"",
      'part rail 1 of rail-wood, length 80"\npart post 1 of rail-wood, length 100"\npart stay 1 of rail-wood, length 75"',
    ),
    boards("sold 2' $1.10, on hand 2 of 60\"", 'part rail 3 of rail-wood, length 31"'),
    `plan Two shelves\n  UNITS\n  make 2\n  spare 1 in 4\n${boards('on hand 1 of 60", 1 of 30" bad 10" to 12"', 'part rail 1 of rail-wood, length 20"')}`,
    'sheet cart-ply, plywood 1/2", on hand 1 of 30" x 40"\npart shelf 3 of cart-ply, length 25", width 15"',
    'sheet cart-ply, plywood 1/2", sold 24" x 24" $9, on hand 1 of 30" x 40"\npart shelf 2 of cart-ply, length 38", width 20"',
  ],
  "cheaper-with": [
    boards("sold 8' $28", 'part post 2 of rail-wood, length 68"'),
    boards("sold 8' $28, 12' $40", 'part post 1 of rail-wood, length 68"'),
    { text: boards("sold 8' $28", 'part post 1 of rail-wood, length 68"'), effort: 1_000_000_000 },
    boards("sold 8' $14", 'part post 1 of rail-wood, length 20"\npart rail 3 of rail-wood, length 90"'),
    "plan A rail\n  lumber planed metric\n  UNITS\nstock 45x95, sold 3m €18\npart rail 1 of 45x95, length 2000mm",
    sheets('sold 48" x 96" $52', 'length 40", width 24"'),
    sheets('sold 48" x 96" $52', 'length 40", width 24"', ", no grain"),
  ],
  "offcut-wasted": [
    boards("sold 6' $21", 'part step 1 of rail-wood, length 32"'),
    { text: boards("sold 6' $21", 'part step 1 of rail-wood, length 32"'), effort: 1_000_000_000 },
    sheets('sold 48" x 96" $52', 'length 60", width 20"'),
    sheets('sold 48" x 96" $52', 'length 45", width 45"'),
    sheets('sold 60" x 60" $44', 'length 25", width 55"'),
  ],
  "over-budget": [
    {
      text: "plan A rail\n  UNITS\n  budget $5\nstock 2x4, sold 8' $4.20\npart rail 2 of 2x4, length 60\"",
      effort: 1_000_000_000,
    },
    {
      text: 'plan A rack\n  UNITS\n  budget $5\nstock 2x4, sold 6\' $3.15, 8\' $4.20, 10\' $5.40\npart rail 7 of 2x4, length 41"\npart post 9 of 2x4, length 33-1/2"\npart slat 11 of 2x4, length 22-3/4"\npart peg 5 of 2x4, length 17-1/8"',
      effort: 1,
    },
    {
      text: "plan A rail\n  UNITS\n  budget $5\nfinish brew, tin of 1 qt, covers 250 sqft per gal\nstock 2x4, sold 8' $4.20\npart rail 2 of 2x4, length 60\"\ncoat rail with brew",
      effort: 1_000_000_000,
    },
    {
      text: 'plan A rack\n  UNITS\n  budget $5\nfinish brew, tin of 1 qt, covers 250 sqft per gal\nstock 2x4, sold 6\' $3.15, 8\' $4.20, 10\' $5.40\npart rail 7 of 2x4, length 41"\npart post 9 of 2x4, length 33-1/2"\npart slat 11 of 2x4, length 22-3/4"\npart peg 5 of 2x4, length 17-1/8"\ncoat rail with brew',
      effort: 1,
    },
    "plan A rail\n  UNITS\n  budget $5\nfinish brew, tin of 1 qt $18, covers 250 sqft per gal\nstock 2x4, on hand 2 of 8'\npart rail 2 of 2x4, length 60\"\ncoat rail with brew",
  ],
};
