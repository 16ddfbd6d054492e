/** A lay drawn from the engine at the left to its tips at the right, with the figures at their places. */
import { html, svg, nothing } from 'lit';
import { set } from '../shared/text.js';
import { behind, chain, endOf } from './tree.js';

/** @typedef {import('./tree.js').Leg} Leg */
/** @typedef {{ x: number, y: number, says: string[], role: string, tip?: any }} Knot */

const STEP_X = 236;
const STEP_Y = 78;
const LEFT = 96;
const RELAY = 136;

const SUPPLY_Y = 64;

/** Each line into the engine at the fire: the word of its source and the engines that relay its water, the one at the source first.
 * @param {any} lay @returns {{ word: string, relay: any[] }[]} */
function supplies(lay) {
  if (!lay.supply) return [];
  return (lay.supply.lines ?? [lay.supply]).map((/** @type {any} */ one) => ({
    word: ['hydrant', 'tank', 'draft'].find((word) => word in one) ?? 'supply', relay: one.relay ?? [],
  }));
}

/** Where the engine at the fire stands. @param {any} lay */
function leftOf(lay) {
  return LEFT + RELAY * Math.max(0, ...supplies(lay).map((one) => one.relay.length));
}

/** The words of a leg's hose and rise. @param {Leg} leg */
function hoseWords(leg) {
  const rise = String(leg.rise ?? '');
  const level = rise === '' || /^-?0+(\.0+)? ?(ft|m|in|mm)$/.test(rise);
  const way = level ? [] : [rise.startsWith('-') ? `down ${rise.slice(1)}` : `up ${rise}`];
  return [...chain(leg.hose).map((part) => `${part.length} ${part.hose}`), ...way].join(', ');
}

/** @param {Leg} leg */
function endWords(leg) {
  const word = endOf(leg);
  if (word === 'nozzle') return [leg.setting ? `${leg.nozzle}, ${leg.setting}` : leg.nozzle];
  if (word === 'monitor') return ['monitor'];
  if (word === 'wye' || word === 'manifold') return [leg[word].appliance ?? word];
  return [word === 'hose-end' ? 'open butt' : word === 'pressure-reducer' ? `holds ${leg[word].holds}` : word.replace('-', ' ')];
}

/** Places every knot and hose of a lay. @param {any} lay @param {any} shown the answer; null while there is none */
function place(lay, shown) {
  /** @type {Knot[]} */ const knots = [];
  /** @type {{ from: Knot, to: Knot, says: string, wet: boolean }[]} */ const hoses = [];
  /** @type {Record<string, Knot[]>} */ const joins = {};
  const left = leftOf(lay);
  let row = 0;
  const tips = new Map((shown?.tips ?? []).map((/** @type {any} */ tip) => [tip.id, tip]));
  const tipAt = (/** @type {string} */ path) => tips.get(shown?.paths[path] ?? '');

  /** @param {Leg} leg @param {Knot} from @param {string} path @param {number} depth @returns {number} its height */
  function walk(leg, from, path, depth) {
    const knot = { x: left + depth * STEP_X, y: 0, says: endWords(leg), role: endOf(leg), tip: tipAt(path) };
    const next = behind(leg);
    const heights = endOf(leg) === 'monitor' && leg.monitor.tips
      ? Object.keys(leg.monitor.tips).map((key) => tipOf(knot, key, path, depth))
      : next.map(([key, one]) => walk(one, knot, key ? `${path}/${key}` : path, depth + 1));
    knot.y = heights.length ? (heights[0] + heights[heights.length - 1]) / 2 : row++ * STEP_Y + STEP_Y;
    if (leg.join) (joins[leg.join] ??= []).push(knot);
    knots.push(knot);
    hoses.push({ from, to: knot, says: hoseWords(leg), wet: !leg.shut });
    return knot.y;
  }
  /** @param {Knot} from @param {string} key @param {string} path @param {number} depth */
  function tipOf(from, key, path, depth) {
    const knot = { x: from.x + STEP_X / 2, y: row++ * STEP_Y + STEP_Y, says: [key], role: 'nozzle', tip: tipAt(`${path}/${key}`) };
    knots.push(knot);
    hoses.push({ from, to: knot, says: '', wet: true });
    return knot.y || depth;
  }

  const engine = { x: left, y: 0, says: [lay.engine], role: 'engine' };
  const ends = lay.lines.map((/** @type {Leg} */ line) => walk(line, engine, line.discharge, 1));
  engine.y = (ends[0] + ends[ends.length - 1]) / 2;
  Object.entries(lay.joins ?? {}).forEach(([name, leg]) => {
    const into = joins[name] ?? [];
    if (!into.length) return;
    const x = Math.max(...into.map((knot) => knot.x));
    const y = into.reduce((sum, knot) => sum + knot.y, 0) / into.length;
    const meet = { x: x + 110, y, says: [leg.appliance ?? name], role: 'join' };
    knots.push(meet);
    into.forEach((knot) => {
      Object.assign(knot, { x, says: [], role: 'coupling' });
      hoses.push({ from: knot, to: meet, says: '', wet: true });
    });
    const rows = row;
    row = y / STEP_Y - 1;
    walk(leg, meet, name, (meet.x - left) / STEP_X + 1);
    row = Math.max(rows, row);
  });
  return { engine, knots, hoses, rows: Math.max(1, row) };
}

/** @param {Knot} knot */
function figures(knot) {
  const tip = knot.tip;
  if (!tip) return nothing;
  if (tip.shut) return svg`<text class="word lay-shut" x=${knot.x + 14} y=${knot.y + 5} font-size="14">shut</text>`;
  return svg`<text class="word mk-answer" x=${knot.x + 14} y=${knot.y - 2} font-size="17">${tip.flow}</text>
    <text class="word" x=${knot.x + 14} y=${knot.y + 15} font-size="13">${tip.pressure} · ${tip.reaction}</text>`;
}

/** A piece as it is called; a tip with its name in the lay first. @param {Knot} knot */
function called(knot) {
  return [...(knot.tip ? [knot.tip.id] : []), ...knot.says].filter((says, i, all) => all.indexOf(says) === i).join(', ');
}

/** @param {Knot} knot */
function sign(knot) {
  const { x, y } = knot;
  if (knot.role === 'coupling') return nothing;
  if (knot.role === 'nozzle' || knot.role === 'monitor') return svg`<path class="dot full" d="M${x - 9} ${y - 5}l16 3v4l-16 3z"></path>`;
  if (knot.role === 'hose-end') return svg`<circle class="dot open" cx=${x} cy=${y} r="5"></circle>`;
  if (knot.role === 'sprinklers') return svg`<path class="mk" d="M${x} ${y - 8}v16M${x - 6} ${y - 6}l12 12M${x + 6} ${y - 6}l-12 12"></path>`;
  return svg`<path class="dot open" d="M${x - 7} ${y}l7 -7 7 7 -7 7z"></path>`;
}

/** What a gauge of the panel shows. @param {any} shown @param {string} name @returns {string} */
function gauge(shown, name) {
  return shown?.panel.find((/** @type {any} */ one) => one.gauge === name || one.gauge.startsWith(`${name},`))?.pressure ?? '';
}

/** An engine with its pump pressure. @param {number} x @param {number} y @param {string} engine @param {string} pressure */
function box(x, y, engine, pressure) {
  return svg`<rect class="dot open" x=${x - 40} y=${y - 26} width="80" height="52" rx="3"></rect>
    <text class="word mk-answer" x=${x} y=${y - 2} font-size="16" text-anchor="middle">${pressure || '–'}</text>
    <text class="word" x=${x} y=${y + 16} font-size="12" text-anchor="middle">${engine}</text>`;
}

/** A line into the engine at the fire. @param {{ word: string, relay: any[] }} one @param {number} y @param {Knot} engine @param {any} shown */
function feed({ word, relay }, y, engine, shown) {
  const end = engine.x - 40;
  return svg`<path class="mk lay-hose" d="M4 ${y}H${end - 30}C${end - 10} ${y} ${end - 20} ${engine.y} ${end} ${engine.y}"></path>
    <text class="word" x="4" y=${y - 8} font-size="12">${word}</text>
    ${relay.map((one, i) => box(LEFT + RELAY * i, y, one.engine, gauge(shown, `${one.engine} pump`)))}`;
}

/** What is left at the intake, beside the box or below it. @param {Knot} engine @param {boolean} below @param {string} pressure */
function left(engine, below, pressure) {
  const [x, y, anchor] = below ? [engine.x, engine.y + 40, 'middle'] : [engine.x - 46, engine.y + 18, 'end'];
  return svg`<text class="word lay-words" x=${x} y=${y} font-size="12" text-anchor=${anchor}>${below ? `intake ${pressure}` : pressure}</text>`;
}

/** @param {any} lay @param {any} shown */
export function diagram(lay, shown) {
  const { engine, knots, hoses, rows } = place(lay, shown);
  const fed = supplies(lay);
  const top = Math.max(fed.length > 1 ? 34 : 0, engine.y - (fed.length - 1) / 2 * SUPPLY_Y);
  const right = Math.max(...knots.map((knot) => knot.x)) + 150;
  const height = Math.max((rows + 1) * STEP_Y, fed.length > 1 ? top + fed.length * SUPPLY_Y - 20 : 0);
  const gates = new Map((shown?.gates ?? []).map((/** @type {any} */ gate) => [gate.discharge, gate.down]));
  return html`<svg class="drawing lay-drawing" viewBox="0 0 ${right} ${height}" width=${Math.round(right * 1.15)} role="img" aria-label=${says(lay, shown)}>
    ${fed.map((one, i) => feed(one, top + i * SUPPLY_Y, engine, shown))}
    ${fed.length && shown?.pump.intake ? left(engine, fed.length > 1, shown.pump.intake) : nothing}
    ${hoses.map(({ from, to, says: words, wet }) => svg`<path class="mk lay-hose ${wet ? '' : 'dry'}" d="M${from.x} ${from.y}C${from.x + 40} ${from.y} ${from.x + 20} ${to.y} ${from.x + 60} ${to.y}L${to.x} ${to.y}"></path>
      <text class="word lay-words" x=${to.x - 16} y=${to.y - 8} font-size="12" text-anchor="end">${set(words)}</text>`)}
    ${lay.lines.map((/** @type {Leg} */ line, /** @type {number} */ i) => svg`<text class="word lay-words" x=${engine.x + 96} y=${linesY(hoses, engine)[i] + 17} font-size="12">${line.discharge}${gates.has(line.discharge) ? `, gate down ${gates.get(line.discharge)}` : ''}</text>`)}
    ${box(engine.x, engine.y, lay.engine, shown ? shown.pump.pressure.split(' ±')[0] : '')}
    ${knots.map((knot) => svg`${sign(knot)}${figures(knot)}
      <text class="word lay-words" x=${knot.x + (knot.tip ? 14 : 0)} y=${knot.y + (knot.tip ? 30 : 24)} font-size="12" text-anchor=${knot.tip ? 'start' : 'middle'}>${set(called(knot))}</text>`)}
  </svg>`;
}

/** @param {{ from: Knot, to: Knot }[]} hoses @param {Knot} engine */
function linesY(hoses, engine) {
  return hoses.filter((hose) => hose.from === engine).map((hose) => hose.to.y);
}

/** @param {any} lay @param {any} shown */
function says(lay, shown) {
  if (!shown) return `The lay from ${lay.engine}, not worked out yet.`;
  const tips = shown.tips.map((/** @type {any} */ tip) => (tip.shut ? `${tip.id} shut` : `${tip.id} ${tip.flow} at ${tip.pressure}`));
  return `The lay from ${lay.engine}, pump at ${shown.pump.pressure}: ${tips.join('; ')}.`;
}
