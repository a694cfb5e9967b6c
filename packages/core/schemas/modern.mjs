/** The generator writes draft 7; what it writes of it reads the same in 2020-12 but for these two words and tuples. */
export function modern(node) {
  if (Array.isArray(node)) return node.map(modern);
  if (typeof node !== "object" || node === null) return node;
  const made = Object.fromEntries(Object.entries(node).map(([key, value]) => [key, modern(value)]));
  if (typeof made.$ref === "string") made.$ref = made.$ref.replace("#/definitions/", "#/$defs/");
  if (made.definitions !== undefined) {
    made.$defs = made.definitions;
    delete made.definitions;
  }
  if (Array.isArray(made.items)) {
    made.prefixItems = made.items;
    delete made.items;
    if (made.additionalItems !== undefined) {
      made.items = made.additionalItems;
      delete made.additionalItems;
    }
  }
  return made;
}
