/** Figures in the text where something follows from something else; what a hover says of them comes once it is asked for. */
import { type InlayHint, InlayHintKind } from "vscode-languageserver";
import type { TextDocument } from "vscode-languageserver-textdocument";
import { type Hint, type HintKinds, hintsOf } from "../../features/hints";
import { hoverAt } from "../../features/hover";
import { markup } from "../convert";
import type { Settings } from "../settings";
import { numberIn, textIn } from "../untyped";
import type { Answerer, Answering } from "./answering";

export const hints: Answerer = {
  offers: ({ textDocument }) => ({
    inlayHintProvider: {
      resolveProvider: textDocument?.inlayHint?.resolveSupport?.properties.includes("tooltip") ?? false,
    },
  }),
  answer: (answering) => {
    const { connection, guard, of, shows, settings, refresh } = answering;
    const answered = new Map<string, string>();
    connection.languages.inlayHint.on(
      guard(
        "hints",
        (asked) =>
          of(asked, ({ evaluated, document }) => {
            const { uri } = document;
            const kinds = kindsFor(uri, settings);
            answered.set(uri, JSON.stringify(kinds));
            const range = {
              start: document.offsetAt(asked.range.start),
              end: document.offsetAt(asked.range.end),
            };
            return hintsOf(evaluated, range, kinds, shows.language).map((one) => toHint(one, document));
          }),
        null,
      ),
    );
    connection.languages.inlayHint.resolve((one) =>
      guard("a hint", (asked: InlayHint) => withTooltip(asked, answering), one)(one),
    );
    answering.plans.onClosed((uri) => answered.delete(uri));
    settings.onChange((uris) => {
      const others = uris.some((uri) => {
        const before = answered.get(uri);
        return before !== undefined && before !== JSON.stringify(kindsFor(uri, settings));
      });
      if (others) refresh.hints();
    });
  },
};

const kindsFor = (uri: string, settings: Settings): HintKinds => ({
  lengths: settings.yes(uri, "hints.lengths", true),
  counts: settings.yes(uri, "hints.counts", true),
});

const KINDS = {
  length: InlayHintKind.Type,
  count: InlayHintKind.Parameter,
} as const satisfies Readonly<Record<Hint["kind"], InlayHintKind>>;

const toHint = ({ offset, text, kind, about }: Hint, document: TextDocument): InlayHint => ({
  position: document.positionAt(offset),
  label: text,
  kind: KINDS[kind],
  paddingLeft: true,
  data: { uri: document.uri, version: document.version, about },
});

/** Nothing more for a text that has changed since. */
function withTooltip(one: InlayHint, { plans, of, shows }: Answering): InlayHint {
  const uri = textIn(one.data, "uri");
  if (plans.document(uri)?.version !== numberIn(one.data, "version")) return one;
  const told = of({ textDocument: { uri } }, ({ evaluated }) =>
    hoverAt(evaluated, numberIn(one.data, "about"), shows.language),
  );
  if (!told) return one;
  return { ...one, tooltip: markup(told.markdown, shows) };
}
