// What a run tells of its scenarios.

/** Prints the line of one scenario, and its error unless one is expected. Gives its result. */
export function told({ scenario, error, started, expected = false }) {
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  console.log(`${error === undefined ? "held  " : "failed"} ${seconds.padStart(5)} s  ${scenario.name}`);
  if (error !== undefined && !expected) console.log(indented(error));
  return { scenario, error };
}

/** What fails more often than this is no accident of a busy machine, and is not tried again. */
const SECOND_TRIES = 2;

/**
 * Tries all, and those few that failed once more, which is told. `run` tries what it is given, in a workbench of its own, and
 * gives the results in that order.
 */
export async function withSecondTry(chosen, run) {
  const results = await run(chosen);
  const failed = [...results.entries()].filter(([, { error }]) => error !== undefined);
  if (failed.length === 0 || failed.length > SECOND_TRIES) return results;
  console.log("once more, in a workbench of its own:");
  const again = await run(failed.map(([, { scenario }]) => scenario));
  for (const [i, [at]] of failed.entries()) results[at] = { ...again[i], again: true };
  return results;
}

/** Prints the closing lines of a run. Gives its exit code. */
export function close(results, seconds) {
  const failed = results.filter(({ error }) => error !== undefined).length;
  console.log(`the scenarios took ${seconds} s`);
  for (const { scenario, error, again } of results)
    if (again && error === undefined) console.log(`only at the second try: ${scenario.name}`);
  console.log(`${results.length - failed} passed, ${failed} failed`);
  return failed === 0 && results.length > 0 ? 0 : 1;
}

/** Prints what a window shows where a scenario failed in it: pictures stay on the machine that took them. */
export async function tellScreen(page) {
  const shown = await page.evaluate(() => {
    const of = {
      "in the active editor": ".editor-group-container.active .view-lines",
      suggestions: ".suggest-widget.visible",
      hovers: ".monaco-hover:not(.hidden)",
      "quick input": ".quick-input-widget",
      notifications: ".notifications-toasts",
      status: ".part.statusbar",
    };
    const text = (selector) =>
      [...document.querySelectorAll(selector)]
        .filter((one) => one.checkVisibility())
        .map((one) => one.textContent.replace(/\s*\n\s*/g, " | "))
        .join(" || ");
    const focus = document.activeElement;
    return [
      ...Object.entries(of).map(([what, selector]) => [what, text(selector)]),
      ["focus", `${focus?.tagName} ${focus?.className}`],
    ];
  });
  for (const [what, text] of shown) if (text !== "") console.log(`        ${what}: ${text.slice(0, 600)}`);
}

/** Bundled code has lines of any length. */
export function indented(error) {
  const lines = String(error.stack ?? error).split("\n");
  return lines
    .slice(0, 25)
    .map((line) => `        ${line.slice(0, 300)}`)
    .join("\n");
}
