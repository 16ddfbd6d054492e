/** The answer of a lay: what is beyond its limit and what a second line does stand before the number. */
import { html, nothing } from 'lit';
import { set } from '../shared/text.js';

/** @param {any} shown */
export function warnings(shown) {
  return html`${shown.radio.map((/** @type {string} */ line) => html`<p class="wrong radio">${set(line)}</p>`)}
    ${shown.broken.map((/** @type {string} */ line) => html`<p class="wrong">Beyond its limit: ${set(line)}</p>`)}
    ${shown.outside.map((/** @type {string} */ line) => html`<p class="caution outside">${set(line)}</p>`)}
    ${shown.second.map((/** @type {string} */ line) => html`<p class="caution second">${set(line)}</p>`)}`;
}

/** @param {any} shown */
export function figures(shown) {
  const [pressure, half] = shown.pump.pressure.split(' ± ');
  const space = pressure.indexOf(' ');
  return html`<dl class="answers">
    <div class="answer pump-answer"><dt>Pump pressure</dt><dd><span class="value">${pressure.slice(0, space)}</span><span class="unit">${pressure.slice(space + 1)}${half ? ` ± ${half}` : ''}</span>
      <span class="from">before the discharge piping, ${shown.pump.flow} in all${shown.pump.intake ? `, ${shown.pump.intake} left at the intake` : ''}</span></dd></div>
    ${shown.gates.map((/** @type {any} */ gate) => html`<div class="answer"><dd class="gate-says">${gate.says}</dd></div>`)}
  </dl>`;
}

/** @param {any} shown @param {string} tip whose profile is shown @param {(tip: string) => void} choose */
export function tips(shown, tip, choose) {
  return html`<div class="wide" tabindex="0" role="region" aria-label="Tips"><table class="lay-tips"><thead><tr><th scope="col" class="words">tip</th><th scope="col">flow</th><th scope="col">at the tip</th><th scope="col">reaction</th></tr></thead>
    <tbody>${shown.tips.map((/** @type {any} */ one) => html`<tr><th scope="row" class="words">${one.shut ? one.id : html`<button class="link" aria-pressed=${one.id === tip} @click=${() => choose(one.id)}>${one.id}</button>`}</th>
      ${one.shut ? html`<td colspan="3">shut, sees ${one.pressure}</td>` : html`<td>${one.flow}</td><td>${one.pressure}</td><td>${one.reaction}</td>`}</tr>`)}</tbody></table></div>`;
}

/** @param {any} shown */
export function limits(shown) {
  return html`<section><h2>Limits, the tightest first</h2>
    <div class="wide" tabindex="0" role="region" aria-label="Limits"><table class="lay-limits"><thead><tr><th scope="col" class="words">limit</th><th scope="col">stands at</th><th scope="col">of</th><th scope="col">used</th></tr></thead>
    <tbody>${shown.limits.map((/** @type {any} */ limit) => html`<tr class=${limit.broken ? 'broken' : ''}><th scope="row" class="words">${set(limit.what)}<span class="rule">${set(limit.rule)}</span></th>
      <td>${limit.at}</td><td>${limit.limit}</td><td>${limit.used} %${limit.broken ? html` <b>beyond</b>` : nothing}</td></tr>`)}</tbody></table></div></section>`;
}

/** What the gauges at the panel show, so that the operator may compare. @param {any} shown */
export function panel(shown) {
  return html`<section><h2>What the gauges show</h2>
    <div class="wide" tabindex="0" role="region" aria-label="What the gauges show"><table class="lay-panel"><thead><tr><th scope="col" class="words">gauge</th><th scope="col">shows</th><th scope="col">flow</th></tr></thead>
    <tbody>${shown.panel.map((/** @type {any} */ one) => html`<tr><th scope="row" class="words">${one.gauge}</th><td>${one.pressure}</td><td>${one.flow ?? ''}</td></tr>`)}</tbody></table></div></section>`;
}

/** How fast the water runs, and what shutting at once may add. @param {any} shown */
export function hoses(shown) {
  return html`<details class="working"><summary>how fast the water runs, and a sudden stop</summary>
    <p class="soft">A sudden stop is an estimate, with a pressure wave of ${shown.hoses.wave}; none for fire hose is published. It only warns: no limit counts it. Shut slowly.</p>
    <div class="wide" tabindex="0" role="region" aria-label="Water in the hose"><table><thead><tr><th scope="col" class="words">hose</th><th scope="col" class="words">to</th><th scope="col">flow</th><th scope="col">runs at</th><th scope="col">a sudden stop adds about</th></tr></thead>
    <tbody>${shown.hoses.list.map((/** @type {any} */ one) => html`<tr><th scope="row" class="words">${one.hose}</th><td class="words">${one.to}</td><td>${one.flow}</td><td>${one.velocity}</td><td>${one.stop}</td></tr>`)}</tbody></table></div></details>`;
}

/** @param {any} shown */
export function cautions(shown) {
  return html`${shown.cautions.length ? html`<section><h2>Keep in mind</h2>${shown.cautions.map((/** @type {string} */ line) => html`<p class="caution">${set(line)}</p>`)}</section>` : nothing}
    ${shown.assumed.length ? html`<section><h2>What this assumes</h2><ul class="plain">${shown.assumed.map((/** @type {string} */ line) => html`<li>${set(line)}</li>`)}</ul></section>` : nothing}`;
}

/** The same by the trade's field methods. @param {any} shown */
export function methods(shown) {
  return html`<details class="working"><summary>the same by the trade's methods</summary>
    <div class="wide" tabindex="0" role="region" aria-label="Field methods"><table><thead><tr><th scope="col" class="words">method</th><th scope="col" class="words">to</th><th scope="col">pump</th><th scope="col">off by</th></tr></thead>
    <tbody>${shown.methods.map((/** @type {any} */ one) => html`<tr><th scope="row" class="words">${one.method}${one.refused || one.note ? html`<span class="rule">${set(one.refused || one.note)}</span>` : nothing}</th>
      <td class="words">${one.tip}</td><td>${one.pump ?? 'not good here'}</td><td>${one.off ?? ''}</td></tr>`)}</tbody></table></div></details>`;
}
