/** The pages that a sheet is put into, with their controls. They are made of fixed text only; nothing of a plan is in them. */
import { env, l10n } from "vscode";
import { type Choices, READERS, UNITS } from "./choices";
import { FRAME } from "./sheet-frame";

/** Of the shop sheet. */
export const sheetPage = (script: string, nonce: string): string =>
  pageAround(script, nonce, l10n.t("Shop Sheet"), {
    controls: `<div id="controls" role="group" aria-label="${l10n.t("How this sheet is shown")}">
<label>${l10n.t("Lengths")} <select id="units">${options(UNITS, unitWords())}</select></label>
<label>${l10n.t("For")} <select id="reader">${options(READERS, readerWords())}</select></label>
<button id="save" type="button">${l10n.t("Save …")}</button>
</div>
`,
  });

/** Nothing is loaded but the one script, by its address; styles only where they carry the nonce. */
export function pageAround(
  script: string,
  nonce: string,
  title: string,
  /** Above the sheet while it scrolls, and before it. */
  { controls = "", form = "" }: { readonly controls?: string; readonly form?: string } = {},
): string {
  return `<!DOCTYPE html>
<html lang="${spoken()}">
<head>
<meta charset="UTF-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'nonce-${nonce}'; style-src 'nonce-${nonce}'; base-uri 'none'; form-action 'none'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
<style nonce="${nonce}" id="sheet-style"></style>
<style nonce="${nonce}">${FRAME}</style>
</head>
<body>
<header id="above">
${controls}<p id="notice" role="status" hidden></p>
</header>
${form}<main id="sheet"></main>
<script nonce="${nonce}" src="${script}"></script>
</body>
</html>`;
}

/** Fresh for each page. */
export function newNonce(): string {
  return [...crypto.getRandomValues(new Uint8Array(16))]
    .map((byte) => byte.toString(16).padStart(2, "0"))
    .join("");
}

/** Tag of the language that these words are in: that of the editor where they are translated to it. */
const spoken = (): string => (l10n.bundle === undefined ? "en" : env.language);

const unitWords = (): Record<Choices["units"], string> => ({
  plan: l10n.t("as the plan has them"),
  inches: l10n.t("inches"),
  millimetres: l10n.t("millimetres"),
});

const readerWords = (): Record<Choices["reader"], string> => ({
  builder: l10n.t("a builder"),
  stations: l10n.t("stations"),
  learners: l10n.t("learners"),
});

const options = <T extends string>(choices: readonly T[], words: Readonly<Record<T, string>>): string =>
  choices.map((value) => `<option value="${value}">${words[value]}</option>`).join("");
