/** Plans with mistakes of meaning: names, values, counts, settings, files. */
import type { Case } from "./cases";
import { OTHER_SHOPS } from "./other-shops";

const leg = (rest: string): string => `part leg 4 of 2x4${rest}`;
const rim = (value: string): string => `measure rim = ${value}\n${leg(", length rim")}`;
const long = Array.from({ length: 520 }, (_, i) => `measure step-${i} = step-${i + 1} + 1"`).join("\n");
const many = Object.fromEntries(
  Array.from({ length: 52 }, (_, i) => [`yard-${i}.sawbuck`, "# nothing yet\n"]),
);

export const MEANING_CASES: Readonly<Record<string, readonly Case[]>> = {
  "cannot-accept": [
    `${leg(', length 20" / 3')}\naccept off-the-tap on leg because nobody sees it`,
    `${leg(', length 28"')}\naccept ring-opn on leg because nobody sees it`,
    `${leg(', length 28"')}\naccept leaning-fence because nobody sees it`,
    `${leg(", length rimm")}\naccept unknown-name because it is clear what is meant`,
    `${leg(', length 20" / 3')}\naccept off-the-tape on leg`,
    `${leg(', length 28"')}\naccept off-the-tape on leg because nobody sees it`,
    `${leg(', length 28"')}\naccept over-budget because the class raised the rest`,
  ],
  "count-differs": [
    'part board 5 of 1x4, length 12", ends mitered 30°\nring seat = 6 board',
    'part board 5 of 1x4, length 12", ends mitered 30°\nring seat = 6 board\nring rim = 6 board',
    'part rail 4 of 1x4, length 12", 3 left and 2 right',
    'part rail 5 of 1x4, length 12", in pairs',
  ],
  "count-missing": ['part leg of 2x4, length 28"'],
  "declared-twice": [
    `${leg(', length 28"')}\npart leg 2 of 4x4, length 30"`,
    'measure rim = 30"\npart rim 4 of 2x4, length rim',
    {
      text: `shop hillside-shop.sawbuck\nstock 2x4, sold 10' $5.60\n${leg(', length 28"')}`,
      files: { "hillside-shop.sawbuck": "stock 2x4, sold 8' $4.20" },
    },
    `bring yard.sawbuck\n${leg(", length rim")}\nenclosed yard.sawbuck\nmeasure rim = 28"\nenclosed yard.sawbuck\nmeasure rim = 30"`,
  ],
  "file-not-found": [`shop hilltop-shop.sawbuck\n${leg(', length 28"')}`],
  "impossible-value": [
    rim('30" / (2 - 2)'),
    rim('30" * tan(90°)'),
    leg(', length 0"'),
    leg(', length 1/2" - thickness of 1x4'),
    leg(', length 28", ends mitered 95°'),
    leg(', length 28", notch 1" x 3-1/2" at left end'),
    leg(', length 28", dado 3/4" x 1/2" at 27-1/2" from left'),
    leg(', length 28", notch 15" x 1" at both ends'),
    'part leg 2.5 of 2x4, length 28"',
    rim("2 * 2x4"),
    {
      text: `${long}\nmeasure step-520 = 1"\n${leg(", length step-0")}`,
      shown: "520 measures, each the next and 1 inch",
    },
    rim(`30" * ${Array.from({ length: 8 }, () => "99999").join(" * ")}`),
    rim('diagonal(30")'),
    'box trough, inside 40" x 12" x 10", filled with soil 11" deep, weighs 20 lb empty',
    'box trough, inside 40" x 12" x 10", filled with soil to 11" below rim, weighs 20 lb empty',
    'box trough, inside 40" x 12" x 10", filled with soil 3" - 5" deep, weighs 20 lb empty',
  ],
  "in-a-circle": [
    'measure rim = leg-height + 1"\nmeasure leg-height = rim - 1"\npart leg 4 of 2x4, length leg-height',
    'measure a = b + 1"\nmeasure b = c + 1"\nmeasure c = a + 1"\npart leg 4 of 2x4, length a',
    {
      text: `bring yard-measures.sawbuck\n${leg(', length 28"')}`,
      files: {
        "yard-measures.sawbuck": "bring shed-measures.sawbuck",
        "shed-measures.sawbuck": "bring yard-measures.sawbuck",
      },
    },
  ],
  "limit-without-source": [
    "plan A trough\n  UNITS\n  floor limit 58 psf",
    "plan A trough\n  UNITS\n  foot limit 412 lb",
    "plan A trough\n  UNITS\n  floor limit 58 psf by the porch's builder, of which people 40 psf",
    "plan A trough\n  UNITS\n  floor limit 2.8 kPa",
  ],
  "measure-out-of-bounds": [
    `measure rim = 36", at least 24", at most 32"\n${leg(", length rim")}`,
    `measure rim = 510mm, at least 2'\n${leg(", length rim")}`,
    `measure slope = 31°, at most 30°\nmust slope more than 8°`,
  ],
  "missing-measure": [`measure wall\n${leg(', length wall - 1"')}`],
  "must-broken": [
    `${rim('36"')}\nmust rim at most 32" because small children must reach the soil`,
    `${rim('20"')}\nmust rim >= 24"`,
    `${rim('20"')}\nmust count of leg exactly 6 because the ground is soft`,
  ],
  "never-used": [
    `measure rim = 30"\n${leg(', length 28"')}`,
    `stock 1x4, sold 8' $4.20\nfastener deck-2, #8 x 2" screw\n${leg(', length 28"')}`,
  ],
  "newer-language": ["plan A bench\n  UNITS\n  language 2"],
  "off-the-tape": [
    leg(', length 20" / 3'),
    leg(", length 300.5mm"),
    'part slat 3 of 1x6, length 20", width 5" / 3',
    leg(', length (20" + 1") / 13'),
    leg(', length diagonal(5", 5")'),
  ],
  "said-twice": [
    leg(', length 28", length 30"'),
    'plan A bench\n  UNITS\n  outdoors\n  indoors\n  kerf 1/8"\n  kerf 3/32"\nplan Another bench',
    `tools\n  miters to 47°\ntools\n  miters to 60°\n${leg(', length 28"')}`,
    'fill mix, saturated 75 lb/cuft, saturated 80 lb/cuft\nbox trough, inside 40" x 12" x 10", filled with mix',
    leg(', length 28", ends mitered 45°, ends square'),
    `measure rim = 30", at most 32", at most 34"\n${leg(", length rim")}`,
  ],
  "size-missing": [
    leg(""),
    'sheet shelf-ply, plywood 1/2"\npart shelf 2 of shelf-ply, length 30"',
    'sheet shelf-ply, sold 48" x 96" $38\npart shelf 2 of shelf-ply, length 30", width 10"',
    'stock old-slat, on hand 6 of 41"\npart slat 6 of old-slat, length 30"',
    'box trough, inside 40" wide, 12" deep, filled with soil',
  ],
  "too-many": [
    'part leg 40000 of 2x4, length 28"',
    'part board 240 of 1x4, length 12", ends mitered 0.75°\nring seat = 240 board',
    'plan Many benches\n  UNITS\n  make 900\npart slat 30 of 1x4, length 20"',
    {
      text: Object.keys(many)
        .map((f) => `bring ${f}`)
        .join("\n"),
      files: many,
      shown: "52 bring lines",
    },
  ],
  "unit-mismatch": [
    rim('30" + 12 lb'),
    rim('30" * sin(30)'),
    rim('30" - 12 lb'),
    rim("€4 * $3"),
    rim('40" * 3"'),
    rim('$4 * $3 / 1"'),
    rim("€4 / $3"),
    `${rim('30"')}\nmust rim at most 12 lb`,
    rim('round 30" to 2 lb'),
    rim('diagonal(30", 2 lb)'),
    rim('28 - 1/2"'),
    `${rim('30"')}\nmust rim at most 32`,
    `measure rim = 30", at least 24\n${leg(", length rim")}`,
    rim('28" + 2'),
    `${rim("30")}\npart rail 2 of 2x4, length rim`,
    `${rim("30")}\nmust count of leg at most rim`,
    leg(", length 45°"),
    leg(', length 28", ends mitered 45'),
    leg(", length 28"),
    leg(", length 28-1/2"),
    "plan A bench\n  UNITS\n  budget 120",
    "plan A bench\n  UNITS\n  floor limit 500 lb by the porch's builder",
  ],
  "unknown-name": [
    `measure rim = 30"\n${leg(", length rimm")}`,
    `measure rim = 30"\nmeasure rin = 31"\n${leg(", length rip")}\nmust rin at least rim`,
    leg(", length height-of-the-shed"),
    `measure a = 3"\npart leg 4 of 2x4, length a\npart rail 2 of 2x4, length b`,
    `${leg(', length 28"')}\nassembly gate\n  fasten leg into leggs, 2 #8 x 1-5/8" at each end`,
    `measure rim = 30"\nmeasure overhang = 1"\n${leg(", length rim-overhang")}`,
    `measure rim = 30"\n${leg(', length rim-1-1/2"')}`,
    `${leg(', length 28"')}\nmeasure rim = leg\nmust rim at least 20"`,
    'part leg 4 of 2x4, length 28"\npart slat 2 of 1x4, length 20"\nfasten slat face into leg face, 2 screws at each end',
    'part leg 4 of 2x4, length 28"\npart slat 2 of 1x4, length 20"\nfastener long-one, #8 x 2" screw\nfasten slat face into leg face, 1 screw at each end\nfasten leg face into leg edge, long-one',
    'part slat 2 of 1x4, length 20"\nfasten slat face into leg face, 2 screws at each end',
    'stock 1x4, species pine, sold 8\' $6\nstock 1x6, species cedar\npart slat 4 of 1x4, length 20"\npart board of 1x6, length 20"',
    "stock 1x4, species wetsern-redcedar, sold 8' $6\npart slat 4 of 1x4, length 20\"",
    ...OTHER_SHOPS,
  ],
  "unknown-section": ['part leg 4 of 2x7, length 28"'],
};
