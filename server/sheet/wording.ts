/** The words of the sheet that its HTML and its plain text share: headings, what is said when there is nothing, small phrases. */
import type {
  BoardPlan,
  CutRow,
  PanelPlan,
  Place,
  SheetBoard,
  SheetData,
  SheetPanel,
  SheetProblem,
  Shopping,
} from "./data";

export const HEADINGS = {
  drawing: "Drawing",
  about: "About this plan",
  problems: "Open problems",
  accepted: "Accepted, and why",
  notChecked: "Not looked at",
  cautions: "Before you start",
  cutList: "Cut list",
  boards: "Board layouts",
  panels: "Sheet layouts",
  shopping: "Shopping list",
  fasteners: "Screws and other fasteners",
  setOut: "Where the screws go",
  square: "Before you screw it tight",
  rings: "Rings",
  boxes: "Boxes",
  musts: "Rules of this plan",
  steps: "Order of work",
  notes: "Notes",
} as const;

/** How lengths, marks and pictures are to be read. */
export const KEYS = {
  setOut:
    "Measured on the piece that is screwed through. Left, right, front, back, top and bottom are those of the finished thing.",
  cutList: "Lengths are tip to tip, before the ends are cut.",
  boards:
    "Hook the tape on the left end: every mark is counted from there. The short double line stands on the waste side of a mark, where the saw runs. Lengths are to scale, widths are not.",
  boardsInText:
    "Hook the tape on the left end: every mark is counted from there. The saw runs on the waste side of a mark. xxx is waste, /// is bad wood.",
  panels: "To scale. What is hatched is left over.",
  panelsInText: "Places are counted from the lower left corner of the sheet.",
} as const;

/** What stands in place of the open problems when there are none. */
export function noProblems({ accepted, notChecked }: SheetData): string {
  const [some, left] = [accepted.length > 0, notChecked.length > 0];
  const found = `No ${some ? "open " : ""}problem that Sawbuck can name was found.`;
  if (some && left) return `${found} What was accepted, and what it did not look at, stand below.`;
  if (some) return `${found} What was accepted stands below.`;
  return left ? `${found} What it did not look at stands below.` : found;
}

/** What stands in place of the list of what was not looked at when it is empty. */
export const NOTHING_LISTED =
  "Nothing is listed. Sawbuck looks only for the mistakes it can name; the rest is for your own eyes.";

const CLASSES = { error: "Error", hazard: "Hazard", warning: "Warning", hint: "Hint" } as const;

export function classWord(problem: SheetProblem): string {
  return CLASSES[problem.class];
}

/** "line 12", with the file's name when it is not the sheet's own plan. */
export function placeWords(place: Place, plan: string): string {
  return place.file === plan ? `line ${place.line}` : `${place.file}, line ${place.line}`;
}

/** What stands under a problem's message: its cures, what was assumed, the other places. */
export function problemDetails(problem: SheetProblem, plan: string): readonly Labelled[] {
  return [
    ...problem.cures.map((cure) => ({ label: "Cure", value: cure })),
    ...problem.assumed.map((assumed) => ({ label: "Assumed", value: assumed })),
    ...problem.related.map(({ message, place }) => ({
      label: "See",
      value: `${placeWords(place, plan)}: ${message}`,
    })),
    ...(problem.accepted === undefined ? [] : [{ label: "Accepted because", value: problem.accepted }]),
  ];
}

export interface Labelled {
  readonly label: string;
  readonly value: string;
}

/** "floor-board, left". */
export function partWords(row: CutRow): string {
  return row.hand === "" ? row.part : `${row.part}, ${row.hand}`;
}

/** The length to cut, or how it is found. */
export function lengthWords(row: CutRow): string {
  return row.length?.text ?? (row.measured || "not known");
}

/** How the length is measured, as far as it is not said already. */
export function measureWords(row: CutRow): string {
  const short = row.shortPoint ? `short point ${row.shortPoint.text}` : "";
  return [row.length ? row.measured : "", short].filter((words) => words !== "").join(", ");
}

/** "8' board, 2 cut alike". */
export function boardWords({ label, count }: SheetBoard | SheetPanel): string {
  return count > 1 ? `${label}, ${count} cut alike` : label;
}

/** What a layout took for granted, and which pieces it found no wood for. */
export function layoutWords(plan: BoardPlan | PanelPlan): readonly string[] {
  return [
    ...(plan.assumed.length > 0 ? [`Allowed for: ${plan.assumed.join("; ")}.`] : []),
    ...(plan.unplaced.length > 0 ? [`No wood found for: ${plan.unplaced.join(", ")}.`] : []),
  ];
}

/** The sums under a shopping list, those that are known. */
export function sums(shopping: Shopping): readonly Labelled[] {
  const { subtotal, tax, total, budget } = shopping;
  const rows = [
    { label: "Before tax", value: subtotal },
    { label: "Tax", value: tax },
    { label: "Total", value: total },
    { label: "Budget", value: budget },
  ];
  return rows.flatMap(({ label, value }) => (value === null ? [] : [{ label, value }]));
}

/** What the shopping list needs said beside it. */
export function shoppingWords(shopping: Shopping): readonly string[] {
  const { onHand, withoutPrice } = shopping;
  return [
    ...(withoutPrice.length > 0 ? [`Without a price, so not in the total: ${withoutPrice.join(", ")}.`] : []),
    ...(onHand.length > 0 ? [`From what is on hand: ${onHand.join(", ")}.`] : []),
  ];
}

export function hasShopping({ rows, onHand, withoutPrice }: Shopping): boolean {
  return rows.length + onHand.length + withoutPrice.length > 0;
}

/** "inches to 1/16\"". */
export function unitWords({ system, mark }: SheetData["units"]): string {
  return mark === "" ? system : `${system} to ${mark}`;
}

/** A sentence that already ends keeps its end. */
export function sentence(words: string): string {
  return /[.!?]$/.test(words) ? words : `${words}.`;
}
