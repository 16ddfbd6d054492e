/** The form of a stretch and the stretch that it holds, in the record's own format. */
import { html, nothing } from 'lit';

/** Kinds of parts; to cover an area takes its length and its width. */
const PARTS = /** @type {const} */ ([['to-door', ['From the rig to the door']], ['inside', ['Inside, to the stairs and along halls']], ['cover', ['To cover the fire area: its length', 'and its width']], ['working', ['To work with at the fire']]]);
/** So many packages one after the other have a field. */
const CHAIN = ['Package', 'lengthened by', 'and by'];
const OWN = 'own-length';
const STAIRS = [['section-a-flight', 'a section for every floor, by return stairs'], ['section-for-two-floors', 'a section for every two floors'], ['well-hole', 'a section for every five floors, up the well'], [OWN, 'our own length for every floor']];

/**
 * A field for every part that is known, and for every kind one at the least.
 * @param {any} stretch
 * @returns {{ kind: string, label: string, length: string, says: string }[]}
 */
function rows(stretch) {
  return PARTS.flatMap(([kind, labels]) => {
    const known = stretch.parts.filter((/** @type {any} */ part) => part.kind === kind);
    return Array.from({ length: Math.max(labels.length, known.length) }, (_, i) => ({ kind, label: labels[i] ?? `${labels[0]}, more`, length: known[i]?.length ?? '', says: known[i]?.says ?? '' }));
  });
}

/**
 * The stretch that a form holds.
 * @param {HTMLFormElement} form
 * @param {any} beside the stretch that its fields were made for: what no field holds is kept
 */
export function stretchOf(form, beside) {
  const data = new FormData(form);
  const text = (/** @type {string} */ name) => String(data.get(name) ?? '').trim();
  const parts = rows(beside).map(({ kind, says }, i) => ({ kind, length: text(`part-${i}`), says })).filter((part) => part.length);
  const stairs = { climbed: Number(text('climbed')), rule: text('rule'), ...(text('rule') === OWN && { each: text('floor-each') }) };
  const lines = text('cautions').split('\n').map((line) => line.trim()).filter(Boolean);
  const bends = (/** @type {string} */ name) => (Number(text(name)) > 0 ? { [name]: { count: Number(text(name)), each: text(`${name}-each`) } } : {});
  return {
    format: 1,
    address: text('address') || 'A stretch',
    stands: text('stands'),
    way: beside.way,
    pictures: beside.pictures,
    cautions: lines,
    private: text('private'),
    packages: [...CHAIN.map((_, i) => text(`package-${i}`)).filter(Boolean), ...beside.packages.slice(CHAIN.length)],
    ...(text('second') && { second: text('second') }),
    parts,
    ...(stairs.climbed > 0 && { stairs }),
    ...bends('corners'),
    ...bends('obstacles'),
    reserve: Number(text('reserve') || 0),
    ...(text('rise') && { [text('rise-way') || 'up']: text('rise') }),
    laid: beside.laid,
  };
}

/**
 * @param {string} label @param {string} name @param {string} value @param {string} [hint]
 */
function field(label, name, value, hint = '') {
  return html`<div class="field"><label>${label}<input name=${name} .value=${value} autocomplete="off" placeholder=${hint}></label></div>`;
}

/** @param {string} label @param {string} name @param {number} value */
function count(label, name, value) {
  return html`<div class="field"><label>${label}<input name=${name} type="number" min="0" max="99" step="1" inputmode="numeric" .value=${String(value)}></label></div>`;
}

/** @param {string} label @param {string} name @param {string[]} ids @param {string} chosen @param {string} none */
function choice(label, name, ids, chosen, none) {
  return html`<div class="field"><label>${label}<select name=${name}>${none ? html`<option value="">${none}</option>` : nothing}${ids.map((id) => html`<option ?selected=${id === chosen}>${id}</option>`)}</select></label></div>`;
}

/**
 * The fields of a stretch.
 * @param {any} stretch as kept, or an empty one
 * @param {string[]} packages
 * @param {boolean} us
 */
export function fields(stretch, packages, us) {
  const some = us ? '120 ft' : '36 m';
  return html`<div class="fields">
      ${CHAIN.map((label, i) => choice(label, `package-${i}`, packages, stretch.packages[i] ?? (i ? '' : packages[0] ?? ''), i ? 'nothing' : ''))}
      ${choice('A second line beside it', 'second', packages, stretch.second ?? '', 'none')}</div>
    <div class="fields">${rows(stretch).map(({ kind, label, length, says }, i) => field(says ? `${label} (${says})` : label, `part-${i}`, length, kind === 'to-door' ? (us ? '180 ± 3 ft' : '55 ± 1 m') : some))}</div>
    <p class="small soft">Lengths are walked, taped or paced: never a straight line on a map. After ± stands the standard error, as in files: the length is within twice that, nearly always.</p>
    <div class="fields">${count('Floors climbed', 'climbed', stretch.stairs?.climbed ?? 0)}
      <div class="field"><label>Your rule for stairs<select name="rule"><option value="">choose: rules differ by place</option>${STAIRS.map(([word, says]) => html`<option value=${word} ?selected=${word === stretch.stairs?.rule}>${says}</option>`)}</select></label></div>
      ${field('our own, for a floor', 'floor-each', stretch.stairs?.each ?? '', us ? '30 ft' : '9 m')}
      ${count('Corners', 'corners', stretch.corners?.count ?? 0)}${field('hose for each', 'corners-each', stretch.corners?.each ?? (us ? '5 ft' : '1.5 m'))}
      ${count('Cars and other obstacles', 'obstacles', stretch.obstacles?.count ?? 0)}${field('a loop round each', 'obstacles-each', stretch.obstacles?.each ?? (us ? '10 ft' : '3 m'))}
      ${count('Sections in reserve', 'reserve', stretch.reserve ?? 0)}
      <div class="field"><label>The tip lies<select name="rise-way"><option ?selected=${!stretch.down}>up</option><option ?selected=${!!stretch.down}>down</option></select></label></div>
      ${field('by, from the pump', 'rise', stretch.up ?? stretch.down ?? '', us ? '20 ft' : '6 m')}</div>`;
}

/** The fields that only the sheet needs. @param {any} stretch */
export function siteFields(stretch) {
  return html`<div class="fields">${field('Address', 'address', stretch.address ?? '', '5 Garden Court, rear stair')}${field('Where the rig stands', 'stands', stretch.stands ?? '', 'on Mill Lane, nose to the chapel')}</div>
    <div class="fields"><div class="field"><label>Cautions of the place, one a line<textarea name="cautions" rows="2" .value=${(stretch.cautions ?? []).join('\n')}></textarea></label></div>
    <div class="field"><label>Private notes, printed only when chosen<textarea name="private" rows="2" .value=${stretch.private ?? ''}></textarea></label></div></div>`;
}
