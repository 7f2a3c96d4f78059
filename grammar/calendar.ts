/** Days of the calendar: which there are, and which ones are meant by one that is written in another order. */

/** Whether it is a day that there is, as the language writes it: `2026-05-09`. */
export const isDay = (text: string): boolean => {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text) ?? [];
  return isOne(Number(year), Number(month), Number(day));
};

/**
 * The days that three numbers with a mark between them may mean, the day taken before the month first; where they mean
 * none, the days of the month they name, and undefined for no month.
 */
export function meantBy(typed: string): { readonly days: readonly string[]; readonly inMonth?: number } {
  const parts = typed.split(/[-./]/);
  const [a = 0, b = 0, c = 0] = parts.map(Number);
  const yearFirst = parts[0]!.length > 2;
  const year = yearFirst ? a : c < 100 ? 2000 + c : c;
  const [behind, before] = yearFirst ? [c, b] : [a, b];
  const ways: readonly (readonly [month: number, day: number])[] =
    yearFirst && isOne(year, before, behind)
      ? [[before, behind]]
      : [
          [before, behind],
          [behind, before],
        ];
  const days = ways.filter(([m, d]) => isOne(year, m, d)).map(([m, d]) => written(year, m, d));
  return {
    days: [...new Set(days)],
    ...(before >= 1 && before <= 12 && { inMonth: daysIn(year, before) }),
  };
}

/** `9 May 2026`, `May 9 2026`: the day that three words mean, in English or in French. */
export function dayInWords(typed: readonly string[]): string | undefined {
  const [a = "", b = "", year = ""] = typed;
  const [word, day] = /^\d/.test(a) ? [b, a] : [a, b];
  const short = word
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase();
  const months = MONTHS.flatMap((names, i) => (names.some((name) => name.startsWith(short)) ? [i + 1] : []));
  const [month = 0, second] = months;
  const known = second === undefined && /^\d{4}$/.test(year) && isOne(Number(year), month, Number(day));
  return known ? written(Number(year), month, Number(day)) : undefined;
}

const written = (year: number, month: number, day: number): string =>
  [String(year).padStart(4, "0"), ...[month, day].map((n) => String(n).padStart(2, "0"))].join("-");

const isOne = (year: number, month: number, day: number): boolean =>
  month >= 1 && month <= 12 && day >= 1 && day <= daysIn(year, month);

function daysIn(year: number, month: number): number {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

const MONTHS = [
  ["january", "janvier"],
  ["february", "fevrier"],
  ["march", "mars"],
  ["april", "avril"],
  ["may", "mai"],
  ["june", "juin"],
  ["july", "juillet"],
  ["august", "aout"],
  ["september", "septembre"],
  ["october", "octobre"],
  ["november", "novembre"],
  ["december", "decembre"],
] as const;
