import { cite, coatings } from "../trade";
import { type Coating, type Rust, rustsOf } from "../worked";
import type { Check, Cure, Finding } from "./check";
import { phrase } from "./phrases";
import { kindSlot } from "./screw-words";
import { wetFill } from "./water-words";
import { edit } from "./writing";

const [COPPER, TANNIN] = coatings;

export const fastenerRusts: Check = {
  code: "fastener-rusts",
  class: "warning",
  title: "A fastener that rusts where it is",
  page: `Plain steel rusts away outdoors and in wet soil, and streaks the wood on its way. What keeps it is told on the fastener's
line: \`coating stainless\`, \`galvanized\`, \`coated\` or \`plain\`.

- Treated wood holds copper, which eats thin coatings: ${COPPER!.value} (${cite(COPPER!.source)}). \`galvanized\` is
  taken as hot-dip; a plated screw is \`coated\`.
- ${TANNIN!.key}: ${TANNIN!.value} (${cite(TANNIN!.source)}). Zinc there is a hint.
- \`coated\` says little: which woods a coating is for only its maker tells, so in these woods it is listed as not checked, and so
  is a fastener of which nothing says how it is coated.

Indoors nothing is said, but of what holds a box of wet soil.

\`\`\`sawbuck
plan Yard shelf
  outdoors
part post 2 of 4x4, length 30"
part rail 2 of 2x4, length 40"
fastener bench-3, #8 x 3" screw, coating plain
fasten rail face into post face, 2 bench-3 at each end
\`\`\`

\`\`\`sawbuck
plan Yard shelf
  outdoors
part post 2 of 4x4, length 30"
part rail 2 of 2x4, length 40"
fastener bench-3, #8 x 3" screw, coating coated
fasten rail face into post face, 2 bench-3 at each end
\`\`\``,
  templates: {
    outdoors: "{name} is plain steel: outdoors it rusts away{more}, and streaks the wood.",
    soil: "{name} is plain steel: in the {fill} of {box} it rusts away{more}.",
    stains: "{name} is galvanized: {wood} eats the zinc{more}, and stains black round it.",
    shop: "Take {name} in the same size: {coating}.",
    ask: "Ask for {a} {kind} of this size that is {coatings}.",
  },
  run: (worked) => rustsOf(worked).map(findingOf),
};

function findingOf(rust: Rust): Finding {
  const { fastener, is, joints, box, wood } = rust;
  const more = joints.length - 1;
  return {
    at: joints[0]!.sizeAt ?? joints[0]!.at,
    ...(is === "stains" && { class: "hint" as const }),
    about: [...new Set([fastener.name, ...joints.flatMap((j) => j.parts), ...(box ? [box.name] : [])])],
    says: is === "stains" ? is : box ? "soil" : "outdoors",
    slots: {
      name: fastener.name,
      wood,
      ...(box && { box: box.name, fill: wetFill(box) }),
      more: more > 0 ? phrase("and in more lines", { n: more }) : "",
    },
    cures: [cureOf(rust)],
  };
}

const COATING = {
  coated: "coated for outdoors",
  galvanized: "hot-dip galvanized",
  stainless: "stainless",
} as const satisfies Readonly<Record<Coating, string>>;

function cureOf({ joints, instead, lasts }: Rust): Cure {
  if (!instead) {
    const kind = kindSlot(joints[0]!);
    return {
      says: "ask",
      slots: { kind, coatings: { any: lasts.map((c) => phrase(COATING[c])) } },
      edits: [],
    };
  }
  const coating = phrase(COATING[instead.coating as Coating]);
  const edits = joints.flatMap((j) => (j.sizeAt ? [edit(j.sizeAt, instead.name)] : []));
  return { says: "shop", slots: { name: instead.name, coating }, edits };
}
