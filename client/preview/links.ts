/** Ways to the plan for the keyboard: whatever knows its line gets one link that can be reached by Tab. Drawings have none: the list of marks under the first leads to their parts. */

/** The words of a row, an item, a step or a picture become a link, beside its boxes to tick and the lists in it. */
export function linkUp(part: Element): void {
  for (const owner of part.querySelectorAll("[data-line]")) {
    const host = owner.closest("svg") === null ? wordsOf(owner) : undefined;
    const own = [...(host?.childNodes ?? [])].filter((node) => !isApart(node));
    if (host === undefined || own.every((node) => node.textContent?.trim() === "")) continue;
    const link = host.ownerDocument.createElement("span");
    link.className = "to";
    link.setAttribute("role", "link");
    link.setAttribute("tabindex", "0");
    own[0]?.before(link);
    link.append(...own);
  }
}

function wordsOf(owner: Element): Element | undefined {
  if (owner.matches("li")) return owner;
  if (!owner.matches("tr")) return owner.querySelector(":scope > :is(h3, figcaption)") ?? undefined;
  const cells = [...owner.children].filter((cell) => cell.textContent?.trim() !== "");
  return cells.find((cell) => cell.matches(".text")) ?? cells[0];
}

const isApart = (node: Node): boolean => node instanceof Element && node.matches(".tick-box, ul, ol, p");
