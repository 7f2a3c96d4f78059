// What a run tells of its scenarios.

/** Prints the line of one scenario, and its error unless one is expected. Gives its result. */
export function told({ scenario, error, started, expected = false }) {
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  console.log(`${error === undefined ? "held  " : "failed"} ${seconds.padStart(5)} s  ${scenario.name}`);
  if (error !== undefined && !expected) console.log(indented(error));
  return { scenario, error };
}

/** Prints the closing lines of a run. Gives its exit code. */
export function close(results, seconds) {
  const failed = results.filter(({ error }) => error !== undefined).length;
  console.log(`the scenarios took ${seconds} s`);
  console.log(`${results.length - failed} passed, ${failed} failed`);
  return failed === 0 && results.length > 0 ? 0 : 1;
}

/** Bundled code has lines of any length. */
export function indented(error) {
  const lines = String(error.stack ?? error).split("\n");
  return lines
    .slice(0, 25)
    .map((line) => `        ${line.slice(0, 300)}`)
    .join("\n");
}
