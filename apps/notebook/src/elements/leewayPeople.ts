import { formatDays, formatMoney, formatPercent, groupDigits } from "@leeway/charts";
import type { Forecast, Person, Plan, Stakeholder } from "@leeway/core";
import { html, nothing } from "lit";
import { awayCell, readAway } from "../plan/readAway.ts";
import { readNumber } from "../plan/readNumber.ts";
import { roundMoney } from "../words/answerWords.ts";
import { unbroken } from "../words/unbroken.ts";
import { ListsElement, needed, type Reading } from "./listsElement.ts";

/** Who does the work and who has a say in it; and what it costs that there are only so many of them. */
export class LeewayPeople extends ListsElement {
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
          committed: ({ rate }) => (rate === 0 ? "" : groupDigits(rate, Number.isInteger(rate) ? 0 : 2)),
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
      <div class="worth ${this.fading ? "settling" : ""}">${limited(plan, this.forecast)}</div>
      ${this.list<Stakeholder>({
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
            key: "approvesUpTo",
            heading: `Approves up to, ${plan.currency}`,
            kind: "number",
            committed: ({ approvesUpTo }) => (approvesUpTo === undefined ? "" : groupDigits(approvesUpTo)),
            read: sum,
          },
        ],
        asks: [{ key: "name", label: "Name" }],
        make: ({ name = "" }, id) =>
          name.trim() === ""
            ? { cell: "name", words: "Write a name." }
            : { item: { id: id(name), name: name.trim() } },
      })}
      ${this.toldLine()}`;
  }
}

/** What limited people cost at the committed level, on the same draws. */
function limited(plan: Plan, forecast: Forecast | undefined) {
  if (plan.people.length === 0) return nothing;
  if (!plan.respectCapacity)
    return html`<p class="quiet">The plan does not count how much of its people there is (respectCapacity is false).</p>`;
  if (forecast?.people === undefined) return html`<p class="quiet">Not computed yet.</p>`;
  const { workingDays, money } = forecast.people;
  const level = formatPercent(forecast.committed.confidence);
  const sum = formatMoney(roundMoney(money, forecast), forecast.plan.currency);
  return html`<p class="finding">${unbroken(`That there are only so many of them costs ${formatDays(workingDays)} and ${sum} at ${level}.`)}</p>
    <p class="note">The same futures once with people as they are, and once as if nobody were ever taken.</p>`;
}

customElements.define("leeway-people", LeewayPeople);
