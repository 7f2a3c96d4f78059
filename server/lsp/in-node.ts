/** Whether this runs in Node, and not in a browser. */
export const IN_NODE = typeof process === "object" && process.versions?.node !== undefined;
