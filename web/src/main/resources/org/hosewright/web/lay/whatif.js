/** What if: the same lay with one thing changed and nobody touching pump or gates; shown beside the normal result. */
import { html, nothing } from 'lit';
import { check } from '../shared/api.js';
import { set } from '../shared/text.js';
import { behind, endOf } from './tree.js';
import { write } from './yaml.js';

/** @typedef {import('./tree.js').Leg} Leg */
/** @typedef {{ says: string, does: (lay: any) => void }} Change */
/** @typedef {{ says: string, shown?: any, trouble?: string }} Found */

/** Every leg of a lay with the way to it. @param {any} lay @returns {[string, Leg][]} */
function legs(lay) {
  /** @type {[string, Leg][]} */ const all = [];
  const walk = (/** @type {string} */ path, /** @type {Leg} */ leg) => {
    all.push([path, leg]);
    behind(leg).forEach(([key, next]) => walk(key ? `${path}/${key}` : path, next));
  };
  lay.lines.forEach((/** @type {Leg} */ line) => walk(line.discharge, line));
  Object.entries(lay.joins ?? {}).forEach(([name, joint]) => walk(name, joint));
  return all;
}

/** The leg at the end of a way. @param {any} lay @param {string} path @returns {Leg} */
function legAt(lay, path) {
  return legs(lay).find(([at]) => at === path)?.[1] ?? {};
}

/** A hydrant that gives less than tested: the same drop at three quarters of the flow. @param {any} hydrant */
function weaken(hydrant) {
  const [number, ...unit] = String(hydrant.at).split(' ');
  hydrant.at = `${Number(number) * 0.75} ${unit.join(' ')}`;
}

/** What may happen to a lay. @param {any} lay @param {any} shown @param {boolean} us @returns {Change[]} */
export function changes(lay, shown, us) {
  /** @type {Change[]} */ const first = [];
  /** @type {Change[]} */ const all = [];
  for (const [path, leg] of legs(lay)) {
    const name = shown.paths[path] ?? path;
    if (endOf(leg) === 'nozzle') {
      const shut = String(leg.shut) === 'true';
      first.push({ says: `${name} ${shut ? 'opens' : 'shuts'}`, does: (other) => { if (shut) delete legAt(other, path).shut; else legAt(other, path).shut = 'true'; } });
    }
    if (leg.hose) {
      all.push({ says: `the hose to ${name} bursts at its first coupling`, does: (other) => { legAt(other, path).damage = { burst: '1' }; } });
      all.push({ says: `the hose to ${name} kinks`, does: (other) => { legAt(other, path).damage = { kink: us ? '10 psi @ 100 gpm' : '70 kPa @ 400 L/min' }; } });
      all.push({ says: `the gate to ${name} is half shut`, does: (other) => { legAt(other, path).gate = 'half'; } });
    }
  }
  if (lay.supply?.hydrant) first.push({ says: 'the hydrant gives a quarter less than tested', does: (other) => weaken(other.supply.hydrant) });
  return [...first, ...all];
}

/** The lay with pump and gates left as they stand, and one change. @param {any} lay @param {any} shown @param {Change} change */
export function changed(lay, shown, change) {
  const other = structuredClone(lay);
  const pump = shown.result.pump.pressure;
  other.ask = { pump: `${pump.value} ${pump.unit}` };
  for (const gate of shown.result.gates ?? []) {
    const line = other.lines.find((/** @type {Leg} */ one) => one.discharge === gate.discharge);
    const flow = gate.flow;
    if (line && flow) line.gate = `${gate.gateDown.value} ${gate.gateDown.unit} @ ${flow.value} ${flow.unit}`;
  }
  change.does(other);
  return other;
}

/** @param {any} lay @param {any} shown @param {Change} change @returns {Promise<Found>} */
export async function find(lay, shown, change) {
  try {
    return { says: change.says, shown: await check('/lays/solve', { text: write(changed(lay, shown, change)) }) };
  } catch (error) {
    return { says: change.says, trouble: error instanceof Error ? error.message : String(error) };
  }
}

/** @param {any} shown the normal result @param {Found} found */
export function beside(shown, found) {
  if (found.trouble) return html`<p class="wrong">If ${found.says}: ${set(found.trouble)}</p>`;
  const then = new Map(found.shown.tips.map((/** @type {any} */ tip) => [tip.id, tip]));
  const cell = (/** @type {any} */ tip) => (!tip || tip.shut ? 'shut' : html`${tip.flow}, ${tip.pressure}`);
  return html`<h3>If ${found.says}, pump and gates untouched</h3>
    ${found.shown.broken.map((/** @type {string} */ line) => html`<p class="wrong">Beyond its limit: ${set(line)}</p>`)}
    <div class="wide" tabindex="0" role="region" aria-label="What if ${found.says}"><table><thead><tr><th scope="col" class="words">at</th><th scope="col">now</th><th scope="col">then</th></tr></thead><tbody>
      <tr><th scope="row" class="words">pump, ${shown.pump.pressure.split(' ±')[0]}</th><td>${shown.pump.flow}</td><td>${found.shown.pump.flow}</td></tr>
      ${shown.pump.intake ? html`<tr><th scope="row" class="words">intake</th><td>${shown.pump.intake}</td><td>${found.shown.pump.intake}</td></tr>` : nothing}
      ${shown.tips.map((/** @type {any} */ tip) => html`<tr><th scope="row" class="words">${tip.id}</th><td>${cell(tip)}</td><td>${cell(then.get(tip.id))}</td></tr>`)}</tbody></table></div>`;
}
