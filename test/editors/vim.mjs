// Opens the samples, every form and awkward lines in Vim itself, and compares its colours with the lexer.
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const VIM = process.env.VIM_PROGRAM ?? "vim";

/** The letter of each group; what has another is a word. */
const LETTERS = {
  "": " ",
  sawbuckComment: "c",
  sawbuckNumber: "n",
  sawbuckText: "s",
  sawbuckEntry: "e",
  sawbuckBecause: "b",
  sawbuckSign: "o",
};

export const scenarios = [{ name: "Vim colours every text as the lexer reads it", run }];

async function run() {
  const version = spawnSync(VIM, ["--version"], { encoding: "utf8" });
  if (version.error || !/\+syntax\b/.test(version.stdout) || !/\+eval\b/.test(version.stdout)) {
    console.log(`there is no ${VIM} here that colours (apt-get install vim-nox)`);
    return "not offered";
  }
  const { differences, lettersOf, TEXTS } = await texts();
  const folder = mkdtempSync(join(tmpdir(), "sawbuck-vim-"));
  try {
    const { colours, settings } = inVim(folder, TEXTS);
    const wrong = settingsWrong(settings);
    for (const [i, [name, text]] of TEXTS.entries()) {
      for (const difference of differences(text, lettersOf(text), lettersIn(text, colours[i]))) {
        wrong.push(`${name}, ${difference}`);
      }
    }
    const letters = TEXTS.reduce((sum, [, text]) => sum + text.length, 0);
    console.log(`Vim: ${TEXTS.length} texts of ${letters} letters, ${wrong.length} differences`);
    if (wrong.length > 0) throw new Error(wrong.join("\n"));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function texts() {
  const options = {
    entryPoints: [join(ROOT, "test/editors/texts.ts")],
    bundle: true,
    format: "esm",
    platform: "node",
    write: false,
  };
  const [{ text }] = (await build(options)).outputFiles;
  return import(`data:text/javascript;base64,${Buffer.from(text).toString("base64")}`);
}

/** For each text the lines, each a list of a letter's length in bytes and its group; and what was set for the last one. */
function inVim(folder, list) {
  const files = list.map(([, text], i) => {
    writeFileSync(join(folder, `${i}.sawbuck`), text);
    return `${i}.sawbuck`;
  });
  const script = `
set encoding=utf-8 fileencodings=utf-8 fileformats=unix runtimepath^=${join(ROOT, "grammar/vim")}
filetype plugin on
syntax on
let colours = []
for file in ${JSON.stringify(files)}
  execute 'edit ' . fnameescape('${folder}/' . file)
  let lines = []
  for number in range(1, line('$'))
    let [column, groups] = [1, []]
    for letter in split(getline(number), '\\zs')
      call add(groups, [len(letter), synIDattr(synID(number, column, 1), 'name')])
      let column += len(letter)
    endfor
    call add(lines, groups)
  endfor
  call add(colours, lines)
endfor
let settings = [&filetype, &commentstring, &shiftwidth, &expandtab]
call writefile([json_encode({'colours': colours, 'settings': settings})], '${folder}/colours.json')
quitall!
`;
  writeFileSync(join(folder, "script.vim"), script);
  const run = spawnSync(
    VIM,
    ["-es", "-N", "-u", "NONE", "-i", "NONE", "-n", "-S", join(folder, "script.vim")],
    {
      encoding: "utf8",
      timeout: 120_000,
    },
  );
  if (run.error) throw run.error;
  return JSON.parse(readFileSync(join(folder, "colours.json"), "utf8"));
}

function lettersIn(text, lines) {
  let letters = "";
  let line = 0;
  for (const words of text.split("\n")) {
    const bytes = Buffer.from(words);
    let at = 0;
    for (const [length, group] of lines[line] ?? []) {
      const letter = LETTERS[group] ?? "w";
      letters += letter.repeat(bytes.subarray(at, at + length).toString().length);
      at += length;
    }
    letters += " ";
    line++;
  }
  return letters.slice(0, text.length);
}

function settingsWrong([filetype, commentstring, shiftwidth, expandtab]) {
  const right = filetype === "sawbuck" && commentstring === "# %s" && shiftwidth === 2 && expandtab === 1;
  return right ? [] : [`set are ${filetype}, ${commentstring}, ${shiftwidth}, ${expandtab}`];
}
