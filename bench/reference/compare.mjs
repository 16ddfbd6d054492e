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
 * ordered once, ours takes whole tables; in whole both are laid out and ordered anew for every solve. No floor: for the record.
 */
const COMPARED = [
  ['line', 'batch', 2e6, 'batch', 20000, 100, 'one pump, hose, nozzle: batch'],
  ['line', 'line-call', 1e6, 'batch', 20000, 4, 'one pump, hose, nozzle: single call'],
  ['engine', 'batch', 4e6, 'batch', 10000, 50, 'two intakes, four discharges, a wye: batch'],
  ['engine', 'along', 4e6, 'batch', 10000, 50, 'two intakes, four discharges, a wye: batch along the tangent'],
  ['engine', 'one', 500000, 'batch', 10000, 0, 'two intakes, four discharges, a wye: laid out once, one by one'],
  ['engine', 'solve', 100000, 'whole', 10000, 0, 'two intakes, four discharges, a wye: whole'],
  ['100', 'batch', 60000, 'batch', 1500, 5, 'grid of 100: batch'],
  ['100', 'one', 10000, 'batch', 1500, 0, 'grid of 100: laid out once, one by one'],
  ['100', 'solve', 10000, 'whole', 1500, 0, 'grid of 100: whole'],
  ['1000', 'batch', 3000, 'batch', 100, 3, 'grid of 1,000: batch'],
  ['1000', 'one', 300, 'batch', 100, 0, 'grid of 1,000: laid out once, one by one'],
  ['1000', 'solve', 250, 'whole', 60, 0, 'grid of 1,000: whole'],
  ['10000', 'one', 12, 'batch', 4, 1.5, 'grid of 10,000: laid out once, one by one'],
  ['10000', 'solve', 12, 'whole', 2, 0, 'grid of 10,000: whole'],
];

mkdirSync(cases, {recursive: true});
console.log(`CPU microseconds a solve, median of ${PAIRS} pairs; apart: largest difference of a pressure`);
for (const [name, ours, count, theirs, theirCount, floor, says] of COMPARED) {
  const file = caseFile(name);
  const apart = measure('apart', file);
  const pairs = Array.from({length: PAIRS}, () => [measure(ours, file, count), reference(theirs, name, theirCount)]);
  const ratio = median(pairs.map(([mine, other]) => other / mine));
  const [mine, other] = [0, 1].map((at) => median(pairs.map((pair) => pair[at])));
  const times = `ours ${round(mine)}, reference ${round(other)}, ratio ${round(ratio)}${judged(ratio, floor)}`;
  console.log(`${says}: ${times}, apart ${apart.toExponential(1)} psi`);
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

/** What a row is held to, where it is held to anything. */
function judged(ratio, floor) {
  return floor ? ` (floor ${floor}${ratio < floor ? ', MISSED' : ''})` : '';
}

function median(values) {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
}

function round(value) {
  return Number(value.toPrecision(3));
}
