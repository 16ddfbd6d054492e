import {readFileSync, writeFileSync} from 'node:fs';
import {join} from 'node:path';
import {LinkProperty, NodeProperty, Option} from 'epanet-js';
import {ACCURACY, engine, withOpen} from './reference.mjs';

/*
 * node example-answers.mjs FOLDER FILE
 *
 * Solves the first time step of the example networks in FOLDER (Net1.inp to Net3.inp) and writes heads and flows into FILE.
 */
const EXAMPLES = ['Net1', 'Net2', 'Net3'];

/** Beside the accuracy: no head further than this [ft] from its law. */
const HEAD_ERROR_ft = 1e-8;

const [folder, file] = process.argv.slice(2);
if (!file) {
  console.error('Usage: node example-answers.mjs FOLDER FILE');
  process.exit(2);
}
const rows = EXAMPLES.flatMap((name) => answersOf(name, readFileSync(join(folder, `${name}.inp`), 'utf8')));
const head = [
  `# source: epanet-js 0.9.0 (engine ${engine}), accuracy ${ACCURACY}; made by bench/reference/example-answers.mjs`,
  '# from the example networks Net1, Net2 and Net3 of the US Environmental Protection Agency (public domain), first time step',
  '# network, node or link, its name, head [ft] or flow [gpm]',
];
writeFileSync(file, `${[...head, ...rows].join('\n')}\n`);

function answersOf(name, inp) {
  return withOpen(inp, (project) => {
    project.setOption(Option.Accuracy, ACCURACY);
    project.setOption(Option.HeadError, HEAD_ERROR_ft);
    project.setOption(Option.Trials, 200);
    project.openH();
    project.initH(0);
    project.runH();
    const nodes = numbered(project.getCount(0)).map((at) =>
      [name, 'node', project.getNodeId(at), short(project.getNodeValue(at, NodeProperty.Head), 8)]);
    const links = numbered(project.getCount(2)).map((at) =>
      [name, 'link', project.getLinkId(at), short(project.getLinkValue(at, LinkProperty.Flow), 6)]);
    project.closeH();
    return [...nodes, ...links].map((row) => row.join(' '));
  });
}

function numbered(count) {
  return Array.from({length: count}, (_, at) => at + 1);
}

function short(value, decimals) {
  return Number(value.toFixed(decimals));
}
