// Unpacks a packaged extension as an editor does: the part below extension/ of a zip file, read by its central directory.
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { inflateRawSync } from "node:zlib";

/** Every file of the extension in `vsix`, below `folder`. */
export function unpack(vsix, folder) {
  const zip = readFileSync(vsix);
  const end = zip.lastIndexOf("PK\u0005\u0006", undefined, "latin1");
  if (end === -1) throw new Error(`${vsix} is no zip file`);
  let at = zip.readUInt32LE(end + 16);
  for (let left = zip.readUInt16LE(end + 10); left > 0; left--) {
    const [name, extra, comment] = [28, 30, 32].map((field) => zip.readUInt16LE(at + field));
    const path = zip.toString("utf8", at + 46, at + 46 + name);
    const inside = /^extension\/(.+[^/])$/.exec(path)?.[1];
    if (inside !== undefined) {
      mkdirSync(dirname(join(folder, inside)), { recursive: true });
      writeFileSync(join(folder, inside), contentAt(zip, at));
    }
    at += 46 + name + extra + comment;
  }
}

/** What the entry of the central directory at `at` tells of. */
function contentAt(zip, at) {
  const method = zip.readUInt16LE(at + 10);
  const size = zip.readUInt32LE(at + 20);
  const local = zip.readUInt32LE(at + 42);
  const start = local + 30 + zip.readUInt16LE(local + 26) + zip.readUInt16LE(local + 28);
  const packed = zip.subarray(start, start + size);
  return method === 0 ? packed : inflateRawSync(packed);
}
