/**
 * The open plans: each version of a text is worked out once, and whoever asks shares the answer. A plan is worked out
 * anew when its own text changes, or a file it names (open texts before those on disk), or the reader's shop file.
 */
import type { TextDocument } from "vscode-languageserver-textdocument";
import type { Layouts } from "../cutting/improve";
import type { Reader } from "../plan";
import { type Evaluated, evaluate, withLayouts } from "../service";

/** How documents' addresses and files' names turn into each other; told apart by where the server runs. */
export interface Files {
  /** The name of a document's file; its address again when it is in no folder (an unsaved text, say). */
  readonly toFile: (uri: string) => string;
  readonly toUri: (file: string) => string;
  readonly read: Reader;
  /** What `~/` stands for; none where there is no such folder. */
  readonly home: string | undefined;
}

export interface Plans {
  readonly open: (document: TextDocument) => void;
  readonly close: (uri: string) => void;
  /** `tell` is told of each document that is closed. */
  readonly onClosed: (tell: (uri: string) => void) => void;
  /** `tell` is told whenever open plans mean something else although their own texts are the same. */
  readonly onChanged: (tell: () => void) => void;
  /** Undefined for a document that is not open. */
  readonly evaluated: (uri: string) => Evaluated | undefined;
  readonly document: (uri: string) => TextDocument | undefined;
  /** The name of the file of an open document. */
  readonly fileOf: (uri: string) => string;
  /** The address an editor knows a file by: that of the open document, where there is one. */
  readonly uriOf: (file: string) => string;
  readonly reader: Reader;
  /** Forgets what depends on a file, and gives the addresses of the open plans that do. */
  readonly changed: (file: string) => string[];
  /** Its layouts are to be those that are known by now. */
  readonly layOutAnew: (uri: string) => void;
  /** Sets the shop file of a plan; true when that is news. */
  readonly setShop: (uri: string, shop: Shop | undefined) => boolean;
}

/** The reader's own shop file, and a file beside which its path is seen. */
export interface Shop {
  readonly shop: string;
  readonly shopFrom?: string;
}

interface Held {
  readonly document: TextDocument;
  readonly file: string;
  shop: Shop | undefined;
  /** The answer for one version. */
  answer: { readonly version: number; readonly evaluated: Evaluated; anew: boolean } | undefined;
  /** Every file that was looked for, found or not. */
  readonly asked: Set<string>;
}

/** `onWorked` is told of each time a plan has been worked out; `layouts` are better ones than first answers, where there are any. */
export function openPlans(
  files: Files,
  shopOf: (uri: string) => Shop | undefined,
  onWorked: (uri: string, version: number, evaluated: Evaluated) => void,
  layouts?: Layouts,
): Plans {
  const held = new Map<string, Held>();
  const byFile = new Map<string, string>();
  const closed: ((uri: string) => void)[] = [];
  const changed: (() => void)[] = [];
  const tellChanged = (): void => {
    for (const tell of changed) tell();
  };

  const reader: Reader = (path, from) => {
    const full = /^(\/|\\\\|[A-Za-z]:[\\/])/.test(path);
    if (!full && hasScheme(from))
      return { file: path, refused: "this text is in no folder yet: save it first" };
    const found = files.read(path, from);
    const open = byFile.get(found.file);
    const document = open === undefined ? undefined : held.get(open)?.document;
    return document ? { file: found.file, text: document.getText() } : found;
  };

  const workOut = (one: Held): Evaluated => {
    one.asked.clear();
    const read: Reader = (path, from) => {
      const found = reader(path, from);
      one.asked.add(found.file);
      return found;
    };
    return evaluate(one.file, one.document.getText(), read, { ...one.shop, ...(layouts && { layouts }) });
  };

  return {
    open: (document) => {
      const { uri } = document;
      const file = files.toFile(uri);
      held.set(uri, { document, file, shop: shopOf(uri), answer: undefined, asked: new Set() });
      byFile.set(file, uri);
    },
    close: (uri) => {
      const one = held.get(uri);
      held.delete(uri);
      for (const tell of closed) tell(uri);
      if (one) byFile.delete(one.file);
    },
    onClosed: (tell) => closed.push(tell),
    onChanged: (tell) => changed.push(tell),
    evaluated: (uri) => {
      const one = held.get(uri);
      if (!one) return undefined;
      const { version } = one.document;
      if (one.answer?.version !== version) {
        // Two answers at once would take twice the memory.
        one.answer = undefined;
        one.answer = { version, evaluated: workOut(one), anew: false };
        onWorked(uri, version, one.answer.evaluated);
      } else if (one.answer.anew && layouts) {
        one.answer = { version, evaluated: withLayouts(one.answer.evaluated, layouts), anew: false };
        onWorked(uri, version, one.answer.evaluated);
      }
      return one.answer.evaluated;
    },
    document: (uri) => held.get(uri)?.document,
    fileOf: (uri) => held.get(uri)?.file ?? files.toFile(uri),
    uriOf: (file) => byFile.get(file) ?? files.toUri(file),
    reader,
    changed: (file) => {
      const hit = [...held].filter(([, one]) => one.file !== file && one.asked.has(file));
      for (const [, one] of hit) one.answer = undefined;
      if (hit.length > 0) tellChanged();
      return hit.map(([uri]) => uri);
    },
    layOutAnew: (uri) => {
      const answer = held.get(uri)?.answer;
      if (answer) answer.anew = true;
    },
    setShop: (uri, shop) => {
      const one = held.get(uri);
      if (!one || (one.shop?.shop === shop?.shop && one.shop?.shopFrom === shop?.shopFrom)) return false;
      one.shop = shop;
      one.answer = undefined;
      tellChanged();
      return true;
    },
  };
}

/** Whether a file's name is an address such as `untitled:Untitled-1`; a drive letter is none. */
const hasScheme = (file: string): boolean => /^[A-Za-z][A-Za-z0-9+.-]+:/.test(file);
