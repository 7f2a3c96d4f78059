export declare function packagesIn(
  metafiles: readonly { readonly inputs: Readonly<Record<string, unknown>> }[],
): readonly string[];
export declare function noticesOf(packages: readonly string[]): Promise<string>;
