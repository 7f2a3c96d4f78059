// Bundles the programs into dist/.
//
//   node .ci/build.mjs [--watch] [extension] [extension-web] [server] [layouts] [cli] [pdf] [preview] [slip]
//
// Without names it bundles all of them. With --watch it goes on bundling after each change, readable and with source maps.
import { existsSync } from "node:fs";
import { copyFile, mkdir, stat, writeFile } from "node:fs/promises";
import { build, context } from "esbuild";
import { noticesOf, packagesIn } from "./notices.mjs";
import { esbuildPageScripts } from "./page-scripts.mjs";

const node = { platform: "node", format: "cjs", target: "node20" };
// What writes PDF is a bundle of its own beside the others: `import("./pdf")` loads it when one is asked for.
const pdfBeside = {
  name: "pdf beside",
  setup({ onResolve }) {
    onResolve({ filter: /^\.\/pdf$/ }, ({ kind }) =>
      kind === "dynamic-import" ? { path: "./pdf.js", external: true } : undefined,
    );
  },
};
const browser = { platform: "browser", format: "iife", target: "es2022" };
// One program for Node and for browsers: it holds both sides of its packages, and loads the one it needs.
const anywhere = { ...node, conditions: ["node", "browser"] };
const bundles = {
  extension: { ...node, entryPoints: ["client/extension.ts"], external: ["vscode"] },
  "extension-web": {
    ...browser,
    format: "cjs",
    entryPoints: ["client/extension.web.ts"],
    external: ["vscode"],
  },
  server: { ...anywhere, entryPoints: ["server/lsp/main.ts"], plugins: [pdfBeside] },
  layouts: { ...anywhere, entryPoints: ["server/lsp/layouts/main.ts"] },
  cli: {
    ...node,
    entryPoints: ["server/cli/main.ts"],
    banner: { js: "#!/usr/bin/env node" },
    plugins: [pdfBeside],
  },
  pdf: {
    ...node,
    entryPoints: ["server/lsp/pdf.ts"],
    // The build that packs with its own code and not with Node's: the same bytes on every machine.
    alias: { pdfkit: "./node_modules/pdfkit/js/pdfkit.browser.mjs" },
    // It names a colour profile beside it, which no sheet has.
    define: { "import.meta.url": '"file:///"' },
  },
  preview: { ...browser, entryPoints: ["client/preview/main.ts"] },
  slip: { ...browser, entryPoints: ["client/slip/main.ts"] },
};

const args = process.argv.slice(2);
const watch = args.includes("--watch");
const named = args.filter((arg) => arg !== "--watch");
const names = named.length > 0 ? named : Object.keys(bundles);

process.chdir(new URL("..", import.meta.url).pathname);
const strange = names.filter((name) => !(name in bundles));
if (strange.length > 0)
  fail(`no bundle is called ${strange.join(", ")}; there are ${Object.keys(bundles).join(", ")}`);
const missing = names.map((name) => bundles[name].entryPoints[0]).filter((entry) => !existsSync(entry));
if (missing.length > 0) fail(`there is no ${missing.join(", no ")}`);

const metafiles = await Promise.all(names.map(bundle));
if (!watch && named.length === 0) await writeFile("dist/NOTICES.txt", await noticesOf(packagesIn(metafiles)));
if (!watch && names.includes("server")) await writePages();
if (names.includes("pdf")) await copyFonts();

async function bundle(name) {
  const outfile = `dist/${name}.js`;
  const options = {
    ...bundles[name],
    outfile,
    bundle: true,
    plugins: [esbuildPageScripts, ...(bundles[name].plugins ?? [])],
    minify: !watch,
    sourcemap: watch ? "inline" : false,
    // dist/NOTICES.txt has them.
    legalComments: "none",
    metafile: true,
    logLevel: watch ? "info" : "warning",
  };
  if (watch) return (await context(options)).watch();
  const { metafile } = await build(options);
  console.log(`${outfile}  ${Math.round((await stat(outfile)).size / 1000)} kB`);
  return metafile;
}

/** The page of every problem as a file beside the server, for editors that open the link of a problem's code. */
async function writePages() {
  const options = {
    entryPoints: ["server/service.ts"],
    bundle: true,
    plugins: [esbuildPageScripts],
    format: "esm",
    platform: "node",
    write: false,
  };
  const [{ text }] = (await build(options)).outputFiles;
  const { problemPages } = await import(
    `data:text/javascript;base64,${Buffer.from(text).toString("base64")}`
  );
  await mkdir("dist/pages", { recursive: true });
  const pages = problemPages();
  await Promise.all(pages.map(({ code, markdown }) => writeFile(`dist/pages/${code}.md`, markdown)));
  console.log(`dist/pages  ${pages.length} pages`);
}

/** The fonts of a PDF beside the bundle that embeds them, with their licence, which goes where they go. */
async function copyFonts() {
  const from = "node_modules/dejavu-fonts-ttf";
  await mkdir("dist/fonts", { recursive: true });
  for (const file of ["ttf/DejaVuSans.ttf", "ttf/DejaVuSans-Bold.ttf", "LICENSE"])
    await copyFile(`${from}/${file}`, `dist/fonts/${file.split("/").pop()}`);
}

function fail(message) {
  console.error(`build: ${message}`);
  process.exit(1);
}
