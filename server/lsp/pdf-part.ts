/** The part that writes PDF, which is a program of its own beside this one: loaded when a PDF is asked for, and said to be missing where it is. No browser has it. */
import type { Language } from "../checks";
import type { SheetDocument } from "../sheet/document";
import { IN_NODE } from "./in-node";
import type { Paper } from "./pdf";

/** The bytes of the file; in words why there are none. */
export async function pdfOf(
  document: SheetDocument,
  paper: Paper,
  load = () => import("./pdf"),
): Promise<Uint8Array | { readonly refused: string }> {
  const language = document.language === "fr" ? "fr" : "en";
  if (!IN_NODE) return { refused: NOT_IN_BROWSER[language] };
  try {
    const { writePdf } = await load();
    return await writePdf(document, paper);
  } catch (error) {
    if (!isMissing(error)) throw error;
    return { refused: MISSING[language] };
  }
}

/** The library and the fonts would more than double what a browser has to load. */
const NOT_IN_BROWSER: Readonly<Record<Language, string>> = {
  en: "an editor in a browser writes no PDF. Save the sheet as a page, and print that.",
  fr: "un éditeur dans un navigateur n’écrit pas de PDF. Enregistrez la fiche comme page, et imprimez-la.",
};

const MISSING: Readonly<Record<Language, string>> = {
  en: "what writes PDF (pdf.js and fonts beside this program) is not there: install it again",
  fr: "ce qui écrit les PDF (pdf.js et les polices à côté de ce programme) n’est pas là : réinstallez-le",
};

/** A module or a font that is not there. */
function isMissing(error: unknown): boolean {
  const code = error instanceof Error && "code" in error ? error.code : undefined;
  return code === "ERR_MODULE_NOT_FOUND" || code === "MODULE_NOT_FOUND" || code === "ENOENT";
}
