/** Reading what the page in the panel says. */
import { type Choices, choicesIn } from "./choices";
import type { KnownTicks } from "./preview/messages";

export interface Hears {
  readonly ready: (choices: Choices) => void;
  readonly chosen: (choices: Choices) => void;
  readonly goTo: (line: number) => void;
  readonly ticked: (uri: string, ids: KnownTicks["ids"]) => void;
  readonly save: () => void;
}

/** Whatever else is said is not heard. */
export function hear(message: unknown, hears: Hears): void {
  if (typeof message !== "object" || message === null) return;
  const { ready, choices, line, uri, ticks, save } = message as Partial<Record<string, unknown>>;
  if (ready !== undefined) hears.ready(choicesIn(ready));
  else if (choices !== undefined) hears.chosen(choicesIn(choices));
  else if (typeof line === "number" && Number.isInteger(line)) hears.goTo(line);
  else if (typeof uri === "string" && Array.isArray(ticks))
    hears.ticked(
      uri,
      ticks.filter((id) => typeof id === "string"),
    );
  else if (save === true) hears.save();
}
