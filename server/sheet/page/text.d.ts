/** A script bundled into one text, by `.ci/page-scripts.mjs`. */
declare module "*?script" {
  const text: string;
  export default text;
}
