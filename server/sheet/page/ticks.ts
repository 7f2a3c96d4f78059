/**
 * The boxes to tick on a sheet that stands in a browser: what was ticked is ticked again after a reload or a change of the
 * plan, by identity, and what is left is counted. Nothing leaves the device.
 */

/** Where the identities of ticked boxes are kept, on this device. */
export interface Kept {
  readonly read: () => readonly string[];
  /** False where nothing can be kept. */
  readonly write: (ids: readonly string[]) => boolean;
}

export interface Ticks {
  /** After the sheet changed, or what is kept: sets all boxes and counts anew. */
  readonly again: () => void;
}

export function keepTicks(sheet: Element, kept: Kept): Ticks {
  let ticked = new Set<string>();
  let cleared: readonly string[] = [];
  let keeps = true;

  const boxes = (): NodeListOf<HTMLInputElement> => sheet.querySelectorAll("input[data-tick]");

  const show = (): void => {
    for (const box of boxes()) box.checked = ticked.has(idOf(box));
    for (const line of sheet.querySelectorAll<HTMLElement>("[data-progress]")) count(line);
  };

  const count = (line: HTMLElement): void => {
    const own = [...boxes()].filter((box) => idOf(box).startsWith(`${line.dataset.progress}/`));
    const all = own.reduce((sum, box) => sum + piecesOf(box), 0);
    const left = own.reduce((sum, box) => sum + (box.checked ? 0 : piecesOf(box)), 0);
    const words = (line.dataset.left ?? "").replace("{left}", String(left)).replace("{all}", String(all));
    const said = line.querySelector("[role=status]");
    const told = keeps ? words : `${words} ${line.dataset.notKept ?? ""}`;
    if (said !== null && said.textContent !== told) said.textContent = told;
    const button = line.querySelector("button");
    if (button !== null) {
      const none = [...boxes()].every((box) => !box.checked);
      button.hidden = none && cleared.length === 0;
      const { words = button.textContent ?? "", other = "" } = button.dataset;
      button.dataset.words = words;
      button.textContent = none && cleared.length > 0 ? other : words;
    }
    line.hidden = all === 0;
  };

  const store = (): void => {
    keeps = kept.write([...ticked]);
    show();
  };

  sheet.addEventListener("change", ({ target }) => {
    if (!(target instanceof HTMLInputElement) || target.dataset.tick === undefined) return;
    if (target.checked) ticked.add(idOf(target));
    else ticked.delete(idOf(target));
    cleared = [];
    store();
  });

  sheet.addEventListener("click", ({ target }) => {
    if (!(target instanceof Element) || target.closest("[data-progress] button") === null) return;
    const here = [...boxes()].map(idOf);
    const set = here.filter((id) => ticked.has(id));
    if (set.length > 0) {
      for (const id of set) ticked.delete(id);
      cleared = set;
    } else {
      for (const id of cleared) ticked.add(id);
      cleared = [];
    }
    store();
  });

  const again = (): void => {
    ticked = new Set(kept.read());
    show();
  };
  again();
  return { again };
}

const idOf = (box: HTMLInputElement): string => box.dataset.tick ?? "";

/** A box may stand for many pieces. */
const piecesOf = (box: HTMLInputElement): number => Number(box.dataset.pieces ?? 1);
