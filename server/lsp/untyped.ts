/** Reading what an editor sends without a type. */

/** The text under a name of an object; empty when there is none. */
export function textIn(value: unknown, name: string): string {
  if (typeof value !== "object" || value === null || !Object.hasOwn(value, name)) return "";
  const text: unknown = Reflect.get(value, name);
  return typeof text === "string" ? text : "";
}
