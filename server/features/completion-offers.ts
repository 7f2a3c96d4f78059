/** From what could come next to what is offered: what is likely first, then names in scope, then what can be asked of them, then words. */
import type { Language } from "../checks";
import { clauseDocument, nameOffers, narrowable } from "./completion-names";
import { type Asking, distinct, type Offer, offer, RANK } from "./completion-offer";
import type { Next } from "./completion-patterns";
import { screwOffers } from "./completion-screws";
import { COMPLETION_WORDS } from "./completion-words";
import { formText, functionForm, functionText, propertyText } from "./form-words";
import { code, paragraphs } from "./markdown";

/** Everything that fits one of the expectations, each label once, in the order of rank. `goesOn` tells what more is needed. */
export function offersFor(
  expected: readonly Next[],
  asking: Asking,
  goesOn: (next: Next) => boolean,
): Offer[] {
  return distinct(
    expected.flatMap((next) => {
      const offers = offersOf(next, asking);
      return offers.some((o) => !o.goesOn) && goesOn(next)
        ? offers.map((o) => ({ ...o, goesOn: true }))
        : offers;
    }),
  );
}

function offersOf(next: Next, asking: Asking): Offer[] {
  switch (next.kind) {
    case "words":
      return wordsOffers(next, asking);
    case "name":
      return nameOffers(next, asking);
    case "screw":
      return screwOffers("", asking);
    case "value":
      return [];
  }
}

function wordsOffers(next: Extract<Next, { kind: "words" }>, asking: Asking): Offer[] {
  const { words, form, about } = next;
  const { language } = asking;
  const [first = ""] = words;
  const label = words.join(" ");
  if (words[words.length - 1] === "(") return [functionOffer(first, `${first}(`, language)];
  if (form)
    return [
      offer(label, "clause", RANK.word, {
        detail: form.example === label ? formText(form, language) : form.example,
        documentation: () => clauseDocument(form, asking),
      }),
    ];
  if (label === "round") return [functionOffer(first, first, language)];
  if (words.length > 1 && words[words.length - 1] === "of") {
    const text = propertyText(words.slice(0, -1).join(" "), language);
    if (text && about === "property")
      return [offer(label, "property", RANK.property, { documentation: () => text, goesOn: true })];
  }
  if (about === "narrowing")
    return narrowable(asking, first)
      ? [offer(label, "word", RANK.narrow, { detail: COMPLETION_WORDS[language].narrows[first] ?? "" })]
      : [];
  const entry = next.entry;
  return [offer(label, "word", RANK.word, entry && { documentation: () => formText(entry, language) })];
}

const functionOffer = (name: string, insertText: string, language: Language): Offer =>
  offer(name, "function", RANK.function, {
    detail: functionForm(name)?.form ?? "",
    documentation: () => paragraphs(code(functionForm(name)?.form ?? name), functionText(name, language)),
    insertText,
    goesOn: true,
  });
