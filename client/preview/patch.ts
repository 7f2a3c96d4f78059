/**
 * Makes one element's content equal to another's while touching only what differs, so that the place on the page, a marked
 * text and what the reader opened stay as they are.
 */

/** `wanted` is used up: what is new moves from it into `shown`. A line that counts ticks keeps what it says: whoever counts says it anew. */
export function patch(shown: Element, wanted: Element): void {
  if (shown.hasAttribute("data-progress") && wanted.hasAttribute("data-progress")) {
    for (const { name, value } of wanted.attributes) if (name !== "hidden") shown.setAttribute(name, value);
    return;
  }
  patchAttributes(shown, wanted);
  const old = [...shown.childNodes];
  const next = [...wanted.childNodes];
  const top = sameFromTop(old, next);
  const tail = sameFromTop(old.slice(top).reverse(), next.slice(top).reverse());
  const firstOfTail = old[old.length - tail] ?? null;
  next.slice(top, next.length - tail).forEach((node, index) => {
    const there = index < old.length - top - tail ? old[top + index] : undefined;
    if (there === undefined) shown.insertBefore(node, firstOfTail);
    else if (there instanceof Element && node instanceof Element && alike(there, node)) patch(there, node);
    else there.replaceWith(node);
  });
  for (const node of old.slice(next.length - tail, old.length - tail)) node.remove();
}

function sameFromTop(a: readonly Node[], b: readonly Node[]): number {
  let count = 0;
  while (count < a.length && count < b.length && a[count]!.isEqualNode(b[count]!)) count++;
  return count;
}

/** The same kind of thing, so that it may be changed into the other rather than replaced; a drawing is sooner replaced than compared. */
function alike(a: Element, b: Element): boolean {
  return a.nodeName === b.nodeName && a.id === b.id && a.nodeName !== "svg";
}

function patchAttributes(shown: Element, wanted: Element): void {
  for (const { name } of [...shown.attributes]) {
    // A fold that the reader opened stays open.
    if (!wanted.hasAttribute(name) && !(shown instanceof HTMLDetailsElement && name === "open")) {
      shown.removeAttribute(name);
    }
  }
  for (const { name, value } of wanted.attributes) {
    if (shown.getAttribute(name) !== value) shown.setAttribute(name, value);
  }
}
