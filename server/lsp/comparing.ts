/** An open plan beside what it was in the last commit; the messages themselves are told in client/protocol.ts. */
import type { Connection } from "vscode-languageserver";
import type { Language } from "../checks";
import { compare, comparisonParts } from "../exchange";
import { evaluate } from "../service";
import type { SheetLanguage } from "../sheet/words";
import type { Guard } from "./answers/answering";
import type { Committed, NotCommitted } from "./committed";
import { toldAsFault } from "./faults";
import { confined } from "./inside";
import { laidOutInTurns } from "./layouts/in-turns";
import type { Plans } from "./plans";
import { languageFor } from "./sheet-options";
import { finishedInTurns, turn } from "./turn";
import { textIn } from "./untyped";

/** A plan in a file of that name as it was last committed. */
export type LastCommitted = (file: string) => Committed | NotCommitted;

/** `lastCommitted` is unsaid where there is no git, as in a browser. */
export function answerComparisons(
  connection: Connection,
  plans: Plans,
  guard: Guard,
  lastCommitted: LastCommitted = () => "no disk",
): void {
  const inTurns = laidOutInTurns();

  /** Null for a text that is not open, or has changed meanwhile. */
  const comparison = async (uri: string, language: SheetLanguage) => {
    await plans.settled(uri);
    const now = plans.evaluated(uri);
    const version = plans.document(uri)?.version;
    if (!now || version === undefined) return null;
    const stale = (): boolean => plans.document(uri)?.version !== version;
    const was = uri.startsWith("file:") ? lastCommitted(now.file) : "no disk";
    const told = language === "fr" ? "fr" : "en";
    if (typeof was === "string") return { refused: WHY_NOT[told][was] };
    const read = confined(was.read, plans.folderOf);
    const old =
      was.text === undefined
        ? undefined
        : await inTurns(evaluate(now.file, was.text, read, plans.shopOf(now.file)), stale);
    await turn();
    if (stale()) return null;
    const name = (file: string): string =>
      file.slice(Math.max(file.lastIndexOf("/"), file.lastIndexOf("\\")) + 1);
    const called = {
      old: (file: string) => COMMITTED[told](name(file), was.commit, was.day),
      new: name,
    };
    const compared = compare(old, now, called, language);
    const drawings = await finishedInTurns(compared.drawingsInSteps(), stale);
    return drawings ? { version, ...comparisonParts(compared, drawings, language) } : null;
  };

  const failed = toldAsFault(guard, "the comparison");
  connection.onRequest("sawbuck/compare", (asked: unknown) =>
    comparison(textIn(asked, "uri"), languageFor(textIn(asked, "language"))).catch(failed),
  );
}

const COMMITTED: Readonly<Record<Language, (file: string, commit: string, day: string) => string>> = {
  en: (file, commit, day) => `${file} as last committed (${commit}, ${day})`,
  fr: (file, commit, day) => `${file} du dernier commit (${commit}, ${day})`,
};

const WHY_NOT: Readonly<Record<Language, Readonly<Record<NotCommitted, string>>>> = {
  en: {
    "no git": "There is nothing to compare with: git is not installed, or is not found.",
    "no repository":
      "There is nothing to compare with: this plan is in no git repository. “git init” in its folder begins one.",
    "no commit": "There is nothing to compare with yet: this repository has no commit.",
    "no disk":
      "There is nothing to compare with: the plan is in no file on a disk, where git keeps its versions.",
  },
  fr: {
    "no git": "Il n’y a rien à comparer : git n’est pas installé, ou est introuvable.",
    "no repository":
      "Il n’y a rien à comparer : ce plan n’est dans aucun dépôt git. « git init » dans son dossier en commence un.",
    "no commit": "Il n’y a encore rien à comparer : ce dépôt n’a aucun commit.",
    "no disk":
      "Il n’y a rien à comparer : le plan n’est dans aucun fichier d’un disque, où git garde ses versions.",
  },
};
