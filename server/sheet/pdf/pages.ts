/** Slabs in order to pages of a height: what belongs together moves to the next page with it. */
import { type Bundle, type Flow, gapBetween, type Slab, slabsOf } from "./slab";

/** A slab with its upper edge so far below that of the page's room. */
export interface Placed {
  readonly slab: Slab;
  readonly top: number;
  /** Stands there again, over a part that another page began. */
  readonly again: boolean;
}

export type Page = readonly Placed[];

/** At least one page. Nothing stands lower than the room, but for what cannot be parted and is higher than a page. */
export function pagesOf(flows: readonly Flow[], room: number): readonly Page[] {
  const pages: Placed[][] = [[]];
  /** Loose bundles for the top of the next page. */
  const waiting: Bundle[] = [];
  let y = 0;
  /** Nothing stands on the page but what stands there again. */
  let fresh = true;

  const last = () => pages.at(-1)!.at(-1)?.slab;
  const gap = (slab: Slab) => {
    const above = last();
    return above ? gapBetween(above, slab) : 0;
  };
  const put = (slab: Slab, again = false) => {
    y += gap(slab);
    if (!again) fresh = false;
    pages.at(-1)!.push({ slab, top: y, again });
    y += slab.height;
  };
  const turn = () => {
    if (pages.at(-1)!.length > 0) pages.push([]);
    y = 0;
    fresh = true;
    place(waiting.splice(0));
  };

  const place = (list: readonly Flow[]) => {
    for (const [i, flow] of list.entries()) {
      if (flow === "page") {
        turn();
        continue;
      }
      const first = slabsOf([flow])[0];
      if (!first) continue;
      const needed = need(list, i, room);
      const whole = needed <= room ? needed : "together" in flow ? 0 : flow.height;
      if (isBundle(flow) && flow.loose && !fresh && (waiting.length > 0 || y + gap(first) + whole > room)) {
        waiting.push(flow);
        continue;
      }
      if (y + gap(first) + whole > room && !fresh) turnTo(first, whole);
      if (isBundle(flow)) place(flow.together);
      else lay(flow);
    }
  };

  /**
   * A new page with so much room for the slab, under what waited for one, and what stands over the slab again there, but
   * for heads that would take most of it.
   */
  const turnTo = (slab: Slab, least: number) => {
    const head = slab.head && slab.head.height < room / 3 ? slab.head : undefined;
    const needed = head ? head.height + gapBetween(head, slab) + least : least;
    do turn();
    while (!fresh && y + gap(head ?? slab) + needed > room);
    if (head) put(head, true);
  };

  const lay = (slab: Slab) => {
    let rest = slab;
    while (y + gap(rest) + rest.height > room) {
      const parts = rest.part?.(room - y - gap(rest));
      if (!parts && fresh) break;
      if (parts) {
        put(parts[0]);
        rest = parts[1];
      }
      turnTo(rest, rest.least ?? rest.height);
    }
    put(rest);
  };

  place(flows);
  while (waiting.length > 0) turn();
  return pages;
}

const isBundle = (flow: Flow): flow is Bundle => flow !== "page" && "together" in flow;

/**
 * The height from the upper edge of the flow there to the end of what must stand on one page with it: of a bundle all
 * where a page can hold it, else its beginning; of a tied slab what follows as well; of one to part its least.
 */
function need(list: readonly Flow[], i: number, room: number): number {
  const flow = list[i];
  if (flow === undefined || flow === "page") return 0;
  if (isBundle(flow)) {
    const height = heightOf(slabsOf([flow]));
    return height <= room ? height : need(flow.together, 0, room);
  }
  const next = list[i + 1];
  const below = flow.tied && next !== undefined && slabsOf([next])[0];
  return below
    ? flow.height + gapBetween(flow, below) + need(list, i + 1, room)
    : (flow.least ?? flow.height);
}

function heightOf(slabs: readonly Slab[]): number {
  return slabs.reduce(
    (sum, slab, i) => sum + slab.height + (i === 0 ? 0 : gapBetween(slabs[i - 1]!, slab)),
    0,
  );
}
