/**
 * The open plans: each version of a text is worked out once, and whoever asks shares the answer. A plan is worked out
 * anew when its own text changes, or a file it names (open texts before those on disk), or the reader's shop file.
 */
import type { TextDocument } from "vscode-languageserver-textdocument";
import type { Layouts } from "../cutting/improve";
import { holderOf, type Loaded, load, type Reader } from "../plan";
import { type Evaluated, evaluate, withLayouts } from "../service";
import { pathFromRoot } from "./addresses";
import { type EditorFiles, PATIENCE_MS } from "./editor-files";

/** How documents' addresses and files' names turn into each other; told apart by where the server runs. */
export interface Files {
  /** The name of a document's file; its address again when it is in no folder (an unsaved text, say). */
  readonly toFile: (uri: string) => string;
  readonly toUri: (file: string) => string;
  readonly read: Reader;
  /** The folder one works in, for a plan by its name: what a plan, and what it brings, may read. */
  readonly folderOf: (file: string) => string;
  /** Files that are read while a plan is worked out without them, where there are such. */
  readonly coming?: Pick<EditorFiles, "pending" | "next">;
  /** What `~/` stands for; none where there is no such folder. */
  readonly home: string | undefined;
}

export interface Plans {
  readonly open: (document: TextDocument) => void;
  readonly close: (uri: string) => void;
  /** `tell` is told of each document that is closed. */
  readonly onClosed: (tell: (uri: string) => void) => void;
  /** `tell` is told of each plan whose files were waited for in vain: it is to be shown as it is. */
  readonly onGivenUp: (tell: (uri: string) => void) => void;
  /** Undefined for a document that is not open. For a moment it may lack files that are being read. */
  readonly evaluated: (uri: string) => Evaluated | undefined;
  /** Its files are being read, and it is not yet as it will be in a moment. */
  readonly waits: (uri: string) => boolean;
  /** It waits no longer, which is so in PATIENCE_MS at the latest. */
  readonly settled: (uri: string) => Promise<void>;
  readonly document: (uri: string) => TextDocument | undefined;
  /** The addresses of all open documents. */
  readonly all: () => string[];
  /** Any file by its name, an open text before what is on disk. */
  readonly file: (file: string) => ReturnType<Reader>;
  /** A file that is not open as a plan of its own, with the files it names; undefined where it cannot be read. */
  readonly closed: (file: string) => Loaded | undefined;
  /** The reader's own shop file, for the plan in a file. */
  readonly shopOf: (file: string) => Shop | undefined;
  /** The name of the file of an open document. */
  readonly fileOf: (uri: string) => string;
  /** The address an editor knows a file by: that of the open document, where there is one. */
  readonly uriOf: (file: string) => string;
  readonly reader: Reader;
  readonly folderOf: Files["folderOf"];
  /** Forgets what depends on a file, and gives the addresses of the open plans that do. */
  readonly changed: (file: string) => string[];
  /** Whether an open plan has looked for that file. */
  readonly asksFor: (file: string) => boolean;
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
  /** From when on it waits for files. */
  waitsFrom: number | undefined;
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
  const toldOfClosed: ((uri: string) => void)[] = [];
  const toldOfGivenUp: ((uri: string) => void)[] = [];

  const reader: Reader = (path, from, head) => {
    const found = files.read(path, from, head);
    if ("refused" in found && found.barred) return found;
    const open = byFile.get(found.file);
    const document = open === undefined ? undefined : held.get(open)?.document;
    return document ? { file: found.file, text: document.getText() } : found;
  };

  const byName = (file: string): ReturnType<Reader> => reader(pathFromRoot(file), file, undefined);

  const workOut = (one: Held): Evaluated => {
    one.asked.clear();
    const read: Reader = (path, from, head) => {
      const found = reader(path, from, head);
      one.asked.add(found.file);
      return found;
    };
    const evaluated = evaluate(one.file, one.document.getText(), read, {
      ...one.shop,
      ...(layouts && { layouts }),
    });
    if (!isComing(one)) one.waitsFrom = undefined;
    else if (one.waitsFrom === undefined) {
      one.waitsFrom = performance.now();
      void giveUp(one, one.waitsFrom);
    }
    return evaluated;
  };

  /** A file that another named may be given up later than the plan gives up: no news ends the wait then. */
  const giveUp = async (one: Held, from: number): Promise<void> => {
    await until(() => from + PATIENCE_MS - performance.now());
    const { uri } = one.document;
    if (held.get(uri) !== one || one.waitsFrom !== from || !isComing(one)) return;
    one.answer = undefined;
    for (const tell of toldOfGivenUp) tell(uri);
  };

  /** Until no time is left, looked at again at each news: a timer may ring too early. */
  const until = async (left: () => number): Promise<void> => {
    for (let ms = left(); ms > 0; ms = left()) await files.coming?.next(ms);
  };

  const isComing = ({ asked }: Held): boolean =>
    [...asked].some((file) => files.coming?.pending(file) && !byFile.has(file));

  const evaluated = (uri: string): Evaluated | undefined => {
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
  };

  /** For how long a plan waits yet, in ms. */
  const leftOf = (uri: string): number => {
    evaluated(uri);
    const one = held.get(uri);
    if (one?.waitsFrom === undefined || !isComing(one)) return 0;
    return Math.max(0, one.waitsFrom + PATIENCE_MS - performance.now());
  };

  return {
    open: (document) => {
      const { uri } = document;
      const file = files.toFile(uri);
      const shop = shopOf(uri);
      held.set(uri, { document, file, shop, answer: undefined, asked: new Set(), waitsFrom: undefined });
      byFile.set(file, uri);
    },
    close: (uri) => {
      const one = held.get(uri);
      held.delete(uri);
      for (const tell of toldOfClosed) tell(uri);
      if (one) byFile.delete(one.file);
    },
    onClosed: (tell) => toldOfClosed.push(tell),
    onGivenUp: (tell) => toldOfGivenUp.push(tell),
    evaluated,
    waits: (uri) => leftOf(uri) > 0,
    settled: (uri) => until(() => leftOf(uri)),
    document: (uri) => held.get(uri)?.document,
    all: () => [...held.keys()],
    file: byName,
    closed: (file) => {
      const found = byName(file);
      return "refused" in found ? undefined : load(file, found.text, reader, shopOf(files.toUri(file)));
    },
    shopOf: (file) => {
      const open = byFile.get(file);
      return open === undefined ? shopOf(files.toUri(file)) : held.get(open)?.shop;
    },
    fileOf: (uri) => held.get(uri)?.file ?? files.toFile(uri),
    uriOf: (file) => byFile.get(holderOf(file)) ?? files.toUri(holderOf(file)),
    reader,
    folderOf: files.folderOf,
    changed: (file) => {
      const hit = [...held].filter(([, one]) => one.file !== file && one.asked.has(file));
      for (const [, one] of hit) one.answer = undefined;
      return hit.map(([uri]) => uri);
    },
    asksFor: (file) => [...held.values()].some(({ asked }) => asked.has(file)),
    layOutAnew: (uri) => {
      const answer = held.get(uri)?.answer;
      if (answer) answer.anew = true;
    },
    setShop: (uri, shop) => {
      const one = held.get(uri);
      if (!one || (one.shop?.shop === shop?.shop && one.shop?.shopFrom === shop?.shopFrom)) return false;
      one.shop = shop;
      one.answer = undefined;
      return true;
    },
  };
}
