import type { Assumption, Impact, Response, Risk } from "@leeway/core";
import { html, nothing, type TemplateResult } from "lit";
import { figureText } from "../plan/figureText.ts";
import type { EffectCells } from "../plan/newEffect.ts";
import { readNumber } from "../plan/readNumber.ts";
import { delayUnit } from "../plan/unitWords.ts";
import type { DraftRow } from "./draftRow.ts";
import {
  dateText,
  entryField,
  type FieldsOf,
  optionalChance,
  optionalDate,
  optionalText,
  percentText,
  whoField,
} from "./entryFields.ts";
import { estimatePart } from "./estimatePart.ts";
import { send } from "./events.ts";
import { needed } from "./listsElement.ts";
import { newEffectLine } from "./newEffectLine.ts";
import { noteField } from "./noteField.ts";
import { taskPicker } from "./taskPicker.ts";

export interface EntryDetails extends FieldsOf {
  entry: Risk | Assumption;
  path: string;
  /** A new effect: what is missing in it; undefined: none is being added. */
  draft: { words?: string | undefined } | undefined;
  effect: DraftRow<keyof EffectCells>;
  addEffect: () => void;
}

/** All of a risk or an assumption that its row has no room for: who, until when, what it does, what can be done. */
export function entryDetails(on: EntryDetails): TemplateResult {
  const { entry, path } = on;
  const of = entry.name;
  const says = entry.kind === "risk" ? "name" : "statement";
  const own = (key: string, label: string, committed: string, kind: "text" | "date" = "text") =>
    entryField(on, {
      path: `${path}.${key}`,
      label,
      of,
      committed,
      kind,
      read: kind === "date" ? optionalDate : optionalText,
    });
  return html`<div class="entry-form">
    <div class="entry-fields">
      ${entryField(on, {
        path: `${path}.${says}`,
        label: entry.kind === "risk" ? "What may happen" : "What the plan counts on",
        of,
        committed: entry.name,
        read: needed("It needs a few words that say what it is."),
      })}
      ${own("cause", "Cause", entry.cause ?? "")}
      ${whoField(on, { path: `${path}.owner`, label: "Owner", of, committed: entry.owner ?? "" })}
      ${entry.kind === "assumption" ? own("signpost", "Signpost: how you would notice", entry.signpost ?? "") : nothing}
      ${entry.kind === "assumption" ? own("reviewBy", "Review by", dateText(entry.reviewBy), "date") : nothing}
      ${own("expires", "Can happen until", dateText(entry.expires), "date")}
      ${noteField(on, { path: `${path}.note`, of, committed: entry.note })}
    </div>
    ${entry.status === "occurred" ? inFact(on) : nothing}
    <h3>What it does when it ${entry.kind === "risk" ? "happens" : "proves wrong"}</h3>
    ${entry.impacts.length === 0 ? html`<p class="quiet">Nothing yet: no task is later or dearer for it.</p>` : nothing}
    ${entry.impacts.map((impact, at) => effect(on, impact, at))}
    ${
      on.draft === undefined
        ? nothing
        : newEffectLine({ of, currency: on.plan.currency, words: on.draft.words, ...on.effect })
    }
    ${
      on.readonly
        ? nothing
        : html`<button type="button" class="adds-button" data-adds="${path}.impacts" @click=${on.addEffect}>Add an effect<span class="unseen"> of ${of}</span></button>`
    }
    ${entry.responses.length === 0 ? nothing : html`<h3>What can be done about it</h3>`}
    ${entry.responses.map((one, at) => responseForm(on, one, `${path}.responses[${at}]`))}
  </div>`;
}

function effect(on: EntryDetails, impact: Impact, at: number): TemplateResult {
  const { entry, plan } = on;
  const path = `${on.path}.impacts[${at}]`;
  const many = entry.impacts.length > 1;
  const of = many ? `${entry.name}: effect ${at + 1}` : entry.name;
  const part = (key: "delay" | "wait" | "factor" | "cost", label: string, unit: string) =>
    estimatePart({
      ...on,
      label,
      of,
      estimate: impact[key],
      path: `${path}.${key}`,
      unit,
    });
  const days = impact.delay === undefined ? "working days" : delayUnit(impact.delay);
  return html`<fieldset class="effect"><legend>${many ? `Effect ${at + 1}` : "Effect"}</legend>
    ${
      impact.phase === undefined
        ? taskPicker({ ...on, of, tasks: plan.tasks, chosen: impact.tasks, path: `${path}.tasks` })
        : html`<p>On every task of the phase “${impact.phase}”, milestones left out.</p>`
    }
    ${part("delay", `Delay, ${days}`, days)}
    ${part("cost", `Cost, ${plan.currency}`, plan.currency)}
    ${impact.wait === undefined ? nothing : part("wait", "Wait, working days", "working days")}
    ${impact.factor === undefined ? nothing : part("factor", "Duration times", "a factor")}
    ${
      on.readonly
        ? nothing
        : html`<button type="button" class="adds-button" @click=${(event: Event) => {
            const form = event.target instanceof Element ? event.target.closest(".entry-form") : null;
            form?.querySelector<HTMLElement>("[data-adds]")?.focus();
            send(on.host, "plan-edit", {
              field: path,
              cells: {},
              edits: [{ path: many ? path : `${on.path}.impacts`, value: undefined }],
            });
          }}>Remove this effect<span class="unseen">: ${of}</span></button>`
    }
  </fieldset>`;
}

/** A fact takes the place of the range. */
function inFact(on: EntryDetails): TemplateResult {
  const { entry, path, plan } = on;
  const fact = `${path}.actual`;
  const figure = (key: "days" | "cost", label: string, asked: string, example: string) =>
    entryField(on, {
      path: `${fact}.${key}`,
      label,
      of: entry.name,
      committed: entry.actual?.[key] === undefined ? "" : figureText(entry.actual[key]),
      kind: "number",
      read: (text) => {
        if (text.trim() !== "") return readNumber(text, asked, example);
        // With the last of the facts their place goes too.
        const other = entry.actual?.[key === "days" ? "cost" : "days"];
        return { edits: [{ path: other === undefined ? fact : `${fact}.${key}`, value: undefined }] };
      },
    });
  return html`<h3>What it did in fact</h3>
    <div class="entry-fields">
      ${figure("days", "Working days it took", "a number of working days", "3, or 0 where they are in what remains of the tasks")}
      ${figure("cost", `What it cost, ${plan.currency}`, "a sum of money", "12,000, or 0 where it is in what was spent")}
    </div>`;
}

function responseForm(on: EntryDetails, response: Response, path: string): TemplateResult {
  const of = response.action;
  return html`<fieldset class="effect"><legend>${response.action}${response.adopted ? ", adopted" : ""}</legend>
    <div class="entry-fields">
      ${entryField(on, { path: `${path}.action`, label: "What is done", of, committed: response.action, read: needed("Write what is done, in a few words.") })}
      ${whoField(on, { path: `${path}.owner`, label: "Owner", of, committed: response.owner ?? "" })}
      ${entryField(on, { path: `${path}.due`, label: "By when", of, committed: dateText(response.due), kind: "date", read: optionalDate })}
      ${entryField(on, { path: `${path}.probability`, label: "Chance becomes, %", of, committed: percentText(response.probability), kind: "number", read: optionalChance })}
      ${entryField(on, { path: `${path}.scale`, label: "Of the effect remains, %", of, committed: percentText(response.scale), kind: "number", read: optionalChance })}
      ${noteField(on, { path: `${path}.note`, of, committed: response.note })}
    </div>
    ${estimatePart({ ...on, label: `Costs, ${on.plan.currency}`, of, estimate: response.cost, path: `${path}.cost`, unit: on.plan.currency })}
  </fieldset>`;
}
