/**
 * A network as the reference's own input text; {@code exact} are options beside its accuracy.
 * Roughness of Darcy-Weisbach pipes is in thousandths of a foot.
 */
export function inpOf({law, nodes, links}, accuracy, exact = ['HEADERROR 1e-8', 'FLOWCHANGE 1e-7']) {
  const named = nodes.map((node, at) => ({...node, id: `N${at}`}));
  const joined = links.map((link, at) => ({...link, id: `L${at}`, ends: `N${link.from} N${link.to}`}));
  const of = (list, kind, row) => list.filter((each) => each.kind === kind).map(row);
  return [
    '[JUNCTIONS]',
    ...named.filter(({kind}) => kind !== 'reservoir').map(({id, elevation, demand}) => `${id} ${elevation} ${demand}`),
    '[EMITTERS]', ...of(named, 'tip', ({id, factor}) => `${id} ${factor}`),
    '[RESERVOIRS]', ...of(named, 'reservoir', ({id, head}) => `${id} ${head}`),
    '[PIPES]',
    ...of(joined, 'pipe', ({id, ends, length, diameter, roughness, minor}) => `${id} ${ends} ${length} ${diameter} ${roughness} ${minor}`),
    '[VALVES]', ...of(joined, 'hose', ({id, ends, diameter, loss}) => `${id} ${ends} ${diameter} TCV ${loss} 0`),
    '[PUMPS]', ...of(joined, 'pump', ({id, ends}) => `${id} ${ends} HEAD C${id}`),
    '[CURVES]', ...of(joined, 'pump', ({id, curve}) => curve.map(([flow, head]) => `C${id} ${flow} ${head}`)).flat(),
    '[OPTIONS]', 'UNITS GPM', 'PRESSURE PSI', `HEADLOSS ${law}`, 'EMITTER EXPONENT 0.5', 'BACKFLOW ALLOWED NO',
    'VISCOSITY 1', 'SPECIFIC GRAVITY 1', 'TRIALS 500', `ACCURACY ${accuracy}`, ...exact,
    '[END]', '',
  ].join('\n');
}
