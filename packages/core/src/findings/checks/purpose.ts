import type { Benefit } from "../../plan/types.ts";
import { qualityBars } from "../../quality/qualityBars.ts";
import type { Check, CheckContext, Found } from "../context.ts";
import { joined } from "../words.ts";

/** Problem, goals, scope, constraints: whether work and benefits can be traced to what they are for. */
export const checkPurpose: Check = (context) => {
  const { problem, goals, scopeIn, scopeOut, constraints, quality } = context.plan.purpose;
  const written = [goals, scopeIn, scopeOut, constraints, quality].some((list) => list.length > 0);
  if (problem === undefined && !written) {
    return [{ code: "purpose-missing", path: "", ids: [], says: "The plan has no purpose written down." }];
  }
  const whole = { path: "purpose", ids: [] };
  return [
    ...(problem === undefined
      ? [{ ...whole, code: "problem-missing" as const, says: "The purpose states no problem." }]
      : []),
    ...(goals.length === 0
      ? [{ ...whole, code: "goals-missing" as const, says: "The purpose states no goal." }]
      : []),
    ...goalsFound(context),
    ...scopeFound(context),
    ...(scopeOut.length === 0
      ? [{ ...whole, code: "scope-out-empty" as const, says: "Nothing is said to be out of scope." }]
      : []),
    ...(constraints.length === 0
      ? [{ ...whole, code: "constraints-empty" as const, says: "No constraint is listed." }]
      : []),
    ...qualityFound(context),
  ];
};

function goalsFound({ plan }: CheckContext): Found[] {
  const served = new Set(plan.benefits.map(({ goal }) => goal));
  return plan.purpose.goals.flatMap((goal, g): Found[] => {
    const at = { path: `purpose.goals[${g}]`, ids: [goal.id] };
    const missing = [
      ...(goal.measure === undefined ? ["measure"] : []),
      ...(goal.target === undefined ? ["target"] : []),
      ...(goal.by === undefined ? ["date"] : []),
      ...(goal.owner === undefined ? ["owner"] : []),
    ];
    return [
      ...(missing.length === 0
        ? []
        : [
            {
              ...at,
              code: "goal-incomplete" as const,
              says: `The goal "${goal.statement}" has no ${joined(missing, "or")}.`,
            },
          ]),
      ...(plan.benefits.length === 0 || served.has(goal.id)
        ? []
        : [
            {
              ...at,
              code: "goal-unserved" as const,
              says: `No benefit names the goal "${goal.statement}".`,
            },
          ]),
    ];
  });
}

function qualityFound({ plan }: CheckContext): Found[] {
  return qualityBars(plan).flatMap((bar, q): Found[] => {
    const at = { path: `purpose.quality[${q}]`, ids: [bar.id] };
    const wanted = `${bar.atLeast === undefined ? "at most" : "at least"} ${bar.atLeast ?? bar.atMost}${bar.unit === undefined ? "" : ` ${bar.unit}`}`;
    if (bar.measured !== undefined) {
      if (bar.holds) return [];
      const says = `"${bar.statement}": ${bar.measured} was measured, ${wanted} is the bar.`;
      return [{ ...at, code: "quality-missed", says }];
    }
    if (bar.chance === undefined) {
      return [
        {
          ...at,
          code: "quality-unknown",
          says: `"${bar.statement}" has nothing expected and nothing measured.`,
        },
      ];
    }
    if (bar.chance >= 0.5) return [];
    const says = `"${bar.statement}": what is expected clears the bar of ${wanted} with a chance of ${Math.round(bar.chance * 100)} %.`;
    return [{ ...at, code: "quality-missed", severity: "warning", says }];
  });
}

function scopeFound({ plan }: CheckContext): Found[] {
  const { scopeIn } = plan.purpose;
  if (scopeIn.length === 0) {
    return [{ code: "scope-missing", path: "purpose", ids: [], says: "The purpose lists nothing in scope." }];
  }
  const named = new Set(plan.tasks.map(({ scope }) => scope));
  return [
    ...plan.tasks.flatMap((task, t): Found[] =>
      task.milestone !== false || task.scope !== undefined
        ? []
        : [
            {
              code: "task-without-scope",
              path: `tasks[${t}]`,
              ids: [task.id],
              says: `${task.name} names no item in scope.`,
            },
          ],
    ),
    ...scopeIn.flatMap((item, s): Found[] =>
      named.has(item.id)
        ? []
        : [
            {
              code: "scope-without-task",
              path: `purpose.scope.in[${s}]`,
              ids: [item.id],
              says: `No task delivers ${item.name}.`,
            },
          ],
    ),
  ];
}

/** Benefits: who owns them, from where they are measured, and whether they are weighed against the cost. */
export const checkBenefitRegister: Check = ({ plan }) => {
  const { benefits, appraisal } = plan;
  if (benefits.length === 0) {
    return [{ code: "benefits-missing", path: "", ids: [], says: "The plan lists no benefit." }];
  }
  const valued = benefits.filter(({ amount, worth }) => amount !== undefined || worth !== undefined);
  return [
    ...benefits.flatMap((benefit, b): Found[] => {
      const missing = missingOf(benefit);
      if (missing.length === 0) return [];
      const light = !missing.includes("owner") && !missing.includes("figures");
      return [
        {
          code: "benefit-incomplete",
          path: `benefits[${b}]`,
          ids: [benefit.id],
          says: `${benefit.name} has no ${joined(missing, "or")}.`,
          ...(light ? { severity: "note" as const } : {}),
        },
      ];
    }),
    ...(appraisal === undefined && valued.length > 0
      ? [
          {
            code: "appraisal-missing" as const,
            path: "benefits",
            ids: valued.map(({ id }) => id),
            says: `The plan has no appraisal, although ${valued.length} of its benefits have a worth in money.`,
          },
        ]
      : []),
  ];
};

function missingOf({ owner, amount, quantity, baseline, starts }: Benefit): string[] {
  return [
    ...(owner === undefined ? ["owner"] : []),
    ...(amount === undefined && quantity === undefined ? ["figures"] : []),
    ...(baseline === undefined ? ["baseline"] : []),
    ...(starts === undefined ? ["start"] : []),
  ];
}
