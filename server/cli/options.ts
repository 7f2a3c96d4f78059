/** Reads the words after a command: names of files, options with a value, options without one. */
import { EFFORT } from "../cutting/improve";

/** What a command takes. A choice has one of a few words as its value. */
export interface Takes {
  readonly valued?: readonly string[];
  readonly choices?: Readonly<Record<string, readonly string[]>>;
  readonly flags?: readonly string[];
  /** Options that may be given several times, each with a value. */
  readonly many?: readonly string[];
}

export interface Read {
  readonly files: readonly string[];
  readonly options: Readonly<Record<string, string | undefined>>;
  readonly flags: ReadonlySet<string>;
  /** The values of an option that may be given several times, in order. */
  readonly all: (option: string) => readonly string[];
}

/** In words what is wrong with what was asked. */
export interface Wrong {
  readonly wrong: string;
}

export function readOptions(command: string, takes: Takes, words: readonly string[]): Read | Wrong {
  const { valued = [], choices = {}, flags: known = [], many = [] } = takes;
  const files: string[] = [];
  const options: Record<string, string> = {};
  const flags = new Set<string>();
  const lists = new Map<string, string[]>();
  for (let i = 0; i < words.length; i++) {
    const word = words[i]!;
    if (word === "--") {
      files.push(...words.slice(i + 1));
      break;
    }
    if (!word.startsWith("--")) {
      files.push(word);
      continue;
    }
    const [name, inline] = splitOption(word);
    if (known.includes(name)) {
      if (inline !== undefined) return { wrong: `--${name} takes no value.` };
      flags.add(name);
      continue;
    }
    if (!valued.includes(name) && !many.includes(name) && !(name in choices))
      return { wrong: `“${command}” has no option --${name}.` };
    const value = inline ?? words[++i];
    if (value === undefined || value === "") return { wrong: `--${name} wants a value after it.` };
    if (many.includes(name)) lists.set(name, [...(lists.get(name) ?? []), value]);
    else options[name] = value;
  }
  for (const [name, among] of Object.entries(choices)) {
    const value = options[name];
    if (value !== undefined && !among.includes(value))
      return { wrong: `--${name} is ${among.join(", ")}; “${value}” is none of them.` };
  }
  return { files, options, flags, all: (option) => lists.get(option) ?? [] };
}

function splitOption(word: string): [name: string, value: string | undefined] {
  const equals = word.indexOf("=");
  return equals < 0 ? [word.slice(2), undefined] : [word.slice(2, equals), word.slice(equals + 1)];
}

/** Counted work for each stock's layouts: as asked, in millions of steps. */
export function effortIn({ options: { effort } }: Read): number | Wrong {
  if (effort === undefined) return EFFORT;
  if (/^\d{1,9}(\.\d+)?$/.test(effort)) return Math.round(Number(effort) * MILLION);
  return { wrong: `--effort is a number of millions of steps, such as 0, 50 or 1000; “${effort}” is none.` };
}
const MILLION = 1_000_000;

/** The reader's own shop file, seen from where the command is given. */
export const shopIn = ({ options: { shop } }: Read): { shop?: string; shopFrom?: string } =>
  shop ? { shop, shopFrom: "." } : {};
