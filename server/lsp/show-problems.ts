/** Problems on their way to the editor: pushed, or given when it asks, by what it can do and never both. */
import {
  type Connection,
  type Diagnostic,
  DocumentDiagnosticReportKind,
  type InitializeParams,
} from "vscode-languageserver";
import type { Documents } from "./documents";
import { HOLD_MS, split } from "./hold";

export interface Shown {
  /** The problems of these open texts are to be worked out and shown anew; `typed` is the one the editor itself changed. */
  readonly again: (uris: readonly string[], typed?: string) => void;
  /** Nothing more is shown. */
  readonly end: () => void;
}

/** What is to be shown, and when. */
export interface Problems {
  /** All problems of the present version of a text. */
  readonly diagnosed: (uri: string) => Diagnostic[];
  /** It is not yet as it will be in a moment; `again` is asked then. */
  readonly waits: (uri: string) => boolean;
  readonly settled: (uri: string) => Promise<void>;
}

export function showProblems(
  connection: Connection,
  { capabilities }: InitializeParams,
  open: Documents,
  { diagnosed, waits, settled }: Problems,
): Shown {
  const typing = typingLines(open);
  const shown = new Map<string, readonly Diagnostic[]>();
  const waiting = new Map<string, ReturnType<typeof setTimeout>>();
  const refreshes = capabilities.workspace?.diagnostics?.refreshSupport ?? false;
  const pull = capabilities.textDocument?.diagnostic !== undefined;
  let ended = false;
  const later = (uri: string, run: () => void): void => {
    clearTimeout(waiting.get(uri));
    const left = typing(uri)?.left ?? 0;
    waiting.set(
      uri,
      setTimeout(() => {
        // A timer counts from when its turn began, so after long work it rings too early.
        if (typing(uri)) {
          later(uri, run);
          return;
        }
        waiting.delete(uri);
        run();
      }, left + 1),
    );
  };

  /** What is shown at once; the rest is shown by `rest` after the hold. */
  const now = (uri: string, rest: () => void): Diagnostic[] => {
    const all = diagnosed(uri);
    const { show, hold } = split(all, shown.get(uri) ?? [], typing(uri)?.line);
    clearTimeout(waiting.get(uri));
    waiting.delete(uri);
    if (hold.length > 0) later(uri, rest);
    shown.set(uri, show);
    return show;
  };

  const refresh = (): void => {
    if (!refreshes) return;
    connection.languages.diagnostics.refresh().then(undefined, (error: unknown) => {
      connection.console.warn(`The editor did not ask for problems again: ${String(error)}`);
    });
  };

  const push = (uri: string): void => {
    const document = open.get(uri);
    if (!document || waits(uri)) return;
    const { version } = document;
    const diagnostics = now(uri, () => push(uri));
    void connection.sendDiagnostics({ uri, version, diagnostics });
  };

  open.onClose(({ uri }) => {
    clearTimeout(waiting.get(uri));
    waiting.delete(uri);
    shown.delete(uri);
    if (!pull) void connection.sendDiagnostics({ uri, diagnostics: [] });
  });

  if (pull)
    connection.languages.diagnostics.on(async ({ textDocument: { uri } }) => {
      if (waits(uri)) await settled(uri);
      // An editor that cannot be told to ask again is given everything at once.
      const items = refreshes ? now(uri, refresh) : diagnosed(uri);
      return { kind: DocumentDiagnosticReportKind.Full, items };
    });

  const work = inBatches((uris, others) => {
    for (const uri of uris) {
      if (ended || !open.get(uri)) continue;
      if (pull) diagnosed(uri);
      else push(uri);
    }
    if (pull && others && !ended) refresh();
  });
  return {
    again: (uris, typed) =>
      work(
        uris,
        uris.some((uri) => uri !== typed),
      ),
    end: () => {
      ended = true;
      for (const timer of waiting.values()) clearTimeout(timer);
    },
  };
}

/** The line that a text is being typed on, for as long as the hold lasts, with what is left of it in milliseconds. */
function typingLines(open: Documents): (uri: string) => { line: number; left: number } | undefined {
  const typed = new Map<string, { line: number; until: number }>();
  open.onChange(({ uri }, line) => {
    if (line === undefined) typed.delete(uri);
    else typed.set(uri, { line, until: performance.now() + HOLD_MS });
  });
  open.onClose(({ uri }) => typed.delete(uri));
  return (uri) => {
    const one = typed.get(uri);
    const left = one ? one.until - performance.now() : 0;
    return one && left > 0 ? { line: one.line, left } : undefined;
  };
}

/** Changes that come in one burst are worked out once, when the burst is over. */
function inBatches(
  run: (uris: readonly string[], others: boolean) => void,
): (uris: readonly string[], others: boolean) => void {
  const due = new Set<string>();
  let othersDue = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  return (uris, others) => {
    for (const uri of uris) due.add(uri);
    othersDue ||= others;
    if (due.size === 0 || timer !== undefined) return;
    timer = setTimeout(() => {
      timer = undefined;
      const [list, also] = [[...due], othersDue];
      due.clear();
      othersDue = false;
      run(list, also);
    }, 0);
  };
}
