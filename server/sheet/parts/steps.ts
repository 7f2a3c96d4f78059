/** The order of work: each step with its drawing, its pieces, what is driven, hands and time; and when to stop. */
import type { SheetData, SheetSitting, SheetStep } from "../data";
import type { Figure, Group, Section, Terms, Words } from "../document";
import type { SheetDrawing } from "../drawings";
import type { SheetWords } from "../words";
import { list, ofOne, paragraph, section, terms } from "./blocks";
import { sentence } from "./names";
import { lineIn } from "./problems";

export function stepSections(
  data: SheetData,
  drawings: readonly SheetDrawing[],
  words: SheetWords,
): Section[] {
  const { steps, sittings, stepsProposed } = data;
  if (steps.length === 0) return [];
  const drawn = new Map(drawings.filter(({ kind }) => kind === "step").map((shown) => [shown.of, shown]));
  return [
    ...section("sittings", words.headings.sittings, [
      sittings.length > 1
        ? list(
            "bullets",
            sittings.map((sitting) => ({ words: sittingWords(sitting, words) })),
          )
        : undefined,
    ]),
    ...section("steps", words.headings.steps, [
      ...(stepsProposed ? [paragraph("key", words.keys.proposed)] : []),
      ...ofOne(data, words),
      ...(drawn.size > 0 ? [paragraph("key", words.keys.newIsDark)] : []),
      ...steps.map((step) =>
        stepGroup(step, tickOf(step, data), drawn.get(String(step.number)), data.file, words),
      ),
    ]),
  ];
}

/** By its title, so that a step put in before it changes nothing; of steps with one title, which of them. */
function tickOf({ number, title }: SheetStep, { steps }: SheetData): string {
  const before = steps.filter((other) => other.title === title && other.number < number);
  return `step/${before.length + 1}/${title}`;
}

function stepGroup(
  step: SheetStep,
  id: string,
  drawn: SheetDrawing | undefined,
  file: string,
  words: SheetWords,
): Group {
  const { number, title, place } = step;
  const figure: Figure | undefined = drawn && {
    kind: "figure",
    caption: "",
    drawing: () => drawn.drawing,
    beside: true,
    ...(drawn.old && { old: true }),
  };
  const told = terms(rowsOf(step, words), { light: true });
  return {
    kind: "group",
    name: "step",
    ticks: [{ id, what: `${number}. ${title}`, done: words.done }],
    heading: `${number}. ${sentence(title)}`,
    blocks: [...(figure ? [figure] : []), ...(told ? [told] : [])],
    ...(place && lineIn(place, file)),
  };
}

function rowsOf(step: SheetStep, words: SheetWords): Terms["rows"] {
  const { labels } = words;
  const time = [
    step.people === null ? "" : words.people(step.people),
    step.takes?.text ?? "",
    step.wait === null ? "" : words.thenWait(step.wait.text),
  ];
  return [
    ...each(
      labels.fresh,
      step.fresh.map(
        ({ mark, part, count }): Words => [
          { text: mark, style: "strong" },
          { text: ` ${part}, ${words.pieces(count)}` },
        ],
      ),
    ),
    ...each(
      labels.joins,
      step.joins.map(({ title, what, screws, holes }) => {
        const count = screws === null ? "" : words.screws(screws);
        return words.said(title, [count, what, holes].filter((said) => said !== "").join(", "));
      }),
    ),
    ...each(labels.coats, step.coats),
    ...each(labels.linings, step.linings),
    ...each(labels.fit, step.fit),
    ...each(labels.square, step.square),
    ...each(labels.tools, step.tools.length > 0 ? [step.tools.join(", ")] : []),
    ...each(labels.lift, step.lift === "" ? [] : [step.lift]),
    ...each(
      labels.time,
      [time.filter((said) => said !== "").join(", ")].filter((said) => said !== ""),
    ),
  ];
}

/** The label stands with the first. */
const each = (label: string, values: readonly Words[]): Terms["rows"] =>
  values.map((words, i) => ({ label: i === 0 ? label : "", words }));

function sittingWords({ from, to, takes, wait, overnight }: SheetSitting, words: SheetWords): Words {
  const steps = from === to ? words.stepNo(from) : words.stepsNo(from, to);
  const work = takes === null ? steps : words.said(steps, takes.text);
  if (wait === null) return `${work}.`;
  const stop = overnight ? ` ${words.overnight}` : "";
  return [{ text: `${work}. ` }, { text: `${words.waitAfter(wait.text)}${stop}`, style: "strong" }];
}
