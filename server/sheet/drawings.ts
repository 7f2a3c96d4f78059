/** The drawings of a sheet: the whole from its sides and drawn apart, and each assembly alone. Made one after the other, so that whoever asks can do other work between. */

import { ifKnown } from "../plan";
import { boundsOf } from "../solid/contact";
import { finished, type Steps } from "../solid/steps";
import { lengthText } from "../units";
import type { Worked } from "../worked";
import { boardSolid } from "../worked/placing";
import type { Drawing } from "./display";
import { assemblyUnits, drawnPieces, drawnScrews, firstCopies, unitsOf } from "./drawn";
import { identitiesOf } from "./identity";
import { ofMm } from "./marks";
import { drawPart } from "./part-drawing";
import {
  type DrawingOptions,
  drawExploded,
  drawSmall,
  drawStep,
  drawView,
  highest,
  type Side,
  type Small,
  seenSmall,
  standardScale,
} from "./piece-drawing";
import { ENGLISH, type SheetWords } from "./words";

export type DrawingKind = Side | "apart";

export interface SheetDrawing {
  readonly kind: DrawingKind | "step";
  /** The assembly it shows, empty for the whole; of a step its number. */
  readonly of: string;
  readonly drawing: Drawing;
  /** It shows the plan as it was before the last change. */
  readonly old?: boolean;
}

/** Everything the drawings depend on, to compare. */
export interface Scene {
  readonly words: readonly string[];
  readonly numbers: readonly number[];
}

export function sceneIn(worked: Worked, { tag, drawings }: SheetWords): Scene {
  const { display, title } = worked.settings;
  const words: string[] = [tag, title, display.system, `${display.mark.n}/${display.mark.d}`];
  const numbers: number[] = [];
  for (const { id, mark, title, assembly, cells } of drawnPieces(worked, identitiesOf(worked), drawings)) {
    words.push(id, mark, title, assembly.join("/"));
    for (const { vertices } of cells) {
      numbers.push(vertices.length);
      for (const v of vertices) numbers.push(...v);
    }
  }
  for (const { start, direction, piece } of drawnScrews(worked)) {
    words.push(piece);
    numbers.push(...start, ...direction);
  }
  for (const [id, unit] of unitsOf(worked)) words.push(id, unit);
  for (const { title, fresh } of worked.steps.steps) {
    words.push(title);
    numbers.push(fresh.length, ...fresh);
  }
  return { words, numbers };
}

/** Whether both give the same drawings. */
export function sameScene(a: Scene, b: Scene): boolean {
  const same = <T>(x: readonly T[], y: readonly T[]): boolean =>
    x.length === y.length && x.every((one, i) => one === y[i]);
  return same(a.words, b.words) && same(a.numbers, b.numbers);
}

/** Those that a sheet shows, in order; none when nothing is placed. Gives nothing between them where it only pauses. */
export function* sheetDrawings(
  worked: Worked,
  words: SheetWords,
): Generator<SheetDrawing | undefined, void, void> {
  const scene = sceneOf(worked, words);
  if (scene.pieces.length === 0) return;
  yield { kind: "turned", of: "", drawing: yield* scene.draw("turned") };
  let scale = sideBySide(worked);
  for (const kind of braceBehind(worked) ? [...STRAIGHT, "back" as const] : STRAIGHT) {
    const drawing = yield* scene.draw(kind, "", { scale });
    scale = Math.max(scale, drawing.scale ?? 0);
    yield { kind, of: "", drawing };
  }
  yield { kind: "apart", of: "", drawing: yield* scene.draw("apart") };
  for (const name of scene.assemblies.keys())
    yield { kind: "turned", of: name, drawing: yield* scene.draw("turned", name, { highest: ALONE }) };
  for (const step of stepScenes(worked))
    yield { kind: "step", of: String(step.number), drawing: yield* drawStep({ all: scene.pieces, ...step }) };
}

/** For each step in which a piece is new: what stands after it. Of very many pieces, no step is drawn. */
function stepScenes({ steps: { steps }, pieces: { all } }: Worked) {
  if (all.length > MOST_IN_STEPS) return [];
  const standing = new Set<string>();
  return steps.flatMap(({ fresh, title }, i) => {
    const ids = new Set(fresh.map((n) => all[n]!.id));
    for (const id of ids) standing.add(id);
    return ids.size === 0
      ? []
      : [{ number: i + 1, title: `${i + 1}. ${title}`, standing: new Set(standing), fresh: ids }];
  });
}

/** One drawing of the whole, or of an assembly by its name; in words why there is none. */
export function oneDrawing(
  worked: Worked,
  kind: DrawingKind,
  assembly: string,
  words: SheetWords,
): Drawing | string {
  const scene = sceneOf(worked, words);
  if (scene.pieces.length === 0) return words.drawings.noPieces;
  if (assembly === "" || scene.assemblies.has(assembly)) return finished(scene.draw(kind, assembly));
  return words.drawings.noAssembly(assembly, [...scene.assemblies.keys()]);
}

/** A small turned drawing in which these pieces are pointed out; undefined where it would take long, or none of them stands. */
export function smallDrawing(worked: Worked, ids: readonly string[], title: string): Drawing | undefined {
  if (worked.pieces.all.length > MOST_SMALL || ids.length === 0) return undefined;
  let small = SMALL.get(worked);
  if (!small) {
    small = seenSmall(drawnPieces(worked, identitiesOf(worked), ENGLISH.drawings));
    SMALL.set(worked, small);
  }
  return drawSmall(small, new Set(ids), title);
}

/** What is seen is the same whatever is pointed out: it is found once for each version of a plan. */
const SMALL = new WeakMap<Worked, Small>();

/** One piece of a part with its cuts and measures; undefined where its sizes are not known. */
export function partDrawing(
  { parts, settings }: Worked,
  name: string,
  title: string,
  { drawings: says, numbers }: SheetWords,
): Drawing | undefined {
  const part = parts.get(name);
  const solid = part && boardSolid(part);
  const [cut, width, thickness] = part
    ? [ifKnown(part.cut), ifKnown(part.width), ifKnown(part.thickness)]
    : [];
  if (!solid || !cut || !width || !thickness || solid.cells.length === 0) return undefined;
  const display = { ...settings.display, numbers };
  const { cells, ridges } = solid;
  return drawPart(
    { cells, ridges, cut, width: width.approx, thickness: thickness.approx },
    { ...says, length: (mm) => lengthText(ofMm(mm), display) },
    title,
  );
}

/** Pieces of which a small drawing is made within the time of a hover, 5 ms. */
const MOST_SMALL = 60;

/** The largest first, as a rule: those after it are drawn to its scale, or smaller. */
const STRAIGHT: readonly Side[] = ["front", "left", "above"];

/** The least scale in which the front and the side stand beside each other on one page. */
function sideBySide({ space, settings }: Worked): number {
  if (!space.bounds) return 0;
  const { least, most } = space.bounds;
  const [wide, deep, high] = ([0, 1, 2] as const).map((k) => most[k] - least[k]) as [number, number, number];
  return standardScale(
    wide + deep,
    high,
    { width: BESIDE, height: highest("front") },
    settings.display.system,
  );
}

/** mm of paper for two objects side by side, with what stands around each of them. */
const BESIDE = 112;

/** Whether a diagonal lies on the back, as on a gate: then the back is drawn too. */
function braceBehind({ space }: Worked): boolean {
  const { bounds, pieces } = space;
  if (!bounds) return false;
  const middle = (bounds.least[1] + bounds.most[1]) / 2;
  return pieces.some(({ pose: { length, thickness }, bounds: { least, most } }) => {
    const slanted = Math.abs(length[0]) > SLANT && Math.abs(length[2]) > SLANT;
    return slanted && Math.abs(thickness[1]) > 1 - SLANT && (least[1] + most[1]) / 2 > middle;
  });
}

/** Sine of the least slant of a brace: about 15°. */
const SLANT = 0.25;

/** Each step is drawn anew with all that stands: beyond so many pieces that takes long, and shows little. */
const MOST_IN_STEPS = 400;

/** mm of paper for an assembly on its own. */
const ALONE = 85;
/** Drawn apart so small that the longest side of the whole is no longer than this, in mm of paper, pieces are hard to make out. */
const TINY = 36;

export function sceneOf(worked: Worked, { drawings: says, numbers }: SheetWords) {
  const { settings } = worked;
  const display = { ...settings.display, numbers };
  const pieces = drawnPieces(worked, identitiesOf(worked), says);
  const screws = drawnScrews(worked);
  const assemblies = firstCopies(worked);
  const draw = function* (
    kind: DrawingKind,
    assembly = "",
    more: Partial<DrawingOptions> = {},
  ): Steps<Drawing> {
    const ids = assemblies.get(assembly);
    const shown = ids ? pieces.filter(({ id }) => ids.has(id)) : pieces;
    const options: DrawingOptions = {
      name: assembly || settings.title || says.thePlan,
      words: (mm) => lengthText(ofMm(mm), display),
      says,
      system: settings.display.system,
      screws,
      ...more,
    };
    if (kind !== "apart") return yield* drawView(shown, kind, options);
    const units = assembly === "" ? assemblyUnits(worked) : undefined;
    const apart = yield* drawExploded(shown, { ...options, ...(units && { units }) });
    const { least, most } = boundsOf(shown.flatMap(({ cells }) => cells.flatMap((c) => c.vertices)));
    const longest = Math.max(...([0, 1, 2] as const).map((k) => most[k] - least[k]));
    if (longest >= TINY * (apart.scale ?? 0)) return apart;
    const larger = yield* drawExploded(shown, { ...options, units: unitsOf(worked) });
    return (larger.scale ?? 0) < (apart.scale ?? 0) ? larger : apart;
  };
  return { pieces, assemblies, draw };
}
