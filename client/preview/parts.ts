/** The sheet of one plan, put together from its sections: one that is the same as before is neither read nor compared again. */
import type { SheetNews } from "../sheet-view";
import { patch } from "./patch";

export interface SheetOfParts {
  /** What the sheet's own style is for. */
  readonly element: HTMLElement;
  /** Sections without HTML stay as they are; those that are not named go. */
  readonly show: (news: SheetNews) => void;
}

/** `dress` is told of each section that is new, before it is shown. */
export function sheetOfParts(dress: (part: Element) => void): SheetOfParts {
  const element = document.createElement("div");
  element.className = "sheet";
  let shown = new Map<string, Element>();

  const partOf = (name: string, html: string | undefined): Element | undefined => {
    const there = shown.get(name);
    if (html === undefined) return there;
    // Read in a document of its own, where nothing loads or runs.
    const wanted = new DOMParser().parseFromString(html, "text/html").body.firstElementChild;
    if (wanted === null) return undefined;
    document.adoptNode(wanted);
    dress(wanted);
    if (there === undefined) return wanted;
    patch(there, wanted);
    return there;
  };

  return {
    element,
    show: ({ language, parts }) => {
      element.lang = language;
      const next = new Map<string, Element>();
      for (const { name, html } of parts) {
        const part = partOf(name, html);
        if (part !== undefined) next.set(name, part);
      }
      for (const [name, part] of shown) if (!next.has(name)) part.remove();
      [...next.values()].forEach((part, i) => {
        if (element.children[i] !== part) element.insertBefore(part, element.children[i] ?? null);
      });
      element.hidden = next.size === 0;
      shown = next;
    },
  };
}
