/** The hand calculation of a number, step by step, as on paper. */
import { html, nothing } from 'lit';
import { set } from './text.js';

/** @typedef {{ title: string, steps: { says: string, formula: string, numbers: string, result: string, source: string }[] }} Working */

/** @param {Working} working */
export function steps(working) {
  return html`<ol>${working.steps.map((step) => html`<li>
    ${set(step.says)}
    ${step.formula ? html`<span class="numbers">${step.formula}</span>` : nothing}
    ${step.numbers ? html`<span class="numbers">${set(step.numbers)}</span>` : nothing}
    <span class="result">${set(step.result)}</span>
    ${step.source ? html`<span class="source">${step.source}</span>` : nothing}
  </li>`)}</ol>`;
}

/**
 * A line that opens to the working.
 * @param {Working[]} workings
 * @param {string} [label]
 */
export function working(workings, label = 'show the working') {
  if (workings.length === 0) return nothing;
  return html`<details class="working"><summary>${label}</summary>
    ${workings.map((one) => html`${workings.length > 1 ? html`<h3>${set(one.title)}</h3>` : nothing}${steps(one)}`)}</details>`;
}
