import {execFileSync} from 'node:child_process';
import {mkdirSync, writeFileSync} from 'node:fs';
import {dirname, join} from 'node:path';
import {fileURLToPath} from 'node:url';

/* Called by bench/compare: runs both sides in turn, each in a process of its own, and prints medians. */
const here = dirname(fileURLToPath(import.meta.url));
const target = join(here, '..', 'speed', 'target');
const cases = join(target, 'cases');
const [java, only] = process.argv.slice(2);
const PAIRS = 7;
const LONGEST_ms = 300000;

/*
 * name, how ours is asked, solves of ours, how the reference is asked, solves of the reference, floor.
 * Neither side knows an answer before it sets out, but for rows that say "along the tangent". In batch both are laid out and
 * ordered once, in whole both anew for every solve.
 */
const COMPARED = [
  ['line', 'batch', 2e6, 'batch', 20000, 100, 'one pump, hose, nozzle: batch'],
  ['line', 'line-call', 1e6, 'batch', 20000, 4, 'one pump, hose, nozzle: single call'],
  ['engine', 'along', 1e6, 'batch', 10000, 50, 'two intakes, four discharges, a wye: batch along the tangent'],
  ['engine', 'batch', 500000, 'batch', 10000, 50, 'two intakes, four discharges, a wye: batch'],
  ['engine', 'solve', 50000, 'whole', 10000, 1, 'two intakes, four discharges, a wye: whole'],
  ['100', 'solve', 5000, 'whole', 1500, 5, 'grid of 100: whole'],
  ['1000', 'solve', 250, 'whole', 60, 3, 'grid of 1,000: whole'],
  ['10000', 'solve', 12, 'whole', 2, 1.5, 'grid of 10,000: whole'],
  ['100', 'batch', 5000, 'batch', 1500, 5, 'grid of 100: batch'],
  ['1000', 'batch', 250, 'batch', 100, 3, 'grid of 1,000: batch'],
  ['10000', 'batch', 12, 'batch', 4, 1.5, 'grid of 10,000: batch'],
  ['100', 'along', 10000, 'batch', 1500, 5, 'grid of 100: batch along the tangent'],
];

mkdirSync(cases, {recursive: true});
console.log(`CPU microseconds a solve, median of ${PAIRS} pairs; apart: largest difference of a pressure`);
for (const [name, ours, count, theirs, theirCount, floor, says] of COMPARED) {
  const file = caseFile(name);
  const apart = measure('apart', file);
  const pairs = Array.from({length: PAIRS}, () => [measure(ours, file, count), reference(theirs, name, theirCount)]);
  const ratio = median(pairs.map(([mine, other]) => other / mine));
  const [mine, other] = [0, 1].map((at) => median(pairs.map((pair) => pair[at])));
  console.log(`${says}: ours ${round(mine)}, reference ${round(other)}, ratio ${round(ratio)} (floor ${floor}` +
    `${ratio < floor ? ', MISSED' : ''}), apart ${apart.toExponential(1)} psi`);
}
if (only !== '--cases') {
  grow();
  scenarios();
}

function grow() {
  console.log('Growth: nodes, CPU microseconds a whole solve, memory it takes [MB]');
  for (const [size, count] of [[10, 50000], [100, 5000], [1000, 250], [10000, 10], [30000, 2], [100000, 1]]) {
    const file = caseFile(String(size), 'shape');
    try {
      console.log(`${size}: ${round(measure('solve', file, count))}, ${round(measure('memory', file, 1))}`);
    } catch (ended) {
      console.log(`${size}: no answer (${ended.code ?? ended.status}; at most ${LONGEST_ms / 1000} s)`);
    }
  }
}

function scenarios() {
  console.log(`A million scenarios of the second case: ${round(measure('along', caseFile('engine'), 1e6))} CPU seconds`);
}

function caseFile(name, what = 'case') {
  const file = join(cases, `${name}.txt`);
  writeFileSync(file, execFileSync('node', [join(here, 'measure.mjs'), what, name], {maxBuffer: 1e9}));
  return file;
}

function measure(what, file, count = 0) {
  const classes = `${join(target, 'classes')}:${join(target, 'lib', '*')}`;
  const options = ['-XX:+UseSerialGC', '-Xbatch', '-Xmx4g', '-cp', classes, 'org.hosewright.bench.Measure'];
  return Number(execFileSync(java, [...options, what, file, String(count)], {encoding: 'utf8', timeout: LONGEST_ms}));
}

function reference(what, name, count) {
  return Number(execFileSync('node', [join(here, 'measure.mjs'), what, name, String(count)], {encoding: 'utf8'}));
}

function median(values) {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
}

function round(value) {
  return Number(value.toPrecision(3));
}
