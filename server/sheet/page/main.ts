/** Runs in a sheet that was saved as a page of its own: keeps the ticks in the browser, under the plan's name. */
import { type Kept, keepTicks } from "./ticks";

const sheet = document.querySelector("main");
if (sheet instanceof HTMLElement) {
  const { again } = keepTicks(sheet, inBrowser(`sawbuck sheet: ${sheet.dataset.plan ?? ""}`));
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
