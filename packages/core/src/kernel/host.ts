/** What the kernel uses of WebAssembly: core is compiled without the browser's types. */
export interface HostWebAssembly {
  Module: new (bytes: Uint8Array) => object;
  Instance: new (module: object, imports: { env: { memory: HostMemory } }) => { exports: unknown };
  Memory: new (size: { initial: number; maximum: number; shared?: boolean }) => HostMemory;
}

export interface HostMemory {
  readonly buffer: ArrayBuffer;
  /** Pages more; throws a RangeError where there are none. */
  grow(pages: number): number;
}

/** What the host may have: absent in a host that has no such thing. */
export interface Host {
  WebAssembly?: HostWebAssembly;
  /** Base64 to a text of one character a byte. */
  atob?: (text: string) => string;
  /** Where it is, base64 becomes bytes without a first loop over them, which takes milliseconds. */
  Buffer?: { from(text: string, encoding: "base64"): Uint8Array };
}

/** The host's globals that the kernel uses. */
export function host(): Host {
  // Two steps, as the names exist on the type only where the browser's types are loaded, and then with others.
  return globalThis as unknown as Host;
}
