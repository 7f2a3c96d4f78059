/** The text of the page in a gallery stays true. */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { galleryText, manifestOf } from "../../.ci/package.mjs";
import manifest from "../../package.json";
import words from "../../package.nls.json";
import { diskReader } from "../../server/lsp/disk";
import { evaluate } from "../../server/service";

const ROOT = join(__dirname, "../..");
const read = (name: string): string => readFileSync(join(ROOT, name), "utf8");
const gallery = read("client/GALLERY.md");
const titleOf = (key: string): string => (words as Record<string, string>)[key.replaceAll("%", "")]!;
const titles = manifest.contributes.commands.map(({ title }) => titleOf(title));
const pictures = [...gallery.matchAll(/!\[([^\]]+)\]\(([^)]+)\)/g)].map(([, alt, file]) => ({
  alt,
  file: file!,
}));

describe("client/GALLERY.md", () => {
  test("opens with the job in one paragraph, as README.md does", () => {
    const [title, job] = gallery.split("\n\n");
    const [ownTitle, ownJob] = read("README.md").split("\n\n");
    expect(title).toBe(ownTitle);
    const first = (text: string): string => /^.+?\. /.exec(text)![0];
    expect(first(job!)).toBe(first(ownJob!));
  });

  test("says what is not judged before it says how to begin", () => {
    const headings = [...gallery.matchAll(/^## (.+)$/gm)].map(([, heading]) => heading);
    expect(headings).toEqual([
      "What it does",
      "What it does not judge",
      "First steps",
      "Commands and settings",
      "Nothing leaves your machine",
    ]);
    expect(gallery).toContain("it never approves a plan");
    expect(gallery).toContain("local code and a licensed professional decide");
    for (const promise of [/\bsafe\b/i, /\bapproved\b/i, /\bguarantee/i])
      expect(gallery).not.toMatch(promise);
  });

  test("names commands, keys and settings that there are", () => {
    const named = [...gallery.matchAll(/\*Sawbuck: ([^*]+)\*/g)].map(([, title]) => title!);
    expect(named.length).toBeGreaterThan(3);
    expect(named.filter((title) => !titles.includes(title))).toEqual([]);
    const keys = [...gallery.matchAll(/^\| `(Ctrl\+[^`]+)` \| ([^|,]+?)(?:,[^|]*)? \|$/gm)].map(
      ([, key, title]) => [key!.toLowerCase(), title],
    );
    const { commands, keybindings } = manifest.contributes;
    expect(keys).toEqual(
      keybindings.map(({ key, command }) => [
        key,
        titleOf(commands.find((one) => one.command === command)!.title),
      ]),
    );
    const settings = [...gallery.matchAll(/`(sawbuck\.[a-zA-Z.]+)`/g)].map(([, name]) => name!);
    expect(settings.length).toBeGreaterThan(3);
    expect(settings.filter((name) => !(name in manifest.contributes.configuration.properties))).toEqual([]);
    expect(gallery).toContain(`*${words["walkthrough.title"]}*`);
  });

  test("its plan has no problem", () => {
    const [, plan] = /```sawbuck\n([\s\S]*?)```/.exec(gallery)!;
    const { problems } = evaluate(join(ROOT, "client/gallery.sawbuck"), plan!, diskReader);
    expect(problems.map(({ code }) => code)).toEqual([]);
  });

  test("its pictures are PNG that lie beside it, told in words", () => {
    expect(pictures.length).toBe(2);
    for (const { alt, file } of pictures) {
      expect(alt!.length).toBeGreaterThan(30);
      expect(file).toMatch(/\.png$/);
      expect(existsSync(join(ROOT, "client", file))).toBe(true);
    }
    expect(gallery).not.toMatch(/<(img|svg|video)\b/);
  });

  test("is without its pictures where there is no repository to show them from, and else names them from its top", () => {
    const bare = galleryText(gallery, {});
    expect(bare).not.toContain("![");
    expect(bare).not.toMatch(/\n{3}/);
    expect(bare.length).toBe(gallery.length - gallery.match(/^!.*\n\n/gm)!.join("").length);
    const shown = galleryText(gallery, { repository: "github:OWNER/sawbuck" });
    for (const { file } of pictures) expect(shown).toContain(`](client/${file})`);
  });
});

test("the packed manifest says all but what is for npm", () => {
  expect(manifestOf({ name: "a", bin: {}, main: "b", files: [], scripts: {}, devDependencies: {} })).toEqual({
    name: "a",
    main: "b",
  });
});
