/** How it came out when it was built: beside what is planned, so that the next builder may learn from it. */
import type { SheetBuilt, SheetData } from "../data";
import type { Group, Section, Terms } from "../document";
import type { SheetWords } from "../words";
import { paragraph, section, terms } from "./blocks";

export function builtSection({ built }: Pick<SheetData, "built">, words: SheetWords): Section[] {
  return section(
    "built",
    words.headings.built,
    built.map((one) => builtGroup(one, words)),
  );
}

export function builtGroup(one: SheetBuilt, words: SheetWords): Group {
  const { built: says } = words;
  const figures = terms(builtRows(one, words));
  return {
    kind: "group",
    name: "as-built",
    heading: says.on(one.date, one.by),
    blocks: [
      ...(one.measured.length + one.boards.length + one.changed.length > 0
        ? []
        : [paragraph("plain", says.asPlanned)]),
      ...(figures ? [figures] : []),
    ],
  };
}

function builtRows({ measured, boards, changed, wear }: SheetBuilt, words: SheetWords): Terms["rows"] {
  const { built: says } = words;
  const why = (because: string): string => (because === "" ? "" : words.because(because));
  return [
    ...measured.map(({ what, planned, built, because }) => ({
      label: what,
      words: says.cameOut(planned?.text ?? "", built.text) + why(because),
    })),
    ...boards.map(({ planned, used, because }) => ({
      label: says.board,
      words: says.insteadOf(used, planned) + why(because),
    })),
    ...changed.map((text) => ({ label: says.changed, words: text })),
    ...wear.map(({ date, words: found }) => ({ label: says.wear(date), words: found })),
  ];
}
