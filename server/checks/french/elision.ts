/** Words that lose their e before a vowel: `d’angle`, `qu’environ 3"`. */

/** An h is taken for one that is heard, and a y for a consonant. */
const VOWEL = /^[aeiouàâéèêëîïôœù]/iu;

/** `de leg`, `d’end`. */
export const de = (word: string): string => (VOWEL.test(word) ? `d’${word}` : `de ${word}`);

/** A template whose own `de` and `que` meet what fills its slots. */
export const elided = (template: string, slot: (name: string) => string | undefined): string =>
  template.replace(/\b([dD]|[qQ]u)e (?=\{([a-zA-Z0-9-]+)\})/g, (whole, stem: string, name: string) =>
    VOWEL.test(slot(name) ?? "") ? `${stem}’` : whole,
  );
