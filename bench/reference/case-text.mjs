/*
 * A solved network as lines of text, one node or link a line, numbers as short as they are exact:
 *
 *   case 17 tree H-W 3 2 running   number, how it grew, friction law, nodes, links; "shut" where a tip or pump stands still
 *   r head                         reservoir [ft]
 *   j elevation demand head        junction [ft, gpm], then the reference's head [ft]
 *   t elevation factor head flow   tip [ft, gpm per root of psi], then its head [ft] and outflow [gpm]
 *   p from to length diameter roughness minor flow    pipe [ft, in, as the law has it, -], then its flow [gpm]
 *   h from to diameter loss flow   hose: a throttle of 0.02517 loss Q^2 / d^4 [in, -], then its flow
 *   u from to head0 flow1 head1 flow2 head2 flow      pump: three points of its curve [ft, gpm], then its flow
 *
 * Nodes count from 0 in the order written.
 */
const HEAD_decimals = 7;
const FLOW_decimals = 6;

export function textOf(network, answer) {
  const {number, kind, law, nodes, links} = network;
  const state = standsStill(network, answer) ? 'shut' : 'running';
  const lines = [['case', number, kind, law, nodes.length, links.length, state]];
  nodes.forEach((node, at) => lines.push(nodeLine(node, short(answer.heads[at], HEAD_decimals), answer.outflows[at])));
  links.forEach((link, at) => lines.push([...linkLine(link), short(answer.flows[at], FLOW_decimals)]));
  return `${lines.map((line) => line.join(' ')).join('\n')}\n`;
}

/** Whether a tip is dry or a pump pushed shut; the reference lets a little water through such a one. */
export function standsStill({nodes, links}, {heads, flows}) {
  return nodes.some((node, at) => node.kind === 'tip' && heads[at] <= node.elevation) ||
    links.some((link, at) => link.kind === 'pump' && flows[at] <= 0);
}

function nodeLine(node, head, outflow) {
  if (node.kind === 'reservoir') return ['r', node.head];
  if (node.kind === 'junction') return ['j', node.elevation, node.demand, head];
  return ['t', node.elevation, node.factor, head, short(outflow, FLOW_decimals)];
}

function linkLine(link) {
  const {kind, from, to, diameter} = link;
  if (kind === 'pipe') return ['p', from, to, link.length, diameter, link.roughness, link.minor];
  if (kind === 'hose') return ['h', from, to, diameter, link.loss];
  return ['u', from, to, link.curve[0][1], ...link.curve[1], ...link.curve[2]];
}

function short(value, decimals) {
  return Number(value.toFixed(decimals));
}
