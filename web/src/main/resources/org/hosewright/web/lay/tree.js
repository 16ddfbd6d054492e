/** A lay as the file has it: what is laid from an engine, leg by leg, and small changes to it. */

/** @typedef {Record<string, any>} Leg */
/** @typedef {{ length: string, hose: string }} Stretch */

/** The ends that a chain of hose can have, in the words of the file, with the words people say. */
export const ENDS = /** @type {const} */ ([
  ['nozzle', 'a nozzle'],
  ['wye', 'a wye'],
  ['manifold', 'a manifold'],
  ['join', 'a siamese'],
  ['monitor', 'a monitor'],
  ['standpipe', 'a standpipe'],
  ['pressure-reducer', 'a reducing valve'],
  ['eductor', 'a foam eductor'],
  ['sprinklers', 'sprinkler heads'],
  ['hose-end', 'an open butt'],
]);

/** @param {Leg} leg */
export function endOf(leg) {
  return ENDS.find(([word]) => word in leg)?.[0] ?? '';
}

/** The chain "200 ft leader-3 + 4 x attack-175" as its parts. @param {string | undefined} text @returns {Stretch[]} */
export function chain(text) {
  if (!text) return [];
  return text.split('+').map((part) => {
    const cut = part.trim().lastIndexOf(' ');
    return { length: part.trim().slice(0, Math.max(0, cut)).replace(/ x$/, ' x'), hose: part.trim().slice(cut + 1) };
  });
}

/** @param {Stretch[]} parts */
export function chained(parts) {
  return parts.map((part) => `${part.length} ${part.hose}`).join(' + ');
}

/** A first leg from the company's kit. @param {any} kit @returns {Leg} */
export function freshLeg(kit) {
  const us = kit.units === 'us';
  const hose = Object.keys(kit.hoses ?? {})[0] ?? '';
  return { hose: `${us ? '200 ft' : '75 m'} ${hose}`, rise: us ? '0 ft' : '0 m', nozzle: Object.keys(kit.nozzles ?? {})[0] ?? '' };
}

/** A first lay: one line from the first discharge. @param {any} kit */
export function freshLay(kit) {
  const [engine, record] = Object.entries(kit.engines ?? {})[0] ?? ['', {}];
  const discharge = Object.keys(/** @type {any} */ (record).discharges ?? {})[0] ?? '';
  return { engine, lines: [{ discharge, ...freshLeg(kit) }], ask: { tip: kit.units === 'us' ? '50 psi' : '350 kPa' } };
}

/** What a new end begins with. @param {string} word @param {any} kit @returns {any} */
function freshEnd(word, kit) {
  const us = kit.units === 'us';
  const nozzle = Object.keys(kit.nozzles ?? {})[0] ?? '';
  const appliance = Object.keys(kit.appliances ?? {})[0];
  const first = appliance ? { appliance } : {};
  switch (word) {
    case 'wye':
    case 'manifold':
      return { ...first, legs: { a: freshLeg(kit), b: freshLeg(kit) } };
    case 'monitor':
      return { nozzle };
    case 'join':
      return 'siamese';
    case 'standpipe':
      return { rise: us ? '40 ft' : '12 m', outlets: { fourth: { outlet: 'plain', ...freshLeg(kit) } } };
    case 'pressure-reducer':
      return { holds: us ? '90 psi' : '600 kPa', ...freshLeg(kit) };
    case 'eductor':
      return { rated: us ? '95 gpm @ 200 psi' : '360 L/min @ 1400 kPa', draws: '3 %', ...freshLeg(kit) };
    case 'sprinklers':
      return { k: us ? '5.6 gpm' : '80 L/min', heads: 1 };
    case 'hose-end':
      return 'true';
    default:
      return nozzle;
  }
}

/** Gives a leg another end; a wye keeps what was there as its first leg. @param {any} lay @param {Leg} leg @param {string} word @param {any} kit */
export function setEnd(lay, leg, word, kit) {
  const before = endOf(leg);
  const tip = { nozzle: leg.nozzle, ...(leg.setting && { setting: leg.setting }) };
  for (const key of ['setting', 'shut', ...(before ? [before] : [])]) delete leg[key];
  leg[word] = freshEnd(word, kit);
  if (word === 'monitor' && tip.nozzle) leg[word] = tip;
  if (word === 'nozzle') setNozzle(leg, leg.nozzle, kit);
  if (word === 'join') joined(lay, leg.join, kit);
}

/** The joins of a lay hold the one of a name. @param {any} lay @param {string} name @param {any} kit */
export function joined(lay, name, kit) {
  lay.joins ??= {};
  lay.joins[name] ??= freshLeg(kit);
}

/** @param {Leg} leg @param {string} id @param {any} kit */
export function setNozzle(leg, id, kit) {
  leg.nozzle = id;
  const settings = Object.keys(kit.nozzles?.[id]?.settings ?? {});
  if (settings.length) leg.setting = settings[0];
  else delete leg.setting;
}

/** A key that is not taken: a, b, c, … @param {Record<string, any>} taken */
export function freeKey(taken) {
  return [...'abcdefghijklmnopqrstuvwxyz'].find((letter) => !(letter in taken)) ?? `leg-${Object.keys(taken).length}`;
}

/** The legs that start where a leg ends, by their key; an empty key goes on in the same line. @param {Leg} leg @returns {[string, Leg][]} */
export function behind(leg) {
  const word = endOf(leg);
  if (word === 'wye' || word === 'manifold') return Object.entries(leg[word].legs ?? {});
  if (word === 'standpipe') return Object.entries(leg.standpipe.outlets ?? {});
  if (word === 'pressure-reducer' || word === 'eductor') return [['', leg[word]]];
  return [];
}
