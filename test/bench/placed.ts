/** A plan with so many placed pieces, made without chance: stands of six legs, rails and slats each, screwed together, in rows. */
export function placedPlan(pieces: number): string {
  const stands = Math.round(pieces / PER_STAND);
  const [across, deep] = [Math.min(6, stands), Math.ceil(stands / 6)];
  return `plan Rows of stands
  language 1
  units inches to 1/16"
measure height = 27-1/2"
part leg of 2x4, length height
part rail of 1x4, length 30"
part slat of 1x4, length 17-1/2"
assembly stand
  place leg upright, wide face front, on floor, at each corner of 30" x 16"
  place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
  place rail across, on edge, behind legs, flush with left of legs, flush with top of legs
  place slat front to back, flat, on legs, flush with front of rails, flush with left of legs, 4 across, 2" apart
  fasten rail face into leg face, 2 #8 x 1-5/8" at each crossing
  fasten slat face into rail edge, 1 #8 x 1-5/8" at each crossing
place stand on floor, 0" from left, 0" from front, ${across} across, 10" apart, ${deep} deep, 10" apart
`;
}

const PER_STAND = 10;
