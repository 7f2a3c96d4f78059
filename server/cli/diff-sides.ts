/** Which plans `diff` is asked to compare: files, or plans of one commit with those of another or of the disk. */
import { statSync } from "node:fs";
import { dirname, join, normalize, relative } from "node:path";
import { asBuilt, type Building } from "../exchange";
import { diskReader, folderWorkedIn, readPlan } from "../lsp/disk";
import {
  type ChangedFile,
  type Commit,
  changedPlans,
  commitCalled,
  fileIn,
  pathBelow,
  plansIn,
  type Refused,
  readerIn,
  repositoryAt,
} from "../lsp/git";
import { confined } from "../lsp/inside";
import type { Reader } from "../service";
import { type SheetLanguage, wordsIn } from "../sheet/words";
import { findPlans } from "./find";

/** One plan of a comparison. */
export interface Version {
  /** The file's own name, by which it finds those beside it. */
  readonly file: string;
  /** As it is told: with its commit. */
  readonly called: string;
  readonly text: string;
  readonly read: Reader;
}

export interface VersionPair {
  /** Undefined where the plan was not there. */
  readonly old: Version | undefined;
  /** Undefined where it is gone. */
  readonly new: Version | undefined;
  /** Whether the plan is asked for, or its own file differs; else what it reads may. */
  readonly itself: boolean;
  /** The new one is the old as it was built then. */
  readonly building?: Building;
}

export interface AskedPairs {
  readonly pairs: readonly VersionPair[];
  /** Whether a file, by its name here, is another than before. */
  readonly differs: (file: string) => boolean;
}

/** The pairs that these words ask for: see the usage of `diff`. */
export function pairsFor(words: readonly string[]): AskedPairs | Refused {
  const sides = words.map((word) => (isThere(word) ? undefined : inCommit(word)));
  const two = words.length === 2 && words.every((word, i) => sides[i] !== undefined || isFile(word));
  if (!two) {
    const missing = words.find((word) => !isThere(word) && /\.sawbuck$/i.test(word));
    return missing === undefined ? betweenCommits(words) : { refused: `${missing}: there is no such file` };
  }
  const [old, now] = words.map((word, i) => sides[i] ?? onDisk(word)) as [
    Version | Refused,
    Version | Refused,
  ];
  if ("refused" in old) return old;
  if ("refused" in now) return now;
  return { pairs: [{ old, new: now, itself: true }], differs: () => true };
}

/** A plan and how it was built, on the last day it tells of or on that one. */
export function asBuiltPairs(
  name: string,
  day: string | undefined,
  options: Parameters<typeof asBuilt>[4],
  language: SheetLanguage = "en",
): AskedPairs | Refused {
  const old = onDisk(name);
  if ("refused" in old) return old;
  const built = asBuilt(old.file, old.text, old.read, day, options);
  if ("refused" in built) return { refused: `${old.file}: ${built.refused}` };
  const says = wordsIn(language).built;
  const pairs = built.map(({ text, read, building }): VersionPair => {
    const called = says.asBuilt(old.file, building.date);
    return { old, new: { file: old.file, called, text, read }, itself: true, building };
  });
  return { pairs, differs: () => true };
}

const isFile = (name: string): boolean => statSync(name, { throwIfNoEntry: false })?.isFile() ?? false;
const isThere = (name: string): boolean => statSync(name, { throwIfNoEntry: false }) !== undefined;

function onDisk(name: string): Version | Refused {
  const file = normalize(name);
  const read = readPlan(file);
  return "refused" in read
    ? { refused: `${file}: ${read.refused}` }
    : { file, called: file, text: read.text, read: diskReader };
}

/** `HEAD~1:plans/bench.sawbuck`, a path below the root as git has it; undefined where it is not written so. */
function inCommit(word: string): Version | Refused | undefined {
  const [, called, path] = /^([^:]+):(.+)$/.exec(word) ?? [];
  if (called === undefined || path === undefined) return undefined;
  const repository = repositoryAt(".");
  if ("refused" in repository) return repository;
  const commit = commitCalled(repository.root, called);
  return commit ? versionIn(commit, path) : { refused: `nothing in this repository is called “${called}”` };
}

function versionIn(commit: Commit, path: string): Version | Refused {
  const found = fileIn(commit, path);
  const called = `${commit.called}:${path}`;
  return "refused" in found
    ? { refused: `${called}: ${found.refused}` }
    : {
        file: nameHere(commit.root, path),
        called,
        text: found.text,
        read: confined(readerIn(commit), folderWorkedIn),
      };
}

/** Commits come first, then files and folders. */
function betweenCommits(words: readonly string[]): AskedPairs | Refused {
  const names = [...words];
  const paths: string[] = [];
  while (names.length > 0 && isThere(names.at(-1)!)) paths.unshift(names.pop()!);
  const [first = "."] = paths;
  const repository = repositoryAt(isFile(first) ? dirname(first) : first);
  if ("refused" in repository) return repository;
  const called = names.length === 0 ? ["HEAD"] : names.flatMap(endsOfRange);
  if (called.length > 2)
    return { refused: `“${called[2]}” is no file or folder here, and two commits are named before it` };
  const commits = called.map((name) => commitCalled(repository.root, name));
  const unknown = commits.indexOf(undefined);
  if (unknown >= 0)
    return {
      refused:
        names.length === 0
          ? "this repository has no commit to compare with"
          : `there is no file, folder or commit called “${called[unknown]}” here`,
    };
  return between(commits[0]!, commits[1], paths.length === 0 ? ["."] : paths);
}

/** `old..new`; an end that is not said is HEAD, as git has it. */
const endsOfRange = (name: string): string[] =>
  name.includes("..") && !name.startsWith(".")
    ? name.split(/\.{2,3}/, 2).map((end) => (end === "" ? "HEAD" : end))
    : [name];

/** All plans below these paths that differ, or may; of the disk where there is no second commit. */
function between(old: Commit, now: Commit | undefined, paths: readonly string[]): AskedPairs | Refused {
  const { root } = old;
  const changed = changedPlans(old, now);
  const wanted = paths.map((path) => pathBelow(root, path) ?? "");
  const isWanted = (path: string | undefined): boolean =>
    path !== undefined && wanted.some((one) => one === "" || path === one || path.startsWith(`${one}/`));
  const newer = new Set(changed.map((file) => file.new));
  const stayed = (now ? plansIn(now) : plansOnDisk(root, paths)).filter((path) => !newer.has(path));
  const all: ChangedFile[] = [...changed, ...stayed.map((path) => ({ old: path, new: path }))]
    .filter((file) => isWanted(file.new) || isWanted(file.old))
    .sort((a, b) => ((a.new ?? a.old)! < (b.new ?? b.old)! ? -1 : 1));
  const pairs: VersionPair[] = [];
  for (const file of all) {
    const before = file.old === undefined ? undefined : versionIn(old, file.old);
    const path = file.new;
    const after = path === undefined ? undefined : now ? versionIn(now, path) : onDisk(nameHere(root, path));
    if (before && "refused" in before) return before;
    if (after && "refused" in after) return after;
    pairs.push({ old: before, new: after, itself: changed.includes(file) });
  }
  const touched = new Set(changed.flatMap((file) => [file.old, file.new]));
  return { pairs, differs: (file) => touched.has(pathBelow(root, file)) };
}

/** A path below the root as it is called from here. */
const nameHere = (root: string, path: string): string =>
  relative(".", join(root, ...path.split("/"))) || path;

const plansOnDisk = (root: string, paths: readonly string[]): string[] =>
  findPlans(paths).files.flatMap((file) => pathBelow(root, file) ?? []);
