/** Around the pages of a file: what it says of itself, and its bytes as they come. */
import { escapeText } from "../escape";

/** The file's description in XML (XMP, ISO 16684-1). */
export function aboutXml(title: string): string {
  return `<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"><dc:title><rdf:Alt><rdf:li xml:lang="x-default">${escapeText(title)}</rdf:li></rdf:Alt></dc:title></rdf:Description>
<rdf:Description rdf:about="" xmlns:pdf="http://ns.adobe.com/pdf/1.3/"><pdf:Producer>Sawbuck</pdf:Producer></rdf:Description>`;
}

/** All bytes of the file, once it has been ended. */
export function bytesOf(doc: PDFKit.PDFDocument): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    doc.on("data", (chunk: Uint8Array) => chunks.push(chunk));
    doc.on("error", reject);
    doc.on("end", () => {
      const bytes = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0));
      let at = 0;
      for (const chunk of chunks) {
        bytes.set(chunk, at);
        at += chunk.length;
      }
      resolve(bytes);
    });
  });
}
