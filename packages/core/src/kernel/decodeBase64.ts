const alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";

/** The bytes of a base64 text (RFC 4648, section 4), which is trusted to be well formed. */
export function decodeBase64(text: string): Uint8Array {
  const digit = new Uint8Array(128);
  for (let v = 0; v < 64; v++) digit[alphabet.charCodeAt(v)] = v;
  const padding = text.endsWith("==") ? 2 : text.endsWith("=") ? 1 : 0;
  const bytes = new Uint8Array((text.length / 4) * 3 - padding);
  let at = 0;
  for (let k = 0; k < text.length; k += 4) {
    let word = 0;
    for (let c = k; c < k + 4; c++) word = (word << 6) | (digit[text.charCodeAt(c)] as number);
    // Writes past the end, those of the padding, are dropped by the array.
    bytes[at++] = word >>> 16;
    bytes[at++] = word >>> 8;
    bytes[at++] = word;
  }
  return bytes;
}
