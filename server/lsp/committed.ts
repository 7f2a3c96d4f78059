/** Plans as they were in the last commit of the git repository around them. */
import { dirname } from "node:path";
import { commitCalled, commitDay, fileIn, pathBelow, readerIn, repositoryAt } from "./git";
import type { FolderReader } from "./inside";

export interface Committed {
  /** The first letters of its name, and the day it was made on where its maker was: `2026-05-09`. */
  readonly commit: string;
  readonly day: string;
  /** Unsaid where the file was not there. */
  readonly text?: string;
  /** Of the files that the plan names, as they were. */
  readonly read: FolderReader;
}

/** Why there is no such plan. */
export type NotCommitted = "no git" | "no repository" | "no commit" | "no disk";

/** `file` is a path on disk. */
export function lastCommitted(file: string): Committed | NotCommitted {
  const repository = repositoryAt(dirname(file));
  if ("refused" in repository) return repository.missing ? "no git" : "no repository";
  const commit = commitCalled(repository.root, "HEAD");
  if (!commit) return "no commit";
  const path = pathBelow(commit.root, file);
  const found = path === undefined ? undefined : fileIn(commit, path);
  return {
    commit: commit.id.slice(0, SHOWN),
    day: commitDay(commit),
    ...(found && "text" in found && { text: found.text }),
    read: readerIn(commit),
  };
}

const SHOWN = 7;
