/** What the extension asks beyond the protocol; the messages themselves are told in client/protocol.ts. */
import type { Connection } from "vscode-languageserver";
import { piecesAtLine } from "../features/pieces-at";
import { type Evaluated, problemPages, sheetDocument, sheetOf } from "../service";
import { SHEET_STYLE, sheetBody } from "../sheet/html";
import { Lines } from "../sheet/marks";
import { type Drawer, type Drawn, drawer, turn } from "./drawn";
import type { Plans } from "./plans";
import type { Guard } from "./server";
import { numberIn, saysYes, textIn } from "./untyped";

export function answerOwnRequests(connection: Connection, plans: Plans, guard: Guard): void {
  const drawn = drawer();
  plans.onClosed(drawn.forget);
  const failed = guard("the shop sheet", (error: unknown) => rethrown(error), null);
  connection.onRequest("sawbuck/sheet", (asked: unknown) => {
    const uri = textIn(asked, "uri");
    return sheetFor(plans, drawn, uri, saysYes(asked, "soon")).catch(failed);
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
        return { pieces: piecesAtLine(evaluated, offset) };
      },
      { pieces: [] },
    ),
  );
  connection.onRequest(
    "sawbuck/problemPages",
    guard(
      "the problem pages",
      (_: unknown) => ({
        pages: problemPages().map(({ code, title, markdown }) => ({ code, title, markdown })),
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
async function sheetFor(plans: Plans, drawn: Drawer, uri: string, soon: boolean) {
  await turn();
  const evaluated = plans.evaluated(uri);
  const version = plans.document(uri)?.version;
  if (!evaluated || version === undefined || !hasSheet(evaluated)) return null;
  const stale = (): boolean => plans.document(uri)?.version !== version;
  const drawings = await drawn.of(uri, evaluated, { soon, stale });
  return stale() && !soon ? null : answer(evaluated, version, drawings);
}

function rethrown(error: unknown): null {
  throw error;
}

function answer(evaluated: Evaluated, version: number, { drawings, complete }: Drawn) {
  const { file, problems, text } = evaluated;
  const folder = file.slice(0, Math.max(file.lastIndexOf("/"), file.lastIndexOf("\\")) + 1);
  const sheet = sheetOf(evaluated, (f) => (f.startsWith(folder) ? f.slice(folder.length) : f));
  const errors = problems.filter((p) => p.class === "error");
  const first = errors.find((p) => p.at.file === file);
  return {
    title: sheet.title,
    body: sheetBody(sheetDocument(sheet, { drawings })),
    style: SHEET_STYLE,
    state: errors.length > 0 ? "has errors" : "good",
    version,
    complete,
    ...(first && { brokenAt: new Lines(text).at(first.at.start).line }),
  };
}
