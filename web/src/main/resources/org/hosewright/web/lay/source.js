/** What feeds the engine, and how its pump is run. */
import { html, nothing } from 'lit';
import { choice, ids, rise, sized, text } from './fields.js';
import { chain, chained } from './tree.js';

/** @typedef {import('./outline.js').Desk} Desk */

const SOURCES = /** @type {const} */ ([
  ['', 'not said'],
  ['hydrant', 'a hydrant'],
  ['tank', "the engine's tank"],
  ['draft', 'open water, drafted'],
]);

/** @param {Desk} desk */
export function source(desk) {
  const { lay, kit, us, change } = desk;
  const supply = lay.supply ?? {};
  if (supply.relay || supply.lines) return html`<p class="soft">Fed by ${supply.relay ? 'a relay' : 'several lines'}; change it in the text below.</p>`;
  const word = ['hydrant', 'tank', 'draft'].find((key) => key in supply) ?? '';
  return html`<div class="fields">
    ${choice('Engine', lay.engine, ids(kit.engines), (id) => change(() => { lay.engine = id; }))}
    ${choice('Fed by', word, SOURCES, (to) => change(() => put(lay, to, kit, us)))}
    ${word ? fields(desk, supply, word) : nothing}</div>`;
}

/** @param {any} lay @param {string} word @param {any} kit @param {boolean} us */
function put(lay, word, kit, us) {
  if (!word) {
    delete lay.supply;
    return;
  }
  const hoses = Object.keys(kit.hoses ?? {});
  const widest = hoses.filter((id) => id.startsWith('supply'))[0] ?? hoses.at(-1) ?? '';
  const hose = `${us ? '100 ft' : '25 m'} ${widest}`;
  const level = us ? '0 ft' : '0 m';
  if (word === 'hydrant') lay.supply = { hydrant: us ? { static: '60 psi', residual: '40 psi', at: '800 gpm' } : { static: '400 kPa', residual: '280 kPa', at: '3000 L/min' }, hose, rise: level, keep: us ? '20 psi' : '150 kPa' };
  else if (word === 'tank') lay.supply = { tank: { level: kit.engines?.[lay.engine]?.tank ?? (us ? '500 gal' : '1800 L') } };
  else lay.supply = { draft: { lift: us ? '10 ft' : '3 m', hose: `${us ? '100 ft' : '25 m'} ${widest}` } };
  const { engine, supply, ...rest } = lay;
  for (const key of Object.keys(lay)) delete lay[key];
  Object.assign(lay, { engine, supply, ...rest });
}

/** @param {Desk} desk @param {any} supply @param {string} word */
function fields(desk, supply, word) {
  const { kit, us, change } = desk;
  const [psi, gpm, ft] = us ? ['psi', 'gpm', 'ft'] : ['kPa', 'L/min', 'm'];
  const at = supply[word];
  const field = (/** @type {string} */ label, /** @type {any} */ map, /** @type {string} */ key, /** @type {string} */ unit) => text(label, map[key] ?? '', (value) => change(() => { if (value) map[key] = sized(value, unit); else delete map[key]; }));
  const holder = word === 'draft' ? at : supply;
  const parts = chain(holder.hose);
  const hose = parts.length === 0 ? nothing : html`${text('Hose', parts[0].length, (value) => change(() => { parts[0].length = sized(value, ft); holder.hose = chained(parts); }))}
    ${choice('of', parts[0].hose, ids(kit.hoses), (id) => change(() => { parts[0].hose = id; holder.hose = chained(parts); }))}`;
  if (word === 'tank') return html`${field('Water in it', at, 'level', us ? 'gal' : 'L')}${field('Tank to pump gives at most', at, 'most', gpm)}`;
  if (word === 'draft') return html`${field('Pump above the water', at, 'lift', ft)}${hose}${field('Strainer', at, 'strainer', '')}`;
  return html`${field('Static', at, 'static', psi)}${field('Residual', at, 'residual', psi)}${field('at a flow of', at, 'at', gpm)}${field('Tested on', at, 'tested', '')}
    ${hose}${rise('From there it goes', supply.rise, ft, (value) => change(() => { supply.rise = value; }))}${field('Keep at the intake', supply, 'keep', psi)}`;
}
