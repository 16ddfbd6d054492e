/** Who may do what? The people with accounts, their hats, and how many an order takes. */
import { html, nothing } from 'lit';
import { get, post } from '../shared/api.js';
import { done, failed } from '../shared/notes.js';
import { Part, busy, company } from '../shared/page.js';
import { look, session } from '../shared/session.js';
import { capital, moment } from '../shared/text.js';
import { HATS, hatBoxes, passwordFields, takePassword, ticked } from './fields.js';

/** @typedef {{ id: string, version: number, name: string, hats: string[], active: boolean, given: boolean, who: string, at: string }} Person */

class PeoplePage extends Part {
  /** @override */
  static properties = { ready: { state: true }, people: { state: true }, signing: { state: true }, open: { state: true }, working: { state: true } };

  constructor() {
    super();
    this.ready = false;
    /** @type {Person[]} */
    this.people = [];
    /** @type {{ signers: number, version: number }} */
    this.signing = { signers: 1, version: 0 };
    /** @type {string} what stands open: a person's id, "new" or "own" */
    this.open = '';
    this.working = false;
    this.zone = 'UTC';
  }

  /** @override */
  async connectedCallback() {
    super.connectedCallback();
    this.zone = (await company)?.zone ?? 'UTC';
    await this.read();
  }

  async read() {
    try {
      await look();
      if (this.owns) this.people = (await get('/people')).people;
      this.signing = await get('/signing');
    } catch (error) {
      failed(error);
    }
    this.ready = true;
    this.requestUpdate();
  }

  get owns() {
    return session().accounts && (session().hats ?? []).includes('owner');
  }

  /** @override */
  render() {
    if (!this.ready) return busy('Looking who is there');
    if (!session().accounts) return this.first();
    return html`<p class="sub">You are ${session().name}: ${(session().hats ?? []).join(', ')}.
        <button class="link" @click=${() => this.toggle('own')}>Choose another password</button></p>
      ${this.open === 'own' ? this.own() : nothing}
      ${this.owns ? this.all() : html`<p>Who owns the record says who may do what. Ask an owner for another hat.</p>`}
      ${this.rule()}`;
  }

  first() {
    return html`<div class="empty"><p>Nobody has an account yet: whoever sits at this machine works without one, under the name typed.</p>
      <p>The first account owns the record. From then on everybody signs in, here and, where the server is started with <code>--lan</code>, on the station's network. There is no way back to working without accounts.</p></div>
      <form @submit=${(/** @type {SubmitEvent} */ event) => this.add(event, true)}>
        <label>Your name, as the record shall know you <input name="name" autocomplete="username" maxlength="80" required></label>
        ${passwordFields()}
        ${hatBoxes([...HATS], ['owner'])}
        <p class="row"><button class="go" ?disabled=${this.working}>Make the first account</button></p>
      </form>`;
  }

  own() {
    return html`<form @submit=${(/** @type {SubmitEvent} */ event) => this.chooseOwn(event)}>
      <label>Your present password <input name="present" type="password" autocomplete="current-password" maxlength="128" required></label>
      ${passwordFields()}
      <p class="row"><button class="go" ?disabled=${this.working}>Take this password</button></p></form>`;
  }

  all() {
    return html`<ul class="people">${this.people.map((person) => this.person(person))}</ul>
      ${this.open === 'new' ? this.another() : html`<p class="row"><button @click=${() => this.toggle('new')}>Give somebody an account</button></p>`}`;
  }

  another() {
    return html`<section><h2>Another account</h2><form @submit=${(/** @type {SubmitEvent} */ event) => this.add(event, false)}>
      <label>Name, as the record shall know the person <input name="name" autocomplete="off" maxlength="80" required></label>
      ${passwordFields()}
      <p class="soft small">Hand the password over by word of mouth; at the first sign-in the person chooses another one.</p>
      ${hatBoxes(['recorder', 'operator'], [])}
      <p class="row"><button class="go" ?disabled=${this.working}>Make the account</button> <button type="button" @click=${() => this.toggle('')}>Leave it</button></p>
    </form></section>`;
  }

  /** @param {Person} person */
  person(person) {
    const open = this.open === person.id;
    const state = person.active ? person.hats.join(', ') : 'may not sign in';
    return html`<li class=${person.active ? '' : 'out'} data-person=${person.name}><h3>${person.name}</h3>
      <p class="soft">${capital(state)}.${person.given && person.active ? ' Has not chosen a password yet.' : ''} Last changed by ${person.who}, ${moment(person.at, this.zone)}.
        <button class="link" aria-expanded=${open} @click=${() => this.toggle(person.id)}>Change</button></p>
      ${open ? this.form(person) : nothing}</li>`;
  }

  /** @param {Person} person */
  form(person) {
    return html`<form @submit=${(/** @type {SubmitEvent} */ event) => this.change(event, person)}>
        ${hatBoxes(person.hats, [])}
        <p class="row"><button class="go" ?disabled=${this.working}>Give these hats</button>
          <button type="button" ?disabled=${this.working} @click=${() => this.save(person, person.hats, !person.active)}>${person.active ? 'Let this person not sign in' : 'Let this person sign in again'}</button></p>
      </form>
      ${person.name === session().name ? nothing : html`<form @submit=${(/** @type {SubmitEvent} */ event) => this.give(event, person)}>
        ${passwordFields()}<p class="row"><button ?disabled=${this.working}>Give this password</button></p></form>`}`;
  }

  rule() {
    const two = this.signing.signers > 1;
    return html`<section><h2>Signing</h2><p>An order takes ${two ? html`<b>two people</b>: who proposed it may not sign it` : html`<b>one person</b>, who may propose and sign it; the record shows which hat was worn`}.</p>
      ${this.owns ? html`<p class="row"><button ?disabled=${this.working} @click=${() => this.layDown(two ? 1 : 2)}>${two ? 'Let one person do' : 'Ask for two people'}</button></p>` : nothing}</section>`;
  }

  /** @param {string} what */
  toggle(what) {
    this.open = this.open === what ? '' : what;
  }

  /** @param {string} says @param {() => Promise<unknown>} act */
  async act(says, act) {
    this.working = true;
    try {
      await act();
      this.open = '';
      done(says);
      await this.read();
    } catch (error) {
      failed(error);
    }
    this.working = false;
  }

  /** @param {SubmitEvent} event @param {boolean} first */
  add(event, first) {
    const form = taken(event);
    return this.act(first ? 'The record is yours; from now on everybody signs in.' : 'The account is made.', async () => {
      const name = /** @type {HTMLInputElement} */ (form.elements.namedItem('name')).value;
      await post('/people', { name, password: takePassword(form), hats: ticked(form, first ? ['owner'] : []) });
    });
  }

  /** @param {SubmitEvent} event @param {Person} person */
  change(event, person) {
    return this.save(person, ticked(taken(event), []), person.active);
  }

  /** @param {Person} person @param {string[]} hats @param {boolean} active */
  save(person, hats, active) {
    return this.act(`${person.name}: ${active ? hats.join(', ') : 'may not sign in'}.`,
      () => post(`/people/${person.id}`, { hats, active, basedOn: person.version }));
  }

  /** @param {SubmitEvent} event @param {Person} person */
  give(event, person) {
    const form = taken(event);
    return this.act(`${person.name} chooses another password at the next sign-in.`,
      () => post(`/people/${person.id}/password`, { password: takePassword(form) }));
  }

  /** @param {SubmitEvent} event */
  chooseOwn(event) {
    const form = taken(event);
    const present = /** @type {HTMLInputElement} */ (form.elements.namedItem('present')).value;
    return this.act('Your password is changed; other browsers sign in anew.',
      () => post('/session/password', { password: present, wanted: takePassword(form) }));
  }

  /** @param {number} signers */
  layDown(signers) {
    return this.act(signers > 1 ? 'Orders take two people from now on.' : 'One person does from now on.',
      () => post('/signing', { signers, basedOn: this.signing.version }));
  }
}
customElements.define('hw-people', PeoplePage);

/** @param {SubmitEvent} event @returns {HTMLFormElement} */
function taken(event) {
  event.preventDefault();
  return /** @type {HTMLFormElement} */ (event.target);
}
