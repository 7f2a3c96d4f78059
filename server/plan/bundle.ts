/**
 * A plan with all that it brings in one text, without prices, the tax of a yard and what lies on hand: those are the sharer's own.
 * Nothing else is changed, and no line moves, so that the sheet tells the same places.
 */
import { parse } from "../../grammar/parser";
import type { Clause, Entry, Span, Tree } from "../../grammar/tree";
import { holderOf } from "./enclosed";
import { load, type PlanFile, type Reader } from "./load";

export type Bundle =
  | { readonly text: string; readonly files: readonly string[] }
  | { readonly refused: string };

/** `refused` says in words why there is none. */
export function bundle(file: string, text: string, read: Reader): Bundle {
  const { files, faults } = load(file, text, read);
  const [fault] = faults;
  if (fault) {
    const why =
      fault.kind === "circle"
        ? "it leads back to itself"
        : fault.kind === "twice"
          ? "it is enclosed twice"
          : fault.why;
    return { refused: `${fault.path}: ${why}` };
  }
  const eol = /\r\n|\r|\n/.exec(text)?.[0] ?? "\n";
  const parts: string[] = [];
  for (const one of files) {
    const unread = unreadableIn(one);
    if (unread !== undefined) {
      const where = one.path === undefined ? "" : `${one.path}, `;
      return { refused: `${where}line ${unread} is not understood, and may hold a price` };
    }
    const own = shared(one);
    const ended = /[\r\n]$/.test(own) || own === "" ? own : own + eol;
    parts.push(one.path === undefined ? ended : `enclosed ${one.path}${eol}${ended}`);
  }
  const whole = parts.join("");
  return saysTheSame(file, whole, files)
    ? { text: whole, files: [...new Set(files.map((one) => holderOf(one.file)))] }
    : { refused: "all of it together is too much for one file" };
}

/** Whether it is read back as the same files, each under its own path. */
function saysTheSame(file: string, whole: string, files: readonly PlanFile[]): boolean {
  const again = load(file, whole, (path) => ({ file: path, refused: "" }));
  const paths = (list: readonly PlanFile[]): string =>
    list.map(({ path, role }) => `${role} ${path}`).join("\n");
  return again.faults.length === 0 && paths(again.files) === paths(files);
}

/** What may hold a price or a pile. */
const BOUGHT: ReadonlySet<Entry["kind"]> = new Set([
  "stock",
  "sheet",
  "roll",
  "fastener",
  "finish",
  "fill",
  "yard",
  "unknown",
]);

/** The line of the first complaint about something that is bought, or that may be. */
function unreadableIn({ tree: { text, entries, complaints }, begins }: PlanFile): number | undefined {
  const found = complaints.find((c) => {
    const entry = entries.find((e) => e.start <= c.start && c.start <= e.end);
    return (
      entry === undefined || BOUGHT.has(entry.kind) || entry.clauses.some(({ kind }) => kind === "broken")
    );
  });
  return found && text.slice(begins, found.start).split(/\r\n|\r|\n/).length;
}

/** The text of a file without prices and pile, with as many lines. */
function shared({ tree, begins }: PlanFile): string {
  const cuts = tree.entries.flatMap((entry) =>
    entry.clauses.flatMap((clause) => cutsIn(tree, entry, clause)),
  );
  const behind = tree.comments.filter((c) => cuts.some((cut) => isBehind(tree.text, cut, c)));
  const gone = [...cuts, ...behind].sort((a, b) => a.start - b.start || b.end - a.end);
  let text = "";
  let at = begins;
  for (const { start, end } of gone) {
    if (end <= at) continue;
    const from = Math.max(start, at);
    text += tree.text.slice(at, from);
    const lines = tree.text.slice(from, end).match(/\r\n|\r|\n/g) ?? [];
    // No blanks are left at the end of a line that something was taken from.
    if (lines.length > 0 || opensNext(tree.text, end)) text = text.replace(/[ \t]+$/, "");
    text += lines.join("");
    at = end;
  }
  return text + tree.text.slice(at);
}

const opensNext = (text: string, at: number): boolean => at >= text.length || /[\r\n]/.test(text[at]!);

function cutsIn(tree: Tree, entry: Entry, clause: Clause): Span[] {
  switch (clause.kind) {
    case "sold":
      return clause.offers.flatMap(({ price }) => (price ? [withBlanks(tree.text, price)] : []));
    case "pack":
    case "tin":
      return clause.price ? [withBlanks(tree.text, clause.price)] : [];
    case "price":
    case "on hand":
      return wholeClause(tree, entry, clause);
    case "tax":
      return entry.kind === "yard" ? wholeClause(tree, entry, clause) : [];
    default:
      return [];
  }
}

/** With the blanks before it. */
const withBlanks = (text: string, { start, end }: Span): Span => ({
  start: start - /[ \t]*$/.exec(text.slice(0, start))![0].length,
  end,
});

/** A clause with one of the commas beside it: that before it on its line, else that behind it. */
function wholeClause({ text }: Tree, entry: Entry, { start, end }: Clause): Span[] {
  const before = /,[ \t]*$/.exec(text.slice(entry.start, start))?.[0].length;
  if (before !== undefined) return [{ start: start - before, end }];
  const behind = /^[ \t]*,[ \t]*/.exec(text.slice(end))?.[0].length ?? 0;
  return [withBlanks(text, { start, end: end + behind })].map((cut) =>
    behind > 0 && !opensNext(text, cut.end) ? { start, end: cut.end } : cut,
  );
}

/** A comment on a line from which something is taken, behind it. */
function isBehind(text: string, cut: Span, comment: Span): boolean {
  return comment.start >= cut.start && !/[\r\n]/.test(text.slice(cut.end, Math.max(cut.end, comment.start)));
}

/** Who wrote a plan and what others may do with it, as far as it says. */
export function saysOf(text: string): { readonly author: boolean; readonly licence: boolean } {
  const plan = parse(text).entries.find((e) => e.kind === "plan");
  const says = (kind: Clause["kind"]): boolean => plan?.clauses.some((c) => c.kind === kind) ?? false;
  return { author: says("written by"), licence: says("licence") };
}
