/** The plans that come with the program, and each mistake of the gallery: what every format is proven on. */
import { readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { diskReader } from "../../server/lsp/disk";
import { type Evaluated, evaluate, sheetOf } from "../../server/service";
import type { SheetData } from "../../server/sheet/data";

export interface SamplePlan {
  /** `salad-trough`, `mistakes/ring-open`. */
  readonly name: string;
  /** Worked out when asked for, once. */
  readonly evaluated: () => Evaluated;
  /** Its sheet, with files named without their folder. */
  readonly sheet: () => SheetData;
}

const FOLDER = join(__dirname, "../../samples");

/** A shop file and a file of measures are no plans: what has no `plan` line is left out, but for mistakes. */
export const PLANS = plansIn("", (text) => /^plan /m.test(text));
export const MISTAKES = plansIn("mistakes/", () => true);
export const ALL = [...PLANS, ...MISTAKES];

function plansIn(folder: string, wanted: (text: string) => boolean): readonly SamplePlan[] {
  const files = readdirSync(join(FOLDER, folder))
    .filter((name) => name.endsWith(".sawbuck"))
    .sort();
  return files.flatMap((name) => {
    const file = join(FOLDER, folder, name);
    const text = readFileSync(file, "utf8");
    return wanted(text) ? [planOf(`${folder}${basename(name, ".sawbuck")}`, file, text)] : [];
  });
}

function planOf(name: string, file: string, text: string): SamplePlan {
  let made: Evaluated | undefined;
  const evaluated = (): Evaluated => {
    made ??= evaluate(file, text, diskReader);
    return made;
  };
  return { name, evaluated, sheet: () => sheetOf(evaluated(), (path) => basename(path)) };
}
