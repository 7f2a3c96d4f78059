/** From a sheet's data to the sheet as it is read. */
import type { SheetData } from "../data";
import type { Section, SheetDocument } from "../document";
import type { SheetDrawing } from "../drawings";
import type { SheetWords } from "../words";
import { section, terms } from "./blocks";
import { builtSection } from "./built";
import { buyingSection } from "./buying";
import { finishSection, linerSection } from "./coats";
import { answerSection, cutListSection } from "./cuts";
import { drawingSection } from "./drawings";
import { gapSection, holdingSection, rootSection } from "./holding";
import { kitSection } from "./kits";
import { layoutSections } from "./layouts";
import { offcutSection } from "./offcuts";
import { cautionSection, figureSections, noteSection } from "./others";
import { problemSections } from "./problems";
import { fastenerSection, setOutSection, squareSection } from "./screws";
import { careSection, toolSections, yardSection } from "./shop";
import { stepSections } from "./steps";

/** Who reads it: a builder, a group that works by stations, or learners who find the lengths themselves. */
export type SheetReader = "builder" | "stations" | "learners";

export interface Shown {
  readonly drawings: readonly SheetDrawing[];
  readonly words: SheetWords;
  readonly reader: SheetReader;
}

export function documentOf(data: SheetData, { drawings, words, reader }: Shown): SheetDocument {
  const { title, units } = data;
  const file = data.file.split(/[\\/]/).at(-1) ?? "";
  const system = units.system === "inches" ? words.inches : words.millimetres;
  return {
    language: words.tag,
    title,
    plan: `${title === words.plan.untitled ? "" : title} (${file})`,
    under: `${file}, ${words.unitsTo(system, units.mark)}`,
    sections: [
      ...section("about", words.headings.about, [
        terms(
          data.facts.map(({ label, value }) => ({ label, words: value })),
          { columns: 2 },
        ),
      ]),
      ...drawingSection(data, drawings, words),
      ...problemSections(data, words),
      ...cautionSection(data, words),
      ...ORDER[reader](data, words, drawings),
    ],
    words,
  };
}

type Rest = (data: SheetData, words: SheetWords, drawings: readonly SheetDrawing[]) => readonly Section[];

const ORDER: Readonly<Record<SheetReader, Rest>> = {
  builder: (data, words, drawings) => [
    ...toolSections(data, words),
    ...buyingSection(data, words),
    ...yardSection(data, words),
    ...cutListSection(data, words),
    ...kitSection(data, words),
    ...layoutSections(data, words),
    ...offcutSection(data, words),
    ...linerSection(data, words),
    ...finishSection(data, words),
    ...fastenerSection(data, words),
    ...setOutSection(data, words),
    ...squareSection(data, words),
    ...figureSections(data, words),
    ...holdingSection(data, words),
    ...rootSection(data, words),
    ...gapSection(data, words),
    ...stepSections(data, drawings, words),
    ...noteSection(data, words),
    ...builtSection(data, words),
    ...careSection(data, words),
  ],
  stations: (data, words, drawings) => [
    ...toolSections(data, words),
    ...buyingSection(data, words),
    ...yardSection(data, words),
    ...figureSections(data, words),
    ...holdingSection(data, words),
    ...rootSection(data, words),
    ...gapSection(data, words),
    ...atStation("mark", layoutSections(data, words), words),
    ...atStation(
      "cut",
      [...cutListSection(data, words), ...kitSection(data, words), ...offcutSection(data, words)],
      words,
    ),
    ...atStation("drill", [...fastenerSection(data, words), ...setOutSection(data, words)], words),
    ...atStation("finish", finishSection(data, words), words),
    ...atStation(
      "assemble",
      [...squareSection(data, words), ...stepSections(data, drawings, words), ...linerSection(data, words)],
      words,
    ),
    ...noteSection(data, words),
    ...builtSection(data, words),
    ...careSection(data, words),
  ],
  learners: (data, words, drawings) => [
    ...toolSections(data, words, true),
    ...cutListSection(data, words, true),
    ...fastenerSection(data, words),
    ...setOutSection(data, words),
    ...squareSection(data, words),
    ...stepSections(data, drawings, words),
    // Gaps and depths follow from lengths that are to be found.
    ...holdingSection(data, words),
    ...noteSection(data, words),
    ...answerSection(data, words),
    // They tell the lengths too.
    ...layoutSections(data, words),
    ...offcutSection(data, words),
    ...builtSection(data, words),
  ],
};

/** A station on a page of its own; its first section says which. */
function atStation(
  name: keyof SheetWords["headings"]["stations"],
  sections: readonly Section[],
  words: SheetWords,
): readonly Section[] {
  return sections.map((own, i) =>
    i === 0
      ? { ...own, heading: words.said(words.headings.stations[name], own.heading), newPage: true }
      : own,
  );
}
