/**
 * What an editor offers to do at a place of a plan: mend a problem, mend all of a kind, let one stand with a reason, or
 * write the same plan in another way. Each is found at once; the change of the text is worked out when it is asked for.
 */
import { applied } from "../../grammar/format";
import type { Span } from "../../grammar/tree";
import type { Edit, Language, Problem } from "../checks";
import { holderOf, type Reader } from "../plan";
import { acceptances } from "./actions-accept";
import { mendAlls, mendSpelling } from "./actions-all";
import { quickFixes } from "./actions-cures";
import type { Checked } from "./checked";
import { MOST_DIAGNOSTICS, placeOf, toldOf } from "./diagnostics";
import { inlineMeasure } from "./refactor-inline";
import { nameMeasures } from "./refactor-measure";
import { moveToShop } from "./refactor-shop";
import { rewriteUnits } from "./refactor-units";

/** As the protocol names them: what stands before a dot is the larger kind. */
export const ACTION_KINDS = [
  "quickfix",
  "source.fixAll.sawbuck",
  "refactor.extract.measure",
  "refactor.inline.measure",
  "refactor.rewrite.units",
  "refactor.move.shop",
] as const;
export type ActionKind = (typeof ACTION_KINDS)[number];

/** A change of one or more files. */
export interface Change {
  readonly edits: readonly Edit[];
  /** A file that is made first. */
  readonly makes?: { readonly file: string; readonly text: string };
  /** Where, in the text of the only edit, the person goes on typing. */
  readonly typing?: number;
  /** Where, in the plan as it is then, a new name stands that may be changed. */
  readonly named?: number;
}

/** What a file's text is once it is changed. */
export const textAfter = ({ edits }: Change, file: string, text: string): string =>
  applied(
    text,
    edits.filter((e) => holderOf(e.file) === file),
  );

export interface Action {
  /** Tells it from all others of the same place in the same text. */
  readonly id: string;
  readonly title: string;
  readonly kind: ActionKind;
  /** The one that is taken where nobody chooses. */
  readonly preferred: boolean;
  /** The problems that are gone then. */
  readonly problems: readonly Problem[];
  /** Why it cannot be done, where a person would expect it. */
  readonly refused?: string;
  /** Whether the change takes long to work out. */
  readonly slow?: boolean;
  /** Undefined where it comes out that nothing can be changed. */
  readonly change: () => Change | undefined;
}

export interface Wanted {
  readonly range: Span;
  /** Kinds, of which all below them are meant too; undefined for all. */
  readonly only: readonly string[] | undefined;
  /** Whether a person asks, and not the editor of itself wherever the cursor goes. */
  readonly invoked: boolean;
  /** Finds other files. */
  readonly read: Reader;
  /** Whether a file can be made. */
  readonly makesFiles: boolean;
}

/** All that can be done there, in the order in which it is offered. */
export function actionsAt(plan: Checked, wanted: Wanted, language: Language = "en"): Action[] {
  const { range, invoked } = wanted;
  const wants = (kind: ActionKind): boolean => isWanted(kind, wanted.only);
  const told = toldOf(plan).slice(0, MOST_DIAGNOSTICS);
  const here = told.filter((p) => touches(placeOf(plan, p), range));
  const list: Action[] = [];
  if (wants("quickfix")) list.push(...quickFixes(plan, here, language), ...mendAlls(plan, here, language));
  if (wants("source.fixAll.sawbuck") && (invoked || wanted.only)) list.push(...mendSpelling(plan, language));
  // Where the cursor only goes by, what could be written otherwise is no news.
  if (invoked || wanted.only || range.end > range.start) {
    if (wants("refactor.extract.measure")) list.push(...nameMeasures(plan, range, language));
    if (wants("refactor.inline.measure")) list.push(...inlineMeasure(plan, range, language));
    if (wants("refactor.rewrite.units")) list.push(...rewriteUnits(plan, range, language));
    if (wants("refactor.move.shop")) list.push(...moveToShop(plan, wanted, language));
  }
  if (wants("quickfix")) list.push(...acceptances(plan, here, language));
  return list;
}

const isWanted = (kind: ActionKind, only: readonly string[] | undefined): boolean =>
  only === undefined || only.some((o) => o === "" || kind === o || kind.startsWith(`${o}.`));

const touches = (a: Span, b: Span): boolean => a.start <= b.end && b.start <= a.end;
