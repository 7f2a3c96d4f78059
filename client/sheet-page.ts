/** The page that the shop sheet is put into, with its controls. It is made of fixed text only; nothing of a plan is in it. */
import { READERS, UNITS } from "./choices";
import { FRAME } from "./sheet-frame";

/** Nothing is loaded but the one script, by its address; styles only where they carry the nonce. */
export function sheetPage(script: string, nonce: string): string {
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="UTF-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'nonce-${nonce}'; style-src 'nonce-${nonce}'; base-uri 'none'; form-action 'none'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Shop Sheet</title>
<style nonce="${nonce}" id="sheet-style"></style>
<style nonce="${nonce}">${FRAME}</style>
</head>
<body>
<header id="above">
<div id="controls" role="group" aria-label="How this sheet is shown">
<label>Lengths <select id="units">${options(UNITS)}</select></label>
<label>For <select id="reader">${options(READERS)}</select></label>
<button id="save" type="button">Save …</button>
</div>
<p id="notice" role="status" hidden></p>
</header>
<main id="sheet"></main>
<script nonce="${nonce}" src="${script}"></script>
</body>
</html>`;
}

const options = (choices: Readonly<Record<string, string>>): string =>
  Object.entries(choices)
    .map(([value, words]) => `<option value="${value}">${words}</option>`)
    .join("");
