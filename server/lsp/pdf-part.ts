/** The part that writes PDF, which is a program of its own beside this one: loaded when a PDF is asked for, and said to be missing where it is. */
import type { SheetDocument } from "../sheet/document";
import type { Paper } from "./pdf";

/** The bytes of the file; in words why there are none. */
export async function pdfOf(
  document: SheetDocument,
  paper: Paper,
  load = () => import("./pdf"),
): Promise<Uint8Array | { readonly refused: string }> {
  try {
    const { writePdf } = await load();
    return await writePdf(document, paper);
  } catch (error) {
    if (!isMissing(error)) throw error;
    return {
      refused: "what writes PDF (pdf.js and fonts beside this program) is not there: install it again",
    };
  }
}

/** A module or a font that is not there. */
function isMissing(error: unknown): boolean {
  const code = error instanceof Error && "code" in error ? error.code : undefined;
  return code === "ERR_MODULE_NOT_FOUND" || code === "MODULE_NOT_FOUND" || code === "ENOENT";
}
