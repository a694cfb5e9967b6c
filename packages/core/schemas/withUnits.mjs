/** Numbers without a unit of their own: what the plan writes, quoted as it is. */
const AS_IN_PLAN = new Set(["Json", "TableRow"]);

const isNumber = ({ type, enum: values, const: value }) =>
  values === undefined &&
  value === undefined &&
  [type].flat().some((each) => each === "number" || each === "integer");

/**
 * A schema in which every number says its unit: the words of its type (`packages/core/src/units.ts`) behind those of its
 * place. Names of types become plain words, so that a reference needs no escaping.
 *
 * @throws where a number has no unit, or nothing could fit, with its place.
 */
export function withUnits(verb, { $defs: defs, ...root }) {
  const units = new Map(
    Object.entries(defs ?? {}).filter(([name, def]) => isNumber(def) && !AS_IN_PLAN.has(name)),
  );

  function told(node, place) {
    if (Array.isArray(node)) return node.map((item, k) => told(item, `${place}[${k}]`));
    if (typeof node !== "object" || node === null) return node;
    if (isNumber(node)) throw new Error(`${place} is a number without a unit: give it one of units.ts`);
    if (node.allOf !== undefined) throw new Error(`${place} joins closed types, which nothing fits: name it`);
    const { $ref, ...rest } = node;
    const made = Object.fromEntries(
      Object.entries(rest).map(([key, value]) => [key, told(value, `${place}.${key}`)]),
    );
    if ($ref === undefined) return made;
    const name = $ref.replace("#/$defs/", "");
    const unit = units.get(name);
    if (unit === undefined) return { $ref: `#/$defs/${plain(name)}`, ...made };
    return { ...unit, ...made, description: sentences(made.description, unit.description) };
  }

  const made = told(root, verb);
  const rest = Object.entries(defs ?? {}).filter(([name]) => !units.has(name));
  if (rest.length === 0) return made;
  const $defs = rest.map(([name, def]) => [
    plain(name),
    AS_IN_PLAN.has(name) ? def : told(def, `${verb} ${name}`),
  ]);
  return { ...made, $defs: Object.fromEntries($defs) };
}

/** `Curve<Money>` as `CurveOfMoney`. */
const plain = (name) => name.replace(/[<,]/g, "Of").replace(/[^A-Za-z0-9]/g, "");

function sentences(...parts) {
  return parts
    .filter((part) => part !== undefined)
    .map((part) => (/[.!?]$/.test(part) ? part : `${part}.`))
    .join(" ");
}
