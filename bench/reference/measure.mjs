import {LinkProperty, NodeProperty} from 'epanet-js';
import {benchNetworkOf} from './bench-networks.mjs';
import {textOf} from './case-text.mjs';
import {inpOf} from './inp.mjs';
import {ACCURACY, solve, withOpen} from './reference.mjs';

/*
 * node measure.mjs case NAME                 the network and the reference's answer, as text
 * node measure.mjs shape NAME                the network alone, every answer 0
 * node measure.mjs batch|whole NAME COUNT    CPU microseconds a solve
 *
 * batch: the network stays open; each solve changes a head and a loss, starts from cold flows, and reads a flow and a head.
 * whole: each solve also opens and closes the hydraulics, which orders the equations anew; the text is read once.
 */
console.warn = () => {};
/** How its toolkit calls a start from cold flows without results saved. */
const COLD = 10;

const [what, name, count] = process.argv.slice(2);
const network = benchNetworkOf(name);
const first = network.links.findIndex(({kind}) => kind === 'hose');
let source;
let hose;
if (what === 'case') process.stdout.write(textOf(network, solve(network)));
else if (what === 'shape') process.stdout.write(textOf(network, unsolved()));
else console.log(measure(Number(count)));

function unsolved() {
  const flows = network.links.map(() => 0);
  const heads = network.nodes.map(() => 0);
  return {heads, outflows: heads, flows};
}

function measure(solves) {
  return withOpen(inpOf(network, ACCURACY, []), (project) => {
    source = project.getNodeIndex('N0');
    hose = first >= 0 ? project.getLinkIndex(`L${first}`) : 0;
    const run = what === 'batch' ? batch(project) : whole(project);
    run(Math.max(1, solves / 5));
    const before = process.cpuUsage();
    run(solves);
    const spent = process.cpuUsage(before);
    return (spent.user + spent.system) / solves;
  });
}

function batch(project) {
  return (solves) => {
    project.openH();
    for (let at = 0; at < solves; at++) once(project, at);
    project.closeH();
  };
}

function whole(project) {
  return (solves) => {
    for (let at = 0; at < solves; at++) {
      project.openH();
      once(project, at);
      project.closeH();
    }
  };
}

function once(project, at) {
  const share = 1 + 0.1 * ((at % 100) / 100);
  project.setNodeValue(source, NodeProperty.Elevation, network.nodes[0].head * share);
  if (hose) project.setLinkValue(hose, LinkProperty.InitSetting, network.links[first].loss * share);
  project.initH(COLD);
  project.runH();
  project.getNodeValue(1, NodeProperty.Head);
  return project.getLinkValue(1, LinkProperty.Flow);
}
