/** What the kernel uses of WebAssembly: core is compiled without the browser's types. */
export interface HostWebAssembly {
  Module: new (bytes: Uint8Array) => object;
  Instance: new (module: object, imports: { env: { memory: HostMemory } }) => { exports: unknown };
  Memory: new (size: { initial: number; maximum: number }) => HostMemory;
}

export interface HostMemory {
  readonly buffer: ArrayBuffer;
}

/** The host's WebAssembly, or undefined where it has none. */
export function hostWebAssembly(): HostWebAssembly | undefined {
  // Two steps, as the name exists on the type only where the browser's types are loaded, and then with others.
  const host = globalThis as unknown as { WebAssembly?: HostWebAssembly };
  return host.WebAssembly;
}
