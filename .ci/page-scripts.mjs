// A script that stands inside a page: `import TEXT from "./main.ts?script"` gives it bundled, as text. For esbuild and for vite.
import { dirname, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { buildSync } from "esbuild";

const root = fileURLToPath(new URL("..", import.meta.url));
const ENDING = "?script";

/** The same text whoever asks for it: a page names it by its hash. */
export const pageScript = (file) => bundled(file).text;

/** With the files that it is made of. */
function bundled(file) {
  const { outputFiles, metafile } = buildSync({
    absWorkingDir: root,
    entryPoints: [file],
    bundle: true,
    write: false,
    metafile: true,
    platform: "browser",
    format: "iife",
    target: "es2022",
    legalComments: "none",
  });
  const files = Object.keys(metafile.inputs).map((input) => resolve(root, input));
  return { text: `\n${outputFiles[0].text}`, files };
}

export const esbuildPageScripts = {
  name: "page-scripts",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /\?script$/ }, ({ path, importer }) => ({
      path: resolve(dirname(importer), path.slice(0, -ENDING.length)),
      namespace: "page-script",
    }));
    onLoad({ filter: /.*/, namespace: "page-script" }, ({ path }) => {
      const { text, files } = bundled(path);
      return { contents: text, loader: "text", watchFiles: files };
    });
  },
};

export const vitePageScripts = {
  name: "page-scripts",
  enforce: "pre",
  resolveId(path, importer) {
    if (!path.endsWith(ENDING)) return undefined;
    return `\0page-script:${resolve(dirname(importer), path.slice(0, -ENDING.length))}`;
  },
  load(id) {
    if (!id.startsWith("\0page-script:")) return undefined;
    const file = id.slice("\0page-script:".length);
    return `export default ${JSON.stringify(pageScript(file))};`;
  },
};
