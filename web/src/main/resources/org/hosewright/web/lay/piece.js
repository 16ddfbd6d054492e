/** The fields of the pieces that stand in a line or at its end: monitor, standpipe, reducing valve, eductor, sprinklers. */
import { html, nothing } from 'lit';
import { choice, ids, rise, sized, text } from './fields.js';
import { freeKey, setNozzle } from './tree.js';

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
      return html`${quantity(desk, 'Rated', leg.eductor, 'rated', '')}${quantity(desk, 'Draws', leg.eductor, 'draws', '%')}${quantity(desk, 'Back pressure at most', leg.eductor, 'back-pressure', '%')}${quantity(desk, 'Concentrate', leg.eductor, 'concentrate', desk.us ? 'gal' : 'L')}`;
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
  const tips = monitor.tips;
  return html`${choice('Device', monitor.appliance ?? '', [['', 'not named'], ...ids(kit.appliances)], (id) => change(() => { if (id) monitor.appliance = id; else delete monitor.appliance; }))}
    ${tips ? Object.keys(tips).map((key) => tip(desk, tips[key], `Tip ${key}`, () => { delete tips[key]; only(monitor); })) : tip(desk, monitor, 'Nozzle')}
    <div class="field"><button @click=${() => change(() => another(monitor, kit))}>Add a tip</button></div>
    ${rise('Its tip stands', monitor.rise ?? `0 ${us ? 'ft' : 'm'}`, us ? 'ft' : 'm', (value) => change(() => { monitor.rise = value; }))}`;
}

/** One tip of a monitor. @param {Desk} desk @param {any} at @param {string} label @param {() => void} [takeOff] */
function tip({ kit, change }, at, label, takeOff) {
  const settings = kit.nozzles?.[at.nozzle]?.settings;
  const shut = String(at.shut) === 'true';
  return html`${choice(label, at.nozzle, ids(kit.nozzles), (id) => change(() => setNozzle(at, id, kit)))}
    ${settings ? choice(`${label} set to`, at.setting ?? '', ids(settings), (id) => change(() => { at.setting = id; })) : nothing}
    ${takeOff ? html`<div class="field"><button aria-pressed=${shut} @click=${() => change(() => { if (shut) delete at.shut; else at.shut = 'true'; })}>${shut ? 'Open' : 'Shut'} ${label.toLowerCase()}</button></div>
      <div class="field"><button @click=${() => change(takeOff, `${label} taken off.`)}>Take ${label.toLowerCase()} off</button></div>` : nothing}`;
}

/** A second tip beside the first, or one more. @param {any} monitor @param {any} kit */
function another(monitor, kit) {
  if (!monitor.tips) {
    const { nozzle, setting, shut } = monitor;
    for (const key of ['nozzle', 'setting', 'shut']) delete monitor[key];
    monitor.tips = { a: { nozzle, ...(setting && { setting }), ...(shut && { shut }) } };
  }
  const first = Object.keys(kit.nozzles ?? {})[0] ?? '';
  const tip = monitor.tips[freeKey(monitor.tips)] = { nozzle: first };
  setNozzle(tip, first, kit);
}

/** Where one tip is left it bears the name of its line. @param {any} monitor */
function only(monitor) {
  const left = Object.values(monitor.tips);
  if (left.length !== 1) return;
  delete monitor.tips;
  Object.assign(monitor, left[0]);
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
