/** What a book of plans says. */
export const ENGLISH_BOOK = {
  title: "Plans",
  /** Under the title. */
  under: (plans: number): string => (plans === 1 ? "1 plan" : `${plans} plans`),
  care: "Sawbuck finds the mistakes it can name and says what it did not look at; it never approves a plan. Weights are estimates.",
  columns: {
    plan: "Plan",
    about: "What it is",
    size: "Size",
    pieces: "Pieces",
    boards: "Boards to buy",
    cost: "Cost",
    weight: "Weight, dry",
    problems: "Open problems",
    notChecked: "Not looked at",
  },
  headings: {
    figures: "In figures",
    madeOf: "Made of",
    builtWith: "Built with",
    accepted: "Accepted hazards, and why",
  },
  wide: (width: string, depth: string, height: string): string =>
    `${width} wide, ${depth} deep, ${height} high`,
  /** Where some prices are not known. */
  andMore: (cost: string): string => `${cost} and more`,
  count: (kind: "error" | "hazard" | "warning" | "hint", n: number): string =>
    `${n} ${kind}${n === 1 ? "" : "s"}`,
  none: "none that it can name",
  things: (n: number): string => (n === 1 ? "1 thing" : `${n} things`),
  stock: "Boards and sheets",
  fasteners: "Fasteners",
  tools: "Tools",
  of: (count: number, what: string): string => `${count} ${what}`,
};
