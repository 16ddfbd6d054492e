import {Seeded} from './seeded.mjs';

/*
 * Seeded random networks of 2 to 200 nodes in the reference's own units: ft, in, gpm, psi.
 *
 * A node is a reservoir (fixed head), a junction (elevation, demand) or a tip (elevation, flow per root of pressure).
 * A link is a pipe (length, diameter, roughness, minor loss), a hose (a valve whose loss is exactly quadratic) or a pump
 * (three points of its curve). Nodes are numbered in the order in which they are written.
 */

const HOSE_in = [1.5, 1.75, 2, 2.5, 3, 4, 5];
const PIPE_in = [2.5, 3, 4, 6, 8, 10, 12];

/** The network of one case number. */
export function networkOf(number) {
  const random = new Seeded(number);
  const size = Math.floor(2 * 100 ** (random.unit() ** 2));
  const law = random.pick(['H-W', 'D-W']);
  const draft = {random, law, nodes: [], links: []};
  const kind = size < 6 ? random.pick(['lay', 'tree']) : random.pick(['lay', 'tree', 'grid', 'mesh']);
  const source = addSource(draft, size);
  ({lay: growLay, tree: growTree, grid: growGrid, mesh: growMesh})[kind](draft, source, size);
  return {number, kind, law, nodes: draft.nodes, links: draft.links};
}

/** A reservoir, and most times a pump behind it; returns the node that feeds the rest. */
function addSource(draft, size) {
  const {random} = draft;
  const pumped = size > 2 && random.chance(0.6);
  const head = pumped ? random.between(0, 150) : random.between(250, 500);
  draft.nodes.push({kind: 'reservoir', head});
  if (!pumped) return 0;
  draft.nodes.push(junction(random));
  const shutOff = random.between(250, 500);
  const middle = random.between(500, 2000);
  draft.links.push({
    kind: 'pump', from: 0, to: 1,
    curve: [[0, shutOff], [middle, Math.round(shutOff * 0.85)], [2 * middle, Math.round(shutOff * random.between(0.3, 0.6, 2))]],
  });
  return 1;
}

/** Hose from a pump or hydrant, parted and parted again, a tip at every end. */
function growLay(draft, source, size) {
  const {random} = draft;
  let open = [source];
  while (draft.nodes.length < size) {
    const from = random.pick(open);
    const to = draft.nodes.push(junction(random)) - 1;
    draft.links.push(random.chance(0.85) ? hose(random, from, to) : pipe(draft, from, to, HOSE_in));
    open = draft.nodes.map((_, at) => at).filter((at) => at >= source && degree(draft, at) < 4);
  }
  endInTips(draft, source, 1);
}

/** Pipes as they branch, water drawn here and there. */
function growTree(draft, source, size) {
  const {random} = draft;
  while (draft.nodes.length < size) {
    const from = source + random.below(draft.nodes.length - source);
    join(draft, from, draft.nodes.push(drawnFrom(random)) - 1);
  }
  endInTips(draft, source, 0.7);
}

/** A grid of mains with a few streets missing. */
function growGrid(draft, source, size) {
  const {random} = draft;
  const first = draft.nodes.length;
  const width = Math.max(2, Math.round(Math.sqrt(size - first)));
  while (draft.nodes.length < size) {
    const at = draft.nodes.push(drawnFrom(random)) - 1 - first;
    const left = at % width > 0;
    const up = at >= width;
    if (left && (!up || random.chance(0.9))) join(draft, first + at - 1, first + at);
    if (up && (at % width === 0 || random.chance(0.9) || !joined(draft, first + at))) join(draft, first + at - width, first + at);
  }
  draft.links.push(pipe(draft, source, first, [8, 10, 12]));
  addTips(draft, first);
  endInTips(draft, source, 0.5);
  addSecondSource(draft, first);
}

/** A tree with links across it, some of them side by side. */
function growMesh(draft, source, size) {
  growTree(draft, source, size);
  const {random} = draft;
  const count = draft.nodes.length;
  for (let extra = 1 + random.below(Math.max(1, Math.floor(count / 3))); extra > 0; extra--) {
    const from = source + random.below(count - source);
    const to = source + random.below(count - source);
    if (from !== to) join(draft, from, to);
  }
  addSecondSource(draft, source);
}

function addSecondSource(draft, first) {
  const {random} = draft;
  if (!random.chance(0.4)) return;
  const to = first + random.below(draft.nodes.length - first);
  const from = draft.nodes.push({kind: 'reservoir', head: random.between(250, 450)}) - 1;
  draft.links.push(pipe(draft, from, to, PIPE_in));
}

/** A tip at a share of the dead ends, water drawn at the rest: where water stands, the reference is not exact. */
function endInTips(draft, source, share) {
  const {random, nodes} = draft;
  nodes.forEach((node, at) => {
    if (at <= source || degree(draft, at) > 1) return;
    if (random.chance(share)) turnToTip(random, node, nodes.length);
    else if (node.kind === 'junction') node.demand ||= random.between(0.5, 6, 1);
  });
  const last = nodes[nodes.length - 1];
  if (last.kind === 'junction' && !nodes.some((node) => node.kind === 'tip')) turnToTip(random, last, nodes.length);
}

function addTips(draft, first) {
  const {random, nodes} = draft;
  for (let count = 1 + Math.floor((nodes.length - first) / 12); count > 0; count--) {
    turnToTip(random, nodes[first + random.below(nodes.length - first)], nodes.length);
  }
}

function turnToTip(random, node, size) {
  node.kind = 'tip';
  node.demand = 0;
  node.factor = random.between(4, 40 / Math.sqrt(1 + size / 8), 2);
}

function junction(random) {
  return {kind: 'junction', elevation: random.between(0, 60, 1), demand: 0};
}

function drawnFrom(random) {
  const node = junction(random);
  if (random.chance(0.3)) node.demand = random.between(0.5, 6, 1);
  return node;
}

function join(draft, from, to) {
  const {random} = draft;
  draft.links.push(random.chance(0.2) ? hose(random, from, to) : pipe(draft, from, to, PIPE_in));
}

/** A valve that throttles: 0.02517 K Q^2 / d^4, the exact quadratic that a hose's coefficient stands for. */
function hose(random, from, to) {
  return {kind: 'hose', from, to, diameter: random.pick(HOSE_in), loss: random.between(2, 60, 1)};
}

function pipe({random, law}, from, to, diameters) {
  const roughness = law === 'H-W' ? random.between(90, 150) : random.between(0.1, 4, 1);
  const minor = random.chance(0.3) ? random.between(0.5, 6, 1) : 0;
  return {kind: 'pipe', from, to, length: random.between(20, 600), diameter: random.pick(diameters), roughness, minor};
}

function degree(draft, at) {
  return draft.links.filter((link) => link.from === at || link.to === at).length;
}

function joined(draft, at) {
  return degree(draft, at) > 0;
}
