/** What a plan calls up of a table whose rows wait for tags: each tag with the names behind it. */

/** Collects tags with the names that call them up. */
export class Calls<Tag extends string> {
  readonly called = new Map<Tag, string[]>();

  /** Calls a tag up for each of these names, and not at all when there is none. What the whole plan calls up stays so. */
  by(tag: Tag, names: Iterable<string>): void {
    for (const name of names) {
      const list = this.called.get(tag);
      if (!list) this.called.set(tag, [name]);
      else if (list.length > 0 && !list.includes(name)) list.push(name);
    }
  }

  /** Calls a tag up for the plan as a whole. */
  when(holds: boolean, tag: Tag): void {
    if (holds) this.called.set(tag, []);
  }
}

/** What each tag was called up by, in the order found; nothing where it is the plan as a whole. */
export type Called<Tag extends string> = ReadonlyMap<Tag, readonly string[]>;

/** The names behind some tags, each once; none when one of the tags is called up by the plan as a whole. */
export function namesBehind<Tag extends string>(
  called: Called<Tag>,
  tags: readonly Tag[],
): readonly string[] {
  const lists = tags.flatMap((tag) => (called.has(tag) ? [called.get(tag)!] : []));
  return lists.some((list) => list.length === 0) ? [] : [...new Set(lists.flat())];
}
