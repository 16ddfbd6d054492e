/** The fields of the pieces that stand in a line or at its end: monitor, standpipe, reducing valve, eductor, sprinklers. */
import { html, nothing } from 'lit';
import { choice, ids, rise, sized, text } from './fields.js';
import { setNozzle } from './tree.js';

/** @typedef {import('./outline.js').Desk} Desk */

const VALVES = /** @type {const} */ ([
  ['plain', 'a plain valve'],
  ['fixed-reducer', 'a fixed reducing valve'],
  ['adjustable-reducer', 'an adjustable reducing valve'],
  ['restrictor', 'a restricting plate'],
  ['unknown', 'not known'],
]);

/** @param {Desk} desk @param {any} leg @param {string} word */
export function pieceFields(desk, leg, word) {
  switch (word) {
    case 'monitor':
      return monitor(desk, leg.monitor);
    case 'standpipe':
      return standpipe(desk, leg.standpipe);
    case 'outlet':
      return outlet(desk, leg);
    case 'pressure-reducer':
      return quantity(desk, 'Holds', leg[word], 'holds', desk.us ? 'psi' : 'kPa');
    case 'eductor':
      return html`${quantity(desk, 'Rated', leg.eductor, 'rated', '')}${quantity(desk, 'Draws', leg.eductor, 'draws', '%')}${quantity(desk, 'Concentrate', leg.eductor, 'concentrate', desk.us ? 'gal' : 'L')}`;
    case 'sprinklers':
      return html`${quantity(desk, desk.us ? 'One head at 1 psi' : 'One head at 1 bar', leg.sprinklers, 'k', desk.us ? 'gpm' : 'L/min')}${quantity(desk, 'Heads', leg.sprinklers, 'heads', '')}`;
    default:
      return nothing;
  }
}

/** A field that takes a key out where it is left empty. @param {Desk} desk @param {string} label @param {any} map @param {string} key @param {string} unit */
function quantity({ change }, label, map, key, unit) {
  return text(label, String(map[key] ?? ''), (value) => change(() => {
    if (value) map[key] = unit ? sized(value, unit) : value;
    else delete map[key];
  }));
}

/** @param {Desk} desk @param {any} monitor */
function monitor(desk, monitor) {
  const { kit, us, change } = desk;
  if (monitor.tips) return html`<p class="soft">Tips: ${Object.entries(monitor.tips).map(([key, tip]) => `${key} ${/** @type {any} */ (tip).nozzle}`).join(', ')}</p>`;
  const settings = kit.nozzles?.[monitor.nozzle]?.settings;
  return html`${choice('Device', monitor.appliance ?? '', [['', 'not named'], ...ids(kit.appliances)], (id) => change(() => { if (id) monitor.appliance = id; else delete monitor.appliance; }))}
    ${choice('Nozzle', monitor.nozzle, ids(kit.nozzles), (id) => change(() => setNozzle(monitor, id, kit)))}
    ${settings ? choice('Set to', monitor.setting ?? '', ids(settings), (id) => change(() => { monitor.setting = id; })) : nothing}
    ${rise('Its tip stands', monitor.rise ?? `0 ${us ? 'ft' : 'm'}`, us ? 'ft' : 'm', (value) => change(() => { monitor.rise = value; }))}`;
}

/** @param {Desk} desk @param {any} pipe */
function standpipe(desk, pipe) {
  const { us, change } = desk;
  return html`${rise('Up to the foot of its floors', pipe.rise, us ? 'ft' : 'm', (value) => change(() => { pipe.rise = value; }))}
    ${quantity(desk, 'Loss of riser and connection', pipe, 'loss', '')}
    ${quantity(desk, 'Posted at the connection', pipe, 'posted', us ? 'psi' : 'kPa')}`;
}

/** @param {Desk} desk @param {any} leg of an outlet */
function outlet({ us, change }, leg) {
  const kind = typeof leg.outlet === 'string' ? leg.outlet : Object.keys(leg.outlet ?? {})[0] ?? 'unknown';
  const first = kind === 'restrictor' ? (us ? '15 psi @ 100 gpm' : '100 kPa @ 400 L/min') : us ? '90 psi' : '600 kPa';
  return html`<div class="fields">${choice('Its valve is', kind, VALVES, (word) => change(() => { leg.outlet = word === 'plain' || word === 'unknown' ? word : { [word]: word === 'restrictor' ? (us ? '15 psi @ 100 gpm' : '100 kPa @ 400 L/min') : us ? '90 psi' : '600 kPa' }; }))}
    ${typeof leg.outlet === 'object' ? text(kind === 'restrictor' ? 'Takes' : 'Holds', leg.outlet[kind], (value) => change(() => { leg.outlet = { [kind]: sized(value || first, us ? 'psi' : 'kPa') }; })) : nothing}</div>`;
}
