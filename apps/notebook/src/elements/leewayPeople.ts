import { formatDate, formatDays, formatMoney, formatPercent, groupDigits } from "@leeway/charts";
import {
  type Forecast,
  type Person,
  type Phase,
  type Plan,
  type RoleFault,
  roleMatrix,
  type Stakeholder,
  type Task,
} from "@leeway/core";
import { html, nothing } from "lit";
import { figureText } from "../plan/figureText.ts";
import { findWho } from "../plan/findWho.ts";
import { newPhase, renamePhase } from "../plan/phases.ts";
import { awayCell, readAway } from "../plan/readAway.ts";
import { readDate } from "../plan/readDate.ts";
import { readNumber } from "../plan/readNumber.ts";
import { roundMoney, withSum } from "../words/answerWords.ts";
import { unbroken } from "../words/unbroken.ts";
import { send } from "./events.ts";
import { ListsElement, needed, type Reading, whoChoices } from "./listsElement.ts";
import { roleColumns } from "./roleColumns.ts";

const stances = [
  ["", "not said"],
  ["supports", "supports it"],
  ["neutral", "neutral"],
  ["resists", "resists it"],
] as const;
const rhythms = [
  ["", "not said"],
  ["week", "every week"],
  ["two-weeks", "every two weeks"],
  ["month", "every month"],
  ["quarter", "every quarter"],
  ["milestone", "at milestones"],
] as const;

/** Tasks whose cells are made at once. */
const mostTasks = 150;

/** Who does the work and who has a say in it; and what it costs that there are only so many of them. */
export class LeewayPeople extends ListsElement {
  static override properties = { ...ListsElement.properties, byTask: { state: true } };
  /** The table by task is open. */
  byTask = false;

  protected override render() {
    const { plan } = this;
    if (plan === undefined) return nothing;
    const sum = (text: string): Reading =>
      text.trim() === "" ? { value: undefined } : readNumber(text, `a sum in ${plan.currency}`, "600");
    return html`${this.list<Person>({
      path: "people",
      one: "person",
      title: "Who does the work",
      empty: "Nobody yet: without people every task is done as if there were always somebody to do it.",
      items: plan.people,
      name: ({ name }) => name,
      columns: [
        {
          key: "name",
          heading: "Name",
          committed: ({ name }) => name,
          read: needed("A person needs a name."),
        },
        { key: "role", heading: "Role", committed: ({ role }) => role ?? "" },
        {
          key: "rate",
          heading: `${plan.currency} a day`,
          kind: "number",
          committed: ({ rate }) => (rate === 0 ? "" : figureText(rate)),
          read: sum,
        },
        {
          key: "capacity",
          heading: "How many",
          kind: "number",
          committed: ({ capacity }) => String(capacity),
          read: (text) =>
            text.trim() === ""
              ? { value: undefined }
              : readNumber(text, "how many of them there are; 0.4 is two days a week", "1"),
        },
        {
          key: "away",
          heading: "Away",
          committed: ({ away }) => awayCell(away),
          read: (text, path) => readAway(text, this.statedAt(path)),
        },
      ],
      asks: [{ key: "name", label: "Name" }],
      make: ({ name = "" }, id) =>
        name.trim() === ""
          ? { cell: "name", words: "Write a name." }
          : { item: { id: id(name), name: name.trim() } },
    })}
      ${plan.people.length === 0 ? nothing : this.#capacity(plan)}
      <div class="worth ${this.fading ? "settling" : ""}">${limited(plan, this.forecast)}</div>
      ${this.#stakeholders(plan, sum)} ${this.#informed(plan)} ${this.#phases(plan)} ${this.#byTask(plan)}
      ${this.toldLine()}`;
  }

  /** Whether there are only so many of them. */
  #capacity(plan: Plan) {
    const field = "respectCapacity";
    return html`<label class="response"><input type="checkbox" .checked=${plan.respectCapacity} ?disabled=${this.readonly}
      @change=${(event: Event) => {
        if (!(event.target instanceof HTMLInputElement)) return;
        const value = event.target.checked;
        const edits = [{ path: field, value }];
        send(this, "plan-edit", { field, cells: { value: String(value) }, edits });
      }} /> ${free}</label>`;
  }

  #stakeholders(plan: Plan, sum: (text: string) => Reading) {
    return this.list<Stakeholder>({
      path: "stakeholders",
      one: "stakeholder",
      title: "Who has a say or an interest",
      empty:
        "Nobody yet: who decides, who pays, who is touched by it, and up to what sum somebody may approve.",
      items: plan.stakeholders,
      name: ({ name }) => name,
      columns: [
        {
          key: "name",
          heading: "Name",
          committed: ({ name }) => name,
          read: needed("A stakeholder needs a name."),
        },
        { key: "role", heading: "Part in it", committed: ({ role }) => role ?? "" },
        { key: "interest", heading: "Interest", committed: ({ interest }) => interest ?? "" },
        {
          key: "stance",
          heading: "Stance",
          size: "choice",
          committed: ({ stance }) => stance ?? "",
          choices: stances,
        },
        {
          key: "approvesUpTo",
          heading: `Approves up to, ${plan.currency}`,
          kind: "number",
          committed: ({ approvesUpTo }) => (approvesUpTo === undefined ? "" : groupDigits(approvesUpTo)),
          read: sum,
        },
        {
          key: "delegate",
          heading: "Signs in their place",
          size: "choice",
          committed: ({ delegate }) => delegate ?? "",
          choicesOf: ({ id }) => whoChoices(plan).filter(([who]) => who !== id),
        },
      ],
      asks: [{ key: "name", label: "Name" }],
      make: ({ name = "" }, id) =>
        name.trim() === ""
          ? { cell: "name", words: "Write a name." }
          : { item: { id: id(name), name: name.trim() } },
    });
  }

  #informed(plan: Plan) {
    if (plan.stakeholders.length === 0) return nothing;
    return this.list<Stakeholder>({
      path: "stakeholders",
      one: "stakeholder",
      title: "Who is told what, how and when",
      fixed: true,
      empty: "",
      items: plan.stakeholders,
      name: ({ name }) => name,
      columns: [
        {
          key: "who",
          heading: "Who",
          committed: ({ name }) => name,
          cells: ({ name }) => [html`<span class="plain">${name}</span>`],
        },
        {
          key: "inform.what",
          heading: "Told what",
          size: "main",
          committed: ({ inform }) => inform?.what ?? "",
        },
        { key: "inform.how", heading: "How", committed: ({ inform }) => inform?.how ?? "" },
        {
          key: "inform.every",
          heading: "How often",
          committed: ({ inform }) => inform?.every ?? "",
          choices: rhythms,
        },
        {
          key: "inform.from",
          heading: "From",
          kind: "date",
          committed: ({ inform }) => (inform?.from === undefined ? "" : formatDate(inform.from)),
          read: (text) => (text.trim() === "" ? { value: undefined } : readDate(text)),
        },
        {
          key: "inform.owner",
          heading: "By whom",
          committed: ({ inform }) => inform?.owner ?? "",
          choices: whoChoices(plan),
        },
      ],
      asks: [],
      make: () => ({ cell: "", words: "" }),
    });
  }

  #phases(plan: Plan) {
    const faults = plan.phases.length === 0 ? [] : roleMatrix(plan, { rows: "phases" }).faults;
    return html`${this.list<Phase>({
      path: "phases",
      one: "phase",
      title: "Who answers for what, by phase",
      empty:
        "No phase is declared yet: the parts the work falls into, and for each who does it and the one who answers for it.",
      items: plan.phases,
      name: ({ name }) => name,
      columns: [
        {
          key: "name",
          heading: "Phase",
          committed: ({ name }) => name,
          read: (text, _path, { name }) => renamePhase(name, text, this.stated),
        },
        ...roleColumns<Phase>(plan, ({ name }) => name),
      ],
      asks: [
        { key: "name", label: "Name" },
        { key: "accountable", label: "Answers for it", suggest: "who" },
      ],
      make: ({ name = "", accountable = "" }) => {
        const found = findWho(accountable, [...plan.people, ...plan.stakeholders]);
        if ("words" in found) return { cell: "accountable", words: found.words };
        const [one, other] = found.ids;
        if (other !== undefined)
          return { cell: "accountable", words: "Exactly one answers for it. Write the one who does." };
        const made = newPhase(name, this.stated, one === undefined ? {} : { accountable: one });
        return "words" in made ? { cell: "name", words: made.words } : made;
      },
    })}${faults.map((fault) => html`<p class="quiet role-fault">${faultWords(fault)}</p>`)}`;
  }

  /** Made once it is asked for: four cells for each task. */
  #byTask(plan: Plan) {
    const phases = new Map(plan.phases.map((phase) => [phase.name, phase]));
    return html`<details class="by-task" @toggle=${(event: Event) => {
      if (event.target instanceof HTMLDetailsElement) this.byTask = event.target.open;
    }}>
      <summary>Task by task, where it differs from the phase</summary>
      ${
        this.byTask
          ? html`<p class="note">A cell that is emptied says what its phase says.</p>${this.list<Task>({
              path: "tasks",
              one: "task",
              title: "Who answers for what, by task",
              fixed: true,
              empty: "No task yet.",
              items: plan.tasks.slice(0, mostTasks),
              name: ({ name }) => name,
              columns: [
                {
                  key: "who",
                  heading: "Task",
                  committed: ({ name }) => name,
                  cells: ({ name }) => [html`<span class="plain">${name}</span>`],
                },
                ...roleColumns<Task>(
                  plan,
                  ({ name }) => name,
                  ({ phase }) => (phases.get(phase ?? "")?.accountable.length ?? 0) > 0,
                ),
              ],
              asks: [],
              make: () => ({ cell: "", words: "" }),
            })}${plan.tasks.length > mostTasks ? html`<p class="quiet">The first ${mostTasks} tasks; the plan text has the others.</p>` : nothing}`
          : nothing
      }
    </details>`;
  }
}

const free = "A task waits until its people are free";

function faultWords({ code, name }: RoleFault): string {
  if (code === "no-accountable") return `Nobody answers for “${name}” yet: exactly one has to.`;
  if (code === "no-responsible") return `Nobody does “${name}” yet.`;
  return `More than one answers for “${name}”: exactly one has to.`;
}

/** What limited people cost at the committed level, on the same draws. */
function limited(plan: Plan, forecast: Forecast | undefined) {
  if (plan.people.length === 0) return nothing;
  if (!plan.respectCapacity)
    return html`<p class="quiet">Everybody counts as there whenever needed. Tick “${free}” to count how much of them there is.</p>`;
  if (forecast?.people === undefined) return html`<p class="quiet">Not computed yet.</p>`;
  const { workingDays, money } = forecast.people;
  const level = formatPercent(forecast.committed.confidence);
  const sum = formatMoney(roundMoney(money, forecast), forecast.plan.currency);
  const costs = withSum(forecast, formatDays(workingDays), { sum });
  return html`<p class="finding">${unbroken(`That there are only so many of them costs ${costs} at ${level}.`)}</p>
    <p class="note">The same futures once with people as they are, and once as if nobody were ever taken.</p>`;
}

customElements.define("leeway-people", LeewayPeople);
