/** Moving what a yard sells, or a shop has, from the plan to the shop file that it names, or to a new one. */

import { asLine, commentsAbove, lineEnd, lineStop, linesOf } from "../../grammar/lines";
import { parse } from "../../grammar/parser";
import type { Entry, Span } from "../../grammar/tree";
import type { Edit, Language } from "../checks";
import { isDeclaration, usesOf } from "../plan";
import type { Action, Change, Wanted } from "./actions";
import { ACTION_WORDS } from "./actions-words";
import type { Checked } from "./checked";

const MOVED = new Set(["stock", "sheet", "roll", "fastener", "finish", "fill", "tools", "yard"]);

type Words = (typeof ACTION_WORDS)[Language];
type Outcome = { readonly refused: string } | { readonly to: string; readonly change: Change };

export function moveToShop(plan: Checked, wanted: Wanted, language: Language): Action[] {
  const words = ACTION_WORDS[language];
  const entries = plan.worked.loaded.files[0]?.tree.entries ?? [];
  const entry = entries.find((e) => e.start <= wanted.range.start && wanted.range.end <= e.end);
  if (!entry || !MOVED.has(entry.kind) || makesNothing(entries)) return [];
  const shop = entries.find((e) => e.kind === "shop");
  const what = nameOf(entry) === "" ? entry.keyword.text : `${entry.keyword.text} ${nameOf(entry)}`;
  const outcome =
    shop?.kind === "shop"
      ? toShop(plan, entry, shop.path.text, wanted, words)
      : toNewShop(plan, entry, entries, wanted, words);
  const file =
    shop?.kind === "shop" ? lastName(shop.path.text) : "to" in outcome ? lastName(outcome.to) : NEW_SHOP;
  return [
    {
      id: `shop ${entry.start}`,
      title: shop ? words.moveToShop(what, file) : words.moveToNewShop(what, file),
      kind: "refactor.move.shop",
      preferred: false,
      problems: [],
      ...("refused" in outcome && { refused: outcome.refused }),
      change: () => ("change" in outcome ? outcome.change : undefined),
    },
  ];
}

/** A file with nothing but what could be bought is a shop file itself. */
const makesNothing = (entries: readonly Entry[]): boolean =>
  !entries.some((e) => e.kind === "part" || e.kind === "box" || e.kind === "plan");

const nameOf = (entry: Entry): string => (isDeclaration(entry) ? entry.name.text : "");
const lastName = (path: string): string => path.split(/[\\/]/).pop()!;

function toShop(plan: Checked, entry: Entry, path: string, { read }: Wanted, words: Words): Outcome {
  const found = read(path, plan.file, plan.file);
  if ("refused" in found) return { refused: words.shopUnread(lastName(path)) };
  const loaded = plan.worked.loaded.files.find((f) => f.file === found.file);
  if (!loaded) return { refused: words.ownShop };
  const why = whyNot(plan, entry, lastName(path), parse(found.text).entries, words);
  if (why !== undefined) return { refused: why };
  const at = found.text.length;
  const lines = rewrapped(movedLines(plan.text, entry), lineEnd(found.text));
  const gap = at > 0 ? blankBefore(found.text) : "";
  const put: Edit = { file: found.file, start: at, end: at, text: `${gap}${lines}` };
  return { to: found.file, change: { edits: [takenOut(plan, entry), put] } };
}

function toNewShop(
  plan: Checked,
  entry: Entry,
  entries: readonly Entry[],
  { read, makesFiles }: Wanted,
  words: Words,
): Outcome {
  if (!makesFiles) return { refused: words.makesNoFiles };
  // An address that is no folder's, such as that of a text that was never saved.
  if (/^untitled:/.test(plan.file)) return { refused: words.noFolder };
  const why = whyNot(plan, entry, NEW_SHOP, [], words);
  if (why !== undefined) return { refused: why };
  const found = NEW_SHOPS.map((name) => ({ name, ...read(name, plan.file, plan.file) })).find(
    (f) => "refused" in f,
  );
  if (!found) return { refused: words.inShopAlready(nameOf(entry), NEW_SHOP) };
  const { name, file } = found;
  // Anything else may well be there.
  if (!("refused" in found) || found.refused !== "there is no such file")
    return { refused: words.shopUnread(name) };
  const head = entries.find((e) => e.kind === "plan");
  const at = head ? linesOf(plan.text, head).end : 0;
  const said = asLine(plan.text, at, `shop ${name}`);
  const edits = [{ file: plan.file, start: at, end: at, text: said }, takenOut(plan, entry)];
  return { to: file, change: { edits, makes: { file, text: movedLines(plan.text, entry) } } };
}

const NEW_SHOP = "shop.sawbuck";
const NEW_SHOPS = [NEW_SHOP, "shop-2.sawbuck", "shop-3.sawbuck"];

function whyNot(
  plan: Checked,
  entry: Entry,
  shop: string,
  theirs: readonly Entry[],
  words: Words,
): string | undefined {
  const { scope, loaded } = plan.worked;
  if (loaded.files[0]!.tree.complaints.some((c) => c.start >= entry.start && c.end <= entry.end))
    return words.notReadable;
  if (entry.kind === "tools")
    return theirs.some((e) => e.kind === "tools") ? words.toolsInShop(shop) : undefined;
  if (entry.kind === "yard")
    return theirs.some((e) => e.kind === "yard") ? words.yardInShop(shop) : undefined;
  const name = nameOf(entry);
  if (theirs.some((e) => nameOf(e) === name)) return words.inShopAlready(name, shop);
  const own = usesOf(entry).find(
    (u) => scope.declared.get(u.name.text)?.role === "plan" && u.name.text !== name,
  );
  return own && words.needsPlan(own.name.text);
}

/** The entry's lines, with the notes directly above it where an empty line follows: else they may head more than it. */
function linesToMove(text: string, entry: Entry): Span {
  const { start, end } = linesOf(text, entry);
  const alone = text.slice(end, lineStop(text, end)).trim() === "";
  return { start: alone ? commentsAbove(text, start) : start, end };
}

function movedLines(text: string, entry: Entry): string {
  const { start, end } = linesToMove(text, entry);
  return `${text.slice(start, end).replace(/(\r\n|\r|\n)$/, "")}${lineEnd(text)}`;
}

/** Out of the plan, with one of the empty lines that then stand beside each other. */
function takenOut({ file, text }: Checked, entry: Entry): Edit {
  const { start, end } = linesToMove(text, entry);
  const emptyAbove = start === 0 || /(\r\n|\r|\n)[ \t]*(\r\n|\r|\n)$/.test(text.slice(0, start));
  const emptyBelow = /^[ \t]*(\r\n|\r|\n)/.exec(text.slice(end));
  return { file, start, end: emptyAbove && emptyBelow ? end + emptyBelow[0].length : end, text: "" };
}

const rewrapped = (lines: string, end: string): string => lines.replace(/\r\n|\r|\n/g, end);

/** What parts it from what stands before it: an empty line. */
function blankBefore(text: string): string {
  const end = lineEnd(text);
  if (/(\r\n|\r|\n)[ \t]*(\r\n|\r|\n)$/.test(text)) return "";
  return /(\r\n|\r|\n)$/.test(text) ? end : `${end}${end}`;
}
