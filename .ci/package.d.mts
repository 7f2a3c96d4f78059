type Manifest = Readonly<Record<string, unknown>>;
/** Of `client/GALLERY.md`, for a manifest. */
export declare function galleryText(text: string, manifest: Manifest): string;
export declare function manifestOf(manifest: Manifest): Manifest;
