/** A planned night: its readings, what they should tell, and what people must know. */
import { html, nothing } from 'lit';
import { bare, head } from '../shared/table.js';
import { capital, set } from '../shared/text.js';

/** The readings in the order to take them. @param {any} plan */
export function readings(plan) {
  const flowing = plan.points.find((/** @type {any} */ point) => !point.shut);
  return html`<table class="points"><caption>The readings, in this order</caption>
    <thead><tr><th scope="col">reading</th><th scope="col" class="words">lay</th>${head('hold at the tip', flowing.tip)}${head('pump about', flowing.pump)}
      ${head('never above', flowing.never ?? flowing.pump)}<th scope="col" class="less">flow <span class="unit">${unit(flowing.flow)}</span></th>
      <th scope="col" class="less">reaction <span class="unit">${unit(flowing.reaction)}</span></th><th scope="col" class="words less">most used</th></tr></thead>
    <tbody>${plan.points.map((/** @type {any} */ point) => row(point))}</tbody></table>`;
}

/** @param {any} point */
function row(point) {
  const [first] = point.checks;
  return html`<tr class=${point.laid ? 'laid' : ''}><th scope="row">${point.reading}</th>
    <td class="words">${point.laid ? html`<b>${point.length}</b>${point.rise === 'level' ? nothing : `, ${point.rise}`}` : html`<span class="soft">the same</span>`}</td>
    <td>${point.shut ? html`<b>nozzle shut</b>` : html`<b>${bare(point.tip)}</b>`}</td><td>${point.shut ? 'idle' : bare(point.pump)}</td>
    <td><b>${point.never ? bare(point.never) : 'not set'}</b></td><td class="less">${point.shut ? 'none' : bare(point.flow)}</td>
    <td class="less">${point.shut ? 'none' : bare(point.reaction)}</td>
    <td class="words less">${first ? `${first.used} % of ${first.what}` : nothing}</td></tr>`;
}

/** @param {string} text */
function unit(text) {
  return text.split(' ')[1];
}

/** @param {any} plan */
export function evidence(plan) {
  return html`<div class="evidence">
    ${list('Keep in mind', plan.cautions)}${list('Go or no go', plan.goNoGo)}${list('Who does what', plan.roles)}
    <section><h2>What it should tell</h2><ul class="plain">${plan.foreseen.map((/** @type {any} */ seen) => html`<li>${set(capital(seen.what))}:
      ${seen.known ? html`<b>${seen.known}</b>${seen.answered ? ', to the step that one orders in' : ', not to the step that one orders in'}` : 'cannot be told'}</li>`)}</ul></section>
    ${plan.withheld.length ? html`<section><h2>What it cannot tell</h2><ul class="plain">${plan.withheld.map((/** @type {any} */ item) => html`<li><b>${set(capital(item.what))}</b>:
      ${set(item.why)}<br>What would settle it: ${set(item.needs)}</li>`)}</ul></section>` : nothing}
    ${list('Out of reach', plan.outOfReach)}
    <section><h2>Checked beforehand</h2><details><summary>Every reading against every limit</summary>
      <ul class="plain">${plan.points.map((/** @type {any} */ point) => html`<li><b>Reading ${point.reading}</b>${point.checks.map((/** @type {any} */ one) => html`<br>
        ${set(capital(one.what))}: ${one.at} of ${one.limit}, ${one.used} % (${one.rule})`)}</li>`)}</ul></details></section>
    ${list('What this assumes', plan.assumed)}</div>`;
}

/** @param {string} title @param {string[]} lines */
function list(title, lines) {
  if (lines.length === 0) return nothing;
  return html`<section><h2>${title}</h2><ul class="plain">${lines.map((line) => html`<li>${set(line)}</li>`)}</ul></section>`;
}
