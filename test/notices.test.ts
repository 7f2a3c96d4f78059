/** The licences of bundled packages go with the bundles. */
import { expect, it } from "vitest";
import { noticesOf, packagesIn } from "../.ci/notices.mjs";
import { files } from "../package.json";

it("names each package that a bundle holds once, and gives its licence", async () => {
  const inputs = (...paths: string[]) => ({ inputs: Object.fromEntries(paths.map((path) => [path, {}])) });
  const packages = packagesIn([
    inputs(
      "server/service.ts",
      "node_modules/vscode-jsonrpc/lib/main.js",
      "node_modules/a/node_modules/@b/c/d.js",
    ),
    inputs("node_modules/@chevrotain/gast/lib/api.js", "node_modules/vscode-jsonrpc/lib/node.js"),
  ]);
  expect(packages).toEqual(["@b/c", "@chevrotain/gast", "vscode-jsonrpc"]);
  const notices = await noticesOf(["@chevrotain/gast", "chevrotain", "dfa", "vscode-jsonrpc"]);
  expect(notices).toMatch(/^@chevrotain\/gast 11\.2\.\d\nchevrotain 11\.2\.\d\n\n\s*Apache License\n/);
  expect(notices).toMatch(/\ndfa [\d.]+\n\nLicence: MIT\n/);
  expect(notices).toMatch(/\nvscode-jsonrpc [\d.]+\n\nCopyright \(c\) Microsoft Corporation/);
  expect(files).toContain("dist/NOTICES.txt");
});
