/** The empty page that the shop sheet is put into. It is made of fixed text only; nothing of a plan is in it. */
import * as vscode from "vscode";

/** Nothing is loaded but the one script; styles only where they carry the nonce. */
export function sheetPage(webview: vscode.Webview, extensionUri: vscode.Uri, nonce: string): string {
  const script = webview.asWebviewUri(vscode.Uri.joinPath(extensionUri, "dist", "preview.js"));
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="UTF-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'nonce-${nonce}'; style-src 'nonce-${nonce}'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Shop Sheet</title>
<style nonce="${nonce}">${FRAME}</style>
<style nonce="${nonce}" id="sheet-style"></style>
</head>
<body>
<p id="notice" role="status" hidden></p>
<main id="sheet"></main>
<script nonce="${nonce}" src="${script}"></script>
</body>
</html>`;
}

/** Only what is around the sheet; the sheet brings its own style. */
const FRAME = `
body { padding: 0; margin: 0; }
main { padding: 0 1rem 1rem; }
#notice {
  position: sticky; top: 0; z-index: 1; margin: 0; padding: 0.5rem 1rem;
  color: var(--vscode-inputValidation-warningForeground, var(--vscode-editor-foreground));
  background: var(--vscode-inputValidation-warningBackground, var(--vscode-editor-background));
  border-bottom: 1px solid var(--vscode-inputValidation-warningBorder, currentColor);
}
#notice[hidden] { display: none; }
[data-line] { cursor: pointer; }
.marks [data-line]:focus-visible { outline: 2px solid var(--vscode-focusBorder, currentColor); outline-offset: 1px; }
.drawings .face.marked { fill: #ffe48a; stroke: #000; stroke-width: 0.9; stroke-linejoin: round; }
`;
