/** The open texts, kept up with each change, and the line each was last typed on. */
import type { Connection } from "vscode-languageserver";
import { TextDocument } from "vscode-languageserver-textdocument";

export interface Documents {
  readonly get: (uri: string) => TextDocument | undefined;
  readonly all: () => TextDocument[];
  readonly onOpen: (tell: (document: TextDocument) => void) => void;
  /** `line` is where the last of the changes ends; undefined when the whole text was replaced. */
  readonly onChange: (tell: (document: TextDocument, line: number | undefined) => void) => void;
  readonly onClose: (tell: (document: TextDocument) => void) => void;
}

export function documents(connection: Connection): Documents {
  const open = new Map<string, TextDocument>();
  const opened: ((document: TextDocument) => void)[] = [];
  const changed: ((document: TextDocument, line: number | undefined) => void)[] = [];
  const closed: ((document: TextDocument) => void)[] = [];

  connection.onDidOpenTextDocument(({ textDocument: { uri, languageId, version, text } }) => {
    const document = TextDocument.create(uri, languageId, version, text);
    open.set(uri, document);
    for (const tell of opened) tell(document);
  });
  connection.onDidChangeTextDocument(({ textDocument: { uri, version }, contentChanges }) => {
    const document = open.get(uri);
    if (!document) return;
    // The same object goes on with its new text and version.
    TextDocument.update(document, contentChanges, version);
    const last = contentChanges[contentChanges.length - 1];
    const line = last && "range" in last ? last.range.start.line + breaksIn(last.text) : undefined;
    for (const tell of changed) tell(document, line);
  });
  connection.onDidCloseTextDocument(({ textDocument: { uri } }) => {
    const document = open.get(uri);
    open.delete(uri);
    if (document) for (const tell of closed) tell(document);
  });

  return {
    get: (uri) => open.get(uri),
    all: () => [...open.values()],
    onOpen: (tell) => opened.push(tell),
    onChange: (tell) => changed.push(tell),
    onClose: (tell) => closed.push(tell),
  };
}

const breaksIn = (text: string): number => text.match(/\r\n|\r|\n/g)?.length ?? 0;
