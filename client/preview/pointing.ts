/**
 * Pointing at the sheet: a click on what knows its line leads there (a face of a piece to the line that puts it there, a
 * balloon or a row to the line of its part), and pieces named from outside are marked in the drawings.
 */

/** `go` is told the line, counted from 1. */
export function followClicks(sheet: Element, go: (line: number) => void): void {
  const follow = ({ target }: Event): void => {
    const found = target instanceof Element ? target.closest("[data-line]") : null;
    const line = Number(found?.getAttribute("data-line"));
    if (found !== null && Number.isInteger(line) && line > 0) go(line);
  };
  sheet.addEventListener("click", (event) => {
    // Whoever selects text wants the text.
    if (document.getSelection()?.isCollapsed !== false) follow(event);
  });
  sheet.addEventListener("keydown", (event) => {
    if (event instanceof KeyboardEvent && event.key === "Enter") follow(event);
  });
}

/** After each change of the sheet: the list of marks can be walked with the keyboard, and what was marked is marked again. */
export function dress(sheet: Element, marked: ReadonlySet<string>): void {
  for (const item of sheet.querySelectorAll(".marks [data-line]")) {
    item.setAttribute("tabindex", "0");
    item.setAttribute("role", "link");
  }
  for (const face of sheet.querySelectorAll(".drawings .face")) {
    face.classList.toggle("marked", marked.has(face.getAttribute("data-piece") ?? ""));
  }
}
