/**
 * What the language's own words mean, in every language that texts are told in: `formText` for entries and clauses,
 * `propertyText` and `functionText` for what stands in expressions. Completion, signature help and hovers all say the same.
 */
import { ENTRY_FORMS, type EntryForm, type Form } from "../../grammar/forms";
import type { Language } from "../checks";
import { FORMS_IN_FRENCH } from "./form-words-french";
import { FUNCTION_DOCS, PROPERTY_DOCS } from "./hover-values";

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
