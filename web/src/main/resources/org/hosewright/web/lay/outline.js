/** The lay piece by piece in laying order; every piece can be changed where it stands. */
import { html, nothing } from 'lit';
import { ENDS, behind, chain, chained, endOf, freeKey, freshLeg, joined, setEnd, setNozzle } from './tree.js';
import { choice, ids, rise, sized, text } from './fields.js';
import { pieceFields } from './piece.js';

/** @typedef {import('./tree.js').Leg} Leg */
/** @typedef {{ lay: any, kit: any, us: boolean, shown: any, change: (does: () => void, says?: string) => void }} Desk */

/** @param {Desk} desk */
export function outline(desk) {
  const { lay, kit, change } = desk;
  const discharges = kit.engines?.[lay.engine]?.discharges ?? {};
  const used = lay.lines.map((/** @type {Leg} */ line) => line.discharge);
  const free = Object.keys(discharges).filter((id) => !used.includes(id));
  return html`<ol class="lay-lines">
    ${lay.lines.map((/** @type {Leg} */ line, /** @type {number} */ i) => html`<li><h3>Line from ${line.discharge}</h3>
      <div class="fields">${choice('Discharge', line.discharge, ids(discharges), (id) => change(() => { line.discharge = id; }))}</div>
      ${leg(desk, line, line.discharge)}
      ${lay.lines.length > 1 ? html`<p><button @click=${() => change(() => { lay.lines.splice(i, 1); prune(lay); }, `Line from ${line.discharge} taken up.`)}>Take up the line from ${line.discharge}</button></p>` : nothing}</li>`)}
    ${Object.entries(lay.joins ?? {}).map(([name, joint]) => html`<li><h3>Behind ${name}</h3>
      <div class="fields">${choice('Siamese', joint.appliance ?? '', [['', 'not named'], ...ids(kit.appliances)], (id) => change(() => { if (id) joint.appliance = id; else delete joint.appliance; }))}</div>
      ${leg(desk, joint, name)}</li>`)}</ol>
    ${free.length ? html`<p><button @click=${() => change(() => lay.lines.push({ discharge: free[0], ...freshLeg(kit) }))}>Lay another line, from ${free[0]}</button></p>` : nothing}`;
}

/** Joins that nothing leads to any more are taken out. @param {any} lay */
export function prune(lay) {
  const found = new Set();
  const look = (/** @type {Leg} */ one) => { if (one.join) found.add(one.join); behind(one).forEach(([, next]) => look(next)); };
  lay.lines.forEach(look);
  Object.values(lay.joins ?? {}).forEach(look);
  for (const name of Object.keys(lay.joins ?? {})) if (!found.has(name)) delete lay.joins[name];
  if (lay.joins && Object.keys(lay.joins).length === 0) delete lay.joins;
}

/** @param {Desk} desk @param {Leg} one @param {string} path @returns {unknown} */
function leg(desk, one, path) {
  const { lay, kit, us, change } = desk;
  const unit = us ? 'ft' : 'm';
  const parts = chain(one.hose);
  const put = (/** @type {import('./tree.js').Stretch[]} */ to) => { if (to.length) one.hose = chained(to); else delete one.hose; };
  return html`<div class="lay-leg" role="group" aria-label="Hose to ${path}">
    ${parts.map((part, i) => html`<div class="fields stretch-fields">
      ${text('Hose', part.length, (value) => change(() => { parts[i].length = sized(value, unit); put(parts); }), us ? '200 ft' : '75 m')}
      ${choice('of', part.hose, ids(kit.hoses), (id) => change(() => { parts[i].hose = id; put(parts); }))}
      ${i > 0 ? html`<button @click=${() => change(() => { parts.splice(i, 1); put(parts); })}>Take this hose out</button>` : nothing}</div>`)}
    <div class="fields">
      ${rise('It goes', one.rise, unit, (value) => change(() => { one.rise = value; }))}
      ${choice('Ends in', endOf(one), ENDS, (word) => change(() => { setEnd(lay, one, word, kit); prune(lay); }))}
      ${end(desk, one, path)}${amiss(desk, one)}</div>
    <p class="lay-more"><button class="link" @click=${() => change(() => put([...parts, { ...(parts.at(-1) ?? chain(freshLeg(kit).hose)[0]) }]))}>Add hose</button>
      ${may(desk, one, path)}</p>
    ${next(desk, one, path)}</div>`;
}

/** A gate part shut at its start, and what is amiss with its hose. @param {Desk} desk @param {Leg} one */
function amiss({ lay, us, shown, change }, one) {
  const kink = us ? '10 psi @ 100 gpm' : '70 kPa @ 400 L/min';
  const [what] = Object.keys(one.damage ?? {});
  const put = (/** @type {string} */ word) => {
    if (!word) delete one.damage;
    else one.damage = word === 'kink' ? { kink } : { burst: '1' };
    const now = shown?.result.pump.pressure;
    if (word === 'burst' && !lay.ask.pump && now) lay.ask = { pump: `${Math.round(now.value)} ${now.unit}` };
  };
  return html`${one.gate ? text('Gate at its start, half or what it takes', one.gate, (value) => change(() => { if (value) one.gate = value; else delete one.gate; })) : nothing}
    ${what ? html`${choice('Its hose', what, [['', 'is sound'], ['kink', 'is kinked'], ['burst', 'has let go']], (word) => change(() => put(word)))}
      ${text(what === 'kink' ? 'The kink takes' : 'Coupling, counted from its start', String(one.damage[what]), (value) => change(() => { one.damage = { [what]: value || (what === 'kink' ? kink : '1') }; }))}` : nothing}`;
}

/** The ways to what is amiss, where nothing is. @param {Desk} desk @param {Leg} one @param {string} path */
function may({ us, change }, one, path) {
  return html`${one.gate ? html`<button class="link" @click=${() => change(() => { delete one.gate; })}>Open its gate</button>` : html`<button class="link" aria-label="Gate ${path} part shut" @click=${() => change(() => { one.gate = 'half'; })}>Gate part shut</button>`}
    ${one.damage ? html`<button class="link" @click=${() => change(() => { delete one.damage; })}>Its hose is sound</button>` : html`<button class="link" aria-label="A kink to ${path}" @click=${() => change(() => { one.damage = { kink: us ? '10 psi @ 100 gpm' : '70 kPa @ 400 L/min' }; })}>Kink or burst</button>`}`;
}

/** @param {Desk} desk @param {Leg} one @param {string} path */
function end(desk, one, path) {
  const { lay, kit, change } = desk;
  const word = endOf(one);
  if (word === 'nozzle') return nozzle(desk, one, path);
  if (word === 'join') return text('Name of the siamese', one.join, (name) => change(() => { one.join = name; joined(lay, name, kit); prune(lay); }));
  if (word === 'wye' || word === 'manifold') return choice('Which', one[word].appliance ?? '', [['', 'not named'], ...ids(kit.appliances)], (id) => change(() => { if (id) one[word].appliance = id; else delete one[word].appliance; }));
  return pieceFields(desk, one, word);
}

/** @param {Desk} desk @param {Leg} one @param {string} path */
function nozzle({ kit, change }, one, path) {
  const settings = kit.nozzles?.[one.nozzle]?.settings;
  const shut = String(one.shut) === 'true';
  return html`${choice('Nozzle', one.nozzle, ids(kit.nozzles), (id) => change(() => setNozzle(one, id, kit)))}
    ${settings ? choice('Set to', one.setting ?? '', ids(settings), (id) => change(() => { one.setting = id; })) : nothing}
    ${choice('Crew', String(one.crew ?? ''), [['', 'not said'], ...[1, 2, 3, 4, 5].map((n) => /** @type {[string, string]} */ ([String(n), String(n)]))], (n) => change(() => { if (n) one.crew = n; else delete one.crew; }))}
    <div class="field shut-field"><button aria-pressed=${shut} @click=${() => change(() => { if (shut) delete one.shut; else one.shut = 'true'; })}>${shut ? `Open ${path}` : `Shut ${path}`}</button></div>`;
}

/** @param {Desk} desk @param {Leg} one @param {string} path */
function next(desk, one, path) {
  const { kit, change } = desk;
  const word = endOf(one);
  const legs = behind(one);
  if (legs.length === 0) return nothing;
  const named = word === 'standpipe' ? one.standpipe.outlets : one[word].legs;
  const can = word === 'wye' || word === 'manifold' || word === 'standpipe';
  return html`<ol class="lay-legs">${legs.map(([key, below]) => html`<li>${key ? html`<h3>${word === 'standpipe' ? 'Outlet' : 'Leg'} ${key}</h3>` : html`<h3>Behind it</h3>`}
      ${word === 'standpipe' ? pieceFields(desk, below, 'outlet') : nothing}
      ${leg(desk, below, key ? `${path}/${key}` : path)}
      ${can && legs.length > (word === 'standpipe' ? 1 : 2) ? html`<p><button @click=${() => change(() => { delete named[key]; }, `Leg ${key} taken up.`)}>Take up leg ${key}</button></p>` : nothing}</li>`)}</ol>
    ${can ? html`<p><button @click=${() => change(() => { named[freeKey(named)] = { ...(word === 'standpipe' && { outlet: 'plain' }), ...freshLeg(kit) }; })}>Lay another leg at ${word === 'standpipe' ? 'the standpipe' : `this ${word}`}</button></p>` : nothing}`;
}
