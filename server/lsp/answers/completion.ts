/** What could be typed next: a list that is quick to make and small, and more about one offer when it is looked at. */
import {
  type ClientCapabilities,
  type CompletionItem,
  CompletionItemKind,
  type CompletionList,
  type CompletionParams,
  InsertReplaceEdit,
  InsertTextFormat,
  TextEdit,
} from "vscode-languageserver";
import type { TextDocument } from "vscode-languageserver-textdocument";
import { type Completion, completionsAt } from "../../features/completion";
import { fileOffers, pathAt } from "../../features/completion-files";
import { markup, rangeIn, type Shows } from "../convert";
import { numberIn, textIn } from "../untyped";
import type { Answerer } from "./answering";

export const completion: Answerer = {
  offers: () => ({ completionProvider: { triggerCharacters: [" ", "#", "(", "/"], resolveProvider: true } }),
  answer: ({ connection, params, guard, guardLater, at, plans, nearFiles, shows }) => {
    const can = abilities(params.capabilities, shows);
    const again = textIn(params.initializationOptions, "offerAgain");
    let last: { readonly number: number; readonly offers: readonly Completion[] } = { number: 0, offers: [] };
    const listOf = (
      document: TextDocument,
      offset: number,
      offers: readonly Completion[],
    ): CompletionList => {
      last = { number: last.number + 1, offers };
      const making = { can, shows, again, document, offset, list: last.number };
      // Never incomplete: while an editor asks anew it shows the old list, and Enter then takes `1"` for `10"`.
      return { isIncomplete: false, items: offers.map((o, i) => toItem(o, i, making)) };
    };
    const words = guard<CompletionParams, CompletionList | null>(
      "completion",
      (asked) =>
        at(asked, ({ evaluated, document }, offset) =>
          listOf(document, offset, completionsAt(evaluated, offset, shows.language)),
        ),
      null,
    );
    const path = ({ textDocument: { uri }, position }: CompletionParams) => {
      const document = plans.document(uri);
      const offset = document?.offsetAt(position) ?? 0;
      const typing = document && pathAt(document.getText(), offset);
      return typing && { document, offset, typing };
    };
    const files = guardLater<CompletionParams, CompletionList | null>(
      "completion of files",
      async (asked, token) => {
        const before = path(asked);
        const near = before ? await nearFiles(asked.textDocument.uri, before.typing, token) : [];
        const now = path(asked);
        return now ? listOf(now.document, now.offset, fileOffers(now.typing, near, shows.language)) : null;
      },
      null,
    );
    connection.onCompletion((asked, token) => {
      if (path(asked)) return files(asked, token);
      // Elsewhere it divides, or is part of a fraction.
      return asked.context?.triggerCharacter === "/" ? null : words(asked);
    });
    const resolved = (item: CompletionItem): CompletionItem => {
      const one = numberIn(item.data, "list") === last.number && last.offers[numberIn(item.data, "at")];
      return one ? { ...item, ...documented(one, shows) } : item;
    };
    connection.onCompletionResolve((item) => guard("completion", resolved, item)(item));
  },
};

interface Abilities {
  readonly snippets: boolean;
  readonly insertReplace: boolean;
  readonly labelDetails: boolean;
  readonly preselect: boolean;
  /** Asks for what is said about an offer when it is looked at. */
  readonly asksLater: boolean;
}

function abilities({ textDocument }: ClientCapabilities, { snippets }: Shows): Abilities {
  const item = textDocument?.completion?.completionItem;
  return {
    snippets,
    insertReplace: item?.insertReplaceSupport ?? false,
    labelDetails: item?.labelDetailsSupport ?? false,
    preselect: item?.preselectSupport ?? false,
    asksLater: item?.resolveSupport?.properties.includes("documentation") ?? false,
  };
}

const KINDS = {
  entry: CompletionItemKind.Keyword,
  snippet: CompletionItemKind.Snippet,
  clause: CompletionItemKind.Property,
  word: CompletionItemKind.Keyword,
  section: CompletionItemKind.Constant,
  measure: CompletionItemKind.Variable,
  property: CompletionItemKind.Field,
  function: CompletionItemKind.Function,
  unit: CompletionItemKind.Unit,
  size: CompletionItemKind.Value,
  code: CompletionItemKind.EnumMember,
  file: CompletionItemKind.File,
  thing: CompletionItemKind.Class,
} as const satisfies Readonly<Record<Completion["kind"], CompletionItemKind>>;

interface Making {
  readonly can: Abilities;
  readonly shows: Shows;
  /** The editor's own command that opens the list anew, where it has told one. */
  readonly again: string;
  readonly document: TextDocument;
  readonly offset: number;
  readonly list: number;
}

function toItem(one: Completion, at: number, making: Making): CompletionItem {
  const { can, shows, again, document, offset, list } = making;
  const snippet = can.snippets ? one.snippet : undefined;
  const text = snippet ?? one.insertText;
  const replace = rangeIn(document, one.range);
  // Of a path nothing that stood there is of use behind another.
  const insert = one.kind === "file" ? replace : rangeIn(document, { start: one.range.start, end: offset });
  return {
    label: one.label,
    kind: KINDS[one.kind],
    ...(one.detail && { detail: one.detail }),
    ...(can.labelDetails && one.detail && { labelDetails: { description: one.detail } }),
    ...(can.asksLater ? { data: { list, at } } : documented(one, shows)),
    ...(can.preselect && one.preselect && { preselect: true }),
    sortText: one.sortText,
    filterText: one.label,
    ...(snippet !== undefined && { insertTextFormat: InsertTextFormat.Snippet }),
    textEdit: can.insertReplace
      ? InsertReplaceEdit.create(text, insert, replace)
      : TextEdit.replace(replace, text),
    ...(again && one.goesOn && { command: { title: one.label, command: again } }),
  };
}

function documented(one: Completion, shows: Shows): Pick<CompletionItem, "documentation"> {
  const value = one.documentation();
  return value ? { documentation: markup(value, shows) } : {};
}
