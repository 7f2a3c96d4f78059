/** The order in which files of tests are begun: those that take minutes first, or the last of them would keep one core busy alone. */
import type { TestSpecification } from "vitest/node";
import { BaseSequencer } from "vitest/node";

const LONG = [
  "test/lsp/edits.test.ts",
  "test/lsp/layout-edits.test.ts",
  "test/property/",
  "test/cli/record.test.ts",
];

export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const rank = ({ moduleId }: TestSpecification): number => {
      const at = LONG.findIndex((part) => moduleId.includes(part));
      return at < 0 ? LONG.length : at;
    };
    return [...(await super.sort(files))].sort((a, b) => rank(a) - rank(b));
  }
}
