/** Whether a thing is so tall that it must be anchored, and whether its builder digs. */
import { HAIRLINE } from "../solid/contact";
import type { Worked } from "./work";

/** mm: over 5 ft, or over 4 times its base, a thing is anchored always (common practice). */
const TALL = 1524;
const TIMES_BASE = 4;

/** Higher than 5 ft, or than 4 times the narrower way of what it stands on; a gate or a door hangs. */
export function isTall({ space, settings }: Worked): boolean {
  if (!space.bounds || HANGS.test(settings.title)) return false;
  const feet = space.pieces.filter((p) => p.bounds.least[2] <= HAIRLINE);
  const base = ([0, 1] as const).map(
    (k) => Math.max(...feet.map((p) => p.bounds.most[k])) - Math.min(...feet.map((p) => p.bounds.least[k])),
  );
  const high = space.bounds.most[2];
  return high > TALL || (feet.length > 0 && high > TIMES_BASE * Math.min(...base));
}

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
  const posts = [...parts.keys()].some((name) => POST.test(name));
  return posts || isTall(worked) || said.some((text) => DIG.test(text));
}

const POST = /\b(post|stake|footing|spike)s?\b/;
const DIG = /\b(dig|digs|digging|bury|buried|footings?|stakes?|post-?holes?)\b/i;
