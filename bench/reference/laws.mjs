/*
 * The reference's own laws, in feet and cubic feet per second, written a second time: how far its answer is from
 * solving its own equations. Constants as the engine has them.
 */

const GPM_PER_CFS = 448.831;
const PSI_PER_FT = 0.4333;
const HAZEN_WILLIAMS = 4.727;
const EXPONENT = 1.852;
const MINOR = 0.02517;
const GRAVITY_ft_s2 = 32.2;
const VISCOSITY_ft2_s = 1.1e-5;

/** The largest head that a link's or a tip's law leaves unexplained [psi]. */
export function residual_psi(network, answer) {
  const {nodes, links, law} = network;
  const {heads, flows, outflows} = answer;
  const left = links.map((link, at) => heads[link.from] - heads[link.to] - loss_ft(link, law, flows[at] / GPM_PER_CFS));
  nodes.forEach((node, at) => {
    if (node.kind === 'tip') left.push(heads[at] - node.elevation - (outflows[at] / node.factor) ** 2 / PSI_PER_FT);
  });
  return Math.max(...left.map(Math.abs)) * PSI_PER_FT;
}

/** Whether a pump was left shut that could push its water out: a state that the reference's search got stuck in. */
export function leftShut({links}, {heads, flows}) {
  return links.some((link, at) =>
    link.kind === 'pump' && flows[at] <= 0 && heads[link.from] + link.curve[0][1] > heads[link.to]);
}

/** The largest flow that a node does not account for [gpm]. */
export function imbalance_gpm({nodes, links}, {flows, outflows}) {
  const left = nodes.map((node, at) => -outflows[at]);
  links.forEach((link, at) => {
    left[link.from] -= flows[at];
    left[link.to] += flows[at];
  });
  return Math.max(...left.map(Math.abs));
}

function loss_ft(link, law, flow) {
  if (link.kind === 'pump') return -gain_ft(link.curve, flow);
  const size_ft = link.diameter / 12;
  if (link.kind === 'hose') return (MINOR * link.loss * flow * Math.abs(flow)) / size_ft ** 4;
  const minor = (MINOR * link.minor * flow * Math.abs(flow)) / size_ft ** 4;
  return minor + (law === 'H-W' ? hazenWilliams_ft(link, size_ft, flow) : darcyWeisbach_ft(link, size_ft, flow));
}

function hazenWilliams_ft({length, roughness}, size_ft, flow) {
  return (Math.sign(flow) * HAZEN_WILLIAMS * length * Math.abs(flow) ** EXPONENT) / roughness ** EXPONENT / size_ft ** 4.871;
}

function darcyWeisbach_ft({length, roughness}, size_ft, flow) {
  const reynolds = (4 * Math.abs(flow)) / (Math.PI * size_ft * VISCOSITY_ft2_s);
  const area = (Math.PI * size_ft ** 2) / 4;
  const unit = length / 2 / GRAVITY_ft_s2 / size_ft / area ** 2;
  if (reynolds <= 2000) return (64 * unit * flow * Math.PI * size_ft * VISCOSITY_ft2_s) / 4;
  return frictionFactor(reynolds, roughness / 1000 / size_ft) * unit * flow * Math.abs(flow);
}

/** Swamee and Jain above a Reynolds number of 4,000; below it the cubic that joins it to laminar flow. */
function frictionFactor(reynolds, rough) {
  const swameeJain = (y) => (-2 * Math.log10(y)) ** -2;
  if (reynolds >= 4000) return swameeJain(rough / 3.7 + 5.74 / reynolds ** 0.9);
  const y2 = rough / 3.7 + 5.74 / 4000 ** 0.9;
  const y3 = -2 * Math.log10(y2);
  const fa = y3 ** -2;
  const fb = fa * (2 - 0.00514215 / (y2 * y3));
  const r = reynolds / 2000;
  return 7 * fa - fb + r * (0.128 - 17 * fa + 2.5 * fb + r * (-0.128 + 13 * fa - 2 * fb + r * (0.032 - 3 * fa + 0.5 * fb)));
}

/** The power law through three points of a pump's curve, the first at no flow. */
function gain_ft([[, h0], [q1, h1], [q2, h2]], flow) {
  const power = Math.log((h0 - h2) / (h0 - h1)) / Math.log(q2 / q1);
  return h0 - (h0 - h1) * ((flow * GPM_PER_CFS) / q1) ** power;
}
