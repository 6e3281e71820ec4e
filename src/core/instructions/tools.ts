/** The tools that the steps of a piece ask for, so that a learner has them before she begins. */
import type { Step } from './step.ts';

/** `pliers`: with smooth jaws, one or two. `clip`: on the wire's free end whenever the work is laid aside. */
export const TOOLS = [
  'eye-protection',
  'cutters',
  'crimping-pliers',
  'pliers',
  'split-ring-pliers',
  'board',
  'ruler',
  'clip',
] as const;
export type Tool = (typeof TOOLS)[number];

export type NeededTool = {
  readonly tool: Tool;
  readonly count: number;
};

/** How many of each tool one step takes (common practice, no source). */
function takenBy(step: Step): Partial<Readonly<Record<Tool, number>>> {
  switch (step.code) {
    case 'wear-eye-protection':
      return { 'eye-protection': 1 };
    case 'lay-out':
      return { board: 1 };
    case 'cut-wire':
      return { cutters: 1, ruler: 1 };
    case 'cut-tail':
      return { cutters: 1 };
    case 'lead-back':
    case 'measure':
      return { ruler: 1 };
    case 'crimp':
      return { 'crimping-pliers': 1 };
    case 'close-cover':
      return { pliers: 1 };
    // A cut ring is turned open between two pliers, never pulled apart by one.
    case 'join-chain':
      return { pliers: 2 };
    case 'join-ring':
      return step.args.joint === 'split' ? { 'split-ring-pliers': 1 } : { pliers: 2 };
    case 'string-beads':
      return { clip: 1 };
    default:
      return {};
  }
}

/** Tools of all the steps, each once, as many as the step takes that takes most. */
export function toolsOf(steps: readonly Step[]): readonly NeededTool[] {
  const most = new Map<Tool, number>();
  for (const step of steps) {
    for (const [tool, count] of Object.entries(takenBy(step)) as [Tool, number][]) {
      most.set(tool, Math.max(count, most.get(tool) ?? 0));
    }
  }
  return TOOLS.flatMap((tool) => {
    const count = most.get(tool);
    return count === undefined ? [] : [{ tool, count }];
  });
}
