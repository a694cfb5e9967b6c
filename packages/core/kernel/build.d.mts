/** The module as bytes. */
export function compileKernel(): Promise<Uint8Array>;
/** The text of bytes.ts. */
export function sourceOf(bytes: Uint8Array): string;
