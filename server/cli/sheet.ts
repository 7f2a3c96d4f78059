/** `sawbuck sheet`: the shop sheet, or one of its drawings, printed or written to a file. */
import { existsSync, statSync, writeFileSync } from "node:fs";
import { normalize, resolve } from "node:path";
import process from "node:process";
import { diskReader, readPlan } from "../lsp/disk";
import { drawingsOf, drawingText, evaluate, sheetOf, writeSheet } from "../service";
import type { Asked } from "./arguments";

export function sheetCommand(asked: Asked): number {
  const file = normalize(asked.files[0]!);
  const read = readPlan(file);
  if ("refused" in read) return refuse(`${file}: ${read.refused}`);
  const evaluated = evaluate(
    file,
    read.text,
    diskReader,
    asked.shop ? { shop: asked.shop, shopFrom: "." } : {},
  );
  const text = asked.drawing
    ? drawingText(evaluated, asked.drawing, asked.assembly)
    : writeSheet(
        sheetOf(evaluated),
        asked.format === "svg" ? "text" : asked.format,
        asked.format === "html" ? { drawings: drawingsOf(evaluated) } : {},
      );
  if (typeof text !== "string") return refuse(`${file}: ${text.refused}`);
  if (!asked.out) {
    process.stdout.write(text);
  } else {
    const wrong = cannotWrite(
      asked.out,
      evaluated.worked.loaded.files.map((f) => f.file),
    );
    if (wrong) return refuse(wrong);
    try {
      writeFileSync(asked.out, text);
    } catch (error) {
      return refuse(
        `${asked.out} cannot be written: ${(error as NodeJS.ErrnoException).code ?? "no reason given"}`,
      );
    }
    process.stderr.write(`The ${asked.drawing ? "drawing" : "shop sheet"} is in ${asked.out}\n`);
  }
  return evaluated.problems.some((p) => p.class === "error" || p.class === "hazard") ? 1 : 0;
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
