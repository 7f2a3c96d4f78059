/** What the shop sheet's panel shows for an answer of the server: the new sheet, or the last good one, marked as old. */
import type { SheetAnswer } from "./protocol";

export interface SheetView {
  /** The plan's own title; empty where there is no plan. */
  readonly title: string;
  readonly style: string;
  readonly body: string;
  /** One sentence above the sheet; empty where there is nothing to say. */
  readonly notice: string;
}

/** `lastGood` is the newest sheet of the same document that had no errors. */
export function viewOf(answer: SheetAnswer, lastGood: SheetAnswer | undefined): SheetView {
  if (answer.state === "good" || lastGood === undefined) return asItIs(answer, "");
  return asItIs(lastGood, oldNotice(answer.brokenAt));
}

export const NO_PLAN: SheetView = {
  title: "",
  style: "",
  body: "",
  notice: "There is no plan in this file to make a shop sheet from.",
};

/** Keeps what is shown, and says why it does not follow. */
export function notFollowing(view: SheetView | undefined): SheetView {
  const notice =
    "This sheet does not follow: the language server gave no answer. Try the command “Sawbuck: Restart Language Server”.";
  return { ...(view ?? NO_PLAN), notice };
}

function asItIs({ title, style, body }: SheetAnswer, notice: string): SheetView {
  return { title, style, body, notice };
}

function oldNotice(brokenAt: number | undefined): string {
  const where = brokenAt === undefined ? "" : ` on line ${brokenAt}`;
  const when = brokenAt === undefined ? "the mistake is mended" : "the line is mended";
  return `This sheet is from before the mistake${where}. It follows again when ${when}.`;
}
