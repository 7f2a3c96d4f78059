/** `check --format json`: version 1, made of the sheet's records. */
import { jsonList, type Writer } from "./writer";

export function jsonWriter(): Writer {
  const plans = jsonList(1);
  return {
    begin: () => '{\n  "format": "sawbuck-check",\n  "version": 1,\n  "plans": ',
    plan: ({ file, title, problems, accepted, notChecked }) =>
      plans.next([{ file, title, problems, accepted, notChecked }]),
    end: (unread) => {
      const rest = jsonList(1);
      return `${plans.end()},\n  "unread": ${rest.next(unread)}${rest.end()}\n}\n`;
    },
  };
}
