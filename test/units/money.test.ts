/** Amounts in several currencies: never added up, never compared by their numbers, and told. */
import { describe, expect, test } from "vitest";
import { notCheckedOf, sheetOf } from "../../server/service";
import { worked } from "../features/plans";

const rails = (head: string, stock: string): string =>
  `plan A rail\n  indoors\n${head}shop shop.sawbuck\npart rail 4 of 2x4, length 5'\npart slat 2 of 1x4, length 5'\n${stock}`;
const planOf = (head: string, shop: string) => worked(rails(head, ""), { "shop.sawbuck": shop });
const whyNot = (plan: ReturnType<typeof planOf>, language: "en" | "fr" = "en") =>
  notCheckedOf(plan, language).flatMap(({ what, why }) => (/€|\$/.test(why) ? [`${what}: ${why}`] : []));

const EUROS = "stock 2x4, sold 8' €4.20\nstock 1x4, sold 8' €2.60\n";

describe("a budget in another currency than the shop's prices", () => {
  const plan = planOf("  budget $50\n  tax 6%\n", EUROS);

  test("is told, and nothing is said to be left of it or over it", () => {
    expect(sheetOf(plan).problems.map(({ code, message }) => `${code}: ${message}`)).toEqual([
      "over-budget: The prices are in €, so they cannot be compared with the budget of $50.00.",
    ]);
    expect(sheetOf(plan, undefined, "fr").problems.map(({ message }) => message)).toEqual([
      "Les prix sont en €\u00a0: on ne peut pas les comparer au budget de $50.00.",
    ]);
    expect(sheetOf(plan).shopping).toMatchObject({
      subtotal: "€22.00",
      tax: "€1.32",
      total: "€23.32",
      budget: "$50.00",
      left: null,
    });
  });

  test("is compared once it is in the shop's", () => {
    const same = planOf("  budget €20\n  tax 6%\n", EUROS);
    expect(sheetOf(same).shopping.left).toEqual({ amount: "€3.32", over: true });
  });
});

describe("prices in two currencies", () => {
  test("of two stocks are added up nowhere", () => {
    const plan = planOf("  budget $50\n  tax 6%\n", "stock 2x4, sold 8' €4.20\nstock 1x4, sold 8' $2.60\n");
    const { subtotal, tax, total, left } = sheetOf(plan).shopping;
    expect([subtotal, tax, total, left]).toEqual([null, null, null, null]);
    expect(whyNot(plan)).toEqual(["what it costs in all: prices are in € and $"]);
  });

  test.each(["stock 2x4, sold 8' €4.20, 10' $1.00", "stock 2x4, sold 8' $1.00, 10' €4.20"])(
    "of one stock do not say which of its sizes is cheaper: %s",
    (stock) => {
      const plan = planOf("", `${stock}\nstock 1x4\n  on hand 2 of 6'\n`);
      const [row] = sheetOf(plan).shopping.rows;
      // As where nothing has a price: the boards that leave the least wood.
      expect(row).toMatchObject({ what: "2x4", count: 4, unit: "8' board" });
      expect(whyNot(plan).map((line) => line.replace(/€ and \$|\$ and €/, "both"))).toEqual([
        "which sizes of 2x4 are cheapest: prices are in both",
      ]);
      expect(whyNot(plan, "fr")[0]).toMatch(
        /^quelles tailles de 2x4 sont les moins chères: les prix sont en/,
      );
    },
  );
});
