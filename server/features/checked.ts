/** What every feature reads: one plan, worked out and checked, as the service gives it. */
import type { Judged } from "../checks";
import type { Worked } from "../worked";

export interface Checked extends Judged {
  readonly file: string;
  readonly text: string;
  readonly worked: Worked;
}
