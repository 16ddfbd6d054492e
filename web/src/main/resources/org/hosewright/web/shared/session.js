/** Who is signed in at this browser; asks whoever comes for name and password where the record asks for them. */
import { html, nothing, render } from 'lit';

/** @typedef {{ accounts: boolean, name?: string, hats?: string[], given?: boolean }} Session */

const DOOR = '/api/v1/session';

/**
 * @param {string} path
 * @param {Record<string, string>} [what] to be sent; without it the session is only looked at
 * @returns {Promise<Session>}
 */
async function ask(path, what) {
  const headers = { 'Content-Type': 'application/json' };
  const response = await fetch(DOOR + path, what ? { method: 'POST', headers, body: JSON.stringify(what) } : { cache: 'no-store' });
  const found = await response.json();
  if (!response.ok) throw new Error(found.detail ?? `The program answered ${response.status}.`);
  return found;
}

/** @type {Session} */
let now = { accounts: false };

/** The session as it was last seen. */
export function session() {
  return now;
}

/** The name under which this browser writes; empty where nobody is signed in. */
export function signedIn() {
  return now.name ?? '';
}

/** @param {Session} found */
function take(found) {
  now = found;
  place();
  return found;
}

/** Looks who is signed in. @returns {Promise<Session>} */
export async function look() {
  return take(await ask(''));
}

/** Signs out, and shows nothing more of the record. */
export async function signOut() {
  await ask('/end', {});
  location.assign('/');
}

/** Says at the top of the page who is signed in. */
function place() {
  const top = document.getElementById('person');
  if (top) render(now.name ? html`${now.name} <button class="link" @click=${signOut}>Sign out</button>` : nothing, top);
}

/** @type {Promise<void> | undefined} */
let asking;

/** Asks for name and password over the page, once however many ask; what stands on the page stays. @returns {Promise<void>} */
export function signIn() {
  asking ??= new Promise((through) => { open(through); }).then(() => { asking = undefined; });
  return asking;
}

/** @param {(value: unknown) => void} through */
function open(through) {
  const dialog = document.createElement('dialog');
  dialog.className = 'sign-in';
  dialog.setAttribute('aria-labelledby', 'sign-in-title');
  // There is no way around it: behind it nothing can be read.
  dialog.addEventListener('cancel', (event) => event.preventDefault());
  document.body.append(dialog);
  const leave = () => { dialog.close(); dialog.remove(); through(undefined); };
  draw(dialog, leave, now.given ? 'given' : 'out', '');
  dialog.showModal();
}

/**
 * @param {HTMLDialogElement} dialog
 * @param {() => void} leave
 * @param {'out' | 'given'} state whether name and password are asked for, or a password of one's own
 * @param {string} trouble
 */
function draw(dialog, leave, state, trouble) {
  const send = state === 'out' ? enter : choose;
  render(html`<form @submit=${(/** @type {SubmitEvent} */ event) => { event.preventDefault(); send(dialog, leave); }}>
    <h2 id="sign-in-title">${state === 'out' ? 'Who is there?' : 'Choose a password of your own'}</h2>
    ${state === 'out' ? html`<label>Your name, as the record knows you <input name="name" autocomplete="username" maxlength="80" required></label>` : nothing}
    <label>${state === 'out' ? 'Password' : 'The password you were given'} <input name="password" type="password" autocomplete="current-password" maxlength="128" required></label>
    ${state === 'given' ? html`<label>Your own <input name="wanted" type="password" autocomplete="new-password" minlength="12" maxlength="128" required></label>
      <p class="soft small">At least 12 characters; four words that do not belong together will do.</p>` : nothing}
    <p class="wrong" role="alert" ?hidden=${!trouble}>${trouble}</p>
    <p class="row"><button class="go">${state === 'out' ? 'Sign in' : 'Take this password'}</button></p>
    <p class="soft small">Forgotten? An owner of the record gives you another one on the page people; on the machine that keeps it, so does <code>./hosewright people password</code>.</p>
  </form>`, dialog);
}

/** @param {HTMLDialogElement} dialog @param {string} name */
function typed(dialog, name) {
  return /** @type {HTMLInputElement} */ (dialog.querySelector(`[name=${name}]`)).value;
}

/** @param {HTMLDialogElement} dialog @param {() => void} leave */
async function enter(dialog, leave) {
  try {
    const found = take(await ask('', { name: typed(dialog, 'name'), password: typed(dialog, 'password') }));
    if (found.given) draw(dialog, leave, 'given', '');
    else leave();
  } catch (error) {
    draw(dialog, leave, 'out', error instanceof Error ? error.message : String(error));
  }
}

/** @param {HTMLDialogElement} dialog @param {() => void} leave */
async function choose(dialog, leave) {
  try {
    take(await ask('/password', { password: typed(dialog, 'password'), wanted: typed(dialog, 'wanted') }));
    leave();
  } catch (error) {
    draw(dialog, leave, 'given', error instanceof Error ? error.message : String(error));
  }
}
