/** The columns of a readings table: which are typed each time, which a new row takes over from the one before. */

/** Typed for each reading, in the order of the hand: base names without unit. */
export const TYPED = ['length', 'rise', 'pump', 'tip', 'flow'];
/** The cell in which typing begins when only the valve was moved. */
export const FIRST = 'pump';
/** Taken over from the reading before. */
export const CARRIED = ['discharge', 'hose', 'length', 'rise', 'nozzle', 'setting', 'pump gauge', 'tip gauge', 'meter', 'lay', 'mid at', 'reader'];

/** @param {string} column "pump [psi]" gives "pump" */
export function base(column) {
  return column.replace(/\s*\[[^\]]*\]\s*$/, '');
}

/** @param {string} column "pump [psi]" gives "psi" */
export function unit(column) {
  return /\[([^\]]*)\]/.exec(column)?.[1] ?? '';
}

/**
 * The column of a base name.
 * @param {string[]} columns
 * @param {string} name
 */
export function find(columns, name) {
  return columns.find((column) => base(column) === name);
}

/** What a column is called above its cells. */
const HEADS = { flow: 'meter' };

/** @param {string} column */
export function head(column) {
  const name = base(column);
  return HEADS[/** @type {keyof typeof HEADS} */ (name)] ?? name;
}

/** @param {'us' | 'si'} units the columns of a new night */
export function fresh(units) {
  const [length, pressure, flow] = units === 'us' ? ['ft', 'psi', 'gpm'] : ['m', 'kPa', 'L/min'];
  return [
    'reading', 'discharge', 'hose', `length [${length}]`, `rise [${length}]`, 'nozzle', 'setting',
    `pump [${pressure}]`, `tip [${pressure}]`, `flow [${flow}]`, 'pump gauge', 'tip gauge', 'meter', 'doubt', 'note',
  ];
}

/**
 * A rise as people say it: "8 up", "level", "8 down".
 * @param {string} cell as kept, signed
 */
export function riseSaid(cell) {
  const text = cell.trim();
  if (!/^[-\u2212]?\d+(\.\d+)?$/.test(text)) return cell;
  const value = Number(text.replace('\u2212', '-'));
  return value === 0 ? 'level' : `${Math.abs(value)} ${value > 0 ? 'up' : 'down'}`;
}

/**
 * A rise as kept. A bare height is taken as up, and then shown as such; a bare minus sign is not understood.
 * @param {string} said
 */
export function riseKept(said) {
  const text = said.trim().toLowerCase();
  if (text === 'level') return '0';
  const match = /^(?:(up?|d(?:own)?)\s*)?(\d+(?:\.\d+)?)\s*(up?|d(?:own)?)?$/.exec(text);
  if (!match || (match[1] && match[3])) return said;
  return `${(match[1] ?? match[3] ?? 'up').startsWith('d') ? '-' : ''}${match[2]}`;
}
