/** What is laid on pages: slabs, each standing on one page in one piece, and bundles of slabs to keep together. */
import { type Fragment, heightOf, type Line } from "./lines";
import { BOX, HEAVY, INNER, MIDDLE, MM } from "./paper";
import type { Pen, Tag } from "./pen";

/** Heights and gaps in points. */
export interface Slab {
  readonly height: number;
  /** Free above and below it; of two gaps that meet the wider one counts, and none at the top of a page. */
  readonly before: number;
  readonly after: number;
  /** It begins a section of that name. */
  readonly begins?: string;
  /** Never parted from what follows it. */
  readonly tied?: boolean;
  /** Stands over it again where it begins a page: the heads of a table. */
  readonly head?: Slab;
  /** It may be parted anywhere, but for so much of its beginning. */
  readonly least?: number;
  /** What of it fits in a height, and the rest; undefined where it cannot be parted there. */
  readonly part?: (room: number) => readonly [Slab, Slab] | undefined;
  /** Paints it with its upper edge there. Again: for the eye alone, as it has been read before. */
  readonly paint: (pen: Pen, top: number, again?: boolean) => void;
}

/** Kept on one page where that is possible. */
export interface Bundle {
  readonly together: readonly Flow[];
  /** Where it does not fit it may stand at the top of the next page, after what follows it has filled this one. */
  readonly loose?: boolean;
}

/** A slab, a bundle, or the beginning of a page. */
export type Flow = Slab | Bundle | "page";

/** Where a block may stand between left and right. */
export interface Frame {
  readonly left: number;
  readonly width: number;
}

/** Lines under each other. */
export interface Stack extends Frame {
  readonly lines: readonly Line[];
  readonly align?: "right";
  /** What it is the content of. */
  readonly tag: Tag;
  /** A frame around its first line. */
  readonly framed?: boolean;
}

/** How a row of stacks looks and keeps. */
export interface RowLook {
  readonly before?: number;
  readonly after?: number;
  readonly tied?: boolean;
  readonly head?: Slab;
  /** Free inside, above and below its lines. */
  readonly top?: number;
  readonly bottom?: number;
  /** Painted with it: rules around, from its upper edge, with its height. */
  readonly rules?: (pen: Pen, top: number, height: number) => void;
  /** Done where it stands: a bookmark. */
  readonly placed?: (pen: Pen, top: number) => void;
}

/** Stacks beside each other as one slab. */
export function row(stacks: readonly Stack[], look: RowLook): Slab {
  const { before = 0, after = 0, tied, head, top = 0, bottom = 0, rules, placed } = look;
  const height = top + Math.max(0, ...stacks.map(({ lines }) => heightOf(lines))) + bottom;
  return {
    height,
    before,
    after,
    ...(tied && { tied }),
    ...(head && { head }),
    part: (room) => parted(stacks, look, room),
    paint: (pen, y, again = false) => {
      placed?.(pen, y);
      if (rules) pen.content(undefined, () => rules(pen, y, height));
      for (const stack of stacks) paintStack(pen, stack, y + top, again);
    },
  };
}

/** Slabs under each other as one. */
export function pile(slabs: readonly Slab[]): Slab {
  const tops: number[] = [];
  let height = 0;
  slabs.forEach((slab, i) => {
    height += i === 0 ? 0 : gapBetween(slabs[i - 1]!, slab);
    tops.push(height);
    height += slab.height;
  });
  return {
    height,
    before: slabs[0]?.before ?? 0,
    after: slabs.at(-1)?.after ?? 0,
    paint: (pen, top, again) => {
      for (const [i, slab] of slabs.entries()) slab.paint(pen, top + tops[i]!, again);
    },
  };
}

/** Slabs beside each other as one, their upper edges level. */
export function beside(slabs: readonly Slab[]): Slab {
  return {
    height: Math.max(...slabs.map(({ height }) => height)),
    before: Math.max(...slabs.map(({ before }) => before)),
    after: Math.max(...slabs.map(({ after }) => after)),
    paint: (pen, top, again) => {
      for (const slab of slabs) slab.paint(pen, top, again);
    },
  };
}

/** Where each column of things of these heights begins and ends, so that the longest of them is as short as it can be. */
export function evenly(
  all: readonly number[],
  count: number,
): readonly (readonly [from: number, to: number])[] {
  const filled = (most: number): (readonly [number, number])[] => {
    const found: [number, number][] = [];
    let used = 0;
    all.forEach((height, i) => {
      const last = found.at(-1);
      if (last && used + height <= most) last[1] = i + 1;
      else found.push([i, i + 1]);
      used = last && used + height <= most ? used + height : height;
    });
    return found;
  };
  let [low, high] = [0, all.reduce((sum, height) => sum + height, 0)];
  while (high - low > 1) {
    const middle = (low + high) / 2;
    if (filled(middle).length <= count) high = middle;
    else low = middle;
  }
  return filled(high);
}

export const gapBetween = (above: Slab, below: Slab): number => Math.max(above.after, below.before);

/** All slabs in order, without their bundles. */
export const slabsOf = (flows: readonly Flow[]): readonly Slab[] =>
  flows.flatMap((flow) => (flow === "page" ? [] : "together" in flow ? slabsOf(flow.together) : [flow]));

function parted(stacks: readonly Stack[], look: RowLook, room: number): readonly [Slab, Slab] | undefined {
  const inside = room - (look.top ?? 0) - (look.bottom ?? 0);
  const fits = stacks.map(({ lines }) => {
    let height = 0;
    const over = lines.findIndex((line) => {
      height += line.height;
      return height > inside;
    });
    return over < 0 ? lines.length : over;
  });
  const rest = stacks.map((stack, i) => ({ ...stack, framed: false, lines: stack.lines.slice(fits[i]!) }));
  if (fits.every((count) => count === 0) || rest.every(({ lines }) => lines.length === 0)) return undefined;
  const first = stacks.map((stack, i) => ({ ...stack, lines: stack.lines.slice(0, fits[i]!) }));
  const { placed: _, ...later } = look;
  return [row(first, { ...look, after: 0, tied: false }), row(rest, { ...later, before: 0 })];
}

/** Runs of type are the content of the stack's element; a box and a line to write on are elements in it, and speak. */
function paintStack(
  pen: Pen,
  { lines, left, width, align, tag, framed }: Stack,
  top: number,
  again: boolean,
) {
  let y = top;
  let held: (() => void)[] = [];
  const release = () => {
    const draws = held;
    held = [];
    if (draws.length > 0)
      pen.content(again ? undefined : tag, () => {
        for (const draw of draws) draw();
      });
  };
  for (const [i, line] of lines.entries()) {
    const baseline = y + line.height / 2 + MIDDLE * line.size;
    let x = align === "right" ? left + width - line.width : left;
    if (framed && i === 0) {
      const start = x;
      pen.content(undefined, () =>
        pen.frame(start - 1.5 * MM, baseline - line.size, line.width + 3 * MM, line.size * 1.3, HEAVY),
      );
    }
    for (const fragment of line.fragments) {
      const at = x;
      if (fragment.kind === "text") held.push(() => pen.text(at, baseline, fragment.text, fragment.style));
      else {
        release();
        const draw = () => paintMark(pen, fragment, at, baseline);
        pen.content(again ? undefined : pen.tag("Span", tag, { alt: fragment.text }), draw);
      }
      x += fragment.width;
    }
    y += line.height;
  }
  release();
}

function paintMark(pen: Pen, { kind, width }: Fragment, x: number, baseline: number): void {
  if (kind === "box") pen.box(x, baseline - BOX + 0.5 * MM);
  else pen.rule(x, baseline + 0.6 * MM, x + width, INNER);
}
