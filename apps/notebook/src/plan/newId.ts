/** An id made from a name: small letters, digits and hyphens, a letter first, and not taken yet. */
export function newId(name: string, taken: ReadonlySet<string>, otherwise: string): string {
  const words = name
    .toLowerCase()
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .replace(/ß/g, "ss")
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^[^a-z]+|-+$/g, "");
  const short =
    words.length <= 40
      ? words
      : words
          .slice(0, 41)
          .replace(/-[^-]*$/, "")
          .slice(0, 40);
  const base = short === "" ? otherwise : short;
  for (let count = 1; ; count++) {
    const id = count === 1 ? base : `${base}-${count}`;
    if (!taken.has(id)) return id;
  }
}

/** Every id that the document, as plain data, gives to something. */
export function idsIn(stated: unknown, found = new Set<string>()): Set<string> {
  if (Array.isArray(stated)) for (const item of stated) idsIn(item, found);
  else if (typeof stated === "object" && stated !== null) {
    for (const [key, value] of Object.entries(stated)) {
      if (key === "id" && typeof value === "string") found.add(value);
      else idsIn(value, found);
    }
  }
  return found;
}
