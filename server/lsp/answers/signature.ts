/** What the entry being typed may say. */
import type { SignatureHelp } from "vscode-languageserver";
import { signatureAt } from "../../features/signature";
import { markup } from "../convert";
import type { Answerer } from "./answering";

export const signature: Answerer = {
  offers: () => ({
    signatureHelpProvider: { triggerCharacters: [" ", ",", "("], retriggerCharacters: [","] },
  }),
  answer: ({ connection, params, guard, at, shows }) => {
    const { signatureInformation: can } = params.capabilities.textDocument?.signatureHelp ?? {};
    const offsets = can?.parameterInformation?.labelOffsetSupport ?? false;
    const marked = (value: string) => (value ? { documentation: markup(value, shows) } : {});
    connection.onSignatureHelp(
      guard(
        "signature help",
        (asked) =>
          at(asked, ({ evaluated }, offset): SignatureHelp | undefined => {
            const found = signatureAt(evaluated, offset, shows.language);
            if (!found) return undefined;
            const { signatures, active, parameter } = found;
            return {
              signatures: signatures.map((s) => ({
                label: s.label,
                ...marked(s.documentation),
                parameters: s.parameters.map((p) => ({
                  label: offsets ? ([p.start, p.end] as [number, number]) : s.label.slice(p.start, p.end),
                  ...marked(p.documentation),
                })),
              })),
              activeSignature: active,
              // Past the last one: none is marked.
              activeParameter: parameter ?? signatures[active]?.parameters.length ?? 0,
            };
          }),
        null,
      ),
    );
  },
};
