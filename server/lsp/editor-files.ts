/**
 * Files that the editor reads for the server: in a browser, where there is no disk, and in folders that are not on one.
 * A plan is worked out at once with what is known; a file asked for the first time is being read meanwhile, and whoever
 * asked for it is told when it is there.
 */
import type { Found } from "../plan";
import { isAddress, isFullPath, isInFolder, pathFrom } from "./addresses";
import type { FolderReader } from "./inside";

/** What became of a file; `refused` says in words why there is no text. */
export type FileRead = { readonly text: string } | { readonly refused: string };

export interface EditorFiles {
  /** From a file that lies in a folder of the editor's. */
  readonly read: (path: string, from: string) => Found;
  /** Nothing is known of it yet, and not for long. */
  readonly pending: (file: string) => boolean;
  /** It may be another by now: it is asked for again, and until then is as it was. */
  readonly changed: (file: string) => void;
  /** Reads a file to its end, however long that takes, and keeps it until it is let go as often as it was held. */
  readonly hold: (file: string) => Promise<void>;
  readonly letGo: (file: string) => void;
  /** Forgets all files but those that are held, and those that are still needed. */
  readonly keepOnly: (needed: (file: string) => boolean) => void;
  /** When the next news is there, or after so many ms. */
  readonly next: (atMost: number) => Promise<void>;
}

/** How long, in ms, a file may be waited for before it is said to be missing, and a plan for all its files. */
export const PATIENCE_MS = 1500;

interface Kept {
  /** What is known of it. */
  answer: FileRead | undefined;
  /** How often it was asked for: only the answer to the last question counts. */
  asked: number;
  /** Is over when the last question was answered. */
  read: Promise<void>;
  holds: number;
}

/** `ask` has the editor read a file, and `news` is told each time that another answer is known. */
export function editorFiles(
  ask: (file: string) => Promise<FileRead>,
  news: (file: string) => void,
): EditorFiles {
  const kept = new Map<string, Kept>();
  let waiting: (() => void)[] = [];

  const wake = (): void => {
    const told = waiting;
    waiting = [];
    for (const tell of told) tell();
  };

  const know = (file: string, one: Kept, answer: FileRead): void => {
    if (kept.get(file) !== one || same(one.answer, answer)) return;
    one.answer = answer;
    news(file);
    wake();
  };

  const request = (file: string, one: Kept): void => {
    const turn = ++one.asked;
    one.read = ask(file)
      .catch(() => ({ refused: UNREADABLE }))
      .then((answer) => {
        if (turn === one.asked) know(file, one, answer);
      });
  };

  const firstRequest = (file: string): Kept => {
    const one: Kept = { answer: undefined, asked: 0, read: Promise.resolve(), holds: 0 };
    kept.set(file, one);
    setTimeout(() => {
      if (!one.answer) know(file, one, { refused: READING });
    }, PATIENCE_MS);
    request(file, one);
    return one;
  };

  return {
    read: (path, from) => {
      if (isFullPath(path) && !path.startsWith("/")) return { file: path, refused: DRIVE };
      const file = pathFrom(path, from);
      const { answer } = kept.get(file) ?? firstRequest(file);
      return { file, ...(answer ?? { refused: READING }) };
    },
    pending: (file) => kept.has(file) && kept.get(file)?.answer === undefined,
    changed: (file) => {
      const one = kept.get(file);
      if (one) request(file, one);
    },
    hold: async (file) => {
      const one = kept.get(file) ?? firstRequest(file);
      one.holds++;
      for (let read: Promise<void> | undefined; read !== one.read; ) {
        read = one.read;
        await read;
      }
    },
    letGo: (file) => {
      const one = kept.get(file);
      if (one) one.holds--;
    },
    keepOnly: (needed) => {
      for (const [file, { holds }] of kept) if (holds === 0 && !needed(file)) kept.delete(file);
      wake();
    },
    next: (atMost) =>
      new Promise((resolve) => {
        const timer = setTimeout(resolve, atMost);
        waiting.push(() => {
          clearTimeout(timer);
          resolve();
        });
      }),
  };
}

/** Paths of a disk by `disk`, and all else by the editor, where it reads files. */
export function readerOf(disk: FolderReader, editor: EditorFiles | undefined): FolderReader {
  return (path, from, within) => {
    if (!isAddress(from)) return disk(path, from, within);
    if (isInFolder(from))
      return editor?.read(path, from) ?? { file: pathFrom(path, from), refused: NOT_FROM_HERE };
    return isFullPath(path) ? disk(path, from, within) : { file: path, refused: NO_FOLDER };
  };
}

/** What an editor answered, whatever it is. */
export function fileReadIn(answer: unknown): FileRead {
  const { text, refused } = (answer ?? {}) as Partial<Record<string, unknown>>;
  if (typeof text === "string") return { text };
  return { refused: typeof refused === "string" && refused !== "" ? refused : UNREADABLE };
}

const same = (a: FileRead | undefined, b: FileRead): boolean =>
  a !== undefined &&
  ("text" in a ? "text" in b && a.text === b.text : "refused" in b && a.refused === b.refused);

const READING = "it is still being read";
const UNREADABLE = "it cannot be read";
const DRIVE = "a path with a drive leads nowhere from this folder";
const NO_FOLDER = "this text is in no folder yet: save it first";
const NOT_FROM_HERE = "this editor cannot read files in this folder";
