// Hands and eyes for the scenarios: opening files, typing, pointing, and reading what the workbench shows.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { join } from "node:path";

/** The workbench's own names for what is on the screen. */
const on = {
  workbench: ".monaco-workbench",
  squiggle: ".monaco-editor .squiggly-error",
  problems: ".markers-panel .monaco-list-row",
  hover: ".monaco-hover:visible",
  input: ".quick-input-widget .quick-input-filter input.input",
  rows: ".quick-input-list .monaco-list-row",
  suggestions: ".suggest-widget.visible .monaco-list-row",
  hint: '.monaco-editor .view-line [class*="dyn-rule"]',
  lens: ".monaco-editor .codelens-decoration a, .monaco-editor .codelens-decoration span",
  position: "#status\\.editor\\.selection",
  counts: "#status\\.problems",
  language: "#status\\.editor\\.mode",
};

/**
 * Opens a plan, `file` of `folder`, waits until the server has told how it stands, and gives the means to work on it: what is
 * typed or asked before that is not answered.
 */
export async function openEditor(page, folder, file) {
  const editor = await openText(page, folder, file);
  await page.locator(on.lens).first().waitFor();
  return editor;
}

/** The same of any file, without a server. Follows the text itself, to know where things stand in it. */
export async function openText(page, folder, file) {
  await page.locator(on.workbench).waitFor();
  await page.getByRole("treeitem", { name: file }).first().dblclick();
  await page.locator(".monaco-editor .view-line").first().waitFor();
  return editorOf(page, readFileSync(join(folder, file), "utf8"));
}

export function editorOf(page, start) {
  let text = start;

  /** Offset of `find` in the line that begins with `line`. */
  const offsetOf = (line, find) => {
    const begin = `\n${text}`.indexOf(`\n${line}`);
    assert.notEqual(begin, -1, `no line begins with ${line}`);
    const at = text.indexOf(find, begin);
    assert.ok(at !== -1 && !text.slice(begin, at).includes("\n"), `no ${find} in the line ${line}`);
    return at;
  };

  /** Takes the keys back and asks again where the panel, which has just had them, still counts as what is worked in. */
  const goTo = async (offset) => {
    const lines = text.slice(0, offset).split("\n");
    const [line, column] = [lines.length, lines.at(-1).length + 1];
    for (let tries = 1; ; tries++) {
      await page.keyboard.press("Control+g");
      try {
        await page.locator(on.input).first().fill(`:${line}:${column}`, { timeout: 5000 });
        await page.keyboard.press("Enter");
        await page.locator(on.input).first().waitFor({ state: "hidden", timeout: 5000 });
        return await editor.cursorAt(line, column);
      } catch (error) {
        if (tries === 3) throw error;
        await page.keyboard.press("Escape");
        await page.keyboard.press("Control+1");
      }
    }
  };

  const editor = {
    page,
    on,
    text: () => text,

    /** Puts the cursor before `find` in the line that begins with `line`. */
    placeCursor: (line, find) => goTo(offsetOf(line, find)),

    /** Types over `find`, key by key. */
    replace: async ({ line, find, type }) => {
      const at = offsetOf(line, find);
      await goTo(at);
      for (const _ of find) await page.keyboard.press("Shift+ArrowRight");
      await editor.type(type);
      text = text.slice(0, at) + type + text.slice(at + find.length);
      await editor.shows(text.slice(at).split("\n")[0]);
    },

    /** Gives `find` another name, in the box that comes up for it. */
    rename: async (line, find, to) => {
      await editor.placeCursor(line, find);
      await page.keyboard.press("F2");
      // A box that closes stays for a moment: it must have the keys, which one that has just opened may not get.
      const takeKeys = async () => {
        await page.waitForTimeout(1000);
        await page.evaluate(() => document.querySelector(".rename-box input")?.focus());
      };
      const hasKeys = page.waitForFunction(() => document.activeElement?.closest(".rename-box") !== null);
      await editor.repeat(takeKeys, hasKeys);
      await page.keyboard.press("Control+a");
      await page.keyboard.type(to, { delay: 15 });
      await page.keyboard.press("Enter");
    },

    /** A new line at the end of the text, and the cursor in it. */
    newLastLine: async () => {
      await page.keyboard.press("Control+End");
      if (!text.endsWith("\n")) await page.keyboard.press("Enter");
    },

    type: async (keys) => {
      await page.keyboard.type(keys, { delay: 15 });
      if (await page.locator(on.suggestions).first().isVisible()) await page.keyboard.press("Escape");
    },

    /** Waits until a line with this in it is on the screen, for so many ms where that is said. */
    shows: (part, timeout) => page.waitForFunction(lineWith, part, { timeout }),

    /** Rests the pointer on `find`, and waits for a hover that says `said` and has `part` of a page in it. */
    hover: async (line, find, said, part) => {
      await goTo(offsetOf(line, find));
      // Where it is may change once more: the editor scrolls, and a panel opens, in their own time.
      const point = async () => {
        const found = await page.waitForFunction(placeOnScreen, { line, find });
        const spot = await found.jsonValue();
        await page.mouse.move(spot.x, spot.y - 60);
        await page.mouse.move(spot.x, spot.y, { steps: 4 });
      };
      const hovers = page.locator(on.hover).filter({ hasText: said });
      await editor.repeat(point, (part === undefined ? hovers : hovers.locator(part)).first().waitFor());
    },

    repeat: (work, seen) => repeat(page, work, seen),

    command: async (title) => {
      await page.keyboard.press("F1");
      await page.locator(on.input).first().fill(`>${title}`);
      await page.locator(`${on.rows}.focused`).filter({ hasText: title }).first().waitFor();
      await page.keyboard.press("Enter");
    },

    pick: async (label) => {
      await page.locator(on.rows).filter({ hasText: label }).first().waitFor();
      await page.locator(on.input).first().fill(label);
      await page.locator(`${on.rows}.focused`).filter({ hasText: label }).first().waitFor();
      await page.keyboard.press("Enter");
    },

    openProblems: async () => {
      if (!(await page.locator(".markers-panel").isVisible())) await page.keyboard.press("Control+Shift+m");
      await page.locator(".markers-panel").waitFor();
    },

    problem: (text) => page.locator(on.problems).filter({ hasText: text }).first(),

    noProblems: async () => {
      await page.locator(on.squiggle).first().waitFor({ state: "detached" });
      await page.locator(`${on.counts}[aria-label="No Problems"]`).waitFor();
    },

    cursorAt: (line, column) =>
      page
        .locator(on.position)
        .filter({ hasText: `Ln ${line}, Col ${column}` })
        .waitFor(),

    /** Presses Enter, and takes it back and tries again while the line is still being coloured: until then it only copies. */
    enterTo: async (line, column) => {
      for (let tries = 0; tries < 10; tries++) {
        await page.keyboard.press("Enter");
        const position = await page
          .locator(on.position)
          .filter({ hasText: `Ln ${line}, ` })
          .textContent();
        if (position?.endsWith(`Col ${column}`)) return;
        await page.keyboard.press("Control+z");
        await page.waitForTimeout(500);
      }
      assert.fail(`Enter does not lead to line ${line}, column ${column}`);
    },

    lineNumber: (begin) => text.slice(0, offsetOf(begin, begin)).split("\n").length,

    sheet: () => sheetOf(page),
  };
  return editor;
}

/** What is inside the one page beside the text. */
export function sheetOf(page) {
  return page.frameLocator("iframe.webview.ready").frameLocator("iframe#active-frame");
}

/** For what the workbench itself may miss: does `work` up to three times, and tells it which time it is. */
export async function tries(work) {
  for (let time = 1; time < 3; time++) {
    if (await work(time).then(succeeded, failed)) return;
  }
  await work(3);
}

const succeeded = () => true;
const failed = () => false;

// The two below run in the page. Blanks on the screen are no-break spaces. Hints stand in a line, and are not of its text.

function lineWith(part) {
  const hint = '[class*="dyn-rule"]';
  return [...document.querySelectorAll(".monaco-editor .view-line")].some((line) => {
    const plain = line.cloneNode(true);
    for (const one of plain.querySelectorAll(hint)) one.remove();
    return plain.textContent.replaceAll("\u00a0", " ").includes(part);
  });
}

function placeOnScreen({ line, find }) {
  const hint = '[class*="dyn-rule"]';
  const textsOf = (shown) => {
    const walker = document.createTreeWalker(shown, NodeFilter.SHOW_TEXT);
    const nodes = [];
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode())
      if (!node.parentElement.closest(hint)) nodes.push(node);
    return nodes;
  };
  const plain = (nodes) =>
    nodes
      .map((node) => node.textContent)
      .join("")
      .replaceAll("\u00a0", " ");
  const shown = [...document.querySelectorAll(".monaco-editor .view-line")]
    .map(textsOf)
    .find((nodes) => plain(nodes).startsWith(line));
  if (shown === undefined) return undefined;
  let offset = plain(shown).indexOf(find) + Math.floor(find.length / 2);
  for (const node of shown) {
    if (offset < node.textContent.length) {
      const range = document.createRange();
      range.setStart(node, offset);
      range.setEnd(node, offset + 1);
      const box = range.getBoundingClientRect();
      return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    }
    offset -= node.textContent.length;
  }
  return undefined;
}

/** Does `work` every two seconds until `seen` has come true: nothing answers before the extension has started. */
export async function repeat(page, work, seen) {
  let over = false;
  const looked = seen.finally(() => {
    over = true;
  });
  const worked = (async () => {
    for (; !over; await page.waitForTimeout(2000)) await work();
  })();
  await Promise.all([looked, worked]);
}
