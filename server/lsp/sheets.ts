/** What the extension asks beyond the protocol; the messages themselves are told in client/protocol.ts. */
import type { Connection } from "vscode-languageserver";
import { type Evaluated, problemPages, sheetOf } from "../service";
import { SHEET_STYLE, sheetBody } from "../sheet/html";
import { Lines } from "../sheet/marks";
import type { Plans } from "./plans";
import type { Guard } from "./server";
import { textIn } from "./untyped";

export function answerOwnRequests(connection: Connection, plans: Plans, guard: Guard): void {
  connection.onRequest(
    "sawbuck/sheet",
    guard(
      "the shop sheet",
      (asked: unknown) => {
        const uri = textIn(asked, "uri");
        const evaluated = plans.evaluated(uri);
        const version = plans.document(uri)?.version;
        return evaluated && version !== undefined && hasSheet(evaluated) ? answer(evaluated, version) : null;
      },
      null,
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

function answer(evaluated: Evaluated, version: number) {
  const { file, problems, text } = evaluated;
  const folder = file.slice(0, Math.max(file.lastIndexOf("/"), file.lastIndexOf("\\")) + 1);
  const sheet = sheetOf(evaluated, (f) => (f.startsWith(folder) ? f.slice(folder.length) : f));
  const errors = problems.filter((p) => p.class === "error");
  const first = errors.find((p) => p.at.file === file);
  return {
    title: sheet.title,
    body: sheetBody(sheet),
    style: SHEET_STYLE,
    state: errors.length > 0 ? "has errors" : "good",
    version,
    ...(first && { brokenAt: new Lines(text).at(first.at.start).line }),
  };
}
