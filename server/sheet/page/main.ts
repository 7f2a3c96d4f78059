/**
 * Runs in a sheet that was saved as a page of its own: keeps the ticks in the browser, under the plan's name and the
 * folder of the page. Pages of one plan share them, in whatever language and units; a copy of the plan elsewhere has its own.
 */
import { type Kept, keepTicks } from "./ticks";

const folder = location.pathname.replace(/[^/]*$/, "");
const sheet = document.querySelector("main");
if (sheet instanceof HTMLElement) {
  const { again } = keepTicks(sheet, inBrowser(`sawbuck sheet: ${folder}${sheet.dataset.plan ?? ""}`));
  // The same plan in another window of this browser.
  window.addEventListener("storage", again);
}

function inBrowser(key: string): Kept {
  return {
    read: () => {
      try {
        const ids: unknown = JSON.parse(localStorage.getItem(key) ?? "[]");
        return Array.isArray(ids) ? ids.filter((id) => typeof id === "string") : [];
      } catch {
        return [];
      }
    },
    write: (ids) => {
      try {
        localStorage.setItem(key, JSON.stringify(ids));
        return true;
      } catch {
        return false;
      }
    },
  };
}
