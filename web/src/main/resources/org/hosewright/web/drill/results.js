/** What the night shows: the verdict, the numbers, what it cannot tell. */
import { html, nothing } from 'lit';
import { set, capital } from '../shared/text.js';
import { steps } from '../shared/working.js';

/** @typedef {import('../shared/working.js').Working} Working */

/** @param {{ text: string, strong: boolean }[]} pieces */
export function verdict(pieces) {
  if (pieces.length === 0) return nothing;
  return html`<p class="verdict">${pieces.map((piece) => (piece.strong ? html`<b class="mark-act">${set(piece.text)}</b>` : set(piece.text)))}</p>`;
}

/** @param {any} shown */
export function answers(shown) {
  return html`<dl class="answers">${shown.headlines.map((/** @type {any} */ one) => answer(one, shown.workings))}</dl>`;
}

/** @param {{ id: string, what: string, text: string, note: string }} one @param {Working[]} workings */
function answer(one, workings) {
  const [value, ...rest] = one.text.split(' ');
  const percent = rest[0] === '%';
  const about = workings.filter((working) => working.title.includes(one.id));
  return html`<div class="answer">
    <dd><span class="value">${value}${percent ? ' %' : ''}</span><span class="unit">${set(rest.slice(percent ? 1 : 0).join(' '))}</span></dd>
    <dt>${set(one.what)}${one.note ? `, ${set(one.note)}` : ''}</dt>
    ${about.length ? html`<dd><details class="working"><summary>show the working</summary>${about.map(steps)}</details></dd>` : nothing}
  </div>`;
}

/** @param {any} shown */
export function cannotTell(shown) {
  if (shown.withheld.length === 0 && !shown.next) return nothing;
  return html`<section><h2>What this night cannot tell</h2>
    <ul class="plain">${shown.withheld.map((/** @type {any} */ item) => html`<li><b>${set(capital(item.what))}</b>: ${set(item.why)}
      ${item.needs ? html`<br>What would settle it: ${set(item.needs)}` : nothing}</li>`)}</ul>
    ${shown.next ? html`<p>The next reading that would tell most: ${set(shown.next)}</p>` : nothing}</section>`;
}

/** @param {any[]} rows @param {string} caption */
export function deliveries(rows, caption) {
  if (rows.length === 0) return nothing;
  return html`<div class="wide" tabindex="0" role="region" aria-label=${caption}><table class="deliveries">
    <caption>${set(caption)}</caption>
    <thead><tr><th scope="col">length</th><th scope="col">pumped</th><th scope="col">flow</th><th scope="col">at the tip</th>
      <th scope="col">reaction</th><th scope="col">needed</th></tr></thead>
    <tbody>${rows.map((row) => html`<tr><th scope="row">${row.length}</th><td>${row.pump}</td><td>${row.flow}</td><td>${row.tip}</td>
      <td>${row.reaction}</td><td><b>${row.needed}</b></td></tr>`)}</tbody></table></div>`;
}

/** Needed pressures with and without what was set aside. @param {any} shown */
export function needed(shown) {
  const aside = [...new Set(shown.needed.flatMap((/** @type {any} */ row) => Object.keys(row.with)))];
  if (shown.needed.length === 0) return nothing;
  return html`<section><h2>What each length needs, level</h2>
    <div class="wide" tabindex="0" role="region" aria-label="Needed pump pressures"><table class="deliveries">
    <thead><tr><th scope="col">length</th><th scope="col">pump</th>${aside.map((name) => html`<th scope="col">with reading ${name} used</th>`)}</tr></thead>
    <tbody>${shown.needed.map((/** @type {any} */ row) => html`<tr><th scope="row">${row.length}</th><td><b>${row.pump}</b></td>
      ${aside.map((name) => html`<td>${row.with[name] ?? ''}</td>`)}</tr>`)}</tbody></table></div></section>`;
}

/** @param {string} title @param {string[]} lines */
export function list(title, lines) {
  if (lines.length === 0) return nothing;
  return html`<section><h2>${title}</h2><ul class="plain">${lines.map((line) => html`<li>${set(line)}</li>`)}</ul></section>`;
}
