/** The measuring-up slip of an open plan, filled in beside it; the messages themselves are told in client/protocol.ts. */
import type { Connection, InitializeParams } from "vscode-languageserver";
import { adapt } from "../exchange";
import { type Evaluated, evaluate } from "../service";
import { filledSlip, type Slip, slipDrawingsInSteps, slipInSteps, slipParts, wishedChanges } from "../slips";
import type { Guard } from "./answers/answering";
import { toldAsFault } from "./faults";
import { laidOutInTurns } from "./layouts/in-turns";
import type { Plans } from "./plans";
import { languageFor } from "./sheet-options";
import { finishedInTurns } from "./turn";
import { textIn } from "./untyped";
import { canEdit, textsOf, toWorkspaceEdit } from "./workspace-edit";

export function answerSlips(
  connection: Connection,
  { capabilities }: InitializeParams,
  plans: Plans,
  guard: Guard,
): void {
  const inTurns = laidOutInTurns();
  const can = canEdit(capabilities);
  /** Where its measures are seen is found once for each version of a plan. */
  const slips = new WeakMap<Evaluated, Slip>();

  const begin = async (asked: unknown) => {
    const uri = textIn(asked, "uri");
    await plans.settled(uri);
    const evaluated = plans.evaluated(uri);
    const version = plans.document(uri)?.version;
    if (!evaluated || version === undefined) return undefined;
    const stale = (): boolean => plans.document(uri)?.version !== version;
    const shop = plans.shopOf(evaluated.file);
    const slip =
      slips.get(evaluated) ?? (await finishedInTurns(slipInSteps(evaluated, plans.reader, shop), stale));
    if (!slip) return undefined;
    slips.set(evaluated, slip);
    const language = languageFor(textIn(asked, "language"));
    const measured: unknown = typeof asked === "object" && asked !== null && Reflect.get(asked, "measured");
    const filled = filledSlip(slip, evaluated, (what) => textIn(measured, what), language);
    return { evaluated, version, stale, shop, slip, filled, language };
  };

  /** Null for a text that is not open, or has changed meanwhile. */
  const slip = async (asked: unknown) => {
    const begun = await begin(asked);
    if (!begun) return null;
    const { evaluated, version, stale, shop, slip, filled, language } = begun;
    const { file, text } = evaluated;
    const before = await inTurns(evaluated, stale);
    if (!before) return null;
    let after: Evaluated | undefined;
    if (filled.wishes.length > 0) {
      const made = adapt(file, text, plans.reader, filled.wishes, shop);
      if (!("refused" in made)) after = await inTurns(evaluate(file, made.text, made.read, shop), stale);
    }
    if (stale()) return null;
    const drawings = await finishedInTurns(slipDrawingsInSteps(slip, evaluated, filled, language), stale);
    if (!drawings || stale()) return null;
    return { version, rows: filled.rows, ...slipParts(before, after, drawings, language) };
  };

  /** Writes what is filled in into the plan, as one change that the editor can undo. */
  const write = async (asked: unknown): Promise<{ readonly written: number } | null> => {
    const begun = await begin(asked);
    if (!begun || begun.stale()) return null;
    const { evaluated, filled } = begun;
    const changes = wishedChanges(evaluated, filled.wishes);
    if ("refused" in changes || changes.length === 0) return { written: 0 };
    const edit = toWorkspaceEdit({ edits: changes }, textsOf([evaluated.worked.loaded]), plans, can);
    const answer = edit && (await connection.workspace.applyEdit({ edit }));
    return { written: answer?.applied ? filled.wishes.length : 0 };
  };

  const failed = toldAsFault(guard, "the measuring-up slip");
  connection.onRequest("sawbuck/slip", (asked: unknown) => slip(asked).catch(failed));
  connection.onRequest("sawbuck/slipWrite", (asked: unknown) => write(asked).catch(failed));
}
