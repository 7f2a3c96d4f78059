/** What the shop sheet's panel shows for an answer of the server: the new sheet, or the last good one, marked as old. */
import { l10n } from "vscode";
import type { SheetAnswer } from "./protocol";

export interface SheetView {
  /** The plan's own title; empty where there is no plan. */
  readonly title: string;
  /** Tag of the language the sheet is written in. */
  readonly language: string;
  readonly style: string;
  readonly parts: SheetAnswer["parts"];
  /** One sentence above the sheet; empty where there is nothing to say. */
  readonly notice: string;
}

/** A view without what the page shows already: what is unsaid is as it was. */
export interface SheetNews extends Omit<SheetView, "style" | "parts"> {
  readonly style?: string;
  readonly parts: readonly { readonly name: string; readonly html?: string }[];
}

/** `lastGood` is the newest sheet of the same document that had no errors. */
export function viewOf(answer: SheetAnswer, lastGood: SheetAnswer | undefined): SheetView {
  if (answer.state === "good" || lastGood === undefined) return asItIs(answer, "");
  return asItIs(lastGood, oldNotice(answer.brokenAt));
}

export const noPlan = (): SheetView => ({
  title: "",
  language: "en",
  style: "",
  parts: [],
  notice: l10n.t("There is no plan in this file to make a shop sheet from."),
});

/** Why a sheet does not follow its plan. */
export type NoAnswer = "no server" | "no file";

/** Nothing but that sentence. */
export const onlySays = (notice: string): SheetView => ({ ...noPlan(), notice });

/** Of a panel that came back from an earlier session before its plan, or without it. */
export const notYet = (): SheetView =>
  onlySays(l10n.t("Open a plan (a .sawbuck file), and its shop sheet is shown here."));

const whyNot = (why: NoAnswer): string =>
  why === "no server"
    ? l10n.t(
        "This sheet has stopped following its plan: the language server gave no answer. Try the command “Sawbuck: Restart Language Server”.",
      )
    : l10n.t(
        "This sheet has stopped following its plan: the plan cannot be opened. It may have been moved, renamed or deleted.",
      );

/** Keeps what is shown, and says why it does not follow. */
export function notFollowing(view: SheetView | undefined, why: NoAnswer): SheetView {
  return { ...(view ?? noPlan()), notice: whyNot(why) };
}

/** What a page that shows `before` has to be told; undefined for nothing. */
export function newsOf(next: SheetView, before: SheetView | undefined): SheetNews | undefined {
  const { title, language, style, parts, notice } = next;
  if (before === undefined) return next;
  const shown = new Map(before.parts.map(({ name, html }) => [name, html]));
  const news = parts.map(({ name, html }) => (shown.get(name) === html ? { name } : { name, html }));
  const same =
    before.title === title &&
    before.language === language &&
    before.style === style &&
    before.notice === notice &&
    before.parts.length === parts.length &&
    news.every((part, i) => !("html" in part) && part.name === before.parts[i]?.name);
  if (same) return undefined;
  return { title, language, notice, parts: news, ...(before.style !== style && { style }) };
}

export function asItIs(
  { title, language, style, parts }: Pick<SheetAnswer, "title" | "language" | "style" | "parts">,
  notice: string,
): SheetView {
  return { title, language, style, parts, notice };
}

function oldNotice(brokenAt: number | undefined): string {
  if (brokenAt === undefined)
    return l10n.t("This sheet is from before the mistake. It follows again when the mistake is mended.");
  return l10n.t(
    "This sheet is from before the mistake on line {0}. It follows again when the line is mended.",
    brokenAt,
  );
}
