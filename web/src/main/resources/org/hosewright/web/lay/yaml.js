/** Writes a lay as YAML of the open format. */

/** Text that stands plain in YAML, within braces too. */
const PLAIN = /^[A-Za-z0-9.-][A-Za-z0-9 ./%@+-]*$/;

/** @param {any} value */
function scalar(value) {
  const text = String(value);
  return PLAIN.test(text) && !text.endsWith(' ') ? text : JSON.stringify(text);
}

/** @param {any} value */
function isMap(value) {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** True where a map fits on one line: nothing below it branches. @param {any} map */
function isFlat(map) {
  return Object.values(map).every((value) => typeof value !== 'object' || value === null);
}

/** @param {Record<string, any>} map */
function flat(map) {
  const entries = Object.entries(map).map(([key, value]) => `${key}: ${scalar(value)}`);
  return entries.length ? `{ ${entries.join(', ')} }` : '{}';
}

/** @param {Record<string, any>} map @param {string} indent @returns {string} */
function entries(map, indent) {
  return Object.entries(map).map(([key, value]) => `${indent}${key}:${below(value, indent)}`).join('');
}

/** @param {any} value @param {string} indent @returns {string} */
function below(value, indent) {
  if (Array.isArray(value)) {
    return `\n${value.map((item) => `${indent}  - ${entries(item, `${indent}    `).trimStart()}`).join('')}`;
  }
  if (!isMap(value)) return ` ${scalar(value)}\n`;
  return isFlat(value) ? ` ${flat(value)}\n` : `\n${entries(value, `${indent}  `)}`;
}

/** @param {Record<string, any>} lay */
export function write(lay) {
  return entries(lay, '');
}
