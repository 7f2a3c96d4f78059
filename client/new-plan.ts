/** “New Plan From a Sample”: a sample's text as a new document, or a copy of it with its shop file in the open folder. */
import * as vscode from "vscode";
import { filesNeeded, freeName, SHIPPED, titleOf } from "./samples";

interface Sample extends vscode.QuickPickItem {
  readonly file: string;
  readonly text: string;
}

export function newPlans(extensionUri: vscode.Uri): vscode.Disposable {
  const folder = vscode.Uri.joinPath(extensionUri, "samples");
  return vscode.commands.registerCommand("sawbuck.newPlan", async () => {
    const sample = await vscode.window.showQuickPick(readSamples(folder), {
      placeHolder: vscode.l10n.t("Start from which plan?"),
    });
    if (sample === undefined) return;
    const target = await chooseTarget(sample);
    if (target === undefined) return;
    const document =
      target === "untitled"
        ? await vscode.workspace.openTextDocument({ language: "sawbuck", content: sample.text })
        : await vscode.workspace.openTextDocument(await copySample(folder, sample, target));
    await vscode.window.showTextDocument(document);
  });
}

async function readSamples(folder: vscode.Uri): Promise<Sample[]> {
  const samples: Sample[] = [];
  for (const file of SHIPPED) {
    const text = await readText(vscode.Uri.joinPath(folder, file));
    const title = titleOf(text);
    if (title !== undefined) samples.push({ label: title, description: file, file, text });
  }
  return samples.sort((a, b) => a.label.localeCompare(b.label));
}

/** Undefined where the builder changed their mind. */
async function chooseTarget(sample: Sample): Promise<"untitled" | vscode.Uri | undefined> {
  const folders = vscode.workspace.workspaceFolders ?? [];
  if (folders.length === 0) return "untitled";
  const needed = filesNeeded(sample.text);
  const saved = folders.map((folder) => ({
    label: vscode.l10n.t("Save a copy in {0}", folder.name),
    detail: needed.length > 0 ? vscode.l10n.t("together with {0}", needed.join(", ")) : undefined,
    target: folder.uri,
  }));
  const untitled = {
    label: vscode.l10n.t("Open it as a new document, not saved yet"),
    detail: needed.length > 0 ? vscode.l10n.t("without {0}", needed.join(", ")) : undefined,
    target: "untitled" as const,
  };
  const picked = await vscode.window.showQuickPick([...saved, untitled], {
    placeHolder: vscode.l10n.t("Where to?"),
  });
  return picked?.target;
}

/** Copies the plan under a free name, and the files it needs unless files of their names are there. Gives the plan's copy. */
async function copySample(from: vscode.Uri, sample: Sample, to: vscode.Uri): Promise<vscode.Uri> {
  const there = new Set(await namesIn(to));
  for (const name of filesNeeded(sample.text)) {
    if (there.has(name) || !SHIPPED.includes(name)) continue;
    await copyShipped(vscode.Uri.joinPath(from, name), vscode.Uri.joinPath(to, name));
  }
  const copy = vscode.Uri.joinPath(to, freeName(sample.file, there));
  await copyShipped(vscode.Uri.joinPath(from, sample.file), copy);
  return copy;
}

/** Read and written, since an editor may copy nothing out of the folder of an extension. What is there is written over. */
export async function copyShipped(from: vscode.Uri, to: vscode.Uri): Promise<void> {
  await vscode.workspace.fs.writeFile(to, await vscode.workspace.fs.readFile(from));
}

async function namesIn(folder: vscode.Uri): Promise<string[]> {
  return (await vscode.workspace.fs.readDirectory(folder)).map(([name]) => name);
}

async function readText(uri: vscode.Uri): Promise<string> {
  return new TextDecoder().decode(await vscode.workspace.fs.readFile(uri));
}
