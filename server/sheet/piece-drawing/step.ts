/** A small turned drawing of what stands after a step: what is new is dark and bears its mark. */
import { boundsOf } from "../../solid/contact";
import type { Steps } from "../../solid/steps";
import { picturesOf } from "../../solid/view";
import { laid } from "../../solid/view-flat";
import { type Box, type Drawing, type Item, TYPE, text } from "../display";
import { marksOf } from "./marked";
import { type Fit, ONE_LINE, paths } from "./paper";
import type { DrawnPiece } from "./pieces";
import { sightOf } from "./spots";
import { viewOf } from "./views";

export interface StepScene {
  /** All pieces of the plan: every step is drawn in the same place, to the same scale. */
  readonly all: readonly DrawnPiece[];
  /** Identities of those that stand after the step, and of those that are new. */
  readonly standing: ReadonlySet<string>;
  readonly fresh: ReadonlySet<string>;
  readonly title: string;
}

export function* drawStep({ all, standing, fresh, title }: StepScene): Steps<Drawing> {
  const view = viewOf("turned");
  const points = all.flatMap(({ cells }) => cells.flatMap((c) => c.vertices.map((v) => laid(v, view))));
  const { least, most } = boundsOf(points);
  const [wide, high] = [most[0] - least[0], most[1] - least[1]];
  const scale = Math.max(wide / WIDTH, high / HEIGHT, 1e-6);
  const fit: Fit = { scale, left: least[0] - MARGIN * scale, top: most[1] + MARGIN * scale };
  const page: Box = { left: 0, top: 0, right: wide / scale + 2 * MARGIN, bottom: high / scale + 2 * MARGIN };
  const shown = all.filter(({ id }) => standing.has(id));
  const pictureWithin = yield* picturesOf(shown, view, false);
  const picture = yield* pictureWithin(ONE_LINE * scale);
  yield;
  const items = paths(picture, fit).map((item): Item => {
    const dark = item.kind === "path" && item.layer === "face" && fresh.has(item.piece ?? "");
    return dark ? { ...item, fill: "dark" } : item;
  });
  yield;
  const sight = yield* sightOf(picture.faces, fit, page);
  const { marked } = marksOf(
    shown.filter(({ id }) => fresh.has(id)),
    sight,
  );
  const marks = marked.map(({ mark, ends }) => {
    const [x, y] = ends[Math.floor(ends.length / 2)]!.at;
    return text("balloon", x, y + TYPE / 3, mark, { anchor: "middle", bold: true, halo: true });
  });
  return { title, width: page.right, height: page.bottom, scale, items: [...items, ...marks] };
}

/** mm of paper. */
const WIDTH = 62;
const HEIGHT = 46;
const MARGIN = 2;
