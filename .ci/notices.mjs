// The licences of what the bundles hold of other packages: they ask to go wherever the code goes.
import { readdir, readFile } from "node:fs/promises";

const LICENCE = /^(un)?licen[cs]e(\.(md|txt))?$/i;

/** The names of the packages that metafiles of esbuild list as inputs, each once, in order. */
export function packagesIn(metafiles) {
  const inputs = metafiles.flatMap(({ inputs }) => Object.keys(inputs));
  const found = inputs.flatMap((path) => /^.*node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(path)?.[1] ?? []);
  return [...new Set(found)].sort();
}

/** Names and versions with the licence under them, those with the same words together. */
export async function noticesOf(packages) {
  const named = new Map();
  for (const { name, words } of await Promise.all(packages.map(noticeOf)))
    named.set(words, [...(named.get(words) ?? []), name]);
  const notices = [...named].map(([words, names]) => `${names.join("\n")}\n\n${words}\n`);
  return notices.join(`\n${"-".repeat(72)}\n\n`);
}

/** In its own words where it has a file of them. */
async function noticeOf(name) {
  const folder = `node_modules/${name}`;
  const { version, license } = JSON.parse(await readFile(`${folder}/package.json`, "utf8"));
  const file = (await readdir(folder)).find((entry) => LICENCE.test(entry));
  const words = file ? await readFile(`${folder}/${file}`, "utf8") : `Licence: ${license}`;
  return { name: `${name} ${version}`, words: words.trim() };
}
