/** The controls above the sheet. */
import { type Choices, choicesIn } from "../choices";

export interface Chosen {
  readonly chosen: (now: Choices) => void;
  readonly save: () => void;
}

/** Shows the choices made before, and gives those of now. */
export function controls(first: Choices, { chosen, save }: Chosen): () => Choices {
  const units = document.querySelector<HTMLSelectElement>("#units");
  const reader = document.querySelector<HTMLSelectElement>("#reader");
  const now = (): Choices => choicesIn({ units: units?.value, reader: reader?.value });
  if (units !== null) units.value = first.units;
  if (reader !== null) reader.value = first.reader;
  for (const one of [units, reader]) one?.addEventListener("change", () => chosen(now()));
  document.querySelector("#save")?.addEventListener("click", save);
  return now;
}
