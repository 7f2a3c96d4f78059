/** Board jobs as the text of a plan, one stock for each. */
import { boardPlan } from "./board-plans";

const INCH = 16256;

/** The plan of these seeds of `boardPlan`, with the usual kerf, and the usual trim where a job has none. */
export function planText(seeds: readonly number[]): string {
  const head = ["plan Many lengths", "  language 1", '  units inches to 1/16"', "  budget $1"];
  return `${[...head, ...seeds.flatMap(linesOf)].join("\n")}\n`;
}

function linesOf(seed: number): string[] {
  const { pieces, sold, onHand, endTrim, salvage } = boardPlan(seed);
  const stock = `lot-${seed}`;
  const prices = sold.map(({ length, price }) => `${length / INCH / 12}' $${(price! / 100).toFixed(2)}`);
  const piles = onHand.map(({ length, bad }) => {
    const stretches = bad.map(({ from, to }) => ` bad ${inches(from)} to ${inches(to)}`).join("");
    return `1 of ${inches(length)}${stretches}`;
  });
  const counts = new Map<number, number>();
  for (const { length } of pieces) counts.set(length, (counts.get(length) ?? 0) + 1);
  return [
    `stock ${stock} of 1x4, sold ${prices.join(", ")}`,
    ...(piles.length > 0 ? [`  on hand ${piles.join(", ")}`, `  ${salvage}`] : []),
    ...(endTrim > 0 ? [`  end trim ${inches(endTrim)}`] : []),
    ...[...counts].map(
      ([length, count], i) => `part cut-${seed}-${i + 1} ${count} of ${stock}, length ${inches(length)}`,
    ),
  ];
}

/** On sixteenths; what is to be written is exact. */
const inches = (ticks: number): string => `${ticks / INCH}"`;
