/** How numbers and words are set on a page. */

const WHOLE = { '1/2': '½', '1/4': '¼', '3/4': '¾', '1/8': '⅛', '3/8': '⅜', '5/8': '⅝', '7/8': '⅞' };
const ABOVE = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const BELOW = '₀₁₂₃₄₅₆₇₈₉';
const FRACTION = /(?:(\d+) )?\b(\d{1,2})\/(2|4|8|16|32|64)(?= ?in\b)/g;

/** @param {string} digits @param {string} set */
function small(digits, set) {
  return [...digits].map((digit) => set[Number(digit)]).join('');
}

/**
 * Sets fractions of an inch and minus signs as a printer would: "1 3/4 in" becomes "1¾ in".
 * @param {string} text
 */
export function set(text) {
  return text
    .replace(FRACTION, (_, whole, over, under) => {
      const known = WHOLE[/** @type {keyof typeof WHOLE} */ (`${over}/${under}`)];
      return (whole ?? '') + (known ?? `${whole ? '\u2009' : ''}${small(over, ABOVE)}\u2044${small(under, BELOW)}`);
    })
    .replace(/(^|[\s(])-(?=\d)/g, '$1\u2212');
}

const ONES = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];

/**
 * "nine readings", "1 reading": small counts as words, the way people say them.
 * @param {number} count
 * @param {string} one
 * @param {string} [many]
 */
export function counted(count, one, many = `${one}s`) {
  return `${ONES[count] ?? count} ${count === 1 ? one : many}`;
}

/** @param {string} text */
export function capital(text) {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

const DAY = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' });

/** @param {string} iso a day such as 2026-05-12 */
export function day(iso) {
  return DAY.format(new Date(`${iso}T00:00:00Z`));
}

/**
 * Day and time as the company's clocks show them.
 * @param {string} at an instant
 * @param {string} [zone] the company's; else this machine's
 */
export function moment(at, zone) {
  return new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short', ...(zone && { timeZone: zone }) }).format(new Date(at));
}

/**
 * How long ago: "today", "12 days ago".
 * @param {number} days
 */
export function ago(days) {
  return days <= 0 ? 'today' : days === 1 ? 'yesterday' : `${days} days ago`;
}
