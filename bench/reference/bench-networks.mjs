import {Seeded} from './seeded.mjs';

/*
 * The networks that speed is measured on, in the reference's units; see networks.mjs for what a node and a link are.
 * One whole number tells how big a grid is; "line" and "engine" are fire-ground lays.
 */
export function benchNetworkOf(name) {
  if (name === 'line') return line();
  if (name === 'engine') return engine();
  return grid(Number(name));
}

const junction = (elevation = 0, demand = 0) => ({kind: 'junction', elevation, demand});
const tip = (factor, elevation = 0) => ({kind: 'tip', elevation, demand: 0, factor});
const hose = (from, to, diameter, loss) => ({kind: 'hose', from, to, diameter, loss});

/** A pump that holds its pressure, 200 ft of hose, a nozzle. */
function line() {
  return {number: 1, kind: 'line', law: 'H-W', nodes: [{kind: 'reservoir', head: 300}, tip(22.7)], links: [hose(0, 1, 1.75, 40)]};
}

/** An engine fed by two hydrants through their hose; three lines, and a fourth discharge to a wye of two lines. */
function engine() {
  const nodes = [
    {kind: 'reservoir', head: 150}, {kind: 'reservoir', head: 130}, junction(), junction(),
    junction(), junction(), junction(), junction(), junction(),
    tip(22.7), tip(17.3), tip(30), tip(22.7, 10), tip(22.7, 20),
  ];
  const links = [
    hose(0, 2, 5, 20), hose(1, 2, 4, 20),
    {kind: 'pump', from: 2, to: 3, curve: [[0, 400], [1250, 346], [2500, 200]]},
    hose(3, 4, 2.5, 3), hose(3, 5, 2.5, 3), hose(3, 6, 2.5, 3), hose(3, 7, 3, 3),
    hose(4, 9, 1.75, 40), hose(5, 10, 1.75, 40), hose(6, 11, 2.5, 40), hose(7, 8, 3, 30),
    hose(8, 12, 1.75, 40), hose(8, 13, 1.75, 60),
  ];
  return {number: 2, kind: 'engine', law: 'H-W', nodes, links};
}

/** A square grid of mains, fed at two corners, water drawn at a third of the crossings, hydrants open at a few. */
function grid(size) {
  const random = new Seeded(size);
  const width = Math.max(2, Math.round(Math.sqrt(size)));
  const nodes = [{kind: 'reservoir', head: 300}, {kind: 'reservoir', head: 290}];
  const links = [];
  const pipe = (from, to, diameter) => ({
    kind: 'pipe', from, to, length: random.between(200, 600), diameter, roughness: random.between(90, 140), minor: 0,
  });
  const inch = size > 2000 ? [12, 16, 20] : [6, 8, 10, 12];
  for (let at = 0; at < size; at++) {
    const elevation = random.between(0, 40, 1);
    const open = at % 97 === 50;
    nodes.push(open ? tip(random.between(10, 30, 1), elevation) : junction(elevation, random.chance(0.33) ? random.between(0.2, 2, 1) : 0));
    if (at % width > 0) links.push(pipe(at + 1, at + 2, random.pick(inch)));
    if (at >= width) links.push(pipe(at + 2 - width, at + 2, random.pick(inch)));
  }
  links.push(pipe(0, 2, 24), pipe(1, size + 1, 24));
  return {number: size, kind: 'grid', law: 'H-W', nodes, links};
}
