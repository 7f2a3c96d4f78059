import { asSays, say } from "../plan";
import { type Fault, fittingScrews, kindWord, type Worked } from "../worked";
import type { Check, Finding } from "./check";
import { ofKind } from "./faults";
import { minusIn } from "./minus";
import { phrase } from "./phrases";
import { askedInstead } from "./shop-match";

type Unknown = Extract<Fault, { kind: "unknown-name" }>;

export const unknownName: Check = {
  code: "unknown-name",
  class: "error",
  title: "A name that nothing declares",
  page: `Every name must be declared by some line: a part by \`part\`, a measurement by \`measure\`, a board by \`stock\`, and so
on, in this plan, in its shop file or in a file it brings. A plural such as \`legs\` means all pieces of \`leg\`.

Where you use your own shop file in place of the plan's, a board or a sheet that yours has no such name for is looked up in the
plan's own, if that can be read. You are asked whether it is the one of yours that is just the same, or told which come
nearest and how they differ. Nothing is put in its place before you say so.

\`\`\`sawbuck
measure rim = 30"
part leg 4 of 2x4, length rimm
\`\`\`

\`\`\`sawbuck
measure rim = 30"
part leg 4 of 2x4, length rim
\`\`\``,
  templates: {
    near: "Nothing here is called “{name}”. Did you mean {near}?",
    unknown: "Nothing here is called “{name}”; {wants} is wanted.",
    which: "“{name}” does not say which. Write their size, like {size}, or the name of a fastener line.",
    minus:
      "Nothing here is called “{name}”: a hyphen belongs to a name. To take one away, put a blank on both sides of the minus: {better}.",
    "same-here": "Your shop has no “{name}”. In the plan's own shop file it is {what}. Is it {near} here?",
    "near-here":
      "Your shop has no “{name}”. In the plan's own shop file it is {what}. Nothing here is just that; nearest is {near}.",
    "none-here":
      "Your shop has no “{name}”. In the plan's own shop file it is {what}. Nothing here is of that size.",
    "wrong-kind": "“{name}” is {found}, but {wants} is wanted here.",
    swap: "Write “{to}”",
    fits: "Write “{to}”, which fits this joint",
    here: "Write “{to}” wherever “{name}” stands",
    instead: "Write “{name}” wherever “{old}” stands, though it differs: {differs}",
    "own-line": "Give your own shop file a line for “{name}”",
  },
  run: (worked) => {
    const asked = new Set<string>();
    return [
      ...ofKind(worked, "unknown-name")
        .filter(isNoOther(worked))
        .flatMap((fault) => askedInstead(fault, worked, asked) ?? [unknown(fault, worked)]),
      ...ofKind(worked, "wrong-kind").map((fault) => ({
        at: fault.at,
        about: [fault.name],
        says: "wrong-kind",
        slots: { name: fault.name, found: say(kindWord(fault.found)), wants: asSays(fault.wants) },
      })),
    ];
  },
};

function unknown(fault: Unknown, worked: Worked): Finding {
  const { at, name, near, wants } = fault;
  const about = [name];
  const minus = minusIn(fault, worked);
  if (minus) {
    const { better, hyphen } = minus;
    const edits = [{ file: at.file, start: hyphen, end: hyphen + 1, text: " - " }];
    const cures = [{ says: "swap", slots: { to: better }, edits }];
    return { at, about, says: "minus", slots: { name, better }, cures };
  }
  if (near.length === 0 && wants === "a fastener" && /^screws?$/.test(name)) return anyScrew(fault, worked);
  return {
    at,
    about,
    says: near.length > 0 ? "near" : "unknown",
    slots: {
      name,
      near: { any: near.map((n) => phrase("quoted", { name: n })) },
      wants: asSays(wants),
    },
    cures: near.map((to) => ({ says: "swap", slots: { to }, edits: [{ ...at, text: to }] })),
  };
}

/** Screws of no said size: the cure is one that goes through the wood of that joint as it should. */
function anyScrew({ at, name }: Unknown, worked: Worked): Finding {
  const joint = worked.joints.find(
    ({ entry, at: { file } }) =>
      file === at.file &&
      entry.kind === "fasten" &&
      entry.clauses.some((c) => c.kind === "driven" && c.fastener?.start === at.start),
  );
  const [best] = fittingScrews(joint, worked);
  const fits = best?.fit && !best.fit.trouble ? best : undefined;
  const to = fits && (fits.fastener?.name ?? fits.size.text);
  return {
    at,
    about: [name],
    says: "which",
    slots: { name, size: fits?.size.text ?? '#8 x 2"' },
    cures: to === undefined ? [] : [{ says: "fits", slots: { to }, edits: [{ ...at, text: to }] }],
  };
}

/** Whether a name is not that of a line whose own name is written in another form, which is a mistake told there. */
const isNoOther = ({ loaded }: Worked): ((fault: { readonly name: string }) => boolean) => {
  const meant = new Set(
    loaded.files.flatMap(({ tree }) =>
      tree.complaints.flatMap((c) => (c.code === "bad-name" ? [c.slots.better] : [])),
    ),
  );
  return ({ name }) => !meant.has(name);
};
