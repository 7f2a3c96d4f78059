/** Having the editor read files that are on no disk, with all that they name, before they are looked at together. */
import type { CancellationToken } from "vscode-languageserver";
import { isInFolder } from "./addresses";
import type { EditorFiles } from "./editor-files";
import type { Plans } from "./plans";

/** Runs with all these files read, and with those that they name. Ends early when nobody waits for it any more. */
export type Gathered = <A>(
  files: readonly string[],
  token: CancellationToken,
  run: () => Promise<A>,
) => Promise<A>;

/** How many are asked for at once. */
const AT_ONCE = 16;

export function gathering(
  plans: Plans,
  editor: Pick<EditorFiles, "hold" | "letGo" | "keepOnly"> | undefined,
  namedBy: (file: string) => readonly string[],
): Gathered {
  if (!editor) return (_files, _token, run) => run();
  return async (files, token, run) => {
    const gaveUp = new Promise<void>((resolve) => token.onCancellationRequested(() => resolve()));
    const held: string[] = [];
    const seen = new Set(files.filter(isInFolder));
    const read = async (file: string): Promise<void> => {
      if (token.isCancellationRequested) return;
      if (!plans.document(plans.uriOf(file))) {
        held.push(file);
        await Promise.race([editor.hold(file), gaveUp]);
      }
      for (const named of namedBy(file)) if (isInFolder(named)) seen.add(named);
    };
    try {
      for (let done = 0; done < seen.size; ) {
        const next = [...seen].slice(done);
        done = seen.size;
        await someAtOnce(next, read);
      }
      return await run();
    } finally {
      for (const file of held) editor.letGo(file);
      editor.keepOnly(plans.asksFor);
    }
  };
}

async function someAtOnce<A>(list: readonly A[], work: (one: A) => Promise<void>): Promise<void> {
  const left = list.values();
  const worker = async (): Promise<void> => {
    for (const one of left) await work(one);
  };
  await Promise.all(Array.from({ length: AT_ONCE }, worker));
}
