/** The form in which a test night is asked for. */
import { html } from 'lit';
import { live } from 'lit/directives/live.js';
import { capital } from '../shared/text.js';

const QUESTIONS = {
  hose: 'what the hose loses', piping: "what the discharge's piping loses", nozzle: 'what the nozzle flows',
  meter: 'how far the meter is off', gauges: 'how far the gauges are off',
};

/**
 * @param {import('./plan.js').Choices} choices
 * @param {any} asks what was asked last
 * @param {'us' | 'si'} units
 * @param {(event: SubmitEvent) => void} ask
 */
export function form(choices, asks, units, ask) {
  const named = choices.packages.find((one) => one.id === asks.package) ?? choices.packages[0];
  const us = units === 'us';
  return html`<form @submit=${ask}>
    <label>Package<select name="package">${choices.packages.map((one) => html`<option value=${one.id} ?selected=${one.id === asks.package}>${one.id}: ${one.says}</option>`)}</select></label>
    <label>Night<input name="date" type="date" required .value=${live(asks.date)}></label>
    <fieldset><legend>What it is for</legend>${choices.questions.map((word) => tick('questions', word, capital(QUESTIONS[/** @type {keyof typeof QUESTIONS} */ (word)] ?? word), asks.questions.includes(word)))}</fieldset>
    <fieldset><legend>Instruments at hand</legend>${choices.instruments.map((one) => tick('instruments', one.id, `${one.id}, ${one.says}`, asks.instruments?.includes(one.id) ?? true))}</fieldset>
    <label>Hose there is, of ${named.last}; the package carries ${named.carried}<input name="hose" placeholder=${us ? '600 ft' : '180 m'} .value=${live(asks.hose ?? '')}></label>
    <div class="pair"><label>Tip against the pump<input name="rise" placeholder=${us ? '8 ft' : '2 m'} .value=${live(asks.up ?? asks.down ?? '')}></label>
      <label>which is<select name="way"><option value="up">up</option><option value="down" ?selected=${Boolean(asks.down)}>down</option></select></label></div>
    <label>Most that hydrant or tank gives<input name="supply" placeholder=${us ? '500 gpm' : '1900 L/min'} .value=${live(asks.supply ?? '')}></label>
    <div class="pair"><label>Time<input name="time" placeholder="120 min" .value=${live(asks.time ?? '')}></label>
      <label>Water<input name="water" placeholder=${us ? '4000 gal' : '15000 L'} .value=${live(asks.water ?? '')}></label></div>
    <p class="row"><button class="go">Plan the night</button></p></form>`;
}

/** @param {string} name @param {string} value @param {string} says @param {boolean} on */
function tick(name, value, says, on) {
  return html`<label class="tick"><input type="checkbox" name=${name} value=${value} .checked=${live(on)}> ${says}</label>`;
}

/** What the form asks, as the program takes it. @param {HTMLFormElement} filled */
export function asked(filled) {
  const given = new FormData(filled);
  const text = (/** @type {string} */ key) => String(given.get(key) ?? '').trim();
  /** @type {Record<string, any>} */
  const asks = { package: text('package'), date: text('date'), questions: given.getAll('questions'), instruments: given.getAll('instruments') };
  for (const key of ['hose', 'supply', 'time', 'water']) if (text(key)) asks[key] = text(key);
  if (text('rise')) asks[text('way')] = text('rise');
  return asks;
}
