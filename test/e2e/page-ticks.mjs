// What is ticked on a saved page: kept through a reload and a small edit of the plan, taken back, and told where nothing is kept.
import assert from "node:assert/strict";
import { copyFileSync, mkdtempSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

/** Each is given a page, the address of a plan's page, and what writes that page anew from a changed plan. */
export const TICKING = [
  {
    name: "ticks stay through a reload, and through a change of another part",
    run: async ({ page, address, rewrite }) => {
      await page.goto(address);
      await left(page, 32);
      await box(page, "cut/leg / front left").check();
      await box(page, "cut/side / behind legs / 2").check();
      await box(page, "buy/boards/1x6/1828.8/4").check();
      await left(page, 30);
      await page.reload();
      await left(page, 30);
      assert.ok(await box(page, "cut/leg / front left").isChecked());
      assert.ok(await box(page, "buy/boards/1x6/1828.8/4").isChecked());
      await rewrite((text) => text.replace("10 across, spread", "9 across, spread"));
      await page.reload();
      await left(page, 29);
      assert.ok(await box(page, "cut/side / behind legs / 2").isChecked());
      assert.ok(!(await box(page, "cut/leg / back left").isChecked()));
    },
  },
  {
    name: "everything is unticked, and put back, by the keyboard alone",
    run: async ({ page, address }) => {
      await page.goto(address);
      const first = box(page, "cut/leg / front left");
      await first.focus();
      await page.keyboard.press("Space");
      assert.ok(await first.isChecked());
      await left(page, 31);
      const button = page.locator(".progress button");
      await button.focus();
      await page.keyboard.press("Enter");
      await left(page, 32);
      assert.equal(await button.textContent(), "Put the ticks back");
      await page.keyboard.press("Enter");
      await left(page, 31);
      await page.keyboard.press("Enter");
      await page.reload();
      await left(page, 32);
    },
  },
  {
    name: "a copy of the plan in another folder has ticks of its own",
    run: async ({ page, address }) => {
      await page.goto(address);
      await box(page, "cut/leg / front left").check();
      await left(page, 31);
      const file = fileURLToPath(address);
      const other = join(mkdtempSync(join(dirname(file), "copy-")), basename(file));
      copyFileSync(file, other);
      await page.goto(pathToFileURL(other).href);
      await left(page, 32);
      await page.goto(address);
      await left(page, 31);
    },
  },
  {
    name: "a ticked box looks ticked where the colours are forced",
    run: async ({ page, address }) => {
      await page.emulateMedia({ forcedColors: "active" });
      await page.goto(address);
      const first = box(page, "cut/leg / front left");
      const before = await first.screenshot();
      await first.check();
      await page.mouse.move(0, 0);
      await first.evaluate((input) => input.blur());
      assert.ok(!before.equals(await first.screenshot()));
    },
  },
  {
    name: "a box reached by the keyboard is not hidden behind the line that counts",
    run: async ({ page, address }) => {
      await page.goto(address);
      const boxes = page.locator(".cut-list input[data-tick]");
      await boxes.last().focus();
      for (let n = await boxes.count(); n > 1; n--) {
        await page.keyboard.press("Shift+Tab");
        const hidden = await page.evaluate(() => {
          const own = document.activeElement.getBoundingClientRect();
          return own.top < document.querySelector(".progress").getBoundingClientRect().bottom;
        });
        assert.ok(!hidden);
      }
    },
  },
  {
    name: "a browser that keeps nothing is told of, and boxes are ticked all the same",
    denied: true,
    run: async ({ page, address }) => {
      await page.goto(address);
      await box(page, "cut/leg / front left").check();
      await left(page, 31);
      await page.locator(".progress").filter({ hasText: "Ticks cannot be kept on this device" }).waitFor();
    },
  },
];

/** As one of the reports: what went wrong, and nothing else. */
export async function tickingOf(browser, { file, rewrite }) {
  return Promise.all(
    TICKING.map(async ({ name, denied, run }) => {
      const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
      if (denied) await context.addInitScript(deny);
      const page = await context.newPage();
      const wrong = [];
      page.on("pageerror", (error) => wrong.push(`a script breaks: ${error.message}`));
      page.on("console", (said) => wrong.push(`the console says: ${said.text()}`));
      const own = await rewrite(name, (text) => text);
      const again = (change) => rewrite(name, change);
      await run({ page, address: pathToFileURL(own).href, rewrite: again }).catch((error) =>
        wrong.push(String(error.message).split("\n")[0]),
      );
      await context.close();
      return { name: `${file}, ${name}`, wrong, notes: [] };
    }),
  );
}

const box = (page, id) => page.locator(`input[data-tick="${id}"]`);

/** How many pieces the page says are left to cut. */
const left = (page, n) =>
  page
    .locator(".progress")
    .filter({ hasText: new RegExp(`Left to cut: ${n} of`) })
    .waitFor();

function deny() {
  Object.defineProperty(window, "localStorage", {
    get: () => {
      throw new Error("nothing is kept here");
    },
  });
}
