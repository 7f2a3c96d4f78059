/**
 * What the language's own words mean, in every language that texts are told in: `formText` for entries and clauses,
 * `propertyText` and `functionText` for what stands in expressions. Completion, signature help and hovers all say the same.
 */
import { ENTRY_FORMS, type EntryForm, type Form } from "../../grammar/forms";
import type { Language } from "../checks";
import { FORMS_IN_FRENCH } from "./form-words-french";

/** The sentence about an entry or a clause. */
export const formText = (form: Form | EntryForm, language: Language): string =>
  (language === "fr" ? IN_FRENCH.get(form) : undefined) ?? form.doc;

/** By the forms themselves: `length` of a part is not `length` of anything else. */
const IN_FRENCH: ReadonlyMap<Form | EntryForm, string> = new Map(
  ENTRY_FORMS.flatMap((entry) => {
    const french = FORMS_IN_FRENCH[entry.word];
    const clauses = entry.clauses.map((c) => [c, french?.clauses[c.opens.join(" ")]] as const);
    return [[entry, french?.doc] as const, ...clauses].flatMap(([form, text]) =>
      text === undefined ? [] : [[form, text] as const],
    );
  }),
);

/** What a property asks for: `overall width`. Undefined for any other words. */
export const propertyText = (name: string, language: Language): string | undefined =>
  textIn(language === "fr" ? PROPERTIES_IN_FRENCH : PROPERTY_DOCS, name);

/** What a function gives. Undefined for any other word. */
export const functionText = (name: string, language: Language): string | undefined =>
  language === "fr" ? textIn(FUNCTIONS_IN_FRENCH, name) : functionForm(name)?.doc;

/** How a function is written: `min(a, b)`. */
export const functionForm = (name: string): { readonly form: string; readonly doc: string } | undefined =>
  Object.hasOwn(FUNCTION_DOCS, name) ? FUNCTION_DOCS[name] : undefined;

const textIn = (table: Readonly<Record<string, string>>, name: string): string | undefined =>
  Object.hasOwn(table, name) ? table[name] : undefined;

const PROPERTY_DOCS: Readonly<Record<string, string>> = {
  length: "The piece's own length, as its line gives it.",
  width: "The board's own width.",
  thickness: "The board's own thickness.",
  count: "How many there are.",
  "overall width": "From the leftmost to the rightmost of what is placed.",
  "overall depth": "From the front to the back of what is placed.",
  "overall height": "From the lowest to the highest of what is placed.",
  "inside width": "The inside of the box, left to right.",
  "inside depth": "The inside of the box, front to back.",
  "inside height": "The inside of the box, bottom to rim.",
  top: "How high its top stands above the floor.",
  bottom: "How high its underside stands above the floor.",
  left: "How far its left side is from the plan's own left.",
  right: "How far its right side is from the plan's own left.",
  front: "How far its front is from the plan's own front.",
  back: "How far its back is from the plan's own front.",
};

const FUNCTION_DOCS: Readonly<Record<string, { readonly form: string; readonly doc: string }>> = {
  min: { form: "min(a, b)", doc: "The least of its values." },
  max: { form: "max(a, b)", doc: "The greatest of its values." },
  diagonal: { form: "diagonal(a, b)", doc: "The long side across a square corner: the root of a² + b²." },
  sin: { form: "sin(angle)", doc: "The sine of an angle." },
  cos: { form: "cos(angle)", doc: "The cosine of an angle." },
  tan: { form: "tan(angle)", doc: "The tangent of an angle: rise over run." },
  asin: { form: "asin(number)", doc: "The angle of that sine." },
  acos: { form: "acos(number)", doc: "The angle of that cosine." },
  atan: { form: "atan(number)", doc: "The angle of that tangent." },
  floor: { form: "floor(number)", doc: "The whole number at or below." },
  ceiling: { form: "ceiling(number)", doc: "The whole number at or above." },
  round: { form: 'round a to 1/16"', doc: "The nearest multiple; halfway goes away from zero." },
};

const PROPERTIES_IN_FRENCH: Readonly<Record<string, string>> = {
  length: "La longueur de la pièce, comme sa ligne la donne.",
  width: "La largeur de la planche.",
  thickness: "L’épaisseur de la planche.",
  count: "Combien il y en a.",
  "overall width": "Du point le plus à gauche au point le plus à droite de ce qui est placé.",
  "overall depth": "De l’avant à l’arrière de ce qui est placé.",
  "overall height": "Du point le plus bas au plus haut de ce qui est placé.",
  "inside width": "L’intérieur du bac, de gauche à droite.",
  "inside depth": "L’intérieur du bac, de l’avant à l’arrière.",
  "inside height": "L’intérieur du bac, du fond au bord.",
  top: "À quelle hauteur du sol est son dessus.",
  bottom: "À quelle hauteur du sol est son dessous.",
  left: "À quelle distance de la gauche du plan est son côté gauche.",
  right: "À quelle distance de la gauche du plan est son côté droit.",
  front: "À quelle distance de l’avant du plan est son avant.",
  back: "À quelle distance de l’avant du plan est son arrière.",
};

const FUNCTIONS_IN_FRENCH: Readonly<Record<string, string>> = {
  min: "La plus petite de ses valeurs.",
  max: "La plus grande de ses valeurs.",
  diagonal: "Le grand côté d’un angle droit\u00a0: la racine de a² + b².",
  sin: "Le sinus d’un angle.",
  cos: "Le cosinus d’un angle.",
  tan: "La tangente d’un angle\u00a0: la hauteur divisée par la base.",
  asin: "L’angle qui a ce sinus.",
  acos: "L’angle qui a ce cosinus.",
  atan: "L’angle qui a cette tangente.",
  floor: "Le nombre entier égal ou juste en dessous.",
  ceiling: "Le nombre entier égal ou juste au-dessus.",
  round: "Le multiple le plus proche\u00a0; la moitié s’éloigne de zéro.",
};
