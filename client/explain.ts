/**
 * The pages about each kind of problem, as the server gives them, under `sawbuck-page:/<code>.md`. Problem codes link to
 * them, and the manifest makes the built-in Markdown preview their editor.
 */
import * as vscode from "vscode";
import { type ProblemPage, ProblemPagesRequest } from "./protocol";
import type { Running } from "./running";

export const PAGE_SCHEME = "sawbuck-page";

export function explainProblems(running: Running): vscode.Disposable {
  const pages = async (): Promise<readonly ProblemPage[]> => {
    const answer = await running.client().sendRequest(ProblemPagesRequest, {});
    return answer.pages;
  };
  return vscode.Disposable.from(
    vscode.workspace.registerTextDocumentContentProvider(PAGE_SCHEME, {
      provideTextDocumentContent: async (uri) => {
        const page = (await pages()).find(({ code }) => pageUri(code).path === uri.path);
        return page?.markdown ?? `${vscode.l10n.t("There is no page about this problem.")}\n`;
      },
    }),
    vscode.commands.registerCommand("sawbuck.explainProblem", async () => {
      const picked = await vscode.window.showQuickPick(choices(pages()), {
        placeHolder: vscode.l10n.t("Which problem?"),
        matchOnDescription: true,
      });
      if (picked?.code !== undefined)
        await vscode.commands.executeCommand("vscode.open", pageUri(picked.code));
    }),
  );
}

function pageUri(code: string): vscode.Uri {
  return vscode.Uri.from({ scheme: PAGE_SCHEME, path: `/${code}.md` });
}

interface Choice extends vscode.QuickPickItem {
  readonly code?: string;
}

/** The problems of the plan in the active editor come first. */
async function choices(pages: Promise<readonly ProblemPage[]>): Promise<Choice[]> {
  const all = await pages;
  const here = codesHere();
  const choice = ({ code, title }: ProblemPage): Choice => ({ label: title, description: code, code });
  const inThisPlan = all.filter(({ code }) => here.has(code));
  if (inThisPlan.length === 0) return all.map(choice);
  return [
    heading(vscode.l10n.t("in this plan")),
    ...inThisPlan.map(choice),
    heading(vscode.l10n.t("others")),
    ...all.filter(({ code }) => !here.has(code)).map(choice),
  ];
}

function heading(label: string): Choice {
  return { label, kind: vscode.QuickPickItemKind.Separator };
}

function codesHere(): ReadonlySet<string> {
  const document = vscode.window.activeTextEditor?.document;
  if (document === undefined) return new Set();
  const codes = vscode.languages.getDiagnostics(document.uri).map(({ code }) => {
    return String(typeof code === "object" ? code.value : code);
  });
  return new Set(codes);
}
