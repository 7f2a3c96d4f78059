import { ifKnown } from "../plan";
import type { Part, Ring, Worked } from "../worked";
import type { Check, Finding } from "./check";
import { isPlaced } from "./placed";
import { counted } from "./telling";

export const countDiffers: Check = {
  code: "count-differs",
  class: "error",
  title: "Two counts that disagree",
  page: `A count that is typed and also follows from something else is compared. A ring of six sides takes six pieces; left and
right pieces add up to the whole; pairs are an even number. Where pieces are placed, a typed number is
compared with their places instead (\`placed-never-cut\`, \`cut-never-placed\`).

\`\`\`sawbuck
part board 5 of 1x4, length 12", ends mitered 30°
ring seat = 6 board
\`\`\`

\`\`\`sawbuck
part board 6 of 1x4, length 12", ends mitered 30°
ring seat = 6 board
\`\`\``,
  templates: {
    ring: counted(
      "rings",
      "The line says {stated} of “{part}”, but {rings} takes {wanted}.",
      "The line says {stated} of “{part}”, but {rings} take {wanted}.",
    ),
    hands: "The line says {stated} of “{part}”, but {left} left and {right} right make {sum}.",
    pairs: "“{part}” is cut in pairs, and {stated} is not an even number.",
    use: "It is counted here.",
    write: "Write {to}",
  },
  run: (worked) => {
    const uses = usesInRings(worked);
    return [...worked.parts.values()].flatMap((part) => [
      ...byRings(part, uses.get(part.name) ?? [], worked),
      ...byHands(part),
    ]);
  },
};

interface Use {
  readonly ring: Ring;
  readonly m: Ring["members"][number];
}

/** Where each part stands in a ring. */
function usesInRings({ rings }: Worked): ReadonlyMap<string, readonly Use[]> {
  const uses = new Map<string, Use[]>();
  for (const ring of rings) {
    for (const m of ring.members) {
      const list = uses.get(m.part);
      if (list) list.push({ ring, m });
      else uses.set(m.part, [{ ring, m }]);
    }
  }
  return uses;
}

function byRings(part: Part, uses: readonly Use[], worked: Worked): Finding[] {
  const wanted = uses.reduce((sum, u) => sum + u.m.count, 0);
  if (part.statedCount === undefined || uses.length === 0 || wanted === part.statedCount) return [];
  const rings = [...new Set(uses.map((u) => u.ring.name))];
  if ([part.name, ...rings].some((name) => isPlaced(name, worked))) return [];
  // More pieces than the rings take may be used elsewhere; fewer can never do.
  if (part.statedCount > wanted && inSomeBox(part, worked)) return [];
  const { entry } = part.declared;
  const count = entry.kind === "part" ? entry.count : undefined;
  const at = count ? { ...part.declared.at, start: count.start, end: count.end } : part.declared.at;
  const literal = count?.kind === "literal";
  return [
    {
      at,
      about: [part.name, ...rings],
      says: "ring",
      slots: {
        stated: part.statedCount,
        part: part.name,
        rings: { all: rings },
        wanted,
      },
      related: uses.map((u) => ({ at: u.m.at, says: "use", slots: {} })),
      cures: literal
        ? [{ says: "write", slots: { to: wanted }, edits: [{ ...at, text: String(wanted) }] }]
        : [],
    },
  ];
}

/** Whether some pieces may be walls or bottom of a box, besides those in rings. */
const inSomeBox = (part: Part, { boxes }: Worked): boolean =>
  boxes.some((b) =>
    b.declared.entry.clauses.some(
      (c) => (c.kind === "walls" || c.kind === "floor") && c.things.some((t) => t.name.text === part.name),
    ),
  );

function byHands(part: Part): Finding[] {
  const { hands, statedCount } = part;
  const count = statedCount ?? ifKnown(part.count);
  if (!hands || count === undefined) return [];
  const sum = hands.left + hands.right;
  if (part.pairs) {
    return [{ at: hands.at, about: [part.name], says: "pairs", slots: { part: part.name, stated: count } }];
  }
  if (sum === count) return [];
  return [
    {
      at: hands.at,
      about: [part.name],
      says: "hands",
      slots: { stated: count, part: part.name, left: hands.left, right: hands.right, sum },
    },
  ];
}
