/** From what is to be said to its text: one renderer for all languages, which differ by their tables alone. */
import { fill } from "../../grammar/messages";
import type { InFull, Says, Several, Slot, Slots } from "../plan";
import {
  type Display,
  LENGTH,
  lengthInFull,
  lengthText,
  type Quantity,
  quantityText,
  sameDimension,
} from "../units";

/** Tags of RFC 5646; the first is what is taken where nothing is said, and what stands in where another has no text. */
export const LANGUAGES = ["en", "fr"] as const;
export type Language = (typeof LANGUAGES)[number];

/** A text with slots, or two of them: for one and for other numbers of what fills the slot `by`, a number or a list. */
export type Template = string | { readonly by: string; readonly one: string; readonly other: string };
export type Templates = Readonly<Record<string, Template>>;

export const counted = (by: string, one: string, other: string): Template => ({ by, one, other });

/** What of a language the renderer must know besides its templates. */
export interface Tongue {
  readonly and: string;
  readonly or: string;
  /** Before a length that is rounded. */
  readonly about: string;
  /** Whether a number goes with the singular. */
  readonly isOne: (n: number) => boolean;
  /** The article of a word, as `{a}` and `{A}` ask for it. */
  readonly article?: (word: string, a: "a" | "A") => string;
  /** The template of what is said inside of another text. */
  readonly phrase: (says: string) => Template | undefined;
  /** The template of a problem, and its headline; where it has none, that of the check itself is taken. */
  readonly problem?: (code: string, says: string) => Template | undefined;
  readonly title?: (code: string) => string | undefined;
  /** The same of what was not checked, and why. */
  readonly notChecked?: (says: string) => Template | undefined;
  /** Mends the words of a template that stand before a slot, by what fills it. */
  readonly meeting?: (template: string, slot: (name: string) => string | undefined) => string;
}

/** A template filled. Lengths and other values are written to the plan's marks. A slot's name with a capital opens a sentence. */
export function written(template: Template, slots: Slots, display: Display, tongue: Tongue): string {
  const slot = (name: string): string | undefined => {
    const found = slots[name];
    if (found !== undefined) return slotText(found, display, tongue);
    const small = slots[name.charAt(0).toLowerCase() + name.slice(1)];
    return small === undefined ? undefined : opening(small, display, tongue);
  };
  const form = formOf(template, slots, tongue);
  return fill(tongue.meeting?.(form, slot) ?? form, slot, tongue.article);
}

/** The text of one slot, or of something said by itself. */
export function slotText(slot: Slot, display: Display, tongue: Tongue): string {
  if (typeof slot !== "object") return String(slot);
  if ("says" in slot) return written(templateOf(slot, tongue), slot.slots, display, tongue);
  if ("full" in slot) return inFull(slot, display, tongue);
  if ("dim" in slot) return valueText(slot, display, tongue);
  return listText(slot, display, tongue);
}

const templateOf = ({ says }: Says, tongue: Tongue): Template => tongue.phrase(says) ?? says;

function formOf(template: Template, slots: Slots, { isOne }: Tongue): string {
  if (typeof template === "string") return template;
  const by = slots[template.by];
  const several = typeof by === "object" && "all" in by ? by.all.length : Number(by);
  return isOne(several) ? template.one : template.other;
}

/** What opens a sentence has a capital, unless it is a name or a value, which is written as it is. */
function opening(slot: Slot, display: Display, tongue: Tongue): string {
  if (typeof slot !== "object" || !("says" in slot)) return slotText(slot, display, tongue);
  const form = formOf(templateOf(slot, tongue), slot.slots, tongue);
  const at = form.startsWith("{") ? 1 : 0;
  const raised = form.slice(0, at) + form.charAt(at).toUpperCase() + form.slice(at + 1);
  return written(raised, slot.slots, display, tongue);
}

function listText(list: Several, display: Display, tongue: Tongue): string {
  const texts = (slots: readonly Slot[]) => slots.map((s) => slotText(s, display, tongue));
  if ("row" in list) return texts(list.row).join(list.by);
  const [words, joined] = "all" in list ? [texts(list.all), tongue.and] : [texts(list.any), tongue.or];
  return words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")}${joined}${words.at(-1)}`;
}

const inFull = ({ full }: InFull, display: Display, { about }: Tongue): string =>
  lengthInFull(full, display).replace(/^about /, about);

function valueText(value: Quantity, display: Display, tongue: Tongue): string {
  if (!sameDimension(value.dim, LENGTH)) return quantityText(value, display);
  const marked = lengthText(value, display);
  // A gap too small for the tape is still not nothing.
  return /^-?0("| mm)$/.test(marked) && value.approx !== 0
    ? inFull({ full: value }, display, tongue)
    : marked;
}
