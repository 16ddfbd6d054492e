/** A neighbour's packages as tables: theirs, what they said before, and ours of the same name beside them. */
import { html, nothing } from 'lit';
import { set } from '../shared/text.js';

/** @typedef {{ figure: string, flow: string, tip: string, tested: boolean }} Figure */
/** @typedef {{ length: string, before?: Figure, now?: Figure, ours?: Figure }} Row */

/** @param {any} one a neighbour or a file that came @param {{ before: boolean }} shown whether what they said before stands beside */
export function packages(one, shown) {
  return one.packages.map((/** @type {any} */ pack) => html`<article class="theirs"><h3>${one.company}: ${pack.name}</h3>
    ${pack.gone ? html`<p class="wrong">They hand it over no longer.</p>` : nothing}
    <p class="soft">Read on ${pack.gauge} of their ${pack.at}. ${pack.flown}</p>
    ${table(pack, one.standing !== 'held', shown.before)}
    <p>Hose: ${set(pack.hose)}.</p>
    <p>Nozzle: ${set(pack.nozzle)}.${pack.crew ? ` Crew of ${pack.crew}.` : ''}</p>
    <p>Each floor up they add ${pack.floorAdder}.${pack.mostGauge ? ` Never above ${pack.mostGauge}.` : ''} Longest safe stretch ${pack.safe}.</p>
    <p class="soft">Rests on: ${set(pack.evidence)}.</p>
    ${pack.conflicts.length ? html`<h4>Not the same thing as ours</h4><ul class="plain">${pack.conflicts.map((/** @type {string} */ says) => html`<li>${set(says)}</li>`)}</ul>` : nothing}</article>`);
}

/** @param {any} pack @param {boolean} past @param {boolean} before */
function table(pack, past, before) {
  const ours = pack.rows.some((/** @type {Row} */ row) => row.ours);
  return html`<div class="wide" role="region" tabindex="0" aria-label=${`Figures of ${pack.name}`}><table class=${past ? 'past' : ''}>
    <thead><tr><th scope="col">hose</th>${before ? html`<th scope="col">theirs before</th>` : nothing}<th scope="col">${before ? 'theirs now' : 'their pump and flow'}</th>${ours ? html`<th scope="col">ours, another line</th>` : nothing}</tr></thead>
    <tbody>${pack.rows.map((/** @type {Row} */ row) => html`<tr><th scope="row">${row.length}</th>${before ? cell(row.before) : nothing}${cell(row.now, changed(row, before))}${ours ? cell(row.ours) : nothing}</tr>`)}</tbody></table></div>`;
}

/** @param {Row} row @param {boolean} before */
function changed(row, before) {
  return before && row.before?.figure !== row.now?.figure;
}

/** @param {Figure | undefined} figure @param {boolean} [changes] */
function cell(figure, changes = false) {
  if (!figure) return html`<td>none</td>`;
  return html`<td class=${changes ? 'changed' : ''}><b class=${figure.tested ? '' : 'unflown'}>${figure.figure}</b> <span>${figure.flow}</span></td>`;
}
