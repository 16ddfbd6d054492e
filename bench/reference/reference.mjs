import {AnalysisStatistic, LinkProperty, NodeProperty, Option, Project, Workspace} from 'epanet-js';
import {inpOf} from './inp.mjs';

export const ACCURACY = 1e-8;

/** The option that says whether a tip may suck air back; the library lists no name for it. */
const BACKFLOW = 24;

const workspace = new Workspace();
await workspace.loadModule();

/** The version of the engine inside the library, 20305 for 2.3.5. */
export const engine = workspace.version;

/** Opens a network's input text, lets {@code work} use it, closes it. */
export function withOpen(inp, work) {
  const project = new Project(workspace);
  workspace.writeFile('case.inp', inp);
  project.open('case.inp', 'case.rpt', 'case.out');
  try {
    return work(project);
  } finally {
    project.close();
  }
}

/**
 * The reference's answer: heads of the nodes [ft], outflows of the tips and flows of the links [gpm]; or why there is none.
 */
export function solve(network) {
  return withOpen(inpOf(network, ACCURACY), (project) => {
    if (project.getOption(BACKFLOW) !== 0) throw new Error('tips must not suck air');
    project.openH();
    try {
      project.initH(0);
      project.runH();
      return answerOf(project, network);
    } catch (refused) {
      return {refused: refused.message};
    } finally {
      project.closeH();
    }
  });
}

function answerOf(project, network) {
  const error = project.getStatistic(AnalysisStatistic.RelativeError);
  if (!(error <= project.getOption(Option.Accuracy))) return {refused: `relative error ${error}`};
  const node = (property) => network.nodes.map((_, at) => project.getNodeValue(project.getNodeIndex(`N${at}`), property));
  const link = (property) => network.links.map((_, at) => project.getLinkValue(project.getLinkIndex(`L${at}`), property));
  return {heads: node(NodeProperty.Head), outflows: node(NodeProperty.Demand), flows: link(LinkProperty.Flow)};
}
