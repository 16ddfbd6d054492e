/** Talks to the server on this machine; every failure becomes a {@link Trouble} whose message a person can read. */

import { look, session, signIn, signedIn } from './session.js';

const ROOT = '/api/v1';
const WHO = 'hosewright.who';

/** A failure, said as a sentence. */
export class Trouble extends Error {
  /**
   * @param {string} says
   * @param {number} status HTTP status; 0 where the server did not answer
   * @param {Record<string, any>} problem the problem document, where there was one
   */
  constructor(says, status, problem) {
    super(says);
    this.status = status;
    this.problem = problem;
  }

  /** True where asking again later may do. */
  get away() {
    return this.status === 0 || this.status >= 502;
  }
}

/** The person who writes: the one signed in, else as typed on this machine. */
export function who() {
  return signedIn() || (localStorage.getItem(WHO) ?? '');
}

/** @param {string} name */
export function setWho(name) {
  localStorage.setItem(WHO, name.trim());
}

/** Who is signed in is known before anything else is asked for. */
const known = look().catch(() => undefined);

/**
 * @param {string} path
 * @param {RequestInit} [init]
 */
async function reach(path, init) {
  await known;
  try {
    return await fetch(ROOT + path, { cache: 'no-store', ...init });
  } catch {
    throw new Trouble('The program does not answer.', 0, {});
  }
}

/**
 * @param {string} path below the API's root
 * @param {RequestInit} [init]
 * @returns {Promise<Response>}
 */
async function ask(path, init) {
  let response = await reach(path, init);
  while (response.status === 401 || (response.status === 403 && session().given)) {
    await signIn();
    response = await reach(path, init);
  }
  if (!response.ok) {
    const problem = await response.json().catch(() => ({}));
    throw new Trouble(problem.detail ?? `The program answered ${response.status}.`, response.status, problem);
  }
  return response;
}

/**
 * @param {string} path
 * @returns {Promise<any>}
 */
export async function get(path) {
  return (await ask(path)).json();
}

/**
 * Asks for a change, in the name of the person who writes.
 * @param {string} path
 * @param {Record<string, any>} what
 * @param {string} [why]
 * @returns {Promise<any>}
 */
export async function post(path, what, why = '') {
  const body = JSON.stringify({ who: who() || 'someone at this machine', ...(why && { why }), ...what });
  const headers = { 'Content-Type': 'application/json' };
  return (await ask(path, { method: 'POST', headers, body })).json();
}

/**
 * Asks a question that changes nothing.
 * @param {string} path
 * @param {Record<string, any>} what
 * @returns {Promise<any>}
 */
export async function check(path, what) {
  const headers = { 'Content-Type': 'application/json' };
  return (await ask(path, { method: 'POST', headers, body: JSON.stringify(what) })).json();
}

/**
 * Fetches a file and hands it to the person.
 * @param {string} path
 */
export async function save(path) {
  const response = await ask(path);
  const name = /filename="([^"]+)"/.exec(response.headers.get('Content-Disposition') ?? '')?.[1] ?? 'hosewright';
  const link = document.createElement('a');
  link.href = URL.createObjectURL(await response.blob());
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
