/** A comparison as JSON, its keys in the order of the contract. */
import { BUILT, jsonIn, MARKED, type Order, PLACE, PROBLEM } from "../json";
import type { SheetChanges } from "./data";

const PLAN = { file: null, title: null };
const TOLD = { what: null, old: null, new: null };
const PIECE = { part: null, mark: null, hand: null, count: null, stock: null, length: MARKED, pieces: null };
const NOT_CHECKED = { what: null, why: null, place: PLACE };

const CHANGES: Order<SheetChanges> = {
  format: null,
  version: null,
  plans: { old: PLAN, new: PLAN },
  built: BUILT,
  same: null,
  plan: TOLD,
  pieces: {
    old: PIECE,
    new: PIECE,
    fields: TOLD,
    pieces: { old: null, new: null },
    moved: { pieces: null, by: null, words: null },
    turned: null,
  },
  cutting: { stock: null, old: null, new: null, same: null },
  buying: TOLD,
  cost: TOLD,
  joining: TOLD,
  more: TOLD,
  steps: TOLD,
  problems: { old: PROBLEM, new: PROBLEM },
  accepted: { old: PROBLEM, new: PROBLEM },
  notChecked: { old: NOT_CHECKED, new: NOT_CHECKED },
};

/** Any number of comparisons; the same ones give the same bytes. */
export const changesJson = (plans: readonly SheetChanges[]): string =>
  jsonIn({ format: "sawbuck-diff", version: 1, plans }, { format: null, version: null, plans: CHANGES });
