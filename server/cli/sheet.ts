/** `sawbuck sheet`: the shop sheet, one of its tables or one of its drawings, printed or written to a file. */
import { existsSync, statSync, writeFileSync } from "node:fs";
import { normalize, resolve } from "node:path";
import process from "node:process";
import { diskReader, readPlan } from "../lsp/disk";
import {
  drawingsOf,
  drawingText,
  type Evaluated,
  evaluate,
  inUnits,
  sheetDocument,
  sheetOf,
  writeSheet,
  writeTable,
} from "../service";
import type { Asked } from "./arguments";

export async function sheetCommand(asked: Asked): Promise<number> {
  const file = normalize(asked.files[0]!);
  const read = readPlan(file);
  if ("refused" in read) return refuse(`${file}: ${read.refused}`);
  const shop = asked.shop ? { shop: asked.shop, shopFrom: "." } : {};
  const evaluated = evaluate(file, read.text, diskReader, shop);
  const made = await written(asked.units ? inUnits(evaluated, asked.units) : evaluated, asked);
  if (typeof made === "object" && "refused" in made) return refuse(`${file}: ${made.refused}`);
  if (!asked.out) {
    process.stdout.write(made);
  } else {
    const plans = evaluated.worked.loaded.files.map((f) => f.file);
    const wrong = cannotWrite(asked.out, plans);
    if (wrong) return refuse(wrong);
    try {
      writeFileSync(asked.out, made);
    } catch (error) {
      const why = (error as NodeJS.ErrnoException).code ?? "no reason given";
      return refuse(`${asked.out} cannot be written: ${why}`);
    }
    const what = asked.drawing ? "drawing" : asked.table ? "table" : "shop sheet";
    process.stderr.write(`The ${what} is in ${asked.out}\n`);
  }
  return evaluated.problems.some((p) => p.class === "error" || p.class === "hazard") ? 1 : 0;
}

/** The bytes or the text of what was asked for; in words why there is none. */
async function written(
  evaluated: Evaluated,
  asked: Asked,
): Promise<string | Uint8Array | { readonly refused: string }> {
  const { format, reader, language, table } = asked;
  if (asked.drawing) return drawingText(evaluated, asked.drawing, asked.assembly, language);
  const sheet = sheetOf(evaluated, undefined, language);
  if (table) return writeTable(sheet, table);
  const drawn = format === "html" || format === "pdf";
  const options = { reader, language, drawings: drawn ? drawingsOf(evaluated, language) : [] };
  if (format === "pdf") {
    const { writePdf } = await import("../lsp/pdf");
    return writePdf(sheetDocument(sheet, options), asked.paper);
  }
  return writeSheet(sheet, format, options);
}

/** A sheet is never written over a plan, a folder or a device. */
function cannotWrite(out: string, plans: readonly string[]): string | undefined {
  if (out.endsWith(".sawbuck")) return `${out} is named like a plan; a sheet is not written over a plan.`;
  if (plans.some((plan) => resolve(plan) === resolve(out)))
    return `${out} is the plan itself; nothing was written.`;
  if (!existsSync(out)) return undefined;
  return statSync(out).isFile() ? undefined : `${out} is not an ordinary file; nothing was written.`;
}

function refuse(why: string): number {
  process.stderr.write(`sawbuck: ${why}\n`);
  return 2;
}
