// npm run record [-- --out FILE] [--lines N]: runs every command of the built command line on the samples, in a repository of its
// own, and writes down what was asked, what came of it and what it ended with. N lines of each output are shown, 40 unless said,
// all of them for 0. Ends with 1 where a command ends otherwise than is said here.
import { spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, realpathSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { parseArgs } from "node:util";
import { talkLsp } from "./talk-lsp.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));
const CLI = join(root, "dist/cli.js");
const TROUGH = "samples/salad-trough.sawbuck";
const FRAME = "samples/cold-frame.sawbuck";
const SHELF = "samples/reading-shelf.sawbuck";
const SHOP = "samples/hillside-shop.sawbuck";
const PROUD = "samples/mistakes/screw-pokes-through.sawbuck";
const UNTIDY = "untidy.sawbuck";
const UNTIDY_TEXT = 'part   leg 4 of 2x4,length 9"\n';
/** First answers are enough to see what is written. */
const SOON = "--effort 0";
const WIDEST = 240;

/** What is run, one after the other: the words behind `sawbuck`, and what it ends with where that is not 0. */
export const RUNS = [
  ["--version"],
  ["help check"],
  [`check ${TROUGH} ${FRAME}`],
  [`check ${PROUD} --format text`, 1],
  [`check ${PROUD} --format json`, 1],
  [`check ${PROUD} --format sarif`, 1],
  [`check ${PROUD} --format github`, 1],
  [`check ${TROUGH} --shop ${SHOP}`],
  [`check samples --jobs 2 ${SOON}`, 1],
  ["check nowhere.sawbuck", 2],
  ["chek", 2],
  [`format ${UNTIDY} --check`, 1],
  [`format ${UNTIDY}`],
  [`format ${TROUGH} ${FRAME} --check`],
  ["format -", 0, UNTIDY_TEXT],
  [`sheet ${FRAME}`],
  [`sheet ${FRAME} --format text --units inches --language en --for builder ${SOON}`],
  [`sheet ${FRAME} --format html ${SOON}`],
  [`sheet ${FRAME} --format markdown --units millimetres ${SOON}`],
  [`sheet ${FRAME} --format json ${SOON}`],
  [`sheet ${FRAME} --format pdf --paper A4 --out frame.pdf ${SOON}`],
  [`sheet ${FRAME} --paper Letter --out letter.pdf ${SOON}`],
  [`sheet ${FRAME} --language fr --for learners ${SOON}`],
  [`sheet ${FRAME} --for stations --shop ${SHOP} ${SOON}`],
  [`sheet ${TROUGH} --set rim-height=28" --swap 1x4=1x6 ${SOON}`, 1],
  ...["cut-list", "layouts", "shopping", "fasteners", "pieces", "holds", "problems", "not-checked"].map(
    (table) => [`sheet ${FRAME} --table ${table} ${SOON}`],
  ),
  ...["turned", "front", "left", "right", "back", "above", "apart"].map((side) => [
    `sheet ${FRAME} --drawing ${side} --out ${side}.svg`,
  ]),
  ["sheet samples/post-stand.sawbuck --drawing turned --assembly post --out post.svg"],
  [`list ${FRAME} ${TROUGH} --format markdown --drawings drawings ${SOON}`],
  [`list ${FRAME} --format html --language fr --units millimetres --out book.html ${SOON}`],
  [`list ${FRAME} --format json --units inches --language en --shop ${SHOP} ${SOON}`],
  [`slip ${TROUGH}`],
  [`slip ${FRAME} --format html --out slip.html`],
  [`slip ${TROUGH} --format markdown --units millimetres --language fr --shop ${SHOP}`],
  [`slip ${FRAME} --format text --units inches --language en`],
  [`diff ${SHELF} ${TROUGH} ${SOON}`, 1],
  [`diff ${FRAME} ${FRAME} ${SOON}`],
  [`diff HEAD~1:${TROUGH} HEAD:${TROUGH} --format text --units inches --language en ${SOON}`, 1],
  [`diff HEAD~1 HEAD --format markdown ${SOON}`, 1],
  [`diff HEAD~1 samples --format json --shop ${SHOP} ${SOON}`, 1],
  [`diff HEAD~1 --format html --language fr --units millimetres --out changes.html ${SOON}`, 1],
  [`diff samples/post-stand.sawbuck --built 2026-05-09 ${SOON}`, 1],
  [`diff samples ${SOON}`],
  [`lines ${FRAME}`],
  [`lines ${FRAME} --shop ${SHOP}`],
  [`adapt ${TROUGH} --set rim-height=26" --format text --units inches --language en ${SOON}`],
  [`adapt ${TROUGH} --swap 1x4=1x6 --format json ${SOON}`, 1],
  [`adapt ${TROUGH} --set rim-height=26" --format markdown --units millimetres --shop ${SHOP} ${SOON}`],
  [`adapt ${TROUGH} --set rim-height=26" --format html --language fr --out adapted.html ${SOON}`],
  [`adapt ${TROUGH} --set rim-height=26" --write ${SOON}`],
  [`bundle ${FRAME}`],
  [`bundle ${FRAME} --out bundled.sawbuck`],
  ["check bundled.sawbuck"],
  ["lsp --stdio"],
].map(([asked, ends = 0, input]) => ({ words: asked.split(" "), ends, input }));

/** The samples in a git repository with two commits, and a plan that is not laid out. */
function yard() {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), "sawbuck-record-")));
  const git = (...words) => {
    const who = ["-c", "user.name=A Builder", "-c", "user.email=builder@example.org"];
    const { status, stderr } = spawnSync("git", [...who, ...words], { cwd: folder, encoding: "utf8" });
    if (status !== 0) throw new Error(`git ${words.join(" ")}: ${stderr}`);
  };
  cpSync(join(root, "samples"), join(folder, "samples"), { recursive: true });
  const text = readFileSync(join(folder, TROUGH), "utf8");
  const lower = text.replace('rim-height = 30"', 'rim-height = 28"');
  if (lower === text) throw new Error(`${TROUGH} has no rim at 30"`);
  git("init", "--quiet", "--initial-branch", "main");
  git("add", "samples");
  git("commit", "--quiet", "--no-verify", "--message", "The plans");
  writeFileSync(join(folder, TROUGH), lower);
  git("commit", "--quiet", "--no-verify", "--all", "--message", "A lower rim");
  writeFileSync(join(folder, UNTIDY), UNTIDY_TEXT);
  return folder;
}

/** What came of one command: texts, and what it ended with. */
async function done({ words, input = "" }, folder) {
  const command = [process.execPath, CLI, ...words];
  if (words[0] === "lsp") {
    const uri = pathToFileURL(join(folder, PROUD)).href;
    const text = readFileSync(join(folder, PROUD), "utf8");
    const { said, status } = await talkLsp(command, { cwd: folder, uri, text });
    const lines = said.map(
      ({ from, message }) => `${from === "client" ? ">" : "<"} ${JSON.stringify(message)}`,
    );
    return { stdout: `${lines.join("\n")}\n`, stderr: "", status };
  }
  return spawnSync(command[0], command.slice(1), {
    cwd: folder,
    input,
    encoding: "utf8",
    maxBuffer: 2 ** 28,
  });
}

/** At most `most` lines of it, none too wide; the folder is called the same each time. */
function shown(text, most, folder) {
  if (text === "") return "";
  const lines = text.replaceAll(folder, "/yard").trimEnd().split("\n");
  const first = most === 0 ? lines : lines.slice(0, most);
  const cut = first.map((line) => (most > 0 && line.length > WIDEST ? `${line.slice(0, WIDEST)} …` : line));
  if (first.length < lines.length) cut.push(`… ${lines.length - first.length} more lines`);
  return `${cut.join("\n")}\n`;
}

/** A record of runs, and those that ended otherwise than is said. */
export async function recorded(most, runs = RUNS) {
  const folder = yard();
  const told = [];
  const wrong = [];
  try {
    for (const run of runs) {
      const { words, ends, input } = run;
      const typed = words.map((word) => (/["$*]/.test(word) ? `'${word}'` : word)).join(" ");
      const asked = `${input === undefined ? "" : `echo '${input.trimEnd()}' | `}sawbuck ${typed}`;
      const { stdout, stderr, status } = await done(run, folder);
      const out = words.includes("--out") ? words[words.indexOf("--out") + 1] : undefined;
      told.push(`$ ${asked}\n${shown(stdout, most, folder)}`);
      if (stderr !== "") told.push(`on the error output:\n${shown(stderr, most, folder)}`);
      if (out !== undefined) told.push(`${out}: ${statSync(join(folder, out)).size} bytes\n`);
      told.push(`ends with ${status}\n\n`);
      if (status !== ends) wrong.push(`“sawbuck ${words.join(" ")}” ends with ${status}, not with ${ends}`);
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  return { text: told.join(""), wrong };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { values } = parseArgs({
    options: { out: { type: "string" }, lines: { type: "string", default: "40" } },
  });
  const { text, wrong } = await recorded(Number(values.lines));
  if (values.out === undefined) process.stdout.write(text);
  else writeFileSync(values.out, text);
  for (const line of wrong) console.error(`record: ${line}`);
  process.exitCode = wrong.length > 0 ? 1 : 0;
}
