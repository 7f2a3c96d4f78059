// npm run release -- X.Y.Z [--check] [--without-tests]: makes what a release publishes, in dist/release/, and publishes nothing.
//
//   --check           only tells what stands in its way; changes and makes nothing
//   --without-tests   for a tree on which .ci/run has just passed
//
// Without a network. Where the tests or the packing fail, the files that name the version are as they were before.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";

const FORM = /^(\d+)\.(\d+)\.(\d+)$/;
const CHANGES = "client/CHANGELOG.md";
const OUT = "dist/release";
/** Of each package, as it is downloaded. */
const MOST_BYTES = 3_000_000;

const root = fileURLToPath(new URL("..", import.meta.url));
const read = (file) => readFileSync(join(root, file), "utf8");
const git = (...words) => spawnSync("git", words, { cwd: root, encoding: "utf8" });

/** The first version that the list of changes tells of, and its day, where it has one. */
export function newestIn(changes) {
  const [, version, behind] = /^## (\S+)(.*)$/m.exec(changes) ?? [];
  const day = /^ – (\d{4}-\d\d-\d\d)$/.exec(behind ?? "")?.[1];
  const real = day !== undefined && new Date(`${day}T00:00:00Z`).toJSON()?.startsWith(day);
  return { version, day: real ? day : undefined };
}

/** What names the version, with `to` in place of `from`, by file. */
export function renamed(texts, from, to) {
  const written = (value) => `${JSON.stringify(value, null, 2)}\n`;
  const manifest = JSON.parse(texts["package.json"]);
  const lock = JSON.parse(texts["package-lock.json"]);
  lock.packages[""].version = to;
  const tag = new RegExp(`\\bv${from.replaceAll(".", "\\.")}\\b`, "g");
  return {
    "package.json": written({ ...manifest, version: to }),
    "package-lock.json": written({ ...lock, version: to }),
    "README.md": texts["README.md"].replace(tag, `v${to}`),
  };
}

/** What stands in the way of a release, each in a sentence. */
function faultsOf(version, manifest, changes) {
  const now = manifest.version;
  const faults = [];
  const { stdout: changed } = git("status", "--porcelain");
  if (changed !== "") faults.push(`The tree is not clean:\n${changed.trimEnd().replace(/^/gm, "  ")}`);
  if (git("tag", "--list", `v${version}`).stdout !== "") faults.push(`There is a tag v${version} already.`);
  if (isLower(version, now)) faults.push(`${version} is lower than ${now}, which package.json says.`);
  const { version: told, day } = newestIn(changes);
  if (told !== version) faults.push(`${CHANGES} tells first of ${told}, not of ${version}.`);
  else if (day === undefined) faults.push(`${CHANGES} says no day: write “## ${version} – YYYY-MM-DD”.`);
  if (!version.startsWith("0.") && manifest.preview)
    faults.push("package.json still says that it is a preview.");
  const lock = JSON.parse(read("package-lock.json"));
  if (lock.version !== now || lock.packages[""].version !== now)
    faults.push(`package-lock.json does not say ${now}, as package.json does.`);
  if (!read("README.md").includes(`v${now}`)) faults.push(`README.md names no tag v${now}.`);
  return faults;
}

function isLower(version, than) {
  const [a, b] = [version, than].map((one) => FORM.exec(one).slice(1).map(Number));
  const at = a.findIndex((part, i) => part !== b[i]);
  return at >= 0 && a[at] < b[at];
}

function main() {
  const options = {
    check: { type: "boolean", default: false },
    "without-tests": { type: "boolean", default: false },
  };
  const { values, positionals } = parseArgs({ options, allowPositionals: true });
  const [version] = positionals;
  if (positionals.length !== 1 || !FORM.test(version)) {
    console.error("Usage: npm run release -- X.Y.Z [--check] [--without-tests]");
    return 2;
  }
  const manifest = JSON.parse(read("package.json"));
  const changes = read(CHANGES);
  const faults = faultsOf(version, manifest, changes);
  for (const fault of faults) console.error(`release: ${fault}`);
  if (faults.length > 0) return 1;
  for (const line of leftOpen(manifest)) console.log(`to think of: ${line}`);
  if (values.check) {
    console.log(`Nothing stands in the way of ${version}.`);
    return 0;
  }
  const texts = Object.fromEntries(
    ["package.json", "package-lock.json", "README.md"].map((file) => [file, read(file)]),
  );
  const write = (files) => {
    for (const [file, text] of Object.entries(files)) writeFileSync(join(root, file), text);
  };
  write(renamed(texts, manifest.version, version));
  if (made(values["without-tests"], newestIn(changes).day)) {
    tell(version);
    return 0;
  }
  write(texts);
  console.error("release: It failed; package.json, package-lock.json and README.md are as they were.");
  return 1;
}

/** What nothing here can know, and galleries show. */
function leftOpen({ repository, bugs, homepage }) {
  if (!repository)
    return [
      "package.json names no `repository`: pages in galleries and on npm then have no pictures and no links to the source.",
    ];
  return [
    bugs ? [] : "package.json names no `bugs`.",
    homepage ? [] : "package.json names no `homepage`.",
  ].flat();
}

/** Tests, builds and packs; whether all of it succeeded. The same day gives the same bytes. */
function made(withoutTests, day) {
  const npm = (...words) => run("npm", words);
  rmSync(join(root, OUT), { recursive: true, force: true });
  mkdirSync(join(root, OUT), { recursive: true });
  const epoch = String(Date.parse(`${day}T00:00:00Z`) / 1000);
  const { name, version } = JSON.parse(read("package.json"));
  const vsix = [".ci/package.mjs", "--out", `${OUT}/${name}-${version}.vsix`];
  return (
    (withoutTests || npm("test")) &&
    npm("pack", "--pack-destination", OUT) &&
    run(process.execPath, vsix, { SOURCE_DATE_EPOCH: epoch }) &&
    summed()
  );
}

function run(program, words, env = {}) {
  const { status } = spawnSync(program, words, {
    cwd: root,
    stdio: "inherit",
    env: { ...process.env, ...env },
  });
  return status === 0;
}

/** Writes the sums of what was made; whether none of it is too large. */
function summed() {
  const names = readdirSync(join(root, OUT)).sort();
  const sums = names.map((name) => {
    const bytes = readFileSync(join(root, OUT, name));
    return `${createHash("sha256").update(bytes).digest("hex")}  ${name}\n`;
  });
  writeFileSync(join(root, OUT, "SHA256SUMS"), sums.join(""));
  const large = names.filter((name) => statSync(join(root, OUT, name)).size > MOST_BYTES);
  for (const name of large) console.error(`release: ${name} is larger than ${MOST_BYTES} bytes.`);
  return large.length === 0;
}

function tell(version) {
  const [tarball, vsix] = readdirSync(join(root, OUT))
    .filter((name) => name !== "SHA256SUMS")
    .sort();
  const size = (name) => `${name}  ${statSync(join(root, OUT, name)).size} bytes`;
  console.log(`
In ${OUT}: ${size(vsix)}, ${size(tarball)}
${read(`${OUT}/SHA256SUMS`)}
Nothing is published. What is left to do, by hand:

  git commit --all --message "Version ${version}"
  git tag v${version}
  git push origin HEAD v${version}
  npx vsce publish --packagePath ${OUT}/${vsix}     # Marketplace: asks for its token
  npx ovsx publish ${OUT}/${vsix}                   # Open VSX: OVSX_PAT is its token
  npm publish ${OUT}/${tarball}
`);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) process.exitCode = main();
