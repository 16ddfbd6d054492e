/** What if: the same lay with one thing changed and nobody touching pump or gates, as the panel's gauges then show it. */
import { html, nothing } from 'lit';
import { check } from '../shared/api.js';
import { set } from '../shared/text.js';
import { choice, ids, sized, text } from './fields.js';
import { behind } from './tree.js';
import { write } from './yaml.js';

/** @typedef {import('./tree.js').Leg} Leg */
/** @typedef {{ asked: string, shown?: any, trouble?: string }} Found */
/** @typedef {{ place: string, what: string, by: string }} Wish what shall happen to one hose or tip */

const EVENTS = /** @type {const} */ ([['burst', 'lets go at a coupling'], ['kink', 'kinks'], ['gate', 'has its gate part shut'], ['tip', 'gets another tip']]);

/** What may happen at once: each tip opened or shut. @param {any} shown @returns {string[]} */
export function turns(shown) {
  return shown.tips.map((/** @type {any} */ tip) => `${tip.id} ${tip.shut ? 'opens' : 'shuts'}`);
}

/** A change as people say it. @param {string} change */
export function said(change) {
  const weak = /^hydrant (.*)$/.exec(change);
  return weak ? `the hydrant gives ${weak[1]} of its test` : change;
}

/** True where a hydrant feeds the lay. @param {any} lay */
function hasHydrant(lay) {
  return Boolean(lay.supply?.hydrant) || (lay.supply?.lines ?? []).some((/** @type {any} */ line) => line.hydrant);
}

/** The hydrant weaker than tested, by as much as is typed. @param {any} lay @param {string} share @param {(share: string) => void} choose @param {(change: string) => void} show */
export function weaker(lay, share, choose, show) {
  if (!hasHydrant(lay)) return nothing;
  return html`<div class="fields">${text('The hydrant gives, of its test', share, (value) => choose(sized(value, '%')))}
    <div class="field"><button @click=${() => show(`hydrant ${share}`)}>Show a weaker hydrant</button></div></div>`;
}

/** Where hose lies: the tips, the discharges and the joins of a lay. @param {any} lay @param {any} shown @returns {[string, string][]} */
function places(lay, shown) {
  const tips = shown.tips.map((/** @type {any} */ tip) => tip.id);
  /** @type {[string, string][]} */ const all = tips.map((/** @type {string} */ tip) => [tip, `to ${tip}`]);
  const rest = (/** @type {string} */ name, /** @type {Leg} */ leg, /** @type {string} */ from) => {
    if (!tips.includes(name) && leg.hose && (leg.join || behind(leg).length)) all.push([name, `${from} ${name}`]);
  };
  lay.lines.forEach((/** @type {Leg} */ line) => rest(line.discharge, line, 'from'));
  Object.entries(lay.joins ?? {}).forEach(([name, joint]) => { if (joint.hose && !tips.includes(name)) all.push([name, `behind ${name}`]); });
  return all;
}

/** The chooser of what happens to one hose. @param {any} lay @param {any} shown @param {any} kit @param {boolean} us @param {Wish} wish @param {(wish: Wish) => void} choose @param {(change: string) => void} show */
export function chooser(lay, shown, kit, us, wish, choose, show) {
  const all = places(lay, shown);
  const place = all.some(([id]) => id === wish.place) ? wish.place : all[0]?.[0] ?? '';
  const isTip = shown.tips.some((/** @type {any} */ tip) => tip.id === place);
  const what = wish.what === 'tip' && !isTip ? 'burst' : wish.what;
  const nozzles = Object.keys(kit.nozzles ?? {});
  const by = what === 'burst' ? (/^[1-9][0-9]?$/.test(wish.by) ? wish.by : '1') : what === 'kink' ? (wish.by.includes('@') ? wish.by : us ? '10 psi @ 100 gpm' : '70 kPa @ 400 L/min') : what === 'tip' ? (nozzles.includes(wish.by.split(' ')[0]) ? wish.by : nozzles[0] ?? '') : wish.by.includes('@') ? wish.by : 'half';
  return html`<div class="fields">${choice('The hose', place, all, (id) => choose({ place: id, what, by: '' }))}
    ${choice('What happens', what, EVENTS.filter(([word]) => word !== 'tip' || isTip), (word) => choose({ place, what: word, by: '' }))}
    ${what === 'burst' ? text('Coupling, counted from its start', by, (value) => choose({ place, what, by: value.trim() })) : nothing}
    ${what === 'kink' ? text('It takes', by, (value) => choose({ place, what, by: sized(value, '') })) : nothing}
    ${what === 'gate' ? text('Half, or what it takes', by, (value) => choose({ place, what, by: value.trim() || 'half' })) : nothing}
    ${what === 'tip' ? choice('To', by, tips(kit), (id) => choose({ place, what, by: id })) : nothing}
    <div class="field"><button @click=${() => show(`${place} ${what} ${by}`)}>Show it</button></div></div>`;
}

/** Every nozzle, with each of its settings. @param {any} kit @returns {[string, string][]} */
function tips(kit) {
  return ids(kit.nozzles).flatMap(([id]) => {
    const settings = Object.keys(kit.nozzles[id].settings ?? {});
    return settings.length ? settings.map((name) => /** @type {[string, string]} */ ([`${id} ${name}`, `${id}, ${name}`])) : [/** @type {[string, string]} */ ([id, id])];
  });
}

/** @param {any} lay @param {string} change @returns {Promise<Found>} */
export async function find(lay, change) {
  try {
    return { asked: change, shown: (await check('/lays/solve', { text: write(lay), whatIf: change })).whatIf };
  } catch (error) {
    return { asked: change, trouble: error instanceof Error ? error.message : String(error) };
  }
}

/** @param {Found} found */
export function beside(found) {
  if (found.trouble) return html`<p class="wrong">If ${said(found.asked)}: ${set(found.trouble)}</p>`;
  const { says, radio, broken, gauges, tips, cautions } = found.shown;
  const row = (/** @type {string} */ name, /** @type {any} */ one) => html`<tr><th scope="row" class="words">${name}</th><td>${one.now}</td><td>${one.then}</td></tr>`;
  return html`<h3>If ${says}, pump and gates untouched</h3>
    ${radio.map((/** @type {string} */ line) => html`<p class="wrong radio">${set(line)}</p>`)}
    ${broken.map((/** @type {string} */ line) => html`<p class="wrong">Beyond its limit: ${set(line)}</p>`)}
    ${cautions.map((/** @type {string} */ line) => html`<p class="caution">${set(line)}</p>`)}
    <div class="wide" tabindex="0" role="region" aria-label="What if ${says}"><table><thead><tr><th scope="col" class="words">gauge</th><th scope="col">now</th><th scope="col">then</th></tr></thead>
      <tbody>${gauges.map((/** @type {any} */ one) => row(one.gauge, one))}</tbody>
      <thead><tr><th scope="col" class="words">tip</th><th scope="col">now</th><th scope="col">then</th></tr></thead>
      <tbody>${tips.map((/** @type {any} */ one) => row(one.id, one))}</tbody></table></div>`;
}
