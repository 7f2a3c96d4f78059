/** French words that lose their e before what a plan calls its things. */
import { expect, test } from "vitest";
import { de, elided } from "../../server/checks/french/elision";

test("before a vowel, and before nothing else", () => {
  expect(["end", "étagère", "argile", "leg", "hopper", "yard-mix", "1x4"].map(de)).toEqual([
    "d’end",
    "d’étagère",
    "d’argile",
    "de leg",
    "de hopper",
    "de yard-mix",
    "de 1x4",
  ]);
});

test("only what the template itself says, just before a slot", () => {
  const slots: Readonly<Record<string, string>> = { a: "end", b: "leg", c: 'environ 0.7"' };
  const told = (template: string) => elided(template, (name) => slots[name]);
  expect(told("le bout de {a} et de {b}, alors que {c} suffit ; de « {a} »")).toBe(
    "le bout d’{a} et de {b}, alors qu’{c} suffit ; de « {a} »",
  );
  expect(told("une grande {a}, De {a}, Que {a}")).toBe("une grande {a}, D’{a}, Qu’{a}");
  expect(told("de {unknown}")).toBe("de {unknown}");
});
