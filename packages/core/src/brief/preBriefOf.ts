import type { Comparison, Reach } from "../explain/types.ts";
import type { Id, Plan } from "../plan/types.ts";
import { questionsFor } from "./questionsFor.ts";
import { someoneOf } from "./someone.ts";
import type { Brief, BriefAnswers, BriefApprover, PreBrief, PreBriefFigures, QuestionKey } from "./types.ts";

/** What a pre-brief may say beside the brief: what would make the asked date even, and what moved since a version. */
export interface PreBriefExtras {
  /** Of the asked date and sum at a confidence of 0.5. */
  even?: Reach;
  comparison?: Comparison;
}

/**
 * The pre-brief of one approver: who it is for, the questions this person is likely to ask, what they have objected, and
 * the figures of the answers.
 *
 * @param who  Id of a stakeholder, a person or an approver of the plan.
 */
export function preBriefOf(
  plan: Plan,
  brief: Brief,
  answers: BriefAnswers,
  who: Id,
  extras: PreBriefExtras = {},
): PreBrief {
  const { even, comparison } = extras;
  const stakeholder = plan.stakeholders.find(({ id }) => id === who);
  const looksFor = plan.approvals.findLast((approval) => approval.who === who)?.note ?? stakeholder?.note;
  const approver = brief.outcome.approvers.find(({ id }) => id === who) ?? otherwise(plan, brief, who);
  const asker = {
    ...(approver.role === undefined ? {} : { role: approver.role }),
    ...(stakeholder?.interest === undefined ? {} : { interest: stakeholder.interest }),
    ...(looksFor === undefined ? {} : { looksFor }),
  };
  const { interest } = asker;
  const { stop, steps } = answers.confidence;
  const figures: PreBriefFigures = {
    steps,
    ...(stop === undefined ? {} : { stop }),
    walk: answers.explanation.walk,
    ...(even === undefined
      ? {}
      : {
          even: {
            answer: even.answer,
            ways: even.ways,
            chance: even.chance,
            asked: even.asked,
            ...(even.best === undefined ? {} : { best: even.best }),
          },
        }),
    ...(comparison === undefined ? {} : { comparison }),
    months: answers.forecast.months ?? [],
    estimates: estimatesOf(plan, answers),
    finished: plan.tasks.filter(({ finished }) => finished !== undefined).length,
    own: ownPart(plan, who),
  };
  const { objections } = brief;
  return {
    brief,
    approver: {
      ...approver,
      ...(interest === undefined ? {} : { interest }),
      ...(stakeholder?.stance === undefined ? {} : { stance: stakeholder.stance }),
      ...(looksFor === undefined ? {} : { looksFor }),
    },
    questions: questionsFor(asker, (key) => answerable(key, brief, figures)),
    objections: [...objections.open, ...objections.settled].filter((each) => each.who?.id === who),
    figures,
  };
}

/** Somebody who is told although they do not sign. */
function otherwise(plan: Plan, brief: Brief, who: Id): BriefApprover {
  const limit = plan.stakeholders.find(({ id }) => id === who)?.approvesUpTo;
  return {
    ...(someoneOf(plan)(who) ?? { id: who, name: who }),
    decision: "pending",
    ...(limit === undefined ? {} : { approvesUpTo: limit, covers: brief.commitment.committed.cost <= limit }),
  };
}

function answerable(key: QuestionKey, brief: Brief, figures: PreBriefFigures): boolean {
  switch (key) {
    case "changed":
      return figures.comparison !== undefined;
    case "afford":
    case "cut":
      return key === "cut" || brief.spends;
    case "people":
      return brief.commitment.people !== undefined;
    case "benefit":
      return brief.worth.benefits.stated > 0;
    case "scope":
      return brief.scope.in.length + brief.scope.optional.length + brief.scope.out.length > 0;
    case "conditions":
      return brief.scope.constraints.length > 0;
    case "assumptions":
      return brief.assumptions.length > 0;
    case "responses":
      return (
        brief.responses.adopted.length + brief.responses.worthBuying.length + brief.responses.others.length >
        0
      );
    default:
      return true;
  }
}

function estimatesOf(plan: Plan, { explanation }: BriefAnswers): PreBriefFigures["estimates"] {
  const someone = someoneOf(plan);
  const uncertain = plan.tasks.filter(
    ({ duration, effort, finished }) =>
      finished === undefined && [duration, effort].some((one) => one !== undefined && one.kind !== "fixed"),
  );
  const byId = new Map(uncertain.map((task) => [task.id, task]));
  const largest = explanation.shares
    .filter(({ gathers }) => gathers === undefined)
    .flatMap(({ id, members }) => members ?? [id])
    .flatMap((id) => byId.get(id) ?? [])
    .slice(0, 5);
  return {
    uncertain: uncertain.length,
    withEstimator: uncertain.filter(({ estimatedBy }) => estimatedBy.length > 0).length,
    withBasis: uncertain.filter(({ basis }) => basis !== undefined).length,
    largest: largest.map(({ id, name, estimatedBy, basis }) => ({
      id,
      name,
      by: estimatedBy.flatMap((each) => someone(each) ?? []),
      ...(basis === undefined ? {} : { basis }),
    })),
  };
}

function ownPart({ tasks }: Plan, who: Id): PreBriefFigures["own"] {
  const count = (part: "responsible" | "accountable" | "consulted" | "informed") =>
    tasks.filter((task) => task[part].includes(who)).length;
  return {
    responsible: count("responsible"),
    accountable: count("accountable"),
    consulted: count("consulted"),
    informed: count("informed"),
  };
}
