/** One rig's morning: what it wants, what its pressures rest on and how old that is, what is due for test. */
import { html, nothing } from 'lit';
import { ago, capital, counted, day, moment, set } from '../shared/text.js';

/** @typedef {{ who: string, at: string, days?: number }} Mark */
/** @typedef {{ what: string, verified: boolean, night?: string, on?: string, days?: number, instead?: string }} Ground */
/** @typedef {{ what: string, last?: string, until?: string, state: string }} Due */
/** @typedef {{ id: string, wants: string[], serving?: string, figures?: { ordered: number, tested: number, stale: number }, fitted?: Mark, acknowledged?: Mark[], bed?: Mark, grounds: Ground[], due: Due[] }} Rig */

/** @param {Rig} rig @param {string | undefined} zone @param {boolean} few true where all is shown at once */
export function rigOf(rig, zone, few) {
  const replaced = rig.serving?.includes('serves in its place');
  const bad = rig.due.filter((due) => due.state === 'over' || due.state === 'out of service').length;
  return html`<li class=${rig.wants.length === 0 && !bad ? 'yes' : 'no'} data-rig=${rig.id}><h3>${rig.id}</h3>
    ${rig.serving ? html`<p>${set(rig.serving)}</p>` : nothing}
    ${rig.wants.length ? html`<ul class="wants">${rig.wants.map((want) => html`<li>${set(want)}</li>`)}</ul>`
      : replaced ? nothing : html`<p>Signed, on the rig, acknowledged, nothing stale.</p>`}
    ${order(rig, zone)}
    <p class="soft">${rig.bed ? `What lies on it was looked at ${ago(rig.bed.days ?? 0)} by ${rig.bed.who}.` : 'Nobody has written down what lies on it: a swapped length would not be seen.'}
      <a href="/bed?engine=${encodeURIComponent(rig.id)}">Look at what lies on it</a></p>
    <details ?open=${few}><summary>${summary(rig)}</summary>
      <ul class="plain" data-grounds>${grounds(rig.grounds)}</ul>
      <ul class="plain" data-due>${rig.due.map(due)}</ul></details></li>`;
}

/** @param {Rig} rig @param {string | undefined} zone */
function order(rig, zone) {
  if (!rig.figures) return nothing;
  const { ordered, tested, stale } = rig.figures;
  return html`<p>${capital(counted(ordered, 'ordered pressure'))}: ${tested} as far as a night flew, ${ordered - tested} beyond it, ${stale} stale.
    ${rig.fitted ? `On the rig since ${moment(rig.fitted.at, zone)}.` : nothing}
    ${rig.acknowledged?.length ? `Acknowledged by ${rig.acknowledged.map((mark) => mark.who).join(', ')}.` : nothing}</p>`;
}

/** @param {Rig} rig */
function summary(rig) {
  const unverified = rig.grounds.filter((ground) => !ground.verified).length;
  const count = (/** @type {string} */ state) => rig.due.filter((one) => one.state === state).length;
  const parts = [`${rig.grounds.length - unverified} of ${rig.grounds.length} losses verified`];
  for (const state of ['over', 'due soon', 'out of service', 'not known']) {
    if (count(state)) parts.push(`${count(state)} ${count(state) === 1 ? 'test' : 'tests'} ${state}`);
  }
  return `${parts.join('; ')}.`;
}

/** What each night verified in one sentence, then what none did. @param {Ground[]} all */
function grounds(all) {
  /** @type {Map<string, Ground[]>} */
  const nights = new Map();
  all.filter((one) => one.verified).forEach((one) => nights.set(one.night ?? '', [...(nights.get(one.night ?? '') ?? []), one]));
  return html`${[...nights.entries()].map(([night, of]) => html`<li>Verified by ${night}${of[0]?.on ? ` on ${day(of[0].on)}, ${ago(of[0].days ?? 0)}` : ', on what day is not known'}: ${of.map((one) => one.what).join(', ')}.</li>`)}
    ${all.filter((one) => !one.verified).map((one) => html`<li><b>Not verified:</b> ${one.what}, ${one.instead}.</li>`)}`;
}

/** @param {Due} one */
function due(one) {
  const last = one.last ? day(one.last) : '';
  if (one.state === 'not known') return html`<li>${capital(one.what)}: <b>not known</b>.</li>`;
  if (one.state === 'out of service') return html`<li class="wrong">${capital(one.what)}: made before July 1987, it belongs out of service.</li>`;
  const until = day(one.until ?? '');
  if (one.state === 'over') return html`<li class="wrong">${capital(one.what)}: last on ${last}, over since ${until}.</li>`;
  return html`<li>${capital(one.what)}: ${last}, good until ${until}${one.state === 'due soon' ? html`, <b>due soon</b>` : nothing}.</li>`;
}
