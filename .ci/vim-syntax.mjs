// npm run vim: writes the Vim files of grammar/vim/ from the language's own tokens, forms and heads.
import { mkdir, writeFile } from "node:fs/promises";
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const ROOT = fileURLToPath(new URL("..", import.meta.url));
/** Between the ends of a pattern in Vim's files: no pattern holds one. */
const END = ";";
const WORD_LETTER = "[A-Za-z0-9À-ÖØ-öø-ÿ_-]";
/** Not in the middle of a word. */
const WHOLE = `${WORD_LETTER}@!`;
/** What stands before a clause: a comma, or the blanks of an indented line. */
const CLAUSE = "%(^\\s+|,\\s*)@<=";

/** A day as it may be written. */
const DAY = `%(${["-", "\\.", "/"].map((mark) => `\\d{1,4}${mark}\\d{1,2}${mark}\\d{1,4}`).join("|")})%([A-Za-z0-9_./-])@!`;
const WEAR = "%(%(^\\s+|,\\s*)wear\\s+)@<=";

/** The Vim patterns of the tokens that code finds, by their names; what the code says is said here once more. */
const BY_CODE = {
  // Without a `$`, which would have open parentheses go on in the next line.
  Comment: "%(^|\\s)@<=#%(\\s.*|%(.)@!)",
  // Behind `wear`, which is followed by words: see `WEAR`.
  Day: `%(^built\\s+)@<=${DAY}`,
  // Where it stands is told by what comes before it: see `wordsToPeople`.
  Words: "\\s+\\S.*",
  By: "%(%(\\s|[\"'″′”’)])@<=x%([A-Za-z0-9_-])@!|[\"'″′”’)]@<=x[0-9½¼¾]@=|×)",
};
/** Words that rules ask for but that are as likely names: they have a colour only where a clause opens with them. */
export const NAMES_TOO = [
  "back",
  "bottom",
  "center",
  "crossing",
  "edge",
  "edges",
  "end",
  "ends",
  "face",
  "floor",
  "front",
  "holes",
  "left",
  "length",
  "middle",
  "point",
  "right",
  "rim",
  "round",
  "top",
  "width",
];

/** The files by their paths. */
export async function vimFiles() {
  const language = await languageItself();
  return {
    "grammar/vim/ftdetect/sawbuck.vim": ftdetect,
    "grammar/vim/ftplugin/sawbuck.vim": ftplugin(language),
    "grammar/vim/syntax/sawbuck.vim": syntax(language),
  };
}

/** A token's pattern as Vim reads it after `\v`. */
export function vimPattern({ name, PATTERN }) {
  if (PATTERN instanceof RegExp) return fromRegExp(PATTERN.source);
  if (typeof PATTERN === "string") return literally(PATTERN);
  if (Object.hasOwn(BY_CODE, name)) return BY_CODE[name];
  throw new Error(`the token ${name} has no Vim pattern: give it one in BY_CODE of .ci/vim-syntax.mjs`);
}

/** Marks that are themselves in a regular expression but not after `\v`. */
const literally = (text) => text.replace(/[\\^$.*+?()[\]{}|<>=@&~%]/g, "\\$&");

/** The few forms that the tokens are written in. What is none of them is refused, so that nothing is turned wrongly. */
function fromRegExp(source) {
  let out = "";
  const closing = [];
  for (let rest = source; rest !== ""; ) {
    const found = FORMS.find(([form]) => form.test(rest));
    if (!found) throw new Error(`what is ${rest.slice(0, 12)} of ${source} in Vim?`);
    const [text] = found[0].exec(rest);
    rest = rest.slice(text.length);
    if (text.startsWith("(")) closing.push(text === "(?!" ? ")@!" : ")");
    out += text === ")" ? closing.pop() : found[1](text);
  }
  return out;
}

const FORMS = [
  [/^\(\?[:!]/, () => "%("],
  [/^\)/, () => ")"],
  // Inside of brackets all letters are themselves.
  [/^\[(?:[^\]\\]|\\.)+\]/, (text) => text.replace(/\\([^\\d])/g, "$1")],
  [/^\\d/, () => "\\d"],
  [/^\\[./+*]/, (text) => (text === "\\/" ? "/" : text)],
  [/^[?*+|]/, (text) => text],
  [/^[<>=%@&~]/, (text) => `\\${text}`],
  [/^[^\\^$.(){}[\]]/u, (text) => text],
];

async function languageItself() {
  const names = ["tokens", "forms", "heads", "parser", "sorts"];
  const options = {
    stdin: { contents: names.map((n) => `export * from "./grammar/${n}";`).join("\n"), resolveDir: ROOT },
    bundle: true,
    format: "esm",
    platform: "node",
    write: false,
  };
  const [{ text }] = (await build(options)).outputFiles;
  return import(`data:text/javascript;base64,${Buffer.from(text).toString("base64")}`);
}

const ftdetect = `" Plans of Sawbuck.
autocmd BufRead,BufNewFile *.sawbuck setfiletype sawbuck
`;

const ftplugin = (language) => `" How plans of Sawbuck are typed. Made by .ci/vim-syntax.mjs: change that.
if exists("b:did_ftplugin")
  finish
endif
let b:did_ftplugin = 1

setlocal commentstring=#\\ %s comments=b:#
setlocal formatoptions-=t formatoptions+=cql
setlocal expandtab shiftwidth=2 softtabstop=2
setlocal iskeyword=@,48-57,_,-,192-255
setlocal suffixesadd=.sawbuck
let &l:include = '^\\%(shop\\|bring\\|enclosed\\)\\s\\+'
let &l:define = '^\\%(${declaring(language).join("\\|")}\\)\\s\\+'

let b:undo_ftplugin = "setlocal ${SET.map((option) => `${option}<`).join(" ")}"
`;

/** The options that it sets. */
const SET = ["cms", "com", "fo", "et", "sw", "sts", "isk", "sua", "inc", "def"];

/** The words that open entries which declare a name, as their own examples show. */
const declaring = ({ ENTRY_FORMS, parse }) =>
  ENTRY_FORMS.filter(({ example }) => "name" in parse(example).entries[0]).map(({ word }) => word);

/** Longest first, since the first that fits is taken. */
const anyOf = (phrases) =>
  `%(${[...new Set(phrases)]
    .sort((a, b) => b.length - a.length || (a < b ? -1 : 1))
    .map((phrase) => literally(phrase).replaceAll(" ", "\\s+"))
    .join("|")})${WHOLE}`;

const match = (group, pattern, more = "") => {
  if (pattern.includes(END)) throw new Error(`a pattern of ${group} holds ${END}`);
  return `syntax match sawbuck${group} ${END}\\v${pattern}${END}${more && ` ${more}`}`;
};

function syntax(language) {
  const { ENTRY_FORMS, HEADS, KEYWORDS, NAME_DUE, TEXT_AFTER, VOCABULARY, sortOf } = language;
  const tokens = VOCABULARY.filter(({ PATTERN, name }) => PATTERN && !/^word |^Literal$/.test(name));
  const patterns = new Map(tokens.map((token) => [token.name, vimPattern(token)]));
  // Of two that begin at the same letter Vim takes the one that stands further down.
  const numbers = tokens.filter((token) => sortOf(token) === "number").reverse();
  const signs = tokens.filter((token) => sortOf(token) === "sign" && token.name !== "By");
  const entries = Object.keys(HEADS);
  // Where a name is due, a lone x is one: behind the first word of a line, and behind these words and marks.
  const [dueWords, dueMarks] = [/^\w/, /^\W/].map((sort) =>
    [...NAME_DUE].filter((due) => sort.test(due)).map(literally),
  );
  const due = `%(^${patterns.get("Word")}|${WORD_LETTER}@<!%(${[...dueWords, "-"].join("|")})|%(${dueMarks.filter((m) => m !== "-").join("|")}))`;
  const opens = (forms) => forms.filter((f) => f.opens.length > 0).map((f) => f.opens.join(" "));
  const word = patterns.get("Word");
  const value = `%(${numbers
    .map(({ name }) => patterns.get(name))
    .reverse()
    .join("|")}|${word})`;
  const named = declaring(language);
  const text = "nextgroup=sawbuckText";
  const lines = [
    match("Word", word),
    match("Function", "[a-z]+\\(@="),
    match("Function", `round${WHOLE}%(\\s+of${WHOLE})@!`),
    match("Relation", anyOf(KEYWORDS.filter((k) => !NAMES_TOO.includes(k)))),
    ...signs.map(({ name }) => match("Sign", patterns.get(name))),
    match("Sign", `%(${due}\\s+)@<!${patterns.get("By")}`),
    ...numbers.map(({ name }) => match("Number", patterns.get(name))),
    match("Number", WEAR + DAY, text),
    match("Comment", patterns.get("Comment")),
    match("Clause", CLAUSE + anyOf(opens(ENTRY_FORMS.flatMap((e) => e.clauses)))),
    match(
      "Clause",
      `%(^\\s*place\\s+${word}\\s+)@<=` + anyOf(opens(ENTRY_FORMS.find((e) => e.word === "place").clauses)),
    ),
    ...wordsToPeople.map((phrase) => match("Clause", CLAUSE + anyOf([phrase]), text)),
    match(
      "Clause",
      `%(%(floor|foot)\\s+limit%(\\s+${value}\\s+|\\s*[^A-Za-z0-9_ \\t]\\s*))@<=by${WHOLE}`,
      text,
    ),
    match("Clause", `%(^built\\s+${DAY}\\s+)@<=by${WHOLE}`, text),
    match("Because", `because${WHOLE}`, text),
    match("Name", word, "contained"),
    match("Text", patterns.get("Words"), "contained"),
    match("Entry", `^${anyOf(entries)}`),
    match("Entry", `^${anyOf(named)}`, "nextgroup=sawbuckName skipwhite"),
    match("Entry", `^${anyOf([...TEXT_AFTER])}`, text),
    match("Entry", `%(^\\s+)@<=${anyOf(["place", "fasten", "glue"])}`),
    `syntax region sawbuckParens start=${END}(${END} end=${END}\\v\\)|$${END} transparent contains=ALLBUT,sawbuckClause,sawbuckEntry,sawbuckName,sawbuckText`,
  ];
  return `" Colours for plans of Sawbuck. Made by .ci/vim-syntax.mjs from the language itself: change that.
if exists("b:current_syntax")
  finish
endif
scriptencoding utf-8
syntax case match

${lines.join("\n")}

" No colour goes on over lines.
syntax sync minlines=1 maxlines=1

${Object.entries(LINKS)
  .map(([group, to]) => `highlight default link sawbuck${group} ${to}`)
  .join("\n")}

let b:current_syntax = "sawbuck"
`;
}

/** Clauses that are words to people to the end of their line. */
const wordsToPeople = ["anchored to", "written by", "licence", "changed"];

const LINKS = {
  Comment: "Comment",
  Entry: "Statement",
  Because: "Statement",
  Clause: "Type",
  Name: "Identifier",
  Function: "Function",
  Number: "Number",
  Text: "String",
  Sign: "Operator",
  Relation: "Delimiter",
};

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const [path, text] of Object.entries(await vimFiles())) {
    await mkdir(dirname(`${ROOT}${path}`), { recursive: true });
    await writeFile(`${ROOT}${path}`, text);
    console.log(path);
  }
}
