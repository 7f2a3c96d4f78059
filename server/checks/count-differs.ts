import { ifKnown } from "../plan";
import type { Part, Worked } from "../worked";
import type { Check, Finding } from "./check";

export const countDiffers: Check = {
  code: "count-differs",
  class: "error",
  title: "Two counts that disagree",
  page: `A count that is typed and also follows from something else is compared. A ring of six sides takes six pieces; left and
right pieces add up to the whole; pairs are an even number.

\`\`\`sawbuck
part board 5 of 1x4, length 12", ends mitered 30°
ring seat = 6 board
\`\`\`

\`\`\`sawbuck
part board 6 of 1x4, length 12", ends mitered 30°
ring seat = 6 board
\`\`\``,
  templates: {
    ring: "The line says {stated} of “{part}”, but {rings} {takes} {wanted}.",
    hands: "The line says {stated} of “{part}”, but {left} left and {right} right make {sum}.",
    pairs: "“{part}” is cut in pairs, and {stated} is not an even number.",
    use: "It is counted here.",
    write: "Write {to}",
  },
  run: (worked) => [...worked.parts.values()].flatMap((part) => [...byRings(part, worked), ...byHands(part)]),
};

function byRings(part: Part, worked: Worked): Finding[] {
  const uses = worked.rings.flatMap((r) =>
    r.members.filter((m) => m.part === part.name).map((m) => ({ ring: r, m })),
  );
  const wanted = uses.reduce((sum, u) => sum + u.m.count, 0);
  if (part.statedCount === undefined || uses.length === 0 || wanted === part.statedCount) return [];
  // More pieces than the rings take may be used elsewhere; fewer can never do.
  if (part.statedCount > wanted && usedElsewhere(part, worked)) return [];
  const rings = [...new Set(uses.map((u) => u.ring.name))];
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
        rings: rings.join(" and "),
        takes: rings.length > 1 ? "take" : "takes",
        wanted,
      },
      related: uses.map((u) => ({ at: u.m.at, says: "use", slots: {} })),
      cures: literal
        ? [{ says: "write", slots: { to: wanted }, edits: [{ ...at, text: String(wanted) }] }]
        : [],
    },
  ];
}

/** Whether a joint or a box speaks of the part as well: then some of its pieces may stand outside the ring. */
function usedElsewhere(part: Part, { boxes }: Worked): boolean {
  return boxes.some((b) =>
    b.declared.entry.clauses.some(
      (c) => (c.kind === "walls" || c.kind === "floor") && c.things.some((t) => t.name.text === part.name),
    ),
  );
}

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
