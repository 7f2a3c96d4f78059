/** `sawbuck lsp`: serves an editor until it goes away. */
import type { Command } from "./command";

export const LSP: Command = {
  name: "lsp",
  usage: `  sawbuck lsp --stdio
      Serves an editor over standard input and output.
`,
  run: async () => {
    const { serve } = await import("../lsp/node");
    serve();
    return -1;
  },
};
