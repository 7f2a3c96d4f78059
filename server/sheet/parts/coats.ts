/** What is finished and what is lined, with how much it takes. */
import type { SheetData, SheetFinish, SheetLining } from "../data";
import type { Group, Section, Terms } from "../document";
import type { SheetWords } from "../words";
import { list, section, terms } from "./blocks";
import { lineIn } from "./problems";

export function finishSection({ finishes, file }: SheetData, words: SheetWords): Section[] {
  return section(
    "finish",
    words.headings.finish,
    finishes.map((finish) => finishGroup(finish, file, words)),
  );
}

function finishGroup(finish: SheetFinish, file: string, words: SheetWords): Group {
  const { labels } = words;
  const { what, parts, area, coats, amount, dries, notes, place } = finish;
  const told: (readonly [string, string])[] = [
    [labels.parts, parts.join(", ")],
    [labels.area, area?.text ?? words.notKnown],
    [labels.coatCount, String(coats)],
    [labels.amount, amount?.text ?? words.notKnown],
    [labels.dries, dries],
  ];
  const rows: Terms["rows"] = told
    .filter(([, said]) => said !== "")
    .map(([label, said]) => ({ label, words: said }));
  return group("coat", what, rows, notes, lineIn(place, file));
}

export function linerSection({ linings, file }: SheetData, words: SheetWords): Section[] {
  return section(
    "liners",
    words.headings.liners,
    linings.map((lining) => liningGroup(lining, file, words)),
  );
}

function liningGroup({ what, box, cuts, notes, place }: SheetLining, file: string, words: SheetWords): Group {
  const rows = cuts.map((cut) => ({
    label: cut.what,
    words: words.sheetOf(
      cut.count,
      `${cut.length.text} x ${cut.width.text}`,
      `${cut.length.other} x ${cut.width.other}`,
    ),
  }));
  return group("lining", words.inBox(what, box), rows, notes, lineIn(place, file));
}

function group(
  name: string,
  heading: string,
  rows: Terms["rows"],
  notes: readonly string[],
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
