/** `check --format sarif`: SARIF 2.1.0, for what shows the findings of many programs. No dates, no paths of the machine. */
import { createHash } from "node:crypto";
import { sep } from "node:path";
import process from "node:process";
import { version } from "../../../package.json";
import { problemPages } from "../../service";
import type { Place, SheetProblem } from "../../sheet/data";
import type { Details, Report } from "../../sheet/gather-problems";
import { seenFromHere, wholeText } from "./notes";
import { jsonList, type Writer } from "./writer";

const LEVELS = { error: "error", hazard: "error", warning: "warning", hint: "note" } as const;
const ROOT = "%SRCROOT%";

export function sarifWriter(): Writer {
  const pages = problemPages();
  const index = new Map(pages.map(({ code }, i) => [code, i]));
  const results = jsonList(3);
  const artifacts: unknown[] = [];
  const notChecked: unknown[] = [];
  const seen = new Map<string, number>();
  const resultOf = (p: SheetProblem, details: Details | undefined): unknown => ({
    ruleId: p.code,
    ruleIndex: index.get(p.code),
    level: LEVELS[p.class],
    message: messageOf(wholeText(p)),
    locations: [locationOf(p.place)],
    ...(p.related.length > 0 && {
      relatedLocations: p.related.map(({ message, place }, id) => ({
        id,
        ...locationOf(place),
        message: messageOf(message),
      })),
    }),
    partialFingerprints: { "sawbuckProblem/v1": fingerprint(p, details?.spot ?? "", seen) },
    ...(p.accepted !== undefined && {
      suppressions: [{ kind: "inSource", status: "accepted", justification: p.accepted }],
    }),
    ...(details && details.fixes.length > 0 && { fixes: details.fixes.map(fixOf) }),
    properties: { class: p.class },
  });
  const rules = pages.map(({ code, title, class: kind, markdown }) => ({
    id: code,
    shortDescription: messageOf(title),
    help: { ...messageOf(markdown), markdown: braced(markdown) },
    defaultConfiguration: { level: LEVELS[kind as keyof typeof LEVELS] },
    properties: { class: kind },
  }));
  return {
    begin: () => `{
  "$schema": "https://json.schemastore.org/sarif-2.1.0.json",
  "version": "2.1.0",
  "runs": [
    {
      "tool": ${nested({ driver: { name: "Sawbuck", version, semanticVersion: version, rules } })},
      "columnKind": "utf16CodeUnits",
      "originalUriBaseIds": ${nested({ [ROOT]: { description: messageOf("Where the command was given.") } })},
      "results": `,
    plan: ({ file, problems, accepted, notChecked: left }: Report, details) => {
      artifacts.push({ location: artifactOf(file), roles: ["analysisTarget"] });
      for (const { what, why, place } of left)
        notChecked.push({
          level: "note",
          message: messageOf(`Not checked: ${what}: ${why}`),
          locations: [
            place ? locationOf(place) : { physicalLocation: { artifactLocation: artifactOf(file) } },
          ],
        });
      return results.next([...problems, ...accepted].map((p, i) => resultOf(p, details?.[i])));
    },
    end: (unread) => {
      const notRead = unread.map((line) => ({ level: "error", message: messageOf(withoutHere(line)) }));
      const invocation = {
        executionSuccessful: unread.length === 0,
        toolExecutionNotifications: [...notRead, ...notChecked],
      };
      return `${results.end()},
      "artifacts": ${nested(artifacts)},
      "invocations": ${nested([invocation])}
    }
  ]
}
`;
    },
  };
}

const nested = (value: unknown): string => JSON.stringify(value, null, 2).replace(/\n/g, "\n      ");

/** In texts of SARIF a brace begins a place to fill in, unless it is doubled. */
const braced = (text: string): string => text.replace(/[{}]/g, "$&$&");
const messageOf = (text: string): { text: string } => ({ text: braced(text) });

const withoutHere = (line: string): string => line.replaceAll(`${process.cwd()}${sep}`, "");

const artifactOf = (file: string): unknown => ({
  uri: seenFromHere(file).split("/").map(encodeURIComponent).join("/"),
  uriBaseId: ROOT,
});

const regionOf = ({ line, column, endLine, endColumn }: Place): unknown => ({
  startLine: line,
  startColumn: column,
  endLine,
  endColumn,
});

const locationOf = (place: Place): object => ({
  physicalLocation: { artifactLocation: artifactOf(place.file), region: regionOf(place) },
});

/** The same as long as the words it is told of are the same, wherever they stand in the file. */
function fingerprint(p: SheetProblem, spot: string, seen: Map<string, number>): string {
  const key = JSON.stringify([p.code, seenFromHere(p.place.file), spot.trim().replace(/\s+/g, " ")]);
  const before = seen.get(key) ?? 0;
  seen.set(key, before + 1);
  return createHash("sha256").update(`${key} ${before}`).digest("hex").slice(0, 32);
}

function fixOf({ says, edits }: Details["fixes"][number]): unknown {
  const files = [...new Set(edits.map(({ place }) => place.file))];
  return {
    description: messageOf(says),
    artifactChanges: files.map((file) => ({
      artifactLocation: artifactOf(file),
      replacements: edits
        .filter(({ place }) => place.file === file)
        .map(({ place, text }) => ({
          deletedRegion: regionOf(place),
          ...(text && { insertedContent: { text } }),
        })),
    })),
  };
}
