import {createHash} from 'node:crypto';
import {mkdirSync, writeFileSync} from 'node:fs';
import {join} from 'node:path';
import {standsStill, textOf} from './case-text.mjs';
import {imbalance_gpm, leftShut, residual_psi} from './laws.mjs';
import {networkOf} from './networks.mjs';
import {ACCURACY, engine, solve} from './reference.mjs';

/*
 * node make-cases.mjs FOLDER [COUNT]
 *
 * Solves seeded random networks and writes cases with their answers into FOLDER/epanet-cases.txt: COUNT (1,000) in which
 * water runs everywhere, and those met on the way in which a tip or a pump stands still.
 */
const WANTED = 1000;

/** An answer further than this from solving its own equations is no reference; such networks are counted, not kept. */
const RESIDUAL_psi = 1e-8;
const IMBALANCE_gpm = 1e-6;

const [folder, count = WANTED] = process.argv.slice(2);
if (!folder) {
  console.error('Usage: node make-cases.mjs FOLDER [COUNT]');
  process.exit(2);
}
console.warn = () => {}; // the engine warns of low pressure, which is part of these cases

const found = {running: 0, shut: 0, unsolved: 0, leftShut: 0, inexact: 0};
let text = '';
let number = 0;
while (found.running < Number(count)) {
  number++;
  const network = networkOf(number);
  const answer = solve(network);
  const state = stateOf(network, answer);
  found[state]++;
  if (state === 'running' || state === 'shut') text += textOf(network, answer);
}
const head = [
  `# source: epanet-js 0.9.0 (engine ${engine}), accuracy ${ACCURACY}, head error 1e-8; made by bench/reference/make-cases.mjs`,
  `# of ${number} networks: ${found.running} running, ${found.shut} with a tip or pump standing still;` +
    ` left out: ${found.unsolved} not solved by the reference, ${found.leftShut} left with a pump shut that could run, ${found.inexact} not solved exactly`,
];
mkdirSync(folder, {recursive: true});
writeFileSync(join(folder, 'epanet-cases.txt'), `${head.join('\n')}\n${text}`);
console.log(head[1].slice(2));
console.log(`${text.length} bytes, sha256 ${createHash('sha256').update(text).digest('hex')}`);

function stateOf(network, answer) {
  if (answer.refused) return 'unsolved';
  if (leftShut(network, answer)) return 'leftShut';
  if (standsStill(network, answer)) return 'shut';
  return residual_psi(network, answer) <= RESIDUAL_psi && imbalance_gpm(network, answer) <= IMBALANCE_gpm ? 'running' : 'inexact';
}
