/** What a hover says of how a plan was built: what came out otherwise, and which parts that is about. */
import type { Entry } from "../../grammar/tree";
import { ifKnown, usesOf } from "../plan";
import type { Quantity } from "../units";
import type { AsBuilt, Worked } from "../worked";
import { BUILT } from "./hover-texts/built";
import { COMMON } from "./hover-texts/common";
import type { Voice } from "./hover-texts/voice";
import { escaped, list, paragraphs } from "./markdown";
import { bothTexts } from "./values";

export function describeBuilt(entry: Entry, worked: Worked, voice: Voice): string | undefined {
  const built = worked.built.find((one) => one.entry === entry);
  if (!built) return undefined;
  const says = BUILT[voice.language];
  const differs = built.cameOut.length + built.madeOf.length > 0;
  return paragraphs(
    says.built(escaped(built.date), escaped(built.by)),
    differs || built.changed.length > 0 ? undefined : says.asPlanned,
    list([
      ...measuredTexts(built, worked, voice),
      ...built.madeOf.map(
        ({ used, planned, because }) =>
          says.insteadOf(escaped(used), escaped(planned), named(madeOf(planned, worked), voice)) +
          why(because, voice),
      ),
      ...built.changed.map((words) => says.changed(escaped(words))),
      ...built.wear.map(({ date, words }) => says.wear(escaped(date), escaped(words))),
    ]),
    differs ? says.compare : undefined,
  );
}

function measuredTexts({ cameOut }: AsBuilt, worked: Worked, voice: Voice): string[] {
  const says = BUILT[voice.language];
  const text = (q: Quantity): string => escaped(bothTexts(q, voice.display));
  return cameOut.flatMap(({ of, name, planned, found, because }) => {
    const [was, is] = [ifKnown(planned), ifKnown(found)];
    if (!was || !is) return [];
    const parts = of === "measure" ? following(name, worked) : [];
    const what = escaped(of === "length" ? says.lengthOf(name) : name);
    return [
      says.cameOut(what, text(was), text(is)) +
        why(because, voice) +
        (parts.length > 0 ? says.follows(named(parts, voice)) : ""),
    ];
  });
}

const why = (because: string, { language }: Voice): string =>
  because === "" ? "" : BUILT[language].because(escaped(because));

const named = (parts: readonly string[], { language }: Voice): string =>
  escaped(COMMON[language].all([...parts.slice(0, MOST_NAMED), ...(parts.length > MOST_NAMED ? ["…"] : [])]));
const MOST_NAMED = 6;

const madeOf = (stock: string, { parts }: Worked): string[] =>
  [...parts.values()].flatMap(({ name, declared: { entry } }) =>
    entry.kind === "part" && entry.of.text.replace("×", "x") === stock ? [name] : [],
  );

/** The parts whose lines name a measure, or another that follows from it. */
function following(measure: string, { scope }: Worked): string[] {
  const names = new Set([measure]);
  const parts = new Set<string>();
  for (const name of names)
    for (const { entry, kind, name: other } of scope.declared.values()) {
      if (kind !== "measure" && kind !== "part") continue;
      if (!usesOf(entry).some((use) => use.name.text === name)) continue;
      if (kind === "measure") names.add(other);
      else parts.add(other);
    }
  return [...parts];
}
