/** Measures the drawing in the editor: what making it costs, a hover with it, and how long after a key the preview has it. */
import { hoverAt } from "../../server/features/hover";
import { drawingsOf, type Evaluated, evaluate, hoverDrawing } from "../../server/service";
import { drawView } from "../../server/sheet/piece-drawing";
import { svgText } from "../../server/sheet/svg";
import { finished } from "../../server/solid/steps";
import { bench, troughs } from "../sheet/made-pieces";
import { placedPlan } from "./placed";
import { Server } from "./server";
import { type Figure, inMs, timed } from "./stats";

const options = {
  name: "bench",
  words: (mm: number) => `${Math.round(mm)} mm`,
  system: "millimetres",
} as const;

/** Of drawings in this process. */
export function drawingFigures(): Figure[] {
  const figures: Figure[] = [];
  const add = (what: string, budget: string, runs: number, f: () => unknown): void => {
    figures.push({ what, budget, value: inMs(timed(runs, f)) });
  };
  for (const [pieces, budget] of [
    [bench(), "20 ms"],
    [troughs(), "60 ms"],
  ] as const)
    add(`drawing ${pieces.length} pieces, turned, to SVG`, budget, 40, () =>
      svgText(finished(drawView(pieces, "turned", options))),
    );
  const plan = placedPlan(60);
  const evaluated = read(plan);
  add("hover with a small drawing, 60 pieces", "5 ms", 40, () => {
    const { picture } = hoverAt(evaluated, plan.indexOf("place leg") + 1)!;
    return hoverDrawing(evaluated, picture!);
  });
  for (const pieces of [60, 300]) {
    const one = read(placedPlan(pieces));
    add(`all drawings of a sheet, ${pieces} pieces, on the second clock`, "", 10, () => drawingsOf(one));
  }
  return figures;
}

const read = (text: string): Evaluated =>
  evaluate("p", text, (path) => ({ file: path, refused: "there is no such file" }));

const URI = "file:///placed.sawbuck";
/** The plan after the i-th key: a measure that all drawings follow. */
const edited = (text: string, i: number): string => text.replace('27-1/2"', `${20 + (i % 10)}.${1000 + i}"`);

/** From a key to the sheet with its (first) drawing, and to the problems while drawings are being made; over stdio. */
export async function previewFigures(): Promise<Figure[]> {
  const figures: Figure[] = [];
  for (const pieces of [60, 300]) {
    const text = placedPlan(pieces);
    const server = new Server();
    await server.open(URI, text);
    const [patched, whole, problems]: [number[], number[], number[]] = [[], [], []];
    for (let i = 0; i < 40; i++) {
      const start = performance.now();
      change(server, edited(text, i), i + 2);
      const diagnosed = server.request("textDocument/diagnostic", { textDocument: { uri: URI } });
      await diagnosed;
      problems.push(performance.now() - start);
      await server.request("sawbuck/sheet", { uri: URI, soon: true });
      patched.push(performance.now() - start);
      const rest = server.request("sawbuck/sheet", { uri: URI, soon: false });
      if (i % 2 === 0) await rest.then(() => whole.push(performance.now() - start));
    }
    server.close();
    const add = (what: string, budget: string, list: number[]) =>
      figures.push({ what: `${what}, ${pieces} pieces`, budget, value: inMs(list.slice(5)) });
    add("preview patched after a key", "100 ms", patched);
    add("all its drawings", "", whole);
    add("problems after a key while drawings are made", "30 ms", problems);
  }
  return figures;
}

function change(server: Server, text: string, version: number): void {
  server.notify("textDocument/didChange", {
    textDocument: { uri: URI, version },
    contentChanges: [{ text }],
  });
}
