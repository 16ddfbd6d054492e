/** What feeds the engine: one source, several supply lines side by side, or a relay of engines from the source. */
import { html, nothing } from 'lit';
import { choice, ids, rise, sized, text } from './fields.js';
import { chain, chained } from './tree.js';

/** @typedef {import('./outline.js').Desk} Desk */
/** @typedef {Record<string, any>} Supply */

/** @type {[string, string][]} */
const SOURCES = [['hydrant', 'a hydrant'], ['tank', "the engine's tank"], ['draft', 'open water, drafted']];

/** @param {Desk} desk */
export function source(desk) {
  const { lay, kit, us, change } = desk;
  const supply = lay.supply ?? {};
  const word = supply.lines ? 'lines' : wordOf(supply);
  return html`<div class="fields">
    ${choice('Engine', lay.engine, ids(kit.engines), (id) => change(() => swap(lay, id, kit)))}
    ${choice('Fed by', word, [['', 'not said'], ...SOURCES, ['lines', 'several supply lines']], (to) => change(() => put(lay, to, kit, us)))}
    ${speed(desk)}
    ${word && word !== 'lines' ? html`${fields(desk, supply, word)}${keep(desk, supply, word)}` : nothing}</div>
    ${word === 'lines' ? several(desk, supply) : nothing}${word && word !== 'lines' ? relay(desk, supply) : nothing}`;
}

/** Another engine; lines keep their discharge where it has one of that name. @param {any} lay @param {string} id @param {any} kit */
function swap(lay, id, kit) {
  lay.engine = id;
  const has = Object.keys(kit.engines?.[id]?.discharges ?? {});
  const kept = lay.lines.map((/** @type {any} */ line) => line.discharge).filter((/** @type {string} */ one) => has.includes(one));
  const free = has.filter((one) => !kept.includes(one));
  for (const line of lay.lines) if (!has.includes(line.discharge) && free.length) line.discharge = free.shift();
}

/** How its pump answers: it holds its pressure, or its speed, which needs a point that was read. @param {Desk} desk */
function speed({ lay, us, shown, change }) {
  const fixed = lay.pump?.speed === 'fixed';
  const [psi, gpm] = us ? ['psi', 'gpm'] : ['kPa', 'L/min'];
  const read = (/** @type {string} */ key, /** @type {string} */ unit, /** @type {number} */ usual) => {
    const now = shown?.result.pump[key];
    return now ? `${Math.round(now.value)} ${now.unit}` : `${usual} ${unit}`;
  };
  const to = (/** @type {string} */ word) => {
    if (word === 'speed') {
      lay.pump = { speed: 'fixed', at: read('pressure', psi, us ? 100 : 700), flow: read('flow', gpm, us ? 150 : 600) };
      lay.ask = { pump: lay.pump.at };
    } else delete lay.pump;
  };
  return html`${choice('Its pump holds', fixed ? 'speed' : 'pressure', [['pressure', 'its pressure'], ['speed', 'its speed']], (word) => change(() => to(word)))}
    ${fixed ? html`${text('Read at', lay.pump.at, (value) => change(() => { lay.pump.at = sized(value, psi); lay.ask = { pump: lay.pump.at }; }))}
      ${text('with a flow of', lay.pump.flow, (value) => change(() => { lay.pump.flow = sized(value, gpm); }))}` : nothing}`;
}

/** @param {Supply} supply */
function wordOf(supply) {
  return SOURCES.map(([word]) => word).find((word) => word in supply) ?? '';
}

/** The hose that supply is laid with, as far as the kit's names tell. @param {any} kit @param {boolean} us */
function freshHose(kit, us) {
  const hoses = Object.keys(kit.hoses ?? {});
  return `${us ? '100 ft' : '25 m'} ${hoses.filter((id) => id.startsWith('supply'))[0] ?? hoses.at(-1) ?? ''}`;
}

/** A source with its hose. @param {any} lay @param {string} word @param {any} kit @param {boolean} us @returns {Supply} */
function fresh(lay, word, kit, us) {
  const hose = freshHose(kit, us);
  if (word === 'hydrant') return { hydrant: us ? { static: '60 psi', residual: '40 psi', at: '800 gpm' } : { static: '400 kPa', residual: '280 kPa', at: '3000 L/min' }, hose, rise: us ? '0 ft' : '0 m' };
  if (word === 'tank') return { tank: { level: kit.engines?.[lay.engine]?.tank ?? (us ? '500 gal' : '1800 L') } };
  return { draft: { lift: us ? '10 ft' : '3 m', hose } };
}

/** @param {any} lay @param {string} word @param {any} kit @param {boolean} us */
function put(lay, word, kit, us) {
  if (!word) {
    delete lay.supply;
    return;
  }
  const least = us ? '20 psi' : '150 kPa';
  if (word === 'lines') {
    const before = lay.supply && wordOf(lay.supply) ? without(lay.supply, us) : fresh(lay, 'hydrant', kit, us);
    lay.supply = { keep: lay.supply?.keep ?? least, lines: [before, fresh(lay, 'hydrant', kit, us)] };
  } else {
    lay.supply = { ...fresh(lay, word, kit, us), ...(word === 'hydrant' && { keep: least }) };
  }
  const { engine, supply, ...rest } = lay;
  for (const key of Object.keys(lay)) delete lay[key];
  Object.assign(lay, { engine, supply, ...rest });
}

/** A supply as one line among several; a relay beside others needs its last pump's pressure. @param {Supply} supply @param {boolean} us @returns {Supply} */
function without({ keep: _, ...rest }, us) {
  if (rest.relay) rest.relay[rest.relay.length - 1].pump ??= besides(us);
  if (rest.tank) rest.tank.loss ??= tankLoss(us);
  return rest;
}

/** What a pump of a relay beside others is first taken to stand at. @param {boolean} us */
function besides(us) {
  return us ? '100 psi' : '700 kPa';
}

/** What tank piping beside other supply lines is first taken to lose. @param {boolean} us */
function tankLoss(us) {
  return us ? '10 psi @ 500 gpm' : '70 kPa @ 1900 L/min';
}

/** @param {Desk} desk @param {Supply} supply */
function several(desk, supply) {
  const { lay, kit, us, change } = desk;
  return html`<ol class="lay-legs">${supply.lines.map((/** @type {Supply} */ line, /** @type {number} */ i) => {
    const word = wordOf(line);
    return html`<li><h3>Supply line ${i + 1}</h3><div class="fields" role="group" aria-label="Supply line ${i + 1}">
      ${choice('From', word, SOURCES, (to) => change(() => { supply.lines[i] = without(fresh(lay, to, kit, us), us); }))}${fields(desk, line, word)}</div>
      ${relay(desk, line, true)}
      ${supply.lines.length > 2 ? html`<p><button @click=${() => change(() => { supply.lines.splice(i, 1); }, `Supply line ${i + 1} taken up.`)}>Take up supply line ${i + 1}</button></p>` : nothing}</li>`;
  })}</ol>
    <div class="fields">${keep(desk, supply, 'lines')}</div>
    <p><button @click=${() => change(() => supply.lines.push(fresh(lay, 'hydrant', kit, us)))}>Lay another supply line</button></p>`;
}

/** Every engine that the supply relays over. @param {Supply} supply @returns {string[]} */
function relaying(supply) {
  return [supply, ...(supply.lines ?? [])].flatMap((line) => (line.relay ?? []).map((/** @type {any} */ one) => one.engine));
}

/** The engines between source and pump, the one at the source first. @param {Desk} desk @param {Supply} supply @param {boolean} [beside] whether other lines lead into the same intake */
function relay(desk, supply, beside = false) {
  const { lay, kit, us, change } = desk;
  const pumpers = supply.relay ?? [];
  const taken = [lay.engine, ...relaying(lay.supply)];
  const free = Object.keys(kit.engines ?? {}).filter((id) => !taken.includes(id) && Object.keys(kit.engines[id].discharges ?? {}).length > 0);
  return html`${pumpers.length ? html`<ol class="lay-legs">${pumpers.map((/** @type {any} */ one, /** @type {number} */ i) => html`<li><h3>${one.engine} in the relay</h3>${pumper(desk, one)}
      <p><button @click=${() => change(() => { pumpers.splice(i, 1); if (pumpers.length === 0) delete supply.relay; }, `${one.engine} taken out of the relay.`)}>Take ${one.engine} out</button></p></li>`)}</ol>` : nothing}
    ${free.length ? html`<p><button @click=${() => change(() => { supply.relay = [...pumpers, { engine: free[0], discharge: Object.keys(kit.engines[free[0]].discharges)[0], hose: freshHose(kit, us), rise: us ? '0 ft' : '0 m', ...(beside && { pump: besides(us) }) }]; })}>Let ${free[0]} relay the water</button></p>` : nothing}`;
}

/** @param {Desk} desk @param {any} one */
function pumper({ kit, us, change }, one) {
  const [psi, ft] = us ? ['psi', 'ft'] : ['kPa', 'm'];
  return html`<div class="fields" role="group" aria-label=${`${one.engine} in the relay`}>
    ${choice('Engine', one.engine, ids(kit.engines), (id) => change(() => { one.engine = id; one.discharge = Object.keys(kit.engines[id].discharges ?? {})[0] ?? ''; }))}
    ${choice('Discharge', one.discharge, ids(kit.engines?.[one.engine]?.discharges), (id) => change(() => { one.discharge = id; }))}
    ${hose(one, kit, ft, change)}${rise('From there it goes', one.rise, ft, (value) => change(() => { one.rise = value; }))}
    ${text('Pumps at', one.pump ?? '', (value) => change(() => { if (value) one.pump = sized(value, psi); else delete one.pump; }), 'what is needed')}</div>`;
}

/** A chain of hose, part by part. @param {any} holder @param {any} kit @param {string} unit @param {Desk['change']} change */
function hose(holder, kit, unit, change) {
  const parts = chain(holder.hose);
  const put = () => { holder.hose = chained(parts); };
  return html`${parts.map((part, i) => html`${text('Hose', part.length, (value) => change(() => { part.length = sized(value, unit); put(); }))}
    ${choice('of', part.hose, ids(kit.hoses), (id) => change(() => { part.hose = id; put(); }))}
    ${i > 0 ? html`<div class="field"><button @click=${() => change(() => { parts.splice(i, 1); put(); })}>Take this hose out</button></div>` : nothing}`)}
    ${parts.length ? html`<div class="field"><button @click=${() => change(() => { parts.push({ ...parts[parts.length - 1] }); put(); })}>Add hose</button></div>` : nothing}`;
}

/** @param {Desk} desk @param {any} map @param {string} key @param {string} label @param {string} unit */
function quantity({ change }, map, key, label, unit) {
  return text(label, map[key] ?? '', (value) => change(() => { if (value) map[key] = sized(value, unit); else delete map[key]; }));
}

/** @param {Desk} desk @param {Supply} supply @param {string} word */
function keep(desk, supply, word) {
  return word === 'tank' || word === 'draft' ? nothing : quantity(desk, supply, 'keep', 'Keep at the intake', desk.us ? 'psi' : 'kPa');
}

/** @param {Desk} desk @param {Supply} supply @param {string} word */
function fields(desk, supply, word) {
  const { kit, us, change } = desk;
  const [psi, gpm, ft] = us ? ['psi', 'gpm', 'ft'] : ['kPa', 'L/min', 'm'];
  const at = supply[word];
  const field = (/** @type {string} */ label, /** @type {string} */ key, /** @type {string} */ unit) => quantity(desk, at, key, label, unit);
  if (word === 'tank') return html`${field('Water in it', 'level', us ? 'gal' : 'L')}${field('Tank to pump gives at most', 'most', gpm)}${field('Tank to pump loses', 'loss', '')}`;
  if (word === 'draft') return html`${field('Pump above the water', 'lift', ft)}${hose(at, kit, ft, change)}${field('Strainer loses', 'strainer', '')}${field('Above the sea', 'altitude', ft)}${field('Water at', 'temperature', us ? 'F' : 'C')}`;
  return html`${field('Static', 'static', psi)}${field('Residual', 'residual', psi)}${field('at a flow of', 'at', gpm)}${field('Tested on', 'tested', '')}
    ${hose(supply, kit, ft, change)}${rise('From there it goes', supply.rise, ft, (value) => change(() => { supply.rise = value; }))}`;
}
