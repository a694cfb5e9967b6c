/**
 * A page that is served without special headers has no shared memory, and not even its name; asking whether
 * something is an instance of it would throw. Under this one, nothing ever is.
 */
if (!("SharedArrayBuffer" in globalThis)) {
  Object.defineProperty(globalThis, "SharedArrayBuffer", {
    value: class {},
    configurable: true,
  });
}
