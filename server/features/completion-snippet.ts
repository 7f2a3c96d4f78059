/** Texts with places to fill in: as an editor's snippet, and as plain text for one that has none. */

/** What stands in `{…}`: words to type over, `{a|b}` words to choose from, `{@part:leg}` names of the plan or else `leg`. */
export interface Filled {
  readonly plain: string;
  readonly snippet: string;
}

export function filled(template: string, namesOf: (list: string) => readonly string[]): Filled {
  let place = 0;
  let plain = "";
  let snippet = "";
  for (const piece of template.split(/(\{[^}]*\})/)) {
    if (!piece.startsWith("{")) {
      plain += piece;
      snippet += shielded(piece, /[\\$}]/g);
      continue;
    }
    const words = wordsOf(piece.slice(1, -1), namesOf);
    place++;
    plain += words[0];
    snippet +=
      words.length > 1
        ? `\${${place}|${words.map((w) => shielded(w, /[\\$},|]/g)).join(",")}|}`
        : `\${${place}:${shielded(words[0]!, /[\\$}]/g)}}`;
  }
  return { plain, snippet };
}

/** The most names to choose from in one place. */
const MOST_NAMES = 20;

function wordsOf(inside: string, namesOf: (list: string) => readonly string[]): readonly string[] {
  const list = /^@([a-z]+):(.*)$/.exec(inside);
  if (!list) return inside.split("|");
  const names = namesOf(list[1]!).slice(0, MOST_NAMES);
  return names.length > 0 ? names : [list[2]!];
}

const shielded = (text: string, marks: RegExp): string => text.replace(marks, "\\$&");
