/** The editor's own `l10n` for tests of the extension: English until `speak("fr")`, then by the bundle that ships. */
import BUNDLE from "../../client/l10n/bundle.l10n.fr.json";

type Language = "en" | "fr";
let spoken: Language = "en";

export const speak = (language: Language): void => {
  spoken = language;
};

/** As vscode.d.ts says of `l10n`: the text of the bundle, or else the one given, with its blanks filled. */
export const l10n = {
  get bundle() {
    return spoken === "fr" ? BUNDLE : undefined;
  },
  t: (message: string, ...filled: readonly (string | number)[]): string => {
    const text = spoken === "fr" ? ((BUNDLE as Record<string, string>)[message] ?? message) : message;
    return text.replace(/\{(\d+)\}/g, (blank, at) => String(filled[Number(at)] ?? blank));
  },
};
