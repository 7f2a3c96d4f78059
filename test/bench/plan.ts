/** A plan of so many lines, made without chance: measures, stock, parts, places and joints, in the shares of a real one, with as many placed pieces as lines. */
export function planOf(lines: number): string {
  const head = `plan A long plan
  language 1
  units inches to 1/16"
  outdoors
  floor limit 57 psf by the yard's own builder
  budget $4000
stock 1x4, species western-redcedar, sold 6' $5.20, 8' $6.95, 10' $8.70
stock 1x6, species western-redcedar, sold 6' $7.90, 8' $10.55, 10' $13.20
stock 2x4, sold 8' $4.40, 10' $5.85, 12' $7.35, on hand 3 of 41", 1 of 8' bad 30" to 36"
fastener deck-mid, #8 x 1-5/8" screw, box of 100 $8.20
tools
  kerf 1/8"
  miters to 47°
`.split("\n");
  head.pop();
  const text = [...head];
  for (let i = 0; text.length < lines; i++) text.push(...unit(i));
  return `${text.slice(0, lines).join("\n")}\n`;
}

/** Thirteen lines about one small thing of thirteen pieces: a slatted stand, placed beside the one before. */
function unit(i: number): string[] {
  const height = 20 + (i % 13);
  const width = 30 + ((i * 7) % 31);
  return [
    `# thing ${i}`,
    `measure height-${i} = ${height}-1/2", at least 12", at most 48"`,
    `measure width-${i} = ${width}"`,
    `part leg-${i} of 2x4, length height-${i} - thickness of 1x4`,
    `part side-${i} of 1x6, length overall width of leg-${i}`,
    `part slat-${i} of 1x4, length overall depth of leg-${i} + 2 * thickness of side-${i}`,
    `place leg-${i} upright, wide face front, on floor, ${80 * i}" from left, at each corner of width-${i} x 16"`,
    `place side-${i} across, on edge, in front of leg-${i}, flush with left of leg-${i}, flush with top of leg-${i}`,
    `place side-${i} across, on edge, behind leg-${i}, flush with left of leg-${i}, flush with top of leg-${i}`,
    `place slat-${i} front to back, flat, on leg-${i}, flush with front of side-${i}, 7 across, 1/2" apart, centered left to right on leg-${i}`,
    `fasten side-${i} into leg-${i}, 2 #8 x 1-5/8" at each crossing, pilot 1/8"`,
    `fasten slat-${i} into side-${i}, 1 #8 x 2" at each crossing, pilot 1/8"`,
    `must height-${i} at most 48" because it is reached from a stool`,
  ];
}
