import { formatDate, signOffSentence, statedSum } from "@leeway/charts";
import {
  type Approval,
  type ApprovalsState,
  type ApproverState,
  approvalsState,
  type Plan,
  type Refusal,
} from "@leeway/core";
import { html, nothing } from "lit";
import type { ToldFinding } from "../asking/tellFindings.ts";
import { today } from "../handing/today.ts";
import type { Keeper } from "../keeping/keeper.ts";
import { findWho } from "../plan/findWho.ts";
import { conditionsMet, type DecisionCells, isOpen, recordDecision } from "../plan/recordDecision.ts";
import { committedLevel, spends, withSum } from "../words/answerWords.ts";
import { decisionWords } from "../words/approverWords.ts";
import { unbroken } from "../words/unbroken.ts";
import { alternativesList } from "./alternativesList.ts";
import { changesList } from "./changesList.ts";
import { decisionForm } from "./decisionForm.ts";
import { dateText, entryField, optionalDate, optionalText } from "./entryFields.ts";
import { send } from "./events.ts";
import { fieldMessage } from "./fieldMessage.ts";
import { type Column, ListsElement } from "./listsElement.ts";
import { objectionsList } from "./objectionsList.ts";
import { returnTriggersList } from "./returnTriggersList.ts";

/** Field of the entries that a decision makes. */
const deciding = "approvals";

/** What is asked of whom, what they decided, what was objected and answered, and when the plan comes back to them. */
export class LeewaySignOff extends ListsElement {
  static override properties = {
    ...ListsElement.properties,
    findings: { attribute: false },
    keeper: { attribute: false },
    current: { type: Boolean },
    who: { state: true },
    refusals: { state: true },
  };
  findings: readonly ToldFinding[] | undefined;
  keeper: Keeper | undefined;
  /** The answer is that of the plan as it stands, in full. */
  current = false;
  /** Whose decision is being filled in. */
  who: string | undefined;
  refusals: readonly Pick<Refusal, "rule" | "remedy">[] = [];

  protected override render() {
    const { plan, who } = this;
    if (plan === undefined) return nothing;
    const state = approvalsState(plan, this.#sum(plan), today());
    const approvers = new Map(state.approvers.map((one) => [one.who, one]));
    return html`<p class="finding">${signOffSentence(state)}</p>
      ${this.#asked(plan)}
      ${this.#approvals(plan, approvers)}
      ${
        who === undefined || this.readonly || !approvers.has(who)
          ? nothing
          : decisionForm({
              plan,
              who,
              today: today(),
              promised: this.#promised(),
              ahead: limitAhead(plan, approvers.get(who)),
              refusals: this.refusals,
              record: (cells) => this.#record(cells),
              leave: () => this.#close(),
            })
      }
      ${fieldMessage("message-approvals", this.pending.get(deciding))}
      ${covered(state) && !this.readonly ? html`<p class="note">What is asked, its alternatives and what brings it back are part of what was approved: to change them is to ask again. Objections, conditions met and the log of changes are not.</p>` : nothing}
      ${this.list(objectionsList(plan))}
      ${this.list(returnTriggersList(plan, this.forecast))}
      ${this.list(changesList(plan))}
      ${this.toldLine()}`;
  }

  #promised(): string {
    const { forecast } = this;
    if (forecast === undefined) return "";
    const { date } = forecast.committed;
    return unbroken(
      `Put before them: ${withSum(forecast, formatDate(date))}, ${spends(forecast) ? "each " : ""}kept in ${committedLevel(forecast)} of futures.`,
    );
  }

  /** What is signed for: the sum committed to, else what is available. */
  #sum(plan: Plan): number | undefined {
    return this.forecast?.committed.cost ?? plan.commitment.budget;
  }

  /** What is put before those who decide; what they read first. */
  #asked(plan: Plan) {
    const { decision } = plan;
    const on = { host: this, plan, stated: this.stated, pending: this.pending, readonly: this.readonly };
    const of = "The decision";
    const words = (key: "ask" | "recommend" | "doNothing", label: string) =>
      entryField(on, {
        path: `decision.${key}`,
        label,
        of,
        committed: decision?.[key] ?? "",
        wraps: true,
        read: optionalText,
      });
    return html`<div class="list"><h3>What is asked</h3>
      <div class="entry-form plain entry-fields">
        ${words("ask", "In one sentence")}
        ${entryField(on, {
          path: "decision.by",
          label: "To be decided by",
          of,
          committed: dateText(decision?.by),
          kind: "date",
          read: optionalDate,
        })}
        ${words("recommend", "Recommended, and why")}
        ${words("doNothing", "If nothing is done")}
      </div></div>
      ${this.list(alternativesList(plan))}`;
  }

  #approvals(plan: Plan, approvers: ReadonlyMap<string, ApproverState>) {
    const everybody = [...plan.stakeholders, ...plan.people];
    const stateOf = ({ who }: Approval): ApproverState | undefined => approvers.get(who);
    const plain = (words: string) => [html`<span class="plain">${unbroken(words)}</span>`];
    const limit: Column<Approval> = {
      key: "limit",
      heading: `May approve, ${plan.currency}`,
      kind: "number",
      size: "short",
      committed: () => "",
      cells: (one) => {
        const { limit, aboveLimit = false } = stateOf(one) ?? {};
        return plain(
          limit === undefined
            ? "no limit stated"
            : `${statedSum(limit, "")}${aboveLimit ? ": more is asked" : ""}`,
        );
      },
    };
    return this.list<Approval>({
      path: "approvals",
      one: "approver",
      adds: "Ask somebody to decide",
      title: "Who decides",
      empty: "Nobody is asked yet. Ask those who can say yes to the date and to the money.",
      items: plan.approvals,
      name: ({ who }) => approvers.get(who)?.name ?? who,
      columns: [
        {
          key: "who",
          heading: "Who",
          committed: () => "",
          cells: (one) => {
            const state = stateOf(one);
            return plain(
              [state?.name ?? one.who, state?.role ?? ""].filter((part) => part !== "").join(", "),
            );
          },
        },
        {
          key: "decision",
          heading: "Decision",
          size: "main",
          committed: () => "",
          cells: (one) => {
            const state = stateOf(one);
            return plain(state === undefined ? "" : decisionWords(state));
          },
        },
        ...(plan.stakeholders.some(({ approvesUpTo }) => approvesUpTo !== undefined) ? [limit] : []),
        {
          key: "does",
          heading: "What they say",
          committed: () => "",
          cells: (one) => {
            const state = stateOf(one);
            const name = state?.name ?? one.who;
            if (this.readonly) return [html``];
            return [
              html`<button type="button" class="does" data-decides=${one.who} @click=${() => this.#open(one.who)}>Record a decision<span class="unseen"> of ${name}</span></button>${
                state !== undefined && isOpen(state)
                  ? html` <button type="button" class="does" @click=${() => this.#met(one.who)}>The conditions are met<span class="unseen">: those of ${name}</span></button>`
                  : nothing
              }`,
            ];
          },
        },
      ],
      asks: [{ key: "who", label: "Who", suggest: "who" }],
      make: ({ who = "" }) => {
        const found = findWho(who, everybody);
        if ("words" in found) return { cell: "who", words: found.words };
        const [id] = found.ids;
        if (id === undefined || found.ids.length > 1)
          return { cell: "who", words: "Write the name of one person or stakeholder." };
        if (plan.approvals.some((one) => one.who === id))
          return { cell: "who", words: `${approvers.get(id)?.name ?? id} is asked already.` };
        return { item: { who: id, decision: "pending" } };
      },
    });
  }

  #open(who: string): void {
    this.who = who;
    this.refusals = [];
    this.drawNow();
    this.querySelector<HTMLElement>(".decision select")?.focus();
  }

  #close(): void {
    const { who } = this;
    this.who = undefined;
    this.refusals = [];
    this.drawNow();
    this.querySelector<HTMLElement>(`[data-decides="${who}"]`)?.focus();
  }

  #record(cells: DecisionCells): void {
    const { plan } = this;
    if (plan === undefined) return;
    if (!this.current) {
      const rule = "The answer is not up to date, so nobody knows what is decided on.";
      this.refusals = [{ rule, remedy: "Record it once the answer stands and no entry waits." }];
      return;
    }
    const errors = (this.findings ?? []).filter(
      ({ severity, accepted }) => severity === "error" && accepted === undefined,
    );
    const made = recordDecision(plan, this.stated, cells, { sum: this.#sum(plan), errors, today: today() });
    if ("refusals" in made) {
      this.refusals = made.refusals;
      return;
    }
    const name = [...plan.stakeholders, ...plan.people].find(({ id }) => id === cells.who)?.name ?? cells.who;
    send(this, "plan-edit", { field: deciding, cells: {}, edits: made.edits });
    this.#close();
    if (made.decision === "rework") {
      this.told = `Recorded: ${name} sends it back. Undo takes the record back.`;
      return;
    }
    const how = made.decision === "approve" ? "" : ", subject to the conditions named";
    this.told = `Recorded: ${name} approves this plan${how}. It is pinned under Changes, so that what moves from here on is told against it. Undo takes the record back.`;
    void this.keeper?.pin(`Approved by ${name}, ${cells.date.trim()}`);
  }

  #met(who: string): void {
    if (this.plan === undefined) return;
    const edits = conditionsMet(this.plan, this.stated, who, today());
    send(this, "plan-edit", { field: deciding, cells: {}, edits });
    this.told = "Recorded: the conditions are met. Undo takes the record back.";
    // Their button goes with that.
    this.querySelector<HTMLElement>(`[data-decides="${who}"]`)?.focus();
  }
}

function covered({ approvers }: ApprovalsState): boolean {
  return approvers.some(({ state }) => state === "covers");
}

/** Who may approve less than is asked is told before they fill anything in. */
function limitAhead({ currency }: Plan, approver: ApproverState | undefined): string | undefined {
  if (approver?.aboveLimit !== true || approver.limit === undefined) return undefined;
  return unbroken(
    `${approver.name} may approve up to ${statedSum(approver.limit, currency)}, and more is asked: they can send it back, not approve it.`,
  );
}

customElements.define("leeway-sign-off", LeewaySignOff);
