/** Whether a thing is so tall that it must be anchored, whether it hangs, and whether its builder digs. */
import { HAIRLINE } from "../solid/contact";
import type { Piece } from "./pieces";
import type { Worked } from "./work";

/** mm: over 5 ft, or over 4 times its base, a thing is anchored always (common practice). */
const TALL = 1524;
const TIMES_BASE = 4;

/** Higher than 5 ft, or than 4 times the narrower way of what it stands on; a gate or a door hangs, and so does what has no foot on the floor. */
export function isTall({ space, settings }: Worked): boolean {
  const feet = feetOf(space);
  if (!space.bounds || feet.length === 0 || HANGS.test(settings.title)) return false;
  const base = ([0, 1] as const).map(
    (k) => Math.max(...feet.map((p) => p.bounds.most[k])) - Math.min(...feet.map((p) => p.bounds.least[k])),
  );
  const high = space.bounds.most[2];
  return high > TALL || high > TIMES_BASE * Math.min(...base);
}

/** Placed, and no foot of it on the floor: it is fixed to what stands already. A gate or a door has hinges of its own. */
export const isHung = ({ space, settings }: Worked): boolean =>
  space.pieces.length > 0 && feetOf(space).length === 0 && !HANGS.test(settings.title);

const feetOf = ({ pieces }: Worked["space"]): readonly Piece[] =>
  pieces.filter((p) => p.bounds.least[2] <= HAIRLINE);

const HANGS = /\b(gate|door)\b/i;

/** Outdoors on the ground: what goes below it, what is anchored, posts, and what the plan's own words say is dug. */
export function digs(worked: Worked): boolean {
  const { settings, space, parts, loaded } = worked;
  if ((space.bounds?.least[2] ?? 0) < -HAIRLINE) return true;
  const onSlab = settings.floorLimit !== undefined || settings.footLimit !== undefined;
  if (settings.place !== "outdoors" || onSlab) return false;
  const said = loaded.files[0]!.tree.entries.flatMap((e) =>
    e.kind === "step" || e.kind === "note" ? [e.title.text] : [],
  );
  // A post that is placed goes no deeper than its place says.
  const placed = new Set(space.pieces.map((p) => p.part));
  const posts = [...parts.keys()].some((name) => POST.test(name) && !placed.has(name));
  return posts || isTall(worked) || said.some((text) => DIG.test(text));
}

const POST = /\b(post|stake|footing|spike)s?\b/;
const DIG = /\b(dig|digs|digging|bury|buried|footings?|stakes?|post-?holes?)\b/i;
