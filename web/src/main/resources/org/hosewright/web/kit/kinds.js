/** What can be written about each kind of thing, in the words of the open format. */

/**
 * @typedef {{ path: string[], label: string, example?: string, options?: string[] }} Field
 * @typedef {Record<string, any>} Entry
 * @typedef {{ key: string, title: string, one: string, empty: string, summary: (entry: Entry) => string[], fields: (entry: Entry, kit: Entry, us: boolean) => Field[] }} Kind
 */

/** @param {string} key @param {string} label @param {string} [example] @param {string[]} [options] @returns {Field} */
const field = (key, label, example, options) => ({ path: key.split('.'), label, example, options });

/** @param {string[]} at @param {string} kind @param {boolean} us */
function tipFields(at, kind, us) {
  const shown = {
    'smooth-bore': [field('bore', 'bore', us ? '7/8 in' : '19 mm'), field('at', 'works at', us ? '50 psi' : '350 kPa')],
    fog: [field('rated', 'rated', us ? '150 gpm @ 75 psi' : '475 L/min @ 600 kPa')],
    automatic: [field('holds', 'holds', us ? '100 psi' : '700 kPa'), field('from', 'from', us ? '60 gpm' : '230 L/min'), field('to', 'to', us ? '200 gpm' : '750 L/min')],
  };
  const fields = shown[/** @type {keyof typeof shown} */ (kind)] ?? [];
  return fields.map((one) => ({ ...one, path: [...at, ...one.path], label: at.length ? `${at[1]}: ${one.label}` : one.label }));
}

/** @param {Entry} entry @param {boolean} us @returns {Field[]} */
function nozzleFields(entry, us) {
  const many = entry.kind === 'selectable' || entry.kind === 'break-apart';
  const kinds = ['smooth-bore', 'fog', 'automatic'];
  const settings = Object.keys(entry.settings ?? {});
  return [
    field('kind', 'kind', '', [...kinds, 'selectable', 'break-apart']),
    ...(many ? settings.flatMap((name) => [
      { path: ['settings', name, 'kind'], label: `${name}: kind`, options: kinds },
      ...tipFields(['settings', name], entry.settings[name]?.kind ?? '', us)]) : tipFields([], entry.kind ?? '', us)),
    field('most', 'highest pressure its maker allows', us ? '200 psi' : '1400 kPa'),
    field('flow', 'true flow as a share of the rated one', '102 ± 1.5 %'), field('coupling', 'coupling', us ? '1 1/2 in NH' : '64 mm instantaneous'),
    ...(entry.kind === 'smooth-bore' || !entry.kind ? [field('gauged', 'bore gauged on', '2026-05-12')] : []),
  ];
}

/** @param {Entry} entry @param {Entry} kit @param {boolean} us @returns {Field[]} */
function engineFields(entry, kit, us) {
  const gauges = Object.entries(kit.instruments ?? {}).filter(([, one]) => one.kind === 'pressure-gauge').map(([id]) => id);
  return [
    field('pump.rated', 'pump rated', us ? '1500 gpm' : '3000 L/min'),
    field('pump.ceiling', "the company's highest pump pressure", us ? '250 psi' : '1000 kPa'),
    field('tank', 'tank', us ? '750 gal' : '1800 L'),
    field('gauge', 'panel gauge', '', ['', ...gauges]),
    ...Object.keys(entry.discharges ?? {}).flatMap((name) => [
      { path: ['discharges', name, 'size'], label: `${name}: size`, example: us ? '2 in' : '70 mm' },
      { path: ['discharges', name, 'loss'], label: `${name}: piping loss`, example: us ? '2.06 psi @ 100 gpm' : '0.7 kPa @ 100 L/min' },
      { path: ['discharges', name, 'basis'], label: `${name}: loss rests on`, example: 'test drill-night' },
      { path: ['discharges', name, 'coupling'], label: `${name}: coupling`, example: us ? '2 1/2 in NH' : '64 mm instantaneous' }]),
  ];
}

/** @param {Entry} entry @param {Entry} kit @param {boolean} us @returns {Field[]} */
function packageFields(entry, kit, us) {
  const ids = (/** @type {string} */ section) => ['', ...Object.keys(kit[section] ?? {})];
  const outlets = Object.keys(kit.engines?.[entry.engine]?.discharges ?? {});
  const settings = Object.keys(kit.nozzles?.[entry.nozzle]?.settings ?? {});
  return [
    field('engine', 'engine', '', ids('engines')), field('discharge', 'discharge', '', ['', ...outlets]),
    field('hose', 'hose', `4 x ${ids('hoses')[1] ?? 'attack-175'}`), field('nozzle', 'nozzle', '', ids('nozzles')),
    ...(settings.length ? [field('setting', 'setting', '', ['', ...settings])] : []),
    field('crew', 'people at the nozzle', '2'), field('target', 'flow wanted', us ? '161 gpm' : '450 L/min'),
    field('least', 'least flow', us ? '150 gpm' : '400 L/min'), field('ordered', 'pressure in force', us ? '105 psi' : '700 kPa'),
  ];
}

/** @type {Kind[]} */
export const KINDS = [
  { key: 'hoses', title: 'Hoses', one: 'hose', empty: 'No hose yet. A hose is a kind or a batch that loses alike.',
    summary: (hose) => [hose.diameter, `sections of ${hose.section}`, hose.loss ?? (hose.roughness ? `roughness ${hose.roughness}` : `Hazen-Williams C ${hose['hazen-williams']}`), hose.basis, hose['service-test'] ? `tested at ${hose['service-test']}${hose.tested ? `, ${hose.tested}` : ''}` : 'no service test known'],
    fields: (_, __, us) => [field('diameter', 'diameter', us ? '1 3/4 in' : '45 mm'), field('section', 'section', us ? '50 ft' : '25 m'),
      field('loss', 'loss', us ? '9.19 psi / 100 ft @ 100 gpm' : '14.5 kPa / 100 m @ 100 L/min'),
      field('hazen-williams', 'or by Hazen-Williams, C', '140'), field('roughness', 'or by the roughness of its lining', '0.02 mm'), field('basis', 'loss rests on', 'book, maker, estimate, test drill-night'),
      field('service-test', 'service test', us ? '300 psi' : '2000 kPa'), field('tested', 'tested on', '2026-04-11'), field('made', 'made in', '2019'), field('coupling', 'coupling', us ? '1 1/2 in NH' : '64 mm instantaneous'), field('type', 'is a batch of', 'attack-175')] },
  { key: 'nozzles', title: 'Nozzles', one: 'nozzle', empty: 'No nozzle yet: smooth bore, fog, automatic, selectable or break-apart.',
    summary: (nozzle) => [nozzle.kind, ...tipSaid(nozzle), ...Object.entries(nozzle.settings ?? {}).map(([name, tip]) => `${name}: ${tipSaid(tip).join(', ')}`),
      nozzle.most ? `at most ${nozzle.most}` : '', nozzle.flow ? `flows ${nozzle.flow}` : '', nozzle.gauged ? `bore gauged ${nozzle.gauged}` : ''],
    fields: (entry, _, us) => nozzleFields(entry, us) },
  { key: 'engines', title: 'Engines', one: 'engine', empty: 'No engine yet.',
    summary: (engine) => [engine.pump?.rated ? `pump ${engine.pump.rated}` : '', engine.pump?.ceiling ? `ceiling ${engine.pump.ceiling}` : 'no ceiling set', engine.tank ? `tank ${engine.tank}` : '',
      ...Object.entries(engine.discharges ?? {}).map(([name, one]) => `${name}${one.size ? ` ${one.size}` : ''}${one.loss ? `, ${one.loss}` : ', piping loss not known'}`)],
    fields: engineFields },
  { key: 'instruments', title: 'Gauges and meters', one: 'instrument', empty: 'No gauge or meter yet.',
    summary: (one) => [one.kind.replace('-', ' '), one.range ? `to ${one.range}` : '', one.accuracy, one.tap ? `taps: ${one.tap}` : one.kind === 'pressure-gauge' ? 'tap not known' : '',
      one.offset ? `off by ${one.offset}` : '', one.calibrated ? `calibrated ${one.calibrated}` : ''],
    fields: (entry, _, us) => [field('kind', 'kind', '', ['pressure-gauge', 'flow-meter']), field('accuracy', 'accuracy, one standard deviation', '0.5 % of range'),
      ...(entry.kind === 'flow-meter' ? [] : [field('range', 'range', us ? '400 psi' : '2500 kPa'), field('tap', 'where it taps', us ? 'pitot, side 1.5 in, discharge, before piping' : 'pitot, side 38 mm, discharge, before piping'),
        field('least-count', 'smallest step', us ? '1 psi' : '5 kPa'), field('offset', 'reads less true', us ? '-1.2 ± 0.8 psi' : '-8 ± 5 kPa')]),
      field('calibrated', 'calibrated on', '2026-03-01')] },
  { key: 'appliances', title: 'Wyes and other appliances', one: 'appliance', empty: 'None.',
    summary: (one) => [typeof one.loss === 'string' ? one.loss : one.loss ? `${one.loss.rule} from ${one.loss.from}` : '', `per ${one.per}`, one.rated ? `rated ${one.rated}` : ''],
    fields: (entry, _, us) => [...(typeof entry.loss === 'object' ? [field('loss.rule', 'allowance', us ? '10 psi' : '70 kPa'), field('loss.from', 'from', us ? '350 gpm' : '1300 L/min')]
      : [field('loss', 'loss', us ? '0.55 psi @ 100 gpm' : '0.3 kPa @ 100 L/min')]), field('per', 'loss at the flow of', '', ['leg', 'total']), field('rated', 'rated', us ? '250 psi' : '1600 kPa'),
      field('in', 'coupling the water comes in by', us ? '2 1/2 in NH' : '64 mm instantaneous'), field('out', 'coupling it leaves by', us ? '1 1/2 in NH' : '64 mm instantaneous')] },
  { key: 'adapters', title: 'Adapters', one: 'adapter', empty: 'None. An adapter leads from one coupling to another that would not mate.',
    summary: (one) => [`${one.in} to ${one.out}`], fields: (_, __, us) => [field('in', 'from', us ? '2 1/2 in NH' : '64 mm instantaneous'), field('out', 'to', us ? '1 1/2 in NH' : '45 mm storz')] },
  { key: 'packages', title: 'Packages', one: 'package', empty: 'No package yet: one line as it lies on the rig.',
    summary: (one) => [`${one.engine}, ${one.discharge}`, one.hose, `${one.nozzle}${one.setting ? ` (${one.setting})` : ''}`, one.target ? `wants ${one.target}` : '', one.least ? `at least ${one.least}` : '', one.ordered ? `ordered ${one.ordered}` : ''],
    fields: packageFields },
];

/** @param {any} tip @returns {string[]} */
function tipSaid(tip) {
  if (tip.bore) return [tip.bore, `at ${tip.at}`];
  if (tip.rated) return [tip.rated];
  return tip.holds ? [`holds ${tip.holds}`, `${tip.from} to ${tip.to}`] : [];
}

/** The facts about the company itself. @param {boolean} us @returns {Field[]} */
export function companyFields(us) {
  return [field('company', 'company'), field('zone', 'time zone', 'America/New_York'), field('units', 'units', '', ['us', 'si']),
    ...['1', '2', '3'].map((people) => ({ path: ['crew', 'reaction', people], label: `reaction for ${people} at the nozzle`, example: us ? '75 lbf' : '330 N' })),
    field('rule.tip', 'present rule: for the tip', us ? '50 psi' : '350 kPa'), field('rule.per', 'present rule: for the hose', us ? '18 psi / 100 ft' : '60 kPa / 25 m')];
}
