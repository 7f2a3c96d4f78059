/** Boards and panels laid out by hand, for sheets that no plan stands behind. */
import type { Marked, SheetBoard, SheetPanel } from "../../server/sheet/data";

/** A length given in inches, as the plan's mark of 1/16" shows it. */
export function inches(value: number): Marked {
  const sixteenths = Math.round(value * 16);
  const [whole, rest] = [Math.floor(sixteenths / 16), sixteenths % 16];
  const step = [16, 8, 4, 2, 1].find((n) => rest % n === 0) ?? 1;
  const fraction = rest === 0 ? "" : `${rest / step}/${16 / step}`;
  const text = [
    ...(whole > 0 || fraction === "" ? [String(whole)] : []),
    ...(fraction ? [fraction] : []),
  ].join("-");
  return { mm: value * 25.4, text: `${text}"`, other: `${Math.round(value * 25.4)} mm` };
}

type Cut = readonly [label: string, length: number];

interface BoardSpec {
  readonly label: string;
  readonly kind: SheetBoard["kind"];
  readonly count?: number;
  readonly length: number;
  readonly trim: number;
  /** Cuts in order; "bad" skips to that place. */
  readonly cuts: readonly (Cut | readonly ["bad", number, number])[];
  readonly keep: boolean;
}

const KERF = 1 / 8;

/** Lays cuts one behind the other, as a builder would: trim, piece, kerf, piece. */
export function board({ label, kind, count = 1, length, trim, cuts, keep }: BoardSpec): SheetBoard {
  const laid: SheetBoard["cuts"][number][] = [];
  const waste: SheetBoard["waste"][number][] = [];
  const lose = (from: number, to: number, why: SheetBoard["waste"][number]["why"]) => {
    if (to > from) waste.push({ from: from * 25.4, to: to * 25.4, why });
  };
  let x = trim;
  lose(0, trim, "trim");
  for (const cut of cuts) {
    if (cut.length === 3) {
      lose(x, cut[1], "offcut");
      lose(cut[1], cut[2], "bad");
      x = cut[2];
      continue;
    }
    const [name, long] = cut;
    const nth = laid.filter((other) => other.label === name).length + 1;
    laid.push({
      piece: `${name} / ${nth}`,
      label: name,
      mark: "",
      from: inches(x),
      to: inches(x + long),
      length: inches(long),
    });
    lose(x + long, Math.min(length, x + long + KERF), "kerf");
    x += long + KERF;
  }
  lose(x, length - trim, "offcut");
  lose(Math.max(x, length - trim), length, "trim");
  const longest = Math.max(...waste.map(({ from, to, why }) => (why === "offcut" ? to - from : 0)));
  const kept = waste.filter(({ from, to, why }) => keep && why === "offcut" && to - from === longest);
  const rests = kept.map(({ from, to }) => ({
    name: "offcut 1",
    count: 1,
    x: from,
    y: 0,
    length: inches((to - from) / 25.4),
    width: null,
  }));
  const offcut = rests[0]?.length ?? null;
  return { label, kind, count, length: inches(length), cuts: laid, waste, offcut, rests };
}

type Panel = readonly [label: string, x: number, y: number, length: number, width: number];

export function panel(label: string, length: number, width: number, cuts: readonly Panel[]): SheetPanel {
  return {
    label,
    kind: "bought",
    count: 1,
    length: inches(length),
    width: inches(width),
    cuts: cuts.map(([name, x, y, long, wide], i) => ({
      piece: `${name} / ${i + 1}`,
      label: name,
      mark: "",
      x: x * 25.4,
      y: y * 25.4,
      length: inches(long),
      width: inches(wide),
    })),
    rests: [],
  };
}
