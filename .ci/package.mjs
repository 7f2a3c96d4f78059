// npm run package: packs what dist/ holds, with all else that the extension needs, as dist/sawbuck.vsix.
//
//   node .ci/package.mjs [--out FILE]
//
// It is packed from a folder of its own. Packed here, `files` of package.json would decide, which is what npm packs: the command
// line, for terminals and other editors.
import { spawnSync } from "node:child_process";
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";

/** What the extension holds besides its manifest, the text of its page in a gallery and the list of changes. */
const FILES = [
  "dist/extension.js",
  "dist/extension-web.js",
  "dist/server.js",
  "dist/layouts.js",
  "dist/preview.js",
  "dist/slip.js",
  "dist/pdf.js",
  "dist/fonts",
  "dist/NOTICES.txt",
  "package.nls.json",
  "package.nls.fr.json",
  "client/l10n",
  "client/practice",
  "client/media/icon.png",
  "client/media/plan-light.svg",
  "client/media/plan-dark.svg",
  "client/media/walkthrough",
  "grammar/sawbuck.tmLanguage.json",
  "grammar/language-configuration.json",
  "grammar/README.md",
  "LICENSE",
];
/** What package.json says to npm alone. */
const FOR_NPM = ["bin", "devDependencies", "files", "scripts"];

const root = fileURLToPath(new URL("..", import.meta.url));

/** The text of the page in a gallery. A gallery shows pictures of the web alone: without a repository there are none to show. */
export function galleryText(text, { repository }) {
  const ofPicture = /^!\[[^\]]*\]\([^)]*\)\n\n/gm;
  // Told from where the text lies, which the packer takes for the top of the repository.
  return repository ? text.replace(/\]\((media\/)/g, "](client/$1") : text.replace(ofPicture, "");
}

/** The manifest without what it says to npm. */
export const manifestOf = (manifest) =>
  Object.fromEntries(Object.entries(manifest).filter(([key]) => !FOR_NPM.includes(key)));

/** Lays out in `folder` what is packed. */
function layOut(folder) {
  const samples = readdirSync(join(root, "samples")).filter((name) => name.endsWith(".sawbuck"));
  for (const file of [...FILES, ...samples.map((name) => `samples/${name}`)]) {
    if (!existsSync(join(root, file)))
      throw new Error(`there is no ${file}: npm run build makes what dist/ holds`);
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    cpSync(join(root, file), join(folder, file), { recursive: true });
  }
  const manifest = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
  const gallery = galleryText(readFileSync(join(root, "client/GALLERY.md"), "utf8"), manifest);
  writeFileSync(join(folder, "package.json"), `${JSON.stringify(manifestOf(manifest), null, 2)}\n`);
  writeFileSync(join(folder, "README.md"), gallery);
  cpSync(join(root, "client/CHANGELOG.md"), join(folder, "CHANGELOG.md"));
  // Nothing is left out of this folder.
  writeFileSync(join(folder, ".vscodeignore"), "");
}

function main() {
  const { values } = parseArgs({
    options: { out: { type: "string", default: join(root, "dist/sawbuck.vsix") } },
  });
  const folder = mkdtempSync(join(tmpdir(), "sawbuck-package-"));
  try {
    layOut(folder);
    const vsce = join(root, "node_modules/@vscode/vsce/vsce");
    const words = [
      "package",
      "--no-dependencies",
      "--allow-missing-repository",
      "--out",
      resolve(values.out),
    ];
    return spawnSync(process.execPath, [vsce, ...words], { cwd: folder, stdio: "inherit" }).status ?? 1;
  } catch (error) {
    console.error(`package: ${error.message}`);
    return 1;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) process.exitCode = main();
