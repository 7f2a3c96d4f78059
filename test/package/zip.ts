/** Reads a zip file, with the library that editors unpack extensions with. */
import { createRequire } from "node:module";
import { buffer } from "node:stream/consumers";

interface Entry {
  readonly fileName: string;
}
interface Zip {
  readonly eachEntry: () => AsyncIterable<Entry>;
  readonly openReadStreamPromise: (entry: Entry) => Promise<NodeJS.ReadableStream>;
}
const { openPromise } = createRequire(__filename)("yauzl") as {
  openPromise: (file: string) => Promise<Zip>;
};

/** What it holds, by path, in the order it stands there. */
export async function unzipped(file: string): Promise<ReadonlyMap<string, Buffer>> {
  const zip = await openPromise(file);
  const files = new Map<string, Buffer>();
  for await (const entry of zip.eachEntry())
    files.set(entry.fileName, await buffer(await zip.openReadStreamPromise(entry)));
  return files;
}
