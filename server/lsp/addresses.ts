/**
 * Files that are known by addresses (`vscode-vfs://yard/plans/bench.sawbuck`), not by paths of a disk. Inside, such a file
 * is named by its address with letters as they are read: one name for each file, however its address was written.
 */

/** The name of the file behind an address; the address itself where it is in no folder (`untitled:Untitled-1`). */
export function nameOfAddress(address: string): string {
  const parts = partsOf(address);
  if (!parts) return address;
  return parts.root + parts.path.split("/").map(shown).join("/") + parts.rest;
}

/** The address of a file by its name, as editors write it. */
export function addressOfName(name: string): string {
  const parts = partsOf(name);
  if (!parts) return name;
  return parts.root + parts.path.split("/").map(written).join("/") + parts.rest;
}

/** Whether a file's name is an address; a drive letter makes none. */
export const isAddress = (name: string): boolean => /^[A-Za-z][A-Za-z0-9+.-]+:/.test(name);

/** Whether it lies in a folder, so that other files can be found from it. */
export const isInFolder = (name: string): boolean => partsOf(name) !== undefined;

/** What begins at the root of a disk: `/yard`, `C:\yard`, `\\server\yard`. */
export const isFullPath = (path: string): boolean => /^(\/|\\\\|[A-Za-z]:[\\/])/.test(path);

/**
 * The name of the file that `path` means, seen from the file `from` that lies in a folder. It stays with the scheme and
 * the authority of `from`: what leads up from their root stays there, as in addresses of the web.
 */
export function pathFrom(path: string, from: string): string {
  const parts = partsOf(from);
  if (!parts) return path;
  const folder = path.startsWith("/") ? [] : parts.path.split("/").slice(0, -1).map(plain);
  const found: string[] = [];
  for (const segment of [...folder, ...path.split("/")]) {
    if (segment === "..") found.pop();
    else if (segment !== "" && segment !== ".") found.push(segment);
  }
  return `${parts.root}/${found.map(readable).join("/")}`;
}

/** The path by which a file is found from itself: all of a path of a disk, and of an address what follows its authority. */
export function pathFromRoot(name: string): string {
  const parts = partsOf(name);
  return parts ? parts.path.split("/").map(plain).join("/") : name;
}

interface Parts {
  /** Scheme and authority. */
  readonly root: string;
  /** From its first slash on. */
  readonly path: string;
  /** Query and fragment. */
  readonly rest: string;
}

/** Undefined for what is in no folder: a text that has never been saved, whatever its address looks like, and a path of a disk. */
function partsOf(address: string): Parts | undefined {
  const found = /^([A-Za-z][A-Za-z0-9+.-]+:(?:\/\/[^/?#]*)?)(\/[^?#]*)(.*)$/s.exec(address);
  if (!found || /^untitled:/i.test(address)) return undefined;
  return { root: found[1]!, path: found[2]!, rest: found[3]! };
}

/** A segment of an address in plain letters; what is not well written stands for itself. */
function plain(segment: string): string {
  try {
    return decodeURIComponent(segment);
  } catch {
    return segment;
  }
}

/** In plain letters but those that would end the segment or the path. */
const readable = (letters: string): string =>
  wellFormed(letters).replace(/[%?#/\p{Cc}]/gu, (letter) => encodeURIComponent(letter));

const shown = (segment: string): string => readable(plain(segment));

/** Everything but letters, digits and `- . _ ~` in their code. */
const written = (segment: string): string =>
  encodeURIComponent(wellFormed(plain(segment))).replace(
    /[!'()*]/g,
    (letter) => `%${letter.charCodeAt(0).toString(16).toUpperCase()}`,
  );

/** Half a letter has no code. */
const wellFormed = (letters: string): string =>
  letters.replace(/[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g, "\ufffd");
