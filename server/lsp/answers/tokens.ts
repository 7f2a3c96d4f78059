/** The colours of a plan's text: all of them, those of a stretch on the screen, and what has changed since they were last given. */
import type { SemanticTokens, SemanticTokensDelta, SemanticTokensEdit } from "vscode-languageserver";
import type { TextDocument } from "vscode-languageserver-textdocument";
import { TOKEN_MODIFIERS, TOKEN_TYPES, type Token, tokensOf } from "../../features/tokens";
import type { Answerer } from "./answering";

export const tokens: Answerer = {
  offers: () => ({
    semanticTokensProvider: {
      legend: { tokenTypes: [...TOKEN_TYPES], tokenModifiers: [...TOKEN_MODIFIERS] },
      full: { delta: true },
      range: true,
    },
  }),
  answer: ({ connection, guard, of, plans }) => {
    const given = new Map<string, Given>();
    let answers = 0;
    plans.onClosed((uri) => given.delete(uri));
    const all = (uri: string): Given | null =>
      of({ textDocument: { uri } }, ({ evaluated, document }) => {
        const one = { resultId: String(++answers), data: encoded(tokensOf(evaluated), document) };
        given.set(uri, one);
        return one;
      });
    const { semanticTokens } = connection.languages;
    semanticTokens.on(guard("colours", ({ textDocument }) => all(textDocument.uri) ?? NONE, NONE));
    semanticTokens.onDelta(
      guard(
        "changed colours",
        ({ textDocument: { uri }, previousResultId }): SemanticTokens | SemanticTokensDelta => {
          const before = given.get(uri);
          const now = all(uri);
          if (!now || before?.resultId !== previousResultId) return now ?? NONE;
          return { resultId: now.resultId, edits: changeOf(before.data, now.data) };
        },
        NONE,
      ),
    );
    semanticTokens.onRange(
      guard(
        "colours on the screen",
        (asked) =>
          of(asked, ({ evaluated, document }) => {
            const [start, end] = [document.offsetAt(asked.range.start), document.offsetAt(asked.range.end)];
            return { data: encoded(tokensOf(evaluated, { start, end }), document) };
          }) ?? NONE,
        NONE,
      ),
    );
  },
};

interface Given {
  readonly resultId: string;
  readonly data: number[];
}

const NONE: SemanticTokens = { data: [] };

/** Five numbers a token: lines and columns from the one before, length, type, and one bit a modifier. */
function encoded(list: readonly Token[], document: TextDocument): number[] {
  const data: number[] = [];
  let [lastLine, lastColumn] = [0, 0];
  for (const { start, end, type, modifiers } of list) {
    const { line, character } = document.positionAt(start);
    data.push(
      line - lastLine,
      line === lastLine ? character - lastColumn : character,
      end - start,
      TYPE_NUMBERS.get(type)!,
      modifiers.reduce((bits, modifier) => bits | MODIFIER_BITS.get(modifier)!, 0),
    );
    [lastLine, lastColumn] = [line, character];
  }
  return data;
}

const TYPE_NUMBERS = new Map(TOKEN_TYPES.map((type, i) => [type, i]));
const MODIFIER_BITS = new Map(TOKEN_MODIFIERS.map((modifier, i) => [modifier, 1 << i]));

/** What is the same before and behind the one change stays. */
function changeOf(before: readonly number[], now: readonly number[]): SemanticTokensEdit[] {
  const most = Math.min(before.length, now.length);
  let start = 0;
  while (start < most && before[start] === now[start]) start++;
  let behind = 0;
  while (behind < most - start && before[before.length - 1 - behind] === now[now.length - 1 - behind])
    behind++;
  const deleteCount = before.length - behind - start;
  const data = now.slice(start, now.length - behind);
  return deleteCount === 0 && data.length === 0 ? [] : [{ start, deleteCount, data }];
}
