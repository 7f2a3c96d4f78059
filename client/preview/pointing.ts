/**
 * Pointing at the sheet: a click on what knows its line leads there (a face of a piece to the line that puts it there, a
 * balloon or a row to the line of its part), and what the line under the cursor is about is marked.
 */
import type { MarkLine } from "./messages";

/** `go` is told the line, counted from 1. */
export function followClicks(page: Element, go: (line: number) => void): void {
  const follow = (target: Element): void => {
    const line = Number(target.closest("[data-line]")?.getAttribute("data-line") ?? 0);
    if (Number.isInteger(line) && line > 0) go(line);
  };
  page.addEventListener("click", ({ target }) => {
    if (!(target instanceof Element) || target.closest(TICKING) !== null) return;
    // Whoever selects text wants the text.
    if (document.getSelection()?.isCollapsed !== false) follow(target);
  });
  page.addEventListener("keydown", (event) => {
    if (!(event instanceof KeyboardEvent) || !(event.target instanceof Element)) return;
    if (!event.target.matches("[role=link]") || (event.key !== "Enter" && event.key !== " ")) return;
    event.preventDefault(); // the page does not scroll
    follow(event.target);
  });
}

/** Boxes to tick, and the room around them: whoever just misses one wants to stay. */
const TICKING = ".tick-box, .tick, button";

/** Pieces in the drawings, and at their edge the rows and items that come from the cursor's line. */
export function mark(part: Element, { marked, lines }: MarkLine): void {
  const pieces = new Set(marked);
  for (const face of part.querySelectorAll(".drawings .face"))
    face.classList.toggle("marked", pieces.has(face.getAttribute("data-piece") ?? ""));
  const [first, last] = lines ?? [0, -1];
  for (const owner of part.querySelectorAll(":not(svg *)[data-line]")) {
    const line = Number(owner.getAttribute("data-line"));
    if (line >= first && line <= last) owner.setAttribute("aria-current", "true");
    else owner.removeAttribute("aria-current");
  }
}
