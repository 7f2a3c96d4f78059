import { asSays, nameIn } from "../plan";
import type { Fault, Impossible } from "../worked";
import type { Check } from "./check";
import { ofKind } from "./faults";
import { textAt } from "./writing";

export const impossibleValue: Check = {
  code: "impossible-value",
  class: "error",
  title: "A value that cannot be",
  page: `A piece of no length cannot be cut, nothing can be divided by zero, and an end cut is less than 90° off square. Where a
value comes out like that, the line it stands on is the one to look at, or one of the values it follows from.

\`\`\`sawbuck
measure rim = 1/2"
part leg 4 of 2x4, length rim - thickness of 1x4
\`\`\`

\`\`\`sawbuck
measure rim = 30"
part leg 4 of 2x4, length rim - thickness of 1x4
\`\`\``,
  templates: {
    "by zero": "“{here}” divides by zero, and nothing comes out of that.",
    "no value": "“{here}” has no value.",
    nothing: "There would be nothing of it: {what} comes out as {found}.",
    "less than nothing": "There would be less than nothing of it: {what} comes out as {found}.",
    angle: "An end cut is from 0° to less than 90° off square; this one is {found}.",
    "whole number": "A whole number from 1 up is wanted for {what}, not {found}.",
    "not a number": "“{what}” is a name and no value, so it cannot be reckoned with.",
    "too long a chain": "Too many values lean on one another here. Give one of them a value of its own.",
    "too large": "“{here}” comes to far too large a number.",
    "too few values": "The values for “{what}” should be {most} in number, not {found}.",
    overfilled: "{what} would be filled above its rim: {found}, where {most} is the most.",
    underfilled: "{what} would be filled {found} deep, which is less than nothing.",
    "underfilled-rim": "{what} would be filled to {found} below its rim, but it is only {most} deep.",
    "no inside": "{what} has no inside of that size.",
    uncuttable: "{what} cannot be cut with these ends.",
    "too deep": "This {what} goes in {found}, and the piece has only {most} there: it would be cut in two.",
    "too far along": "This {what} ends {found} along the piece, which is only {most} long.",
    "too long together": "These two {what}es together take {found} of the length, which is only {most}.",
    lean: "What is placed leans to the left, the right, the front or the back, and a ring also in or out; “{here}” says none of these.",
    "wide face":
      "The wide face of an upright board looks to the front, the back, the left or the right, never to the {what}.",
  },
  run: (worked) =>
    ofKind(worked, "impossible").map((fault) => ({
      at: fault.at,
      about: [nameIn(fault.what)],
      says: belowRim(fault) ? "underfilled-rim" : fault.why,
      slots: {
        what: SAID.has(fault.why) ? asSays(fault.what) : fault.what,
        found: fault.found ?? "",
        most: fault.most ?? "",
        here: textAt(worked, fault.at),
      },
    })),
};

/** What comes out wrong is told in words here; elsewhere it is a name of the plan. */
const SAID: ReadonlySet<Impossible> = new Set(["nothing", "less than nothing", "whole number"]);

/** A depth below the rim, and not one from the bottom up, which would be less than nothing. */
const belowRim = ({ why, found }: Extract<Fault, { kind: "impossible" }>): boolean =>
  why === "underfilled" && found !== undefined && found.approx >= 0;
