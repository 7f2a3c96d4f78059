/** The tax of the yard, which the shop file says: when it counts, and how it is told. */
import { describe, expect, test } from "vitest";
import { problemText } from "../../server/checks";
import { bundled } from "../../server/exchange";
import { evaluate, sheetDocument, sheetOf } from "../../server/service";
import { sheetText } from "../../server/sheet/text";
import { worked } from "../features/plans";

const planOf = (head = "", below = ""): string =>
  `plan A rail\n  indoors\n${head}shop shop.sawbuck\npart rail 4 of 2x4, length 5'\n${below}`;
const SHOP = "stock 2x4, sold 8' $4.00\n";
const YARD = `${SHOP}yard Hillside timber yard\n  tax 6%\n`;
const shoppingOf = (plan: string, shop: string) => sheetOf(worked(plan, { "shop.sawbuck": shop })).shopping;
const codes = (plan: string, shop: string) =>
  worked(plan, { "shop.sawbuck": shop }).problems.map(({ code }) => code);

describe("the yard's tax", () => {
  test("is added to what is bought, and the sheet tells whose it is", () => {
    expect(shoppingOf(planOf(), YARD)).toMatchObject({
      subtotal: "$16.00",
      tax: "$0.96",
      taxOf: "Hillside timber yard",
      total: "$16.96",
    });
    const plan = worked(planOf(), { "shop.sawbuck": YARD });
    const told = (language: "en" | "fr") =>
      sheetText(sheetDocument(sheetOf(plan, undefined, language), { language }))
        .split("\n")
        .filter((line) => /Hillside|tax/i.test(line));
    expect([told("en"), told("fr")]).toMatchInlineSnapshot(`
      [
        [
          "  Timber yard   Hillside timber yard",
          "  Before tax                  $16.00",
          "  Tax (Hillside timber yard)   $0.96",
        ],
        [
          "  Marchand de bois  Hillside timber yard",
          "  Hors taxe                    16,00 $",
          "  Taxe (Hillside timber yard)   0,96 $",
        ],
      ]
    `);
  });

  test("gives way to the plan's own", () => {
    const own = { tax: "$0.32", taxOf: null };
    expect(shoppingOf(planOf("  tax 2%\n"), YARD)).toMatchObject(own);
    expect(shoppingOf(planOf("  tax 0%\n"), YARD)).toMatchObject({ tax: "$0.00", taxOf: null });
  });

  test("of a line of the plan counts before the shop's", () => {
    const plan = planOf("", "yard Another yard\n  tax 10%\n");
    expect(shoppingOf(plan, YARD)).toMatchObject({ tax: "$1.60", taxOf: "Another yard" });
  });

  test("is that of the reader's own shop file, which stands in place of the plan's", () => {
    const files: Record<string, string> = {
      "shop.sawbuck": YARD,
      "mine.sawbuck": `${SHOP}yard My yard\n  tax 20%\n`,
      "plain.sawbuck": SHOP,
    };
    const read = (path: string) => {
      const text = files[path];
      return text === undefined ? { file: path, refused: "there is no such file" } : { file: path, text };
    };
    const shopping = (shop: string) => sheetOf(evaluate("rail.sawbuck", planOf(), read, { shop })).shopping;
    expect(shopping("mine.sawbuck")).toMatchObject({ tax: "$3.20", taxOf: "My yard" });
    expect(shopping("plain.sawbuck")).toMatchObject({ tax: null, taxOf: null });
  });

  test("is none where no line says one", () => {
    expect(shoppingOf(planOf(), `${SHOP}yard Hillside timber yard\n`)).toMatchObject({
      tax: null,
      taxOf: null,
    });
  });

  test("is told where it cannot be, and where it is said twice", () => {
    const bad = `${SHOP}yard Hillside timber yard\n  tax 6"\n`;
    expect(codes(planOf(), bad)).toContain("unit-mismatch");
    const over = worked(planOf("  tax 120%\n"), { "shop.sawbuck": SHOP });
    const { display } = over.worked.settings;
    expect(over.problems.map((p) => `${p.code}: ${problemText(p.code, p, display)}`)).toEqual([
      "unit-mismatch: A share below 100%, like 8%, is wanted here, not a plain number (1.2).",
    ]);
    expect(codes(planOf(), `${YARD}yard Another\n`)).toContain("said-twice");
    expect(codes(planOf(), YARD)).toEqual([]);
  });

  test("does not go along in a bundle, with the prices; the yard's name does", () => {
    const made = bundled("rail.sawbuck", planOf(), (path) =>
      path === "shop.sawbuck" ? { file: path, text: YARD } : { file: path, refused: "there is no such file" },
    );
    expect(made).toHaveProperty("text");
    const { text } = made as { readonly text: string };
    expect([text.includes("yard Hillside timber yard"), /tax|\$/.test(text)]).toEqual([true, false]);
  });
});
