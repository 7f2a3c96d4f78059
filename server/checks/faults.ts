/** Faults of one kind, in the order they were found, each place once. */
import type { Fault, Worked } from "../worked";

export function ofKind<K extends Fault["kind"]>(worked: Worked, kind: K): Extract<Fault, { kind: K }>[] {
  const seen = new Set<string>();
  return worked.faults.filter((f): f is Extract<Fault, { kind: K }> => {
    const key = `${f.at.file}\n${f.at.start}\n${f.at.end}`;
    return f.kind === kind && !seen.has(key) && Boolean(seen.add(key));
  });
}
