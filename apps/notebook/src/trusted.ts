// The page's policy refuses every text as markup or as the address of a script (`require-trusted-types-for`); this is
// the one exception: workers and the offline copy, which are files of the page's own folder. Markup has none.

interface Policies {
  createPolicy(name: string, rules: { createScriptURL(address: string): string }): unknown;
}

/** Not in every browser yet: where it is missing, the rest of the policy stands alone. */
const policies: unknown = Reflect.get(globalThis, "trustedTypes");

if (isPolicies(policies))
  policies.createPolicy("default", {
    createScriptURL(address) {
      const { href } = new URL(address, document.baseURI);
      if (href.startsWith(new URL("./", document.baseURI).href)) return href;
      throw new TypeError(`${address} is not a file of this page.`);
    },
  });

function isPolicies(value: unknown): value is Policies {
  return typeof value === "object" && value !== null && "createPolicy" in value;
}
