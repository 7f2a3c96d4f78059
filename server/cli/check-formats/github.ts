/** `check --format github`: the commands by which a GitHub workflow writes problems beside the lines of a change. */
import type { SheetProblem } from "../../sheet/data";
import { seenFromHere, wholeText } from "./notes";
import type { Writer } from "./writer";

const COMMANDS = { error: "error", hazard: "error", warning: "warning", hint: "notice" } as const;

export function githubWriter(): Writer {
  const counts = { plans: 0, error: 0, hazard: 0, warning: 0, hint: 0, accepted: 0, notChecked: 0 };
  return {
    begin: () => "",
    plan: ({ problems, accepted, notChecked }) => {
      counts.plans++;
      counts.accepted += accepted.length;
      counts.notChecked += notChecked.length;
      for (const p of problems) counts[p.class]++;
      return [
        ...problems.map((p) => commandOf(COMMANDS[p.class], p, p.class)),
        ...accepted.map((p) => commandOf("notice", p, `${p.class}, accepted`)),
      ].join("");
    },
    end: (unread) => {
      const { plans, notChecked, accepted, ...classes } = counts;
      const found = Object.entries(classes).map(([kind, n]) => several(n, kind));
      const told = [several(plans, "plan"), ...found, `${accepted} accepted`].join(", ");
      const all = unread.map((line) => `::error title=not read::${inMessage(line)}\n`);
      return `${all.join("")}Sawbuck: ${told}; ${several(notChecked, "thing")} not checked.\n`;
    },
  };
}

const several = (n: number, what: string): string => `${n} ${what}${n === 1 ? "" : "s"}`;

function commandOf(command: string, p: SheetProblem, kind: string): string {
  const { line, column, endLine, endColumn } = p.place;
  // Columns are shown of one line alone.
  const columns = line === endLine ? { col: column, endColumn } : {};
  const properties = {
    file: seenFromHere(p.place.file),
    line,
    endLine,
    ...columns,
    title: `${kind}: ${p.code}`,
  };
  const told = Object.entries(properties).map(([name, value]) => `${name}=${inProperty(String(value))}`);
  return `::${command} ${told.join(",")}::${inMessage(wholeText(p))}\n`;
}

const inMessage = (text: string): string =>
  text.replaceAll("%", "%25").replaceAll("\r", "%0D").replaceAll("\n", "%0A");

const inProperty = (text: string): string => inMessage(text).replaceAll(":", "%3A").replaceAll(",", "%2C");
