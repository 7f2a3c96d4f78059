/** What becomes of comments when a line is taken out or moved, and of names when a file cannot be read. */
import { expect, test } from "vitest";
import { afterTaking, ofKind, taken } from "./acting";
import { memory, PLAN } from "./plans";

test("a measure whose value is written in its place leaves its comments behind", () => {
  const list = ofKind(
    'measure r‸im = 30" # from the floor\n  # or so\npart leg 4 of 2x4, length rim\n',
    "refactor.inline",
  );
  expect(afterTaking(list, "Write")).toBe('# from the floor\n  # or so\npart leg 4 of 2x4, length 30"\n');
});

const move = (marked: string, files = {}, wanted = {}) => ofKind(marked, "refactor.move", { files, wanted });

test("a remark that heads several stock lines stays with them", () => {
  const list = move(
    "plan x\nshop shop.sawbuck\n\n# From the yard.\nstock 2‸x4, sold 8' $4\nstock 2x6, sold 8' $6\n\npart leg 4 of 2x4, length 28\"\n",
    { "shop.sawbuck": "tools\n" },
  );
  expect(taken(list, list.actions[0]!)).toEqual({
    [PLAN]:
      "plan x\nshop shop.sawbuck\n\n# From the yard.\nstock 2x6, sold 8' $6\n\npart leg 4 of 2x4, length 28\"\n",
    "shop.sawbuck": "tools\n\nstock 2x4, sold 8' $4\n",
  });
});

test("no new shop file is made where one may lie that cannot be read", () => {
  const read = (path: string) =>
    path === "shop.sawbuck" ? { file: path, refused: "it may not be read" } : memory({})(path, PLAN, PLAN);
  const list = move("plan x\nto‸ols\n", {}, { read });
  expect(list.actions[0]?.refused).toBe("shop.sawbuck could not be read.");
});
