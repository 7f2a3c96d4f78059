/** The later sections of the plain text: shopping, fasteners, rings, boxes, rules, steps, notes. */
import type { SheetBox, SheetData, SheetJoint, Shopping } from "./data";
import { oneLine } from "./escape";
import { aligned, columnsOf, hanging, padded, wrapped } from "./text-layout";
import { HEADINGS, hasShopping, KEYS, sentence, shoppingWords, sums } from "./wording";
import { alongWords, jointWords, screwsOn, setOutWords, squareWords } from "./wording-space";

export interface TextSection {
  readonly heading: string;
  readonly lines: readonly string[];
}

/** These sections in order; one without content has no lines. */
export function workLines(data: SheetData, width: number): readonly TextSection[] {
  const { shopping, fasteners, joints, square, rings, boxes, musts, steps, notes } = data;
  return [
    { heading: HEADINGS.shopping, lines: hasShopping(shopping) ? shoppingLines(shopping, width) : [] },
    {
      heading: HEADINGS.fasteners,
      lines: fasteners.flatMap(({ what, count, joints, holes }) => [
        ...hanging(
          `${padded(count === null ? "?" : String(count), 5, true)}  `,
          holes === "" ? what : `${what}, ${holes}`,
          width,
        ),
        ...joints.flatMap((joint) => hanging("       - ", joint, width)),
      ]),
    },
    {
      heading: HEADINGS.setOut,
      lines: joints.some(({ setOut }) => setOut.length > 0)
        ? [...wrapped(KEYS.setOut, width), ...joints.flatMap((joint) => setOutLines(joint, width))]
        : [],
    },
    { heading: HEADINGS.square, lines: square.flatMap((row) => hanging("  - ", squareWords(row), width)) },
    {
      heading: HEADINGS.rings,
      lines: rings.flatMap(({ name, members, state }) =>
        hanging("  - ", `${name}: ${[members, state].filter((words) => words !== "").join(": ")}`, width),
      ),
    },
    { heading: HEADINGS.boxes, lines: boxes.flatMap((box, i) => boxLines(box, i > 0, width)) },
    {
      heading: HEADINGS.musts,
      lines: musts.flatMap(({ rule, because, state }) =>
        hanging(
          "  - ",
          `${rule}${because === "" ? "" : ` because ${because}`}${state === "" ? "" : `: ${state}`}`,
          width,
        ),
      ),
    },
    {
      heading: HEADINGS.steps,
      lines: steps.flatMap(({ title, lines }, i) => [
        ...hanging(`${padded(String(i + 1), 3, true)}. `, sentence(title), width),
        ...lines.flatMap((line) => hanging("     - ", line, width)),
      ]),
    },
    { heading: HEADINGS.notes, lines: notes.flatMap((note) => wrapped(note, width)) },
  ];
}

function setOutLines(joint: SheetJoint, width: number): readonly string[] {
  if (joint.setOut.length === 0) return [];
  return [
    ...hanging("  ", jointWords(joint), width),
    ...joint.setOut.flatMap((set) => {
      const name = [set.mark, setOutWords(set, joint)].filter((words) => words !== "").join(" ");
      const marks = set.grids.map((grid) => `${alongWords(grid)}; ${grid.across.words}`);
      return [
        ...hanging("    - ", `${name}, ${screwsOn(set)}`, width),
        ...marks.flatMap((words) => hanging("        ", words, width)),
      ];
    }),
  ];
}

function shoppingLines(shopping: Shopping, width: number): readonly string[] {
  const { rows } = shopping;
  const aisles = [...new Set(rows.map(({ aisle }) => aisle))];
  const totals = [...rows.map(({ total }) => total ?? ""), ...sums(shopping).map(({ value }) => value)];
  const money = Math.max(0, ...totals.map((total) => columnsOf(oneLine(total))));
  return [
    ...aisles.flatMap((aisle, i) => [
      ...(i > 0 ? [""] : []),
      ...wrapped(aisle, width),
      ...aligned(
        rows
          .filter((row) => row.aisle === aisle)
          .map(({ count, unit, what, each, total, note }) => ({
            cells: [
              "[ ]",
              String(count),
              [unit, what].filter((words) => words !== "").join(", "),
              each === null ? "" : `${each} each`,
              total ?? "no price",
            ],
            detail: note,
          })),
        { width, indent: 2, right: [1, 3, 4], under: 2 },
      ),
    ]),
    ...(sums(shopping).length > 0 ? [""] : []),
    ...sums(shopping).flatMap(({ label, value }) => {
      const lead = `  ${padded(label, 10)}  `;
      return money <= 20 ? [lead + padded(oneLine(value), money, true)] : hanging(lead, value, width);
    }),
    ...shoppingWords(shopping).flatMap((words) => ["", ...wrapped(words, width)]),
  ];
}

function boxLines({ name, rows, caution }: SheetBox, later: boolean, width: number): readonly string[] {
  const label = Math.min(30, Math.max(0, ...rows.map((row) => columnsOf(oneLine(row.label)))));
  return [
    ...(later ? [""] : []),
    ...wrapped(name, width),
    ...rows.flatMap((row) => hanging(`  ${padded(oneLine(row.label), label)}  `, row.value, width)),
    ...(caution === "" ? [] : hanging("  ", caution, width)),
  ];
}
