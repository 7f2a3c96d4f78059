/** Hovers, with a small drawing where the editor shows pictures in them. */
import type { Hover } from "vscode-languageserver";
import type { TextDocument } from "vscode-languageserver-textdocument";
import { hoverAt, type Hover as Told } from "../../features/hover";
import { type HoverDrawing, hoverDrawing } from "../../service";
import { markup, rangeIn, type Shows } from "../convert";
import type { Answerer } from "./answering";

export const hover: Answerer = {
  offers: () => ({ hoverProvider: true }),
  answer: ({ connection, guard, at, shows }) => {
    connection.onHover(
      guard(
        "hover",
        (asked) =>
          at(asked, ({ evaluated, document }, offset) => {
            const { language, markdown, pictures } = shows;
            const told = hoverAt(evaluated, offset, language);
            if (!told) return undefined;
            const drawn = markdown && pictures && told.picture;
            const picture = drawn ? hoverDrawing(evaluated, drawn, language) : undefined;
            return toHover(told, document, shows, picture);
          }),
        null,
      ),
    );
  },
};

/** A drawing stands under the words where the editor shows pictures in them. */
const toHover = (
  told: Told,
  document: TextDocument,
  shows: Shows,
  picture: HoverDrawing | undefined,
): Hover => ({
  contents: markup(`${told.markdown}${picture ? imageOf(picture) : ""}`, shows),
  range: rangeIn(document, told.range),
});

/** As an address that holds the picture itself, with its size as VS Code reads it; nothing for one that would make the hover large. */
function imageOf({ title, svg, width, height }: HoverDrawing): string {
  const bytes = new TextEncoder().encode(svg);
  let letters = "";
  for (const byte of bytes) letters += String.fromCharCode(byte);
  const data = btoa(letters);
  if (data.length > LARGEST_PICTURE) return "";
  return `\n\n![${title.replace(/[^\p{L}\p{N} -]/gu, "")}](data:image/svg+xml;base64,${data}|width=${pixels(width)},height=${pixels(height)})`;
}

const pixels = (mm: number): number => Math.ceil((mm * 96) / 25.4);

/** Letters of a picture's address. */
const LARGEST_PICTURE = 28_000;
