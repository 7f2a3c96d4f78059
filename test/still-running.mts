/** Names every minute the files of tests that have taken longer than that: of one that never ends nothing is told otherwise. */
import type { Reporter, TestModule } from "vitest/node";

const MINUTE = 60_000;

export class StillRunning implements Reporter {
  private readonly since = new Map<string, number>();
  private readonly ticking = setInterval(() => this.tell(), MINUTE).unref();

  onTestModuleQueued(file: TestModule): void {
    this.since.set(file.relativeModuleId, Date.now());
  }

  onTestModuleEnd(file: TestModule): void {
    this.since.delete(file.relativeModuleId);
  }

  onTestRunEnd(): void {
    clearInterval(this.ticking);
  }

  private tell(): void {
    for (const [file, since] of this.since) {
      const minutes = Math.floor((Date.now() - since) / MINUTE);
      if (minutes > 0) console.log(` … ${file} runs for ${minutes} min`);
    }
  }
}
