/** What each feature of an editor needs to answer requests: one file beside this one for each, listed in index.ts. */
import type {
  CancellationToken,
  ClientCapabilities,
  Connection,
  InitializeParams,
  Position,
  Range,
  ServerCapabilities,
  TextDocumentIdentifier,
} from "vscode-languageserver";
import type { TextDocument } from "vscode-languageserver-textdocument";
import type { At } from "../../plan";
import type { Evaluated } from "../../service";
import { locator, type Shows } from "../convert";
import type { Everywhere } from "../everywhere";
import type { NearFiles } from "../near-files";
import type { Plans } from "../plans";
import type { Refresh } from "../refreshing";
import type { Settings } from "../settings";

/** One feature: what the server says it can do for it, and how it answers. */
export interface Answerer {
  /** What it adds to what the server offers an editor that can do this much. */
  readonly offers: (editor: ClientCapabilities) => ServerCapabilities;
  /** Listens for its requests. */
  readonly answer: (answering: Answering) => void;
}

export interface Answering {
  readonly connection: Connection;
  readonly params: InitializeParams;
  readonly plans: Plans;
  readonly everywhere: Everywhere;
  readonly nearFiles: NearFiles;
  /** The name of the file behind an address. */
  readonly toFile: (uri: string) => string;
  readonly shows: Shows;
  readonly settings: Settings;
  readonly refresh: Refresh;
  /** What fails is logged, and answered with `otherwise`. */
  readonly guard: Guard;
  /** The same for what takes long enough to let other requests go first. */
  readonly guardLater: GuardLater;
  /** Runs with the present version of an open plan, worked out; null where there is none or nothing is answered. */
  readonly of: <B>(asked: OfDocument, run: (one: Asked) => B | undefined) => B | null;
  /** The same, with where in the text. */
  readonly at: <B>(asked: AtPosition, run: (one: Asked, offset: number) => B | undefined) => B | null;
}

export type Guard = <A, B>(what: string, run: (asked: A) => B, otherwise: B) => (asked: A) => B;

export type GuardLater = <A, B>(
  what: string,
  run: (asked: A, token: CancellationToken) => Promise<B>,
  otherwise: B,
) => (asked: A, token: CancellationToken) => Promise<B>;

/** An open plan as a request meets it. */
export interface Asked {
  readonly evaluated: Evaluated;
  readonly document: TextDocument;
  /** Finds a place in any of the plan's files; undefined for a file that the plan did not read. */
  readonly locate: (at: At) => { readonly uri: string; readonly range: Range } | undefined;
}

interface OfDocument {
  readonly textDocument: TextDocumentIdentifier;
}

interface AtPosition extends OfDocument {
  readonly position: Position;
}

/** All but how to find a plan. */
export type Serving = Omit<Answering, "of" | "at">;

export function answering(serving: Serving): Answering {
  const { plans } = serving;
  const of: Answering["of"] = ({ textDocument: { uri } }, run) => {
    const evaluated = plans.evaluated(uri);
    const document = plans.document(uri);
    if (!evaluated || !document) return null;
    return run({ evaluated, document, locate: locator(evaluated.worked.loaded, plans.uriOf) }) ?? null;
  };
  const at: Answering["at"] = (asked, run) =>
    of(asked, (one) => run(one, one.document.offsetAt(asked.position)));
  return { ...serving, of, at };
}
