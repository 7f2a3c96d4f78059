/** Telling an editor to ask anew for what it only asks for by itself when a text is typed in: hints, lenses and colours. */
import { CodeLensRefreshRequest, type Connection, type InitializeParams } from "vscode-languageserver";

export interface Refresh {
  readonly hints: () => void;
  readonly lenses: () => void;
  readonly all: () => void;
  /** Nothing more is told. */
  readonly end: () => void;
}

/** What comes in one burst is told once, this long, in ms, after its first: what is typed in another text goes first. */
const BURST_MS = 100;

/** Tells only an editor that can be told. */
export function refreshing(connection: Connection, { capabilities }: InitializeParams): Refresh {
  const { workspace } = capabilities;
  const told = (what: string, can: boolean | undefined, tell: () => Promise<void>): Teller =>
    inBursts(() => {
      if (!can) return;
      tell().catch((error: unknown) =>
        connection.console.warn(`The editor did not ask for ${what} again: ${String(error)}`),
      );
    });
  const hints = told("hints", workspace?.inlayHint?.refreshSupport, () =>
    connection.languages.inlayHint.refresh(),
  );
  const lenses = told("lenses", workspace?.codeLens?.refreshSupport, () =>
    connection.sendRequest(CodeLensRefreshRequest.type),
  );
  const colours = told("colours", workspace?.semanticTokens?.refreshSupport, () =>
    connection.languages.semanticTokens.refresh(),
  );
  const tellers = [hints, lenses, colours];
  return {
    hints: hints.tell,
    lenses: lenses.tell,
    all: () => {
      for (const { tell } of tellers) tell();
    },
    end: () => {
      for (const { end } of tellers) end();
    },
  };
}

interface Teller {
  readonly tell: () => void;
  readonly end: () => void;
}

function inBursts(run: () => void): Teller {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let ended = false;
  return {
    tell: () => {
      if (ended) return;
      timer ??= setTimeout(() => {
        timer = undefined;
        run();
      }, BURST_MS);
    },
    end: () => {
      ended = true;
      clearTimeout(timer);
    },
  };
}
