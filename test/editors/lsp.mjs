// The language server in Neovim and in Emacs, each set up by its own snippet of README.md, on a plan with mistakes in it.
import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { chmodSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

/** What the server must offer every editor; anything else it may. */
const REQUIRED = [
  "hover",
  "completion",
  "signatureHelp",
  "definition",
  "references",
  "documentSymbol",
  "codeAction",
  "codeLens",
  "documentFormatting",
  "inlayHint",
  "rename",
  "semanticTokens",
];

/** Two mistakes, the second behind a letter that is two units of UTF-16, four bytes, and one letter. */
const PLAN = `# A bench for the yard.
plan Bench
  language 1
  indoors
shop shop.sawbuck
measure rim = 30"
part leg 4 of post, length rim - 1"
part foot 2 of post, 🪚, length rimm - 2"
`;
const SHOP = `stock post of 2x4, sold 8' $4\n`;

const root = (path) => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const here = (path) => fileURLToPath(new URL(path, import.meta.url));

/** The blocks of README.md in that language, in their order. */
const snippets = (language) =>
  [
    ...readFileSync(root("README.md"), "utf8").matchAll(
      new RegExp(`\`\`\`${language}\\n([\\s\\S]*?)\`\`\``, "g"),
    ),
  ].map(([, code]) => code);

const inBytes = (text) => (line, column) => {
  const lines = text.split("\n");
  const before = lines.slice(0, line).join("\n").length + (line > 0 ? 1 : 0);
  return before + Buffer.from(lines[line]).subarray(0, column).toString().length;
};
const inLetters = (text) => (letters) => [...text].slice(0, letters).join("").length;

const EDITORS = [
  ...["as 0.11 is set up", "as older ones are set up"].map((how, i) => ({
    name: `Neovim, ${how}`,
    setup: () => snippets("lua")[i],
    command: "nvim",
    args: [
      "--headless",
      "--clean",
      "-n",
      "-i",
      "NONE",
      "bench.sawbuck",
      "-S",
      here("neovim.lua"),
      "-c",
      "cq!",
    ],
    filetype: "sawbuck",
    stretch: (p) => [
      inBytes(PLAN)(p.line, p.column),
      inBytes(PLAN)(p.endLine ?? p.line, p.endColumn ?? p.column),
    ],
  })),
  {
    name: "Emacs with Eglot",
    setup: () => snippets("elisp")[0],
    command: "emacs",
    args: ["-q", "--batch", "-l", here("eglot.el")],
    filetype: "sawbuck-mode",
    stretch: ({ begin, end }) => [inLetters(PLAN)(begin), inLetters(PLAN)(end)],
  },
];

const CHECKS = [
  {
    name: "the plan is known for one, and the server serves it",
    run: ({ facts, editor }) => {
      assert.equal(facts.filetype, editor.filetype);
      assert.equal(facts.servers, 1);
      for (const name of REQUIRED) assert.ok(offers(facts, name), `${name} is not offered`);
    },
  },
  {
    name: "the problems are those of the command line, each at its place",
    run: ({ facts, editor, expected }) => {
      const seen = facts.problems.map((p) => ({ at: editor.stretch(p), message: p.message }));
      seen.sort((a, b) => a.at[0] - b.at[0]);
      assert.deepEqual(
        seen.map(({ at }) => PLAN.slice(...at)),
        expected.map(({ at }) => PLAN.slice(...at)),
      );
      assert.deepEqual(
        seen.map(({ at }) => at),
        expected.map(({ at }) => at),
      );
      for (const [i, { message }] of expected.entries())
        assert.ok(seen[i].message.includes(message), seen[i].message);
    },
  },
  {
    name: "a hover tells a length",
    run: ({ facts }) => assert.match(JSON.stringify(facts.hover), /29.{0,4}\\" \(737 mm/),
  },
  {
    name: "names are offered",
    run: ({ facts }) => assert.ok(facts.completion.includes("rim"), facts.completion.join()),
  },
  {
    name: "a name leads to where it is declared",
    run: ({ facts }) => {
      const { range } = [facts.definition].flat()[0];
      assert.deepEqual(range.start, { line: 5, character: "measure ".length });
    },
  },
  {
    name: "hints",
    feature: "inlayHint",
    run: ({ facts }) =>
      assert.deepEqual(
        facts.hints.map(({ label }) => label),
        ['= 29"'],
      ),
  },
  {
    name: "what stands above the plan, in words alone",
    feature: "codeLens",
    run: ({ facts }) => {
      assert.ok(facts.lenses.some(({ command }) => command.title === `${facts.problems.length} problems`));
      assert.ok(facts.lenses.every(({ command }) => command.command === ""));
    },
  },
  {
    name: "references",
    feature: "references",
    run: ({ facts }) =>
      assert.deepEqual(facts.references.map(({ range }) => range.start.line).sort(), [5, 6]),
  },
  {
    name: "cures",
    feature: "codeAction",
    run: ({ facts }) =>
      assert.ok(
        facts.actions.some(({ title }) => title.includes("rim")),
        JSON.stringify(facts.actions),
      ),
  },
  {
    name: "the plan in order",
    feature: "documentFormatting",
    run: ({ facts }) => assert.ok(facts.format === null || Array.isArray(facts.format)),
  },
  {
    name: "a new name everywhere",
    feature: "rename",
    run: ({ facts }) => {
      const text = facts.renamed.join("\n");
      assert.equal(text.trimEnd(), PLAN.replaceAll(/\brim\b/g, "rim-height").trimEnd());
    },
  },
  {
    name: "an edit behind letters outside the plane mends a problem, another one the last",
    run: ({ facts }) => {
      assert.deepEqual(facts.left, []);
      assert.equal(facts.mended, true);
      assert.equal(facts.cleared, true);
    },
  },
  {
    name: "a shop file that changes on disk reaches the open plan",
    run: ({ facts }) => {
      if (facts.watched === undefined) return "not offered";
      assert.equal(facts.watched, true);
    },
  },
  {
    name: "the server ends with the editor, and has complained of nothing",
    run: async ({ facts, code, errors, server }) => {
      assert.equal(facts.stopped, true);
      assert.equal(code, 0);
      assert.equal(errors, "");
      for (let tries = 0; isRunning(server) && tries < 100; tries++)
        await new Promise((r) => setTimeout(r, 100));
      assert.ok(!isRunning(server), "the server is still running");
    },
  },
];

const offers = ({ capabilities }, name) => Boolean(capabilities[`${name}Provider`]);

function isRunning(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch {
    return false;
  }
}

export const scenarios = EDITORS.flatMap((editor) => {
  let outcome;
  return CHECKS.map(({ name, feature, run }) => ({
    name: `${editor.name}: ${name}`,
    run: () => {
      outcome ??= workIn(editor);
      if (feature !== undefined && !offers(outcome.facts, feature) && !REQUIRED.includes(feature))
        return "not offered";
      return run({ editor, ...outcome });
    },
  }));
});

/** Has the editor's script work in a folder of its own, where the command `sawbuck` is the built one. */
function workIn({ setup, command, args }) {
  const folder = mkdtempSync(join(tmpdir(), "sawbuck-editors-"));
  const inFolder = (name) => join(folder, name);
  try {
    for (const name of ["yard", "bin", "home"]) mkdirSync(inFolder(name));
    writeFileSync(inFolder("yard/bench.sawbuck"), PLAN);
    writeFileSync(inFolder("yard/shop.sawbuck"), SHOP);
    const code = setup();
    assert.ok(code, "README.md has no snippet for it");
    writeFileSync(inFolder("setup"), code);
    const [pid, log] = [inFolder("pid"), inFolder("errors")];
    writeFileSync(
      inFolder("bin/sawbuck"),
      `#!/bin/sh\necho $$ >"${pid}"\nexec "${process.execPath}" "${root("dist/cli.js")}" "$@" 2>>"${log}"\n`,
    );
    chmodSync(inFolder("bin/sawbuck"), 0o755);
    const ended = spawnSync(command, args, {
      cwd: inFolder("yard"),
      encoding: "utf8",
      timeout: 180_000,
      env: {
        ...process.env,
        HOME: inFolder("home"),
        XDG_CONFIG_HOME: inFolder("home"),
        XDG_DATA_HOME: inFolder("home"),
        XDG_STATE_HOME: inFolder("home"),
        XDG_CACHE_HOME: inFolder("home"),
        LANG: "C.UTF-8",
        PATH: `${inFolder("bin")}:${process.env.PATH}`,
        SETUP: inFolder("setup"),
        FACTS: inFolder("facts"),
      },
    });
    const said = `${ended.error ?? ""}\n${ended.stdout}\n${ended.stderr}`.trim();
    assert.ok(existsSync(inFolder("facts")), `it wrote nothing down (${ended.status}): ${said.slice(-3000)}`);
    return {
      facts: JSON.parse(readFileSync(inFolder("facts"), "utf8")),
      code: ended.status,
      errors: existsSync(log) ? readFileSync(log, "utf8") : "",
      server: Number(readFileSync(pid, "utf8")),
      expected: checked(folder),
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** What the command line says of the same plan. */
function checked(folder) {
  writeFileSync(join(folder, "yard/shop.sawbuck"), SHOP);
  const { stdout } = spawnSync(
    process.execPath,
    [root("dist/cli.js"), "check", "--format", "json", join(folder, "yard/bench.sawbuck")],
    { encoding: "utf8" },
  );
  const starts = [0, ...[...PLAN.matchAll(/\n/g)].map(({ index }) => index + 1)];
  const offset = (line, column) => starts[line - 1] + column - 1;
  return JSON.parse(stdout).plans[0].problems.map(({ code, message, place }) => ({
    code,
    message,
    at: [offset(place.line, place.column), offset(place.endLine, place.endColumn)],
  }));
}
