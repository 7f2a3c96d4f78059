/** What the extension asks beyond the protocol; the messages themselves are told in client/protocol.ts. */
import type { Connection } from "vscode-languageserver";
import { linesOfEntry, piecesAtLine } from "../features/pieces-at";
import { type Evaluated, problemPages, sheetDocument, sheetOf } from "../service";
import type { SheetData } from "../sheet/data";
import { SHEET_STYLE, sheetParts } from "../sheet/html";
import { Lines } from "../sheet/marks";
import type { Guard } from "./answers/answering";
import type { Shows } from "./convert";
import { type Drawer, type Drawn, drawer } from "./drawn";
import { toldAsFault } from "./faults";
import type { Plans } from "./plans";
import { contentOf, type FileContent, sheetFormat } from "./sheet-files";
import { choicesIn, inChosenUnits, type SheetChoices } from "./sheet-options";
import { turn } from "./turn";
import { numberIn, saysYes, textIn } from "./untyped";

export function answerOwnRequests(
  connection: Connection,
  plans: Plans,
  guard: Guard,
  { language }: Shows,
): void {
  const drawn = drawer();
  plans.onClosed(drawn.forget);
  const failed = toldAsFault(guard, "the shop sheet");
  connection.onRequest("sawbuck/sheet", (asked: unknown) => {
    const uri = textIn(asked, "uri");
    return sheetFor(plans, drawn, uri, choicesIn(asked), saysYes(asked, "soon")).catch(failed);
  });
  connection.onRequest("sawbuck/sheetFile", (asked: unknown) => {
    const uri = textIn(asked, "uri");
    return fileFor(plans, drawn, uri, choicesIn(asked), textIn(asked, "format")).catch(failed);
  });
  connection.onRequest(
    "sawbuck/piecesAt",
    guard(
      "the pieces of a line",
      (asked: unknown) => {
        const uri = textIn(asked, "uri");
        const evaluated = plans.evaluated(uri);
        const document = plans.document(uri);
        if (!evaluated || !document) return { pieces: [] };
        const offset = document.offsetAt({ line: numberIn(asked, "line") - 1, character: 0 });
        const lines = linesOfEntry(evaluated, offset);
        return { pieces: piecesAtLine(evaluated, offset), ...(lines && { lines }) };
      },
      { pieces: [] },
    ),
  );
  connection.onRequest(
    "sawbuck/problemPages",
    guard(
      "the problem pages",
      (_: unknown) => ({
        pages: problemPages(language).map(({ code, title, markdown }) => ({ code, title, markdown })),
      }),
      { pages: [] },
    ),
  );
}

/** A shop file has none: it plans nothing. */
const hasSheet = ({ worked }: Evaluated): boolean =>
  (worked.loaded.files[0]?.tree.entries ?? []).some((e) => PLANNING.has(e.kind));
const PLANNING: ReadonlySet<string> = new Set(["plan", "part", "assembly", "ring", "box"]);

/** Null for a document without a sheet, and for all drawings of a text that has changed meanwhile. Other requests are answered between the drawings, which take the longest. */
async function sheetFor(plans: Plans, drawn: Drawer, uri: string, choices: SheetChoices, soon: boolean) {
  await turn();
  await plans.settled(uri);
  const evaluated = plans.evaluated(uri);
  const version = plans.document(uri)?.version;
  if (!evaluated || version === undefined || !hasSheet(evaluated)) return null;
  const stale = (): boolean => plans.document(uri)?.version !== version;
  const shown = inChosenUnits(evaluated, choices);
  const drawings = await drawn.of(uri, shown, { language: choices.language, soon, stale });
  return stale() && !soon ? null : answer(shown, choices, version, drawings);
}

/** The sheet of the text as it stands when it is asked for; null for a document without one, and for a format that is not known. */
async function fileFor(
  plans: Plans,
  drawn: Drawer,
  uri: string,
  choices: SheetChoices,
  format: string,
): Promise<FileContent | null> {
  await plans.settled(uri);
  const evaluated = plans.evaluated(uri);
  const written = sheetFormat(format);
  if (!evaluated || !written || !hasSheet(evaluated)) return null;
  const shown = inChosenUnits(evaluated, choices);
  const { drawings } = written.draws
    ? await drawn.of(uri, shown, { language: choices.language, soon: false, stale: () => false })
    : { drawings: [] };
  return contentOf(await written.write(sheetIn(shown, choices), { ...choices, drawings }));
}

/** It is handed on: it names files, and not the folders of whoever made it. */
function sheetIn(evaluated: Evaluated, { language }: SheetChoices): SheetData {
  const { file } = evaluated;
  const folder = file.slice(0, Math.max(file.lastIndexOf("/"), file.lastIndexOf("\\")) + 1);
  return sheetOf(evaluated, (f) => (f.startsWith(folder) ? f.slice(folder.length) : f), language);
}

function answer(evaluated: Evaluated, choices: SheetChoices, version: number, { drawings, complete }: Drawn) {
  const { file, problems, text } = evaluated;
  const sheet = sheetIn(evaluated, choices);
  const errors = problems.filter((p) => p.class === "error");
  const first = errors.find((p) => p.at.file === file);
  return {
    title: sheet.title,
    ...sheetParts(sheetDocument(sheet, { ...choices, drawings })),
    style: SHEET_STYLE,
    state: errors.length > 0 ? "has errors" : "good",
    version,
    complete,
    ...(first && { brokenAt: new Lines(text).at(first.at.start).line }),
  };
}
