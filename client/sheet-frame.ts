/**
 * How the panel's page looks around the sheet, which brings its own style: black on white. In dark surroundings the sheet
 * alone is turned to light on dark by a filter. A colour of the theme that is to be seen inside it is turned beforehand.
 */
const DARK = 'body[data-vscode-theme-kind="vscode-dark"]';
const CONTRAST_DARK = 'body[data-vscode-theme-kind="vscode-high-contrast"]';
const CONTRAST_LIGHT = 'body[data-vscode-theme-kind="vscode-high-contrast-light"]';
const CONTRAST = ":is(.vscode-high-contrast, .vscode-high-contrast-light)";

const turned = (colour: string): string => `rgb(from ${colour} calc(255 - r) calc(255 - g) calc(255 - b))`;

export const FRAME = `
html { scroll-padding-top: calc(var(--above, 0px) + 14mm); }
body { padding: 0; margin: 0; }
#above {
  position: sticky; top: 0; z-index: 2;
  color: var(--vscode-foreground, inherit); background: var(--vscode-editor-background, Canvas);
  border-bottom: 1px solid var(--vscode-contrastBorder, var(--vscode-panel-border, currentColor));
}
#controls { display: flex; flex-wrap: wrap; align-items: center; gap: 0.3rem 1rem; padding: 0.35rem 1rem; }
#controls label { display: flex; align-items: center; gap: 0.4rem; }
#controls select, #controls button {
  font: inherit; min-height: 1.9em; padding: 0.1rem 0.4rem; border-radius: 2px; max-width: 100%;
  color: var(--vscode-dropdown-foreground, inherit); background: var(--vscode-dropdown-background, transparent);
  border: 1px solid var(--vscode-contrastBorder, var(--vscode-dropdown-border, currentColor));
}
#controls button { margin-left: auto; padding: 0.1rem 0.8rem; cursor: pointer; }
#controls :focus-visible { outline: 2px solid var(--vscode-focusBorder, currentColor); outline-offset: 1px; }
#notice {
  margin: 0; padding: 0.5rem 1rem;
  color: var(--vscode-inputValidation-warningForeground, var(--vscode-editor-foreground));
  background: var(--vscode-inputValidation-warningBackground, var(--vscode-editor-background));
  border-top: 1px solid var(--vscode-inputValidation-warningBorder, currentColor);
}
#notice[hidden] { display: none; }

#slip { padding: 0.5rem 1rem 1rem; color: var(--vscode-foreground, inherit); }
#slip h1 { font-size: 1.5em; margin: 0.5rem 0; }
#slip table { border-collapse: collapse; width: 100%; }
#slip th, #slip td { text-align: left; font-weight: normal; padding: 0.25rem 0.6rem 0.25rem 0; vertical-align: baseline; }
#slip ~ main section:first-of-type h2 { margin-top: 0; padding-top: 0; border-top: none; }
#slip thead th { border-bottom: 1px solid currentColor; }
#slip .number, #slip .now { text-align: right; white-space: nowrap; }
#slip input {
  font: inherit; width: 9em; max-width: 100%; padding: 0.2rem 0.4rem; box-sizing: border-box;
  color: var(--vscode-input-foreground, inherit); background: var(--vscode-input-background, transparent);
  border: 1px solid var(--vscode-contrastBorder, var(--vscode-input-border, currentColor));
}
#slip input[aria-invalid=true] { border-color: var(--vscode-inputValidation-errorBorder, currentColor); border-style: dashed; }
#slip .wrong { display: block; color: var(--vscode-errorForeground, inherit); }
#slip button {
  font: inherit; margin-top: 0.8rem; padding: 0.35rem 1rem; border-radius: 2px; cursor: pointer;
  color: var(--vscode-button-foreground, inherit); background: var(--vscode-button-background, transparent);
  border: 1px solid var(--vscode-contrastBorder, transparent);
}
#slip button:disabled { opacity: 0.5; cursor: default; }
#slip :focus-visible { outline: 2px solid var(--vscode-focusBorder, currentColor); outline-offset: 1px; }

#sheet { padding: 0 1rem 1rem; --focus: #000; --here: #8a6d00; }
#sheet .progress { top: var(--above, 0px); }
#sheet [data-line] { cursor: pointer; }
#sheet .tick { cursor: auto; }
#sheet .to:focus-visible, #sheet input:focus-visible, #sheet button:focus-visible, #sheet .paper:focus-visible {
  outline: 2px solid var(--focus); outline-offset: 1px; }
#sheet [aria-current] { box-shadow: -1mm 0 0 #fff, -2mm 0 0 var(--here); }
#sheet .drawings .face.marked { fill: #ffe48a; stroke: #000; stroke-width: 0.9; stroke-linejoin: round; }

@media screen {
${DARK} #sheet { filter: invert(0.9) hue-rotate(180deg); }
${CONTRAST_DARK} #sheet { filter: invert(1);
  --focus: ${turned("var(--vscode-focusBorder, #fff)")}; --here: ${turned("var(--vscode-contrastActiveBorder, #fff)")};
  --edge: ${turned("var(--vscode-contrastBorder, #fff)")}; }
${CONTRAST_LIGHT} #sheet { --focus: var(--vscode-focusBorder, #000); --here: var(--vscode-contrastActiveBorder, #000);
  --edge: var(--vscode-contrastBorder, #000); }
${CONTRAST} #sheet .sheet { outline: 1px solid var(--edge); outline-offset: -1px; }
${CONTRAST} #sheet .old { opacity: 1; outline: 1px dashed var(--edge); }
/* The tint of a marked piece: its dark likeness, once turned. */
${CONTRAST_DARK} #sheet .drawings .face.marked, ${CONTRAST_DARK} #sheet [fill="#ffe48a"] { fill: #94adff; }
}
`;
