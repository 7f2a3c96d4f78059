/** What checks of boards and sheets share: where a stock is told of, and how its first answer is told. */
import type { At } from "../plan";
import { type BoardWork, type Part, partOfPiece, type SheetWork, type Worked } from "../worked";
import type { Finding, Says } from "./check";

type Work = BoardWork | SheetWork;

/** The parts that are cut from it, in their order. */
export const partsOf = ({ job }: Work, { parts }: Worked): Part[] =>
  [...new Set(job.pieces.map(({ id }) => partOfPiece(id)))].flatMap((name) => parts.get(name) ?? []);

/** The stock's own line where the plan has it, else that of the first part cut from it; and all the names it concerns. */
export function stockPlace(work: Work, worked: Worked): Pick<Finding, "about"> & { readonly at: At } {
  const { declared, name } = work.material;
  const parts = partsOf(work, worked);
  const own = declared?.role === "plan" ? declared.at : undefined;
  return { at: own ?? parts[0]!.declared.at, about: [name, ...parts.map((part) => part.name)] };
}

/** For what may be otherwise once a better layout is found. */
export const firstAnswer = ({ proof }: Work): Says[] => (proof ? [] : [{ says: "first", slots: {} }]);
