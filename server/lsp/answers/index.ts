/** All features of an editor that are asked for; problems are shown by `show-problems.ts`. */
import type { ClientCapabilities, ServerCapabilities } from "vscode-languageserver";
import { actions } from "./actions";
import type { Answerer } from "./answering";
import { completion } from "./completion";
import { definition } from "./definition";
import { fileRenames } from "./file-renames";
import { format } from "./format";
import { hints } from "./hints";
import { hover } from "./hover";
import { lens } from "./lens";
import { notChecked } from "./not-checked";
import { reading } from "./reading";
import { references } from "./references";
import { rename } from "./rename";
import { signature } from "./signature";
import { symbols } from "./symbols";
import { tokens } from "./tokens";
import { workspaceSymbols } from "./workspace-symbols";

export const ANSWERERS: readonly Answerer[] = [
  actions,
  completion,
  definition,
  fileRenames,
  format,
  hints,
  hover,
  lens,
  notChecked,
  reading,
  references,
  rename,
  signature,
  symbols,
  tokens,
  workspaceSymbols,
];

/** Everything the server offers an editor that can do this much, beside problems. */
export const offered = (editor: ClientCapabilities): ServerCapabilities =>
  Object.assign({}, ...ANSWERERS.map(({ offers }) => offers(editor)));
