const sections: Record<string, string> = {
  tasks: "tasks",
  risks: "risks",
  assumptions: "assumptions",
  phases: "phases",
  purpose: "the purpose",
  benefits: "benefits",
  approvals: "approvals",
  objections: "objections",
  stakeholders: "stakeholders",
  commitment: "the commitment",
  acceptedFindings: "accepted findings",
};

/** Where in the document something is named by its id, in words; undefined: nowhere. */
export function namedBy(stated: unknown, id: string): string | undefined {
  if (typeof stated !== "object" || stated === null) return undefined;
  const found = Object.entries(stated).flatMap(([key, value]) => {
    const count = times(value, id);
    return count === 0 ? [] : [`${sections[key] ?? key} (${count})`];
  });
  return found.length === 0 ? undefined : found.join(", ");
}

function times(value: unknown, id: string): number {
  if (value === id) return 1;
  if (Array.isArray(value)) return value.reduce((sum: number, item) => sum + times(item, id), 0);
  if (typeof value !== "object" || value === null) return 0;
  return Object.entries(value).reduce(
    (sum, [key, item]) => (key === "id" || key === "was" ? sum : sum + times(item, id)),
    0,
  );
}
