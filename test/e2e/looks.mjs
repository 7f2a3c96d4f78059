// What of a page can be measured: whether it runs over its sides, how large its letters and what is to be ticked or pressed are.

/** No letters are smaller, in CSS px. */
const LEAST_TEXT = 11;
/** What is ticked with a pencil, and what is pressed with a pointer, is no smaller, in CSS px. */
const LEAST_BOX = 24;
/** What is pressed with a finger is no smaller (common practice: a fingertip is 10 mm wide). */
const LEAST_TOUCHED = 44;

/** Boxes for a pencil. Whatever can be pressed is found by what it is. */
const PENCIL_BOXES = ".tick > *, .box";

/**
 * What is wrong with how the page looks in one view, a sentence each, those of a kind together. A `printed` one has no
 * pointer; a `touched` one is pressed with a finger.
 */
export async function wrongLooks(page, { touched = false, printed = false }) {
  const least = printed
    ? { text: LEAST_TEXT, box: 0, pressed: 0 }
    : { text: LEAST_TEXT, box: LEAST_BOX, pressed: touched ? LEAST_TOUCHED : LEAST_BOX };
  const found = await page.evaluate(inPage, { least, pencilBoxes: PENCIL_BOXES });
  const kinds = new Map();
  for (const { what, where } of found) kinds.set(what, [...(kinds.get(what) ?? []), where]);
  return [...kinds].map(([what, places]) =>
    places.length === 1 ? `${what}: ${places[0]}` : `${what}: ${places.length} places, first ${places[0]}`,
  );
}

/** Runs in the page, on its own: nothing from outside is there but what it is given. */
function inPage({ least, pencilBoxes }) {
  const found = [];
  const named = (element) =>
    [element.tagName.toLowerCase(), ...element.classList, element.closest("[data-line]") && ""]
      .filter(Boolean)
      .join(".");
  const short = (words) => words.replace(/\s+/g, " ").trim().slice(0, 40);
  const px = (size) => Math.round(size * 10) / 10;
  const tell = (what, element) =>
    found.push({ what, where: `${named(element)} “${short(element.textContent)}”` });
  const all = [...document.body.querySelectorAll("*")].filter((element) => element.checkVisibility());
  // Said to who cannot see it, and drawn in no room.
  const unseen = (element) => {
    const { width, height } = element.getBoundingClientRect();
    return width <= 1 && height <= 1;
  };

  const room = document.documentElement.clientWidth;
  const wide = document.scrollingElement.scrollWidth;
  if (wide > room) found.push({ what: `the page is ${wide} px wide in ${room} px`, where: "the page" });
  const scrolls = (element) => {
    for (let up = element.parentElement; up; up = up.parentElement)
      if (/auto|scroll/.test(getComputedStyle(up).overflowX)) return true;
    return false;
  };
  for (const element of all) {
    if (element.ownerSVGElement || unseen(element) || scrolls(element)) continue;
    const { left, right } = element.getBoundingClientRect();
    if (right > room + 1) tell("stands out to the right", element);
    if (left < -1) tell("stands out to the left", element);
  }

  const drawn = (element, size) => {
    const turned = element.ownerSVGElement ? element.getScreenCTM() : null;
    return turned ? size * Math.hypot(turned.a, turned.b) : size;
  };
  const letters = (element, pseudo) => {
    const size = drawn(element, Number.parseFloat(getComputedStyle(element, pseudo).fontSize));
    if (size < least.text - 0.05)
      tell(`letters of ${px(size)} px in ${named(element)}${pseudo ?? ""}`, element);
  };
  for (const element of all) {
    if (unseen(element)) continue;
    const own = [...element.childNodes].some((node) => node.nodeType === 3 && node.data.trim() !== "");
    if (own) letters(element, undefined);
    for (const pseudo of ["::before", "::after"]) {
      const { content } = getComputedStyle(element, pseudo);
      if (!["none", "normal", '""'].includes(content)) letters(element, pseudo);
    }
  }

  // A label is pressed in place of its box. A link in running text is as high as its line.
  const pressed =
    "button, input:not([type=hidden]), select, textarea, summary, [role=button], [role=checkbox]";
  const small = (element, size, what) => {
    const rooms = [element, ...(element.labels ?? [])].map((one) => one.getBoundingClientRect());
    const width = Math.max(...rooms.map((one) => one.width));
    const height = Math.max(...rooms.map((one) => one.height));
    if (Math.min(width, height) < size - 0.5)
      tell(`${what} ${px(width)} x ${px(height)} px is under ${size} x ${size}`, element);
  };
  for (const element of all) {
    if (element.matches(pressed)) small(element, least.pressed, `${named(element)}, to be pressed,`);
    else if (element.matches(pencilBoxes) && !element.querySelector(pressed))
      small(element, least.box, `${named(element)}, to be ticked,`);
  }
  return found;
}
