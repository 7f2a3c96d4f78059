/** What is finished and what is lined, with how much it takes. */
import type { SheetData, SheetFinish, SheetLining } from "../data";
import type { Group, Section, Terms, Words } from "../document";
import type { SheetWords } from "../words";
import { list, section, terms } from "./blocks";
import { lineIn } from "./problems";

export function finishSection({ finishes, file, make }: SheetData, words: SheetWords): Section[] {
  return section(
    "finish",
    words.headings.finish,
    finishes.map((finish) => finishGroup(finish, file, make, words)),
  );
}

function finishGroup(finish: SheetFinish, file: string, make: number, words: SheetWords): Group {
  const { labels } = words;
  const { what, parts, area, coats, amount, dries, place } = finish;
  const told: (readonly [string, string])[] = [
    [labels.parts, parts.join(", ")],
    [make > 1 ? labels.areaEach : labels.area, area?.text ?? words.notKnown],
    [labels.coatCount, String(coats)],
    [labels.amount, amount?.text ?? words.notKnown],
    [labels.dries, dries],
  ];
  const rows: Terms["rows"] = told
    .filter(([, said]) => said !== "")
    .map(([label, said]) => ({ label, words: said }));
  return group("coat", what, rows, notesOf(finish, words), lineIn(place, file));
}

export function linerSection({ linings, file }: SheetData, words: SheetWords): Section[] {
  return section(
    "liners",
    words.headings.liners,
    linings.map((lining) => liningGroup(lining, file, words)),
  );
}

function liningGroup(lining: SheetLining, file: string, words: SheetWords): Group {
  const { what, box, cuts, place } = lining;
  const rows = cuts.map((cut) => ({
    label: cut.what,
    words: words.sheetOf(
      cut.count,
      [cut.length.text, cut.width.text].join(words.by),
      [cut.length.other, cut.width.other].join(words.by),
    ),
  }));
  return group("lining", words.inBox(what, box), rows, notesOf(lining, words), lineIn(place, file));
}

const notesOf = ({ notes, assumed }: SheetFinish | SheetLining, { work }: SheetWords): Words[] => [
  ...notes,
  ...assumed.map((said) => `${work.taken}${said}`),
];

function group(
  name: string,
  heading: string,
  rows: Terms["rows"],
  notes: readonly Words[],
  pointing: { readonly line?: number },
): Group {
  const told = terms(rows);
  const said = list(
    "bullets",
    notes.map((words) => ({ words })),
  );
  return {
    kind: "group",
    name,
    heading,
    blocks: [...(told ? [told] : []), ...(said ? [said] : [])],
    ...pointing,
  };
}
