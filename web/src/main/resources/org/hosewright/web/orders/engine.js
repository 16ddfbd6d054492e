/** One engine's part of an order: its numbers old and new, and whether they have reached the rig. */
import { html, nothing } from 'lit';
import { bare, head } from '../shared/table.js';
import { capital, counted, set } from '../shared/text.js';

/** @typedef {{ when: (at: string) => string, step: (kind: string, note: string) => void }} Doing */

/** @param {any} one @param {any} order @param {Doing} doing */
export function engine(one, order, doing) {
  const changes = one.changed === 0 ? 'no number changes' : `${counted(one.changed, 'number')} of ${one.numbers} ${one.changed === 1 ? 'changes' : 'change'}`;
  return html`<section class="engine"><h2>${one.id}</h2>
    ${order.first ? nothing : html`<p>${capital(changes)}.</p>`}
    ${order.standing === 'in force' ? onTheRig(one, doing) : nothing}
    ${one.lines.map((/** @type {any} */ line) => lineOf(line, order))}</section>`;
}

/** @param {any} one @param {Doing} doing */
function onTheRig(one, doing) {
  const note = (/** @type {Event} */ event) => {
    event.preventDefault();
    const form = /** @type {HTMLFormElement} */ (event.target);
    doing.step('reported', String(new FormData(form).get('note') ?? ''));
    form.reset();
  };
  return html`<p>${one.fitted ? html`On the rig: confirmed by ${one.fitted.who}, ${doing.when(one.fitted.at)}.` : html`<b>Not yet confirmed on the rig.</b> <button @click=${() => doing.step('fitted', '')}>The new tags are on ${one.id}</button>`}</p>
    <p>${one.acknowledged.length ? html`Read by ${one.acknowledged.map((/** @type {any} */ mark) => mark.who).join(', ')}.` : html`Nobody has acknowledged it yet.`} <button @click=${() => doing.step('acknowledged', '')}>I have read it and will pump by it</button></p>
    ${one.reports.map((/** @type {any} */ report) => html`<p class="caution">${report.who}, ${doing.when(report.at)}: ${report.note} <button @click=${() => doing.step('answered', 'Looked into on the rig.')}>Looked into</button></p>`)}
    <form class="row" @submit=${note}><label class="inline">Something on ${one.id} does not agree <input name="note" maxlength="400" required></label><button>Report it</button></form>`;
}

/** @param {any} line @param {any} order */
function lineOf(line, order) {
  const is = line.boxes.find((/** @type {any} */ box) => box.is)?.is;
  if (!is) return nothing;
  return html`<section class="line"><h3>${line.package}${line.stale.length ? html` <span class="wrong">stale</span>` : nothing}</h3>
    ${line.stale.map((/** @type {string} */ why) => html`<p class="caution">${set(why)}</p>`)}
    <p class="soft">From ${line.discharge}. Read on ${set(line.gauge)}. ${set(capital(line.evidence))}.</p>
    <div class="wide" tabindex="0" role="region" aria-label="Ordered pressures of ${line.package}"><table class="figures">
      <thead><tr>${head('length', line.boxes[0].length)}${order.first ? nothing : head('was', is.figure)}${head('ordered', is.figure)}${order.first ? nothing : head('gave', is.flow)}${head('gives', is.flow)}${head('tip', is.tip)}${head('reaction', is.reaction)}</tr></thead>
      <tbody>${line.boxes.map((/** @type {any} */ box) => boxOf(box, order))}</tbody></table></div>
    <p>Each floor up: add ${line.floorAdder}${line.mostGauge ? `, never above ${line.mostGauge}` : ''}. Safe to ${line.safe}, level.</p></section>`;
}

/** @param {any} box @param {any} order */
function boxOf(box, order) {
  const was = box.was?.stands ? box.was : undefined;
  if (!box.is.stands) {
    return html`<tr class="refused"><th scope="row">${bare(box.length)}</th><td class="words" colspan=${order.first ? 5 : 7}><span class="wrong">refused</span> <s>${box.is.figure}</s> ${set(box.is.refusal.join(' '))}</td></tr>`;
  }
  return html`<tr class=${box.changed && !order.first ? 'changed' : ''}><th scope="row">${bare(box.length)}</th>
    ${order.first ? nothing : html`<td>${was ? bare(was.figure) : 'new'}</td>`}
    <td class="figure">${bare(box.is.figure)}${box.changed && !order.first ? html` <span class="untested">changed</span>` : nothing}${box.is.tested ? nothing : html`<span class="untested">untested</span>`}</td>
    ${order.first ? nothing : html`<td>${was ? bare(was.flow) : nothing}</td>`}
    <td>${bare(box.is.flow)}</td><td>${bare(box.is.tip)}</td><td>${bare(box.is.reaction)}</td></tr>`;
}
