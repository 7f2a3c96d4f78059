/** The sentences about the language's own words are there in every language, and written as French is. */
import { expect, test } from "vitest";
import { ENTRY_FORMS } from "../../grammar/forms";
import { formText, functionText, propertyText } from "../../server/features/form-words";
import { FORMS_IN_FRENCH } from "../../server/features/form-words-french";
import { FUNCTIONS, PROPERTIES } from "../../server/worked";

test("every entry and clause is told in French, and no other", () => {
  const keys = (table: Readonly<Record<string, object>>) => Object.keys(table).sort();
  expect(keys(FORMS_IN_FRENCH)).toEqual(ENTRY_FORMS.map((f) => f.word).sort());
  for (const { word, clauses } of ENTRY_FORMS)
    expect([word, ...Object.keys(FORMS_IN_FRENCH[word]!.clauses).sort()]).toEqual([
      word,
      ...clauses.map((c) => c.opens.join(" ")).sort(),
    ]);
  for (const form of ENTRY_FORMS.flatMap((f) => [f, ...f.clauses])) {
    expect(formText(form, "fr")).not.toBe(formText(form, "en"));
    expect(formText(form, "fr").replace(/`[^`]*`/g, "")).not.toMatch(/[^\u00a0][:;?!»]|«[^\u00a0]/);
  }
});

test("every property and function too", () => {
  for (const language of ["en", "fr"] as const) {
    expect(PROPERTIES.filter((p) => !propertyText(p, language))).toEqual([]);
    expect([...FUNCTIONS, "round"].filter((f) => !functionText(f, language))).toEqual([]);
  }
});
