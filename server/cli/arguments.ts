/** Reads the words after a command. */
import type { DrawingKind } from "../sheet/drawings";

export interface Asked {
  readonly files: readonly string[];
  readonly shop: string | undefined;
  readonly format: "text" | "json" | "html" | "svg";
  readonly out: string | undefined;
  /** One drawing in place of the whole sheet. */
  readonly drawing: DrawingKind | undefined;
  /** The assembly it shows; empty for the whole. */
  readonly assembly: string;
}

const FORMATS = { check: ["text", "json"], sheet: ["html", "json", "text"] } as const;
const OPTIONS = {
  check: ["shop", "format"],
  sheet: ["shop", "format", "out", "drawing", "assembly"],
} as const;
const DRAWINGS: readonly DrawingKind[] = ["turned", "front", "left", "right", "back", "above", "apart"];

/** What was asked, or in words what is wrong with it. */
export function readArguments(
  command: "check" | "sheet",
  words: readonly string[],
): Asked | { readonly wrong: string } {
  const files: string[] = [];
  const options: Record<string, string> = {};
  const known: readonly string[] = OPTIONS[command];
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
    if (!known.includes(name)) return { wrong: `“${command}” has no option --${name}.` };
    const value = inline ?? words[++i];
    if (value === undefined || value === "") return { wrong: `--${name} wants a value after it.` };
    options[name] = value;
  }
  const drawing = DRAWINGS.find((kind) => kind === options.drawing);
  if (options.drawing !== undefined && drawing === undefined)
    return { wrong: `--drawing is ${DRAWINGS.join(", ")}; “${options.drawing}” is none of them.` };
  if (options.assembly !== undefined && drawing === undefined)
    return { wrong: "--assembly is for a drawing: ask for one with --drawing." };
  const formats: readonly string[] = drawing ? ["svg"] : FORMATS[command];
  const format = options.format ?? (drawing ? "svg" : formatOf(options.out));
  if (command === "sheet" && !drawing && options.out?.toLowerCase().endsWith(".svg"))
    return { wrong: "A file that ends with .svg holds one drawing: say which with --drawing." };
  if (!formats.includes(format))
    return {
      wrong: drawing
        ? `A drawing is written as svg, not as “${format}”.`
        : `--format is ${formats.join(", ")}; “${format}” is none of them.`,
    };
  if (files.length === 0)
    return { wrong: `“${command}” wants ${command === "check" ? "files or folders" : "a plan file"}.` };
  if (command === "sheet" && files.length > 1) return { wrong: "“sheet” takes one plan file." };
  return {
    files,
    shop: options.shop,
    format: format as Asked["format"],
    out: options.out,
    drawing,
    assembly: options.assembly ?? "",
  };
}

/** A file named like a page or like data is written as one. */
function formatOf(out: string | undefined): string {
  const ending = /\.(html?|json)$/i.exec(out ?? "")?.[1]?.toLowerCase();
  return ending === undefined ? "text" : ending === "htm" ? "html" : ending;
}

function splitOption(word: string): [name: string, value: string | undefined] {
  const equals = word.indexOf("=");
  return equals < 0 ? [word.slice(2), undefined] : [word.slice(2, equals), word.slice(equals + 1)];
}
