/** What the night shows: the verdict, the numbers, what it cannot tell. */
import { html, nothing } from 'lit';
import { set, capital } from '../shared/text.js';
import { bare, head } from '../shared/table.js';
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

/** @param {{ what: string, text: string, note: string, working: string }} one @param {Working[]} workings */
function answer(one, workings) {
  const [value, ...rest] = one.text.split(' ');
  const percent = rest[0] === '%';
  const about = workings.filter((working) => working.title === one.working);
  return html`<div class="answer">
    <dd><span class="value">${value}${percent ? ' %' : ''}</span><span class="unit">${set(rest.slice(percent ? 1 : 0).join(' '))}</span></dd>
    <dt>${set(one.what)}${one.note ? `, ${set(one.note)}` : ''}</dt>
    ${about.length ? html`<dd><details class="working"><summary>show the working</summary>${about.map(steps)}</details></dd>` : nothing}
  </div>`;
}

/** @param {any} shown */
export function cannotTell(shown) {
  if (shown.withheld.length === 0) return nothing;
  return html`<section><h2>What this night cannot tell</h2>
    <ul class="plain">${shown.withheld.map((/** @type {any} */ item) => html`<li><b>${set(capital(item.what))}</b>: ${set(item.why)}
      ${item.needs ? html`<br>What would settle it: ${set(item.needs)}` : nothing}</li>`)}</ul></section>`;
}

/** Which reading to take next, or that no more is needed. @param {any} shown */
export function advice(shown) {
  if (!shown.next && !shown.stop) return nothing;
  return html`<div class="advice" role="status">
    ${shown.stop ? html`<p><b>Enough.</b> ${set(capital(shown.stop))}.</p>` : nothing}
    ${shown.next ? html`<p><b>${shown.stop ? 'If you go on all the same:' : 'Next:'}</b> ${set(shown.next)}.</p>` : nothing}</div>`;
}

/** @param {any[]} rows @param {string} caption */
export function deliveries(rows, caption) {
  if (rows.length === 0) return nothing;
  const [first] = rows;
  return html`<table class="deliveries">
    <caption>${set(caption)}</caption>
    <thead><tr>${head('length', first.length)}${head('pumped', first.pump)}${head('flow', first.flow)}${head('tip', first.tip)}
      ${head('reaction', first.reaction)}${head('needed', first.needed)}</tr></thead>
    <tbody>${rows.map((row) => html`<tr><th scope="row">${bare(row.length)}</th><td>${bare(row.pump)}</td><td>${bare(row.flow)}</td><td>${bare(row.tip)}</td>
      <td>${bare(row.reaction)}</td><td>${workingLink(row.needed, row.length)}</td></tr>`)}</tbody></table>`;
}

/** A needed pressure that leads to its working. @param {string} text @param {string} length */
function workingLink(text, length) {
  return html`<a class="number" href="#needed-${length.replace(' ', '-')}">${bare(text)}</a>`;
}

/** Needed pressures with and without what was set aside. @param {any} shown */
export function needed(shown) {
  const aside = [...new Set(shown.needed.flatMap((/** @type {any} */ row) => Object.keys(row.with)))];
  if (shown.needed.length === 0) return nothing;
  const [first] = shown.needed;
  return html`<section><h2>What each length needs, level</h2>
    <table class="deliveries">
    <thead><tr>${head('length', first.length)}${head('pump', first.pump)}${aside.map((name) => head(`with reading ${name} used`, first.with[name] ?? ''))}</tr></thead>
    <tbody>${shown.needed.map((/** @type {any} */ row) => html`<tr><th scope="row">${bare(row.length)}</th><td>${workingLink(row.pump, row.length)}</td>
      ${aside.map((name) => html`<td>${bare(row.with[name] ?? '')}</td>`)}</tr>`)}</tbody></table></section>`;
}

/** @param {string} title @param {string[]} lines */
export function list(title, lines) {
  if (lines.length === 0) return nothing;
  return html`<section><h2>${title}</h2><ul class="plain">${lines.map((line) => html`<li>${set(line)}</li>`)}</ul></section>`;
}
