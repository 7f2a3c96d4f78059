// Programs that serve a workbench: waiting for them, and ending them with all that they started.
import { readdirSync, readFileSync } from "node:fs";
import { createServer } from "node:net";

/** A port of this machine that nobody listens on. */
export function freePort() {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.on("error", reject);
    probe.listen(0, "127.0.0.1", () => {
      const { port } = probe.address();
      probe.close(() => resolve(port));
    });
  });
}

/** Waits until the program has begun to serve. */
export async function answers(url, server) {
  for (let tries = 0; tries < 600; tries++) {
    if (server.exitCode !== null)
      throw new Error(`the workbench ended with ${server.exitCode} while starting`);
    if (
      await fetch(url).then(
        (response) => response.ok,
        () => false,
      )
    )
      return;
    await wait(100);
  }
  throw new Error("the workbench did not answer within a minute");
}

/** Ends the whole group of a program. */
export async function end(server) {
  for (let tries = 0; tries < 50 && kill(server, "SIGTERM"); tries++) await wait(100);
  kill(server, "SIGKILL");
}

/** False when nothing of the server's group is left. */
export function kill(server, signal) {
  try {
    process.kill(-server.pid, signal);
    return true;
  } catch {
    return false;
  }
}

/** The ids of all programs that run with all of this in their command line (Linux only). */
export function programsWith(...parts) {
  const runs = (id) => parts.every((part) => commandLine(id).includes(part));
  return readdirSync("/proc")
    .filter((name) => /^\d+$/.test(name) && runs(name))
    .map(Number);
}

function commandLine(id) {
  try {
    return readFileSync(`/proc/${id}/cmdline`, "utf8");
  } catch {
    return ""; // it has ended meanwhile
  }
}

function wait(milliseconds) {
  return new Promise((resolve) => setTimeout(resolve, milliseconds));
}
