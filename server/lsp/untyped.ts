/** Reading what an editor sends without a type. */

/** The text under a name of an object; empty when there is none. */
export function textIn(value: unknown, name: string): string {
  if (typeof value !== "object" || value === null || !Object.hasOwn(value, name)) return "";
  const text: unknown = Reflect.get(value, name);
  return typeof text === "string" ? text : "";
}

/** The number under a name of an object; 0 when there is none. */
export function numberIn(value: unknown, name: string): number {
  if (typeof value !== "object" || value === null || !Object.hasOwn(value, name)) return 0;
  const found: unknown = Reflect.get(value, name);
  return typeof found === "number" && Number.isFinite(found) ? found : 0;
}

/** Whether an object says yes under a name. */
export function saysYes(value: unknown, name: string): boolean {
  return typeof value === "object" && value !== null && Reflect.get(value, name) === true;
}
