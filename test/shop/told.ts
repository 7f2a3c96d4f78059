/** The derived tools, bits, weights, cautions and care of a plan as plain text, for snapshots. */
import { ifKnown } from "../../server/plan";
import { type Display, lengthInFull, type Quantity, quantityText } from "../../server/units";
import {
  aisleFacts,
  bitsNeeded,
  careOf,
  cautionsOf,
  toolsNeeded,
  type Worked,
  weightOf,
} from "../../server/worked";

type Told = readonly (string | false | undefined)[];
const line = (...parts: Told): string => parts.filter(Boolean).join(", ");

export function told(worked: Worked): string {
  const sections: [string, readonly string[]][] = [
    ["Tools", toolLines(worked)],
    ["Bits", bitLines(worked)],
    ["Weights", weightLines(worked)],
    ["In the aisle", aisleLines(worked)],
    ["Cautions", cautionsOf(worked).map(({ text, about }) => withNames(text, about))],
    ["Care", careOf(worked).map(({ text, about }) => withNames(text, about))],
  ];
  return sections.map(([title, lines]) => [title, ...lines.map((l) => `  ${l}`), ""].join("\n")).join("\n");
}

const withNames = (text: string, about: readonly string[]): string =>
  about.length > 0 ? `${text} [${about.join(", ")}]` : text;

const amount = (q: Quantity | undefined, display: Display): string => (q ? quantityText(q, display) : "?");

function toolLines(worked: Worked): string[] {
  const { display } = worked.settings;
  return toolsNeeded(worked).map(({ name, have, for: uses, settings, instead }) => {
    const reach = settings.map(
      ({ what, value, drawn }) =>
        `${what} ${amount(value, display)}${drawn ? ` (${amount(drawn, display)} as drawn)` : ""}`,
    );
    return `${name} (${have}): ${[uses.join("; "), line(...reach), instead].filter(Boolean).join(" | ")}`;
  });
}

function bitLines(worked: Worked): string[] {
  const { display } = worked.settings;
  return bitsNeeded(worked).map((b) => {
    const band = b.band && `${lengthInFull(b.band.least, display)} to ${lengthInFull(b.band.most, display)}`;
    const holes = b.for.map(({ title, holes: many, depth }) =>
      line(`${ifKnown(many) ?? "?"} in ${title}`, depth && `stop at ${lengthInFull(depth, display)}`),
    );
    return [`${b.kind} ${b.text}`, band, b.source, ...b.assumed, b.note, holes.join("; ")]
      .filter(Boolean)
      .join(" | ");
  });
}

function weightLines(worked: Worked): string[] {
  const { display } = worked.settings;
  const { own, atLeast, heaviest, unknown, trip } = weightOf(worked);
  return [
    `one copy: ${amount(ifKnown(own), display)}, at least ${amount(atLeast, display)}`,
    ...(heaviest ? [`heaviest piece: ${heaviest.part}, ${amount(heaviest.weight, display)}`] : []),
    ...(unknown.length > 0 ? [`not known: ${unknown.map((u) => u.part).join(", ")}`] : []),
    `bought: ${amount(ifKnown(trip), display)}`,
  ];
}

function aisleLines(worked: Worked): string[] {
  const { display } = worked.settings;
  return aisleFacts(worked).rows.map(({ name, wood, conditions, count, longest, weight, wetter, taken }) => {
    const sides = [taken.thickness, taken.width].flatMap((q) => (q ? [lengthInFull(q, display)] : []));
    return line(
      `${count} ${name}`,
      wood,
      ...conditions,
      `to ${lengthInFull(longest, display)}`,
      amount(ifKnown(weight), display),
      wetter,
      `${sides.join(" x ")} (${taken.source})`,
    );
  });
}
