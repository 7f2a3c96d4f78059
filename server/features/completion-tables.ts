/** Names that plans know without declaring them: sections, woods, crops, and the codes of problems. */
import { CHECKS, problemText } from "../checks";
import {
  cropNames,
  fillNames,
  finishNames,
  linerNames,
  section,
  sectionNames,
  soldLengths,
  species,
  speciesNames,
} from "../trade";
import { type Asking, type Offer, offer, RANK } from "./completion-offer";
import type { Table } from "./completion-patterns";
import { COMPLETION_WORDS } from "./completion-words";
import { escaped, list } from "./markdown";

export function tableOffers(table: Table | undefined, asking: Asking): Offer[] {
  const { plan, language } = asking;
  const { worked } = plan;
  const undeclared = (names: readonly string[]) => names.filter((n) => !worked.scope.declared.has(n));
  const words = COMPLETION_WORDS[language];
  switch (table) {
    case "sections": {
      const { lumber } = worked.settings;
      return undeclared(sectionNames(lumber)).map((name, i) => {
        const size = section(name, lumber);
        const mark = size?.unit === "mm" ? " mm" : '"';
        const detail = size ? words.really(`${size.thickness}${mark} x ${size.width}${mark}`) : "";
        return offer(name, "section", RANK.table + i / 1000, { detail });
      });
    }
    case "fills":
    case "finishes":
    case "liners":
      return undeclared(KNOWN[table]()).map((name) =>
        offer(name, "thing", RANK.table, { detail: words.known[table] }),
      );
    case "species":
      return speciesNames().map((name) =>
        offer(name, "word", RANK.table, { detail: species(name)?.title ?? "" }),
      );
    case "crops":
      return cropNames().map((name) => offer(name, "word", RANK.table));
    case "codes":
      return codeOffers(asking);
    case undefined:
      return [];
  }
}

const KNOWN = { fills: fillNames, finishes: finishNames, liners: linerNames } as const;

/** Codes that an `accept` line may name: those open in this plan first. An error is never accepted. */
function codeOffers({ plan, language }: Asking): Offer[] {
  const { problems, accepted, worked } = plan;
  const words = COMPLETION_WORDS[language];
  const found = [...problems, ...accepted.map((a) => a.problem)];
  return CHECKS.filter((c) => c.class !== "error").map((c) => {
    const here = found.filter((p) => p.code === c.code);
    // The headlines of pages are in English alone.
    const title = language === "en" ? c.title : "";
    const kind = words.classes[here[0]?.class ?? c.class];
    const told = () =>
      here.slice(0, MOST_TOLD).map((p) => escaped(problemText(p.code, p, worked.settings.display, language)));
    const detail = here.length > 0 ? words.open(kind, title) : title ? words.detail(kind, title) : kind;
    return offer(c.code, "code", here.length > 0 ? RANK.open : RANK.other, {
      detail,
      documentation: () => list(told()),
    });
  });
}

/** Problems of one code that are told beside it. */
const MOST_TOLD = 3;

/** Names that problems of the code before `on` are about. */
export function concernedNames({ plan, typed }: Asking): ReadonlySet<string> {
  const code = typed?.current[0]?.image;
  const found = [...plan.problems, ...plan.accepted.map((a) => a.problem)].filter((p) => p.code === code);
  return new Set(found.flatMap((p) => p.about));
}

/** Lengths in which boards are usually sold. */
export function soldOffers({ plan, language }: Asking): Offer[] {
  const metric = plan.worked.settings.lumber === "planed-metric";
  const row = soldLengths.find(({ unit }) => (unit === "mm") === metric);
  return (row?.value ?? []).map((length, i) =>
    offer(metric ? `${length / 1000}m` : `${length}'`, "size", RANK.open + i / 1000, {
      detail: COMPLETION_WORDS[language].sold,
    }),
  );
}
