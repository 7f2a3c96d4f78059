/** What can be done at a place: quick fixes, letting something stand, and other ways to write the same. */
import {
  type ClientCapabilities,
  type CodeAction,
  type CodeActionContext,
  type CodeActionParams,
  CodeActionTriggerKind,
  type Diagnostic,
} from "vscode-languageserver";
import { ACTION_KINDS, type Action, actionsAt, type Wanted } from "../../features/actions";
import { ACTION_WORDS } from "../../features/actions-words";
import { placeOf } from "../../features/diagnostics";
import { rangeIn } from "../convert";
import { numberIn, textIn } from "../untyped";
import { type CanEdit, canEdit, positionAfter, textsOf, toWorkspaceEdit } from "../workspace-edit";
import type { Answerer, Answering, Asked } from "./answering";

export const actions: Answerer = {
  offers: (editor) =>
    shown(editor)
      ? { codeActionProvider: { codeActionKinds: [...ACTION_KINDS], resolveProvider: canOf(editor).later } }
      : {},
  answer: (answering) => {
    const { connection, guard, of, params } = answering;
    const can = canOf(params.capabilities);
    const serving: Serving = { ...answering, can };
    connection.onCodeAction(
      guard("code actions", (asked) => of(asked, (one) => listed(one, asked, serving)), null),
    );
    connection.onCodeActionResolve((action) =>
      guard("a code action", (asked: CodeAction) => resolved(asked, serving), action)(action),
    );
  },
};

interface Serving extends Answering {
  readonly can: Can;
}

/** What an editor can do with code actions. */
interface Can extends CanEdit {
  readonly preferred: boolean;
  readonly disabled: boolean;
  /** The change is asked for when an action is taken. */
  readonly later: boolean;
}

/** An editor that knows commands alone is offered nothing. */
const shown = ({ textDocument }: ClientCapabilities): boolean =>
  textDocument?.codeAction?.codeActionLiteralSupport !== undefined;

function canOf(editor: ClientCapabilities): Can {
  const { codeAction } = editor.textDocument ?? {};
  const later = codeAction?.resolveSupport?.properties ?? [];
  return {
    ...canEdit(editor),
    preferred: codeAction?.isPreferredSupport ?? false,
    disabled: codeAction?.disabledSupport ?? false,
    later: (codeAction?.dataSupport ?? false) && later.includes("edit"),
  };
}

function listed(one: Asked, { range, context }: CodeActionParams, serving: Serving): CodeAction[] {
  const { document } = one;
  const wanted = wantedOf(
    { start: document.offsetAt(range.start), end: document.offsetAt(range.end) },
    context,
    serving,
  );
  // A cure for what only lacks a file would be gone in a moment.
  if (!wanted.invoked && serving.plans.waits(document.uri)) return [];
  return actionsAt(one.evaluated, wanted, serving.shows.language).flatMap((action) => {
    if (action.refused !== undefined)
      return serving.can.disabled ? [{ ...bare(action), disabled: { reason: action.refused } }] : [];
    const told = { ...bare(action), ...about(action, one, context), ...preferred(action, serving.can) };
    if (serving.can.later) return [{ ...told, data: dataOf(action, wanted, document.version, document.uri) }];
    // What takes long is not worked out wherever the cursor goes.
    if (action.slow && !wanted.invoked) return [];
    const change = changeOf(action, one, serving);
    return change.edit ? [{ ...told, ...change }] : [];
  });
}

const bare = ({ title, kind }: Action): CodeAction => ({ title, kind });
const preferred = (action: Action, can: Can): Partial<CodeAction> =>
  action.preferred && can.preferred ? { isPreferred: true } : {};

function wantedOf(range: Wanted["range"], context: CodeActionContext, { plans, can }: Serving): Wanted {
  return {
    range,
    only: context.only,
    invoked: context.triggerKind !== CodeActionTriggerKind.Automatic,
    read: plans.reader,
    makesFiles: can.makes,
  };
}

/** The editor's own diagnostics that an action is about. */
function about(
  { problems }: Action,
  { evaluated, document }: Asked,
  { diagnostics }: CodeActionContext,
): Pick<CodeAction, "diagnostics"> {
  const found = diagnostics.filter((d) =>
    problems.some((p) => p.code === d.code && isSame(d.range, rangeIn(document, placeOf(evaluated, p)))),
  );
  return found.length > 0 ? { diagnostics: found } : {};
}

const isSame = (a: Diagnostic["range"], b: Diagnostic["range"]): boolean =>
  a.start.line === b.start.line &&
  a.start.character === b.start.character &&
  a.end.line === b.end.line &&
  a.end.character === b.end.character;

/** Enough to find the action again, and to know whether the text is still the same. */
const dataOf = ({ id }: Action, { range, only }: Wanted, version: number, uri: string): object => ({
  uri,
  version,
  id,
  start: range.start,
  end: range.end,
  ...(only && { only: only.join(" ") }),
});

/** The same action with its change; without one, and with the reason, where the text is another by now. */
function resolved(action: CodeAction, serving: Serving): CodeAction {
  const { data } = action;
  const { shows, of, can } = serving;
  const found = of({ textDocument: { uri: textIn(data, "uri") } }, (one) => {
    if (one.document.version !== numberIn(data, "version")) return undefined;
    const only = textIn(data, "only");
    const range = { start: numberIn(data, "start"), end: numberIn(data, "end") };
    const context = { diagnostics: [], ...(only !== "" && { only: only.split(" ") }) };
    const again = actionsAt(one.evaluated, wantedOf(range, context, serving), shows.language).find(
      ({ id, refused }) => id === textIn(data, "id") && refused === undefined,
    );
    const change = again && changeOf(again, one, serving);
    return change?.edit ? { ...action, ...change } : undefined;
  });
  const reason = ACTION_WORDS[shows.language].changed;
  return found ?? (can.disabled ? { ...action, disabled: { reason } } : action);
}

function changeOf(
  action: Action,
  { evaluated, document }: Asked,
  { plans, can, shows }: Serving,
): Pick<CodeAction, "edit" | "command"> {
  const change = action.change();
  const edit = change && toWorkspaceEdit(change, textsOf([evaluated.worked.loaded]), plans, can);
  if (!edit) return {};
  if (!shows.commands || change.named === undefined) return { edit };
  const at = positionAfter(change, evaluated, change.named);
  return { edit, command: { title: action.title, command: RENAME, arguments: [document.uri, at] } };
}

/** A command of the extension: `client/rename-there.ts`. */
const RENAME = "sawbuck.renameThere";
