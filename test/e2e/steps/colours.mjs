// Colours: that what a plan says can be told apart by them in any theme, with the server and without it.
import assert from "node:assert/strict";
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { openText } from "../editor.mjs";

const FILE = "potting-bench.sawbuck";
/** Themes that the workbench has, and the classes by which it tells which one is shown. */
const THEMES = [
  { name: "light", setting: "Light Modern", shown: "light_modern" },
  { name: "dark", setting: "Dark Modern", shown: "dark_modern" },
  { name: "high-contrast", setting: "Default High Contrast", shown: "hc_black" },
];
/** Words of the sample whose colours have to differ, each with the beginning of its line. */
const WORDS = {
  comment: { line: "# A bench", find: "bench" },
  "first word": { line: "part post", find: "part" },
  name: { line: "part post", find: "post" },
  number: { line: "  kerf", find: "3/32" },
  "words to people": { line: "plan ", find: "bench" },
};
/** Names that are plain without the server, which knows what they are; and a mark that always is. */
const MEANT = {
  measure: { line: "part post", find: "top-height" },
  part: { line: "part long-rail", find: "posts" },
  bought: { line: "part bench-top", find: "bench-ply" },
  "no name": { line: "part post", find: "," },
};

export const scenarios = [
  {
    name: "colours of the text alone tell its words apart in a light, a dark and a high-contrast theme",
    needsServer: false,
    run: async ({ page, folder, shot, patience }) => {
      const see = await plan(page, folder, patience, false);
      for (const theme of THEMES) {
        await see.in(theme);
        await see.apart(theme, WORDS);
        await shot(`colours-text-${theme.name}`);
      }
    },
  },
  {
    name: "colours by meaning tell parts, measures and what is bought from plain text in each theme as well",
    run: async ({ page, folder, shot, patience }) => {
      const see = await plan(page, folder, patience, true);
      for (const theme of THEMES) {
        await see.in(theme);
        await see.differ(MEANT.part, MEANT["no name"]);
        // Where a theme has one colour for all that is no type, measures and what is bought share it.
        const { measure, bought, ...others } = MEANT;
        await see.apart(theme, { measure, ...others });
        await see.apart(theme, { bought, ...others });
        await see.apart(theme, WORDS);
        await shot(`colours-meaning-${theme.name}`);
      }
    },
  },
];

async function plan(page, folder, patience, semantic) {
  // First, since a folder that appears in the list of files moves what is clicked there.
  await openText(page, folder, FILE);
  const settings = join(folder, ".vscode");
  mkdirSync(settings, { recursive: true });
  const set = (theme) =>
    writeFileSync(
      join(settings, "settings.json"),
      JSON.stringify({
        "workbench.colorTheme": theme,
        "editor.semanticHighlighting.enabled": semantic,
        "editor.minimap.enabled": false,
      }),
    );
  const colourOf = (word) => page.evaluate(colourOnScreen, word);
  /**
   * Waits until two words have different colours. A workbench whose theme changes while a change of the colours by meaning is
   * on its way drops them all, and asks for them again at the next key.
   */
  const differ = async (one, other) => {
    for (let waited = 0; waited < patience; waited += 250) {
      const [a, b] = [await colourOf(one), await colourOf(other)];
      if (a !== undefined && b !== undefined && a !== b) return;
      await page.waitForTimeout(250);
      if (semantic && waited % 10_000 === 9_750) {
        await page.keyboard.press("Space");
        await page.keyboard.press("Backspace");
      }
    }
    assert.fail(`“${one.find}” and “${other.find}” have the same colour`);
  };
  return {
    in: async ({ setting, shown }) => {
      set(setting);
      await page.locator(`.monaco-workbench[class*="${shown}"]`).waitFor();
      // Lines are coloured one after the other, in the background.
      await differ(WORDS.comment, WORDS.name);
    },
    differ,
    /** Lines that a new theme has not reached yet are waited for. */
    apart: async ({ name }, words) => {
      const alike = async () => {
        const colours = new Map();
        for (const [what, word] of Object.entries(words)) {
          const colour = await colourOf(word);
          if (!colour) return `no ${what} is on the screen`;
          if (colours.has(colour)) return `${what} and ${colours.get(colour)} are both ${colour} (${name})`;
          colours.set(colour, what);
        }
      };
      let said = await alike();
      for (let waited = 0; said !== undefined && waited < patience; waited += 250) {
        await page.waitForTimeout(250);
        said = await alike();
      }
      assert.equal(said, undefined, said);
    },
  };
}

// Those below run in the page, each by itself. Blanks on the screen are no-break spaces.

function colourOnScreen({ line, find }) {
  const plain = (node) => node.textContent.replaceAll("\u00a0", " ");
  const shown = [...document.querySelectorAll(".monaco-editor .view-line")].find((one) =>
    plain(one).startsWith(line),
  );
  let offset = shown === undefined ? -1 : plain(shown).indexOf(find);
  if (offset < 0) return undefined;
  const walker = document.createTreeWalker(shown, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
    if (offset < node.textContent.length) return getComputedStyle(node.parentElement).color;
    offset -= node.textContent.length;
  }
  return undefined;
}
