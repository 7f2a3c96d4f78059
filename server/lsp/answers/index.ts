/** All features of an editor that are asked for; problems are shown by `show-problems.ts`. */
import type { ClientCapabilities, ServerCapabilities } from "vscode-languageserver";
import type { Answerer } from "./answering";
import { completion } from "./completion";
import { definition } from "./definition";
import { hover } from "./hover";
import { signature } from "./signature";
import { symbols } from "./symbols";

export const ANSWERERS: readonly Answerer[] = [completion, definition, hover, signature, symbols];

/** Everything the server offers an editor that can do this much, beside problems. */
export const offered = (editor: ClientCapabilities): ServerCapabilities =>
  Object.assign({}, ...ANSWERERS.map(({ offers }) => offers(editor)));
