/** What a piece is an instance of, so that a run can say that it met every kind. */
import type { Work } from './carryOut.ts';

const CLOSINGS = ['lobster', 'spring-ring', 'toggle', 'hook', 'box', 'magnetic'];

export const EVERY_KIND: readonly string[] = [
  ...CLOSINGS,
  ...['ring', 'no ring', 'bare loop', 'halves', 'extender', 'chain alone'],
  ...['cover', 'no cover', 'guard', 'no guard'],
  ...['tail hidden', 'tail not hidden', 'tail stopped half-way', 'tail through a long bead'],
  ...['one strand', 'side by side', 'nested'],
  ...[
    'nothing hangs',
    'own loop',
    'bail or side hole',
    'one ring',
    'more rings',
    'closed ring',
    'ring opened',
    'split ring',
  ],
  ...['hangs over the tail', 'left hand', 'right hand', 'clasp on the right', 'clasp on either side'],
];

export function kindsOf({ design, hand, card }: Work): string[] {
  const { ends, hanging, strands, lie, components } = design;
  const { held } = card.ends;
  const first = card.strands[0]?.tails.clasp;
  const joints = (hanging?.rings ?? []).map((id) => components[id]?.joint);
  const loop = components[hanging?.pendant ?? '']?.loop;
  const kinds: [string, boolean][] = [
    [components[ends.clasp]?.shape ?? '', true],
    [ends.ring === null ? 'no ring' : 'ring', true],
    ['bare loop', held.ring.what === 'nothing'],
    ['halves', held.ring.what === 'other-half'],
    ['extender', ends.extenderMm > 0],
    ['chain alone', held.ring.what === 'chain'],
    [ends.cover === null ? 'no cover' : 'cover', true],
    [ends.guard === null ? 'no guard' : 'guard', true],
    [first?.passed === 0 ? 'tail not hidden' : 'tail hidden', true],
    ['tail stopped half-way', (first?.passed ?? 0) > 0 && first?.blockedBy !== null],
    ['tail through a long bead', (first?.reachMm ?? 0) > 50],
    [strands.length === 1 ? 'one strand' : lie === 'nested' ? 'nested' : 'side by side', true],
    ['nothing hangs', hanging === null],
    ['own loop', hanging?.rings.length === 0],
    ['bail or side hole', loop === 'through'],
    ['one ring', hanging?.rings.length === 1],
    ['more rings', (hanging?.rings.length ?? 0) > 1],
    ['closed ring', joints.includes('closed')],
    ['ring opened', joints.includes('open') || joints.includes(undefined)],
    ['split ring', joints.includes('split')],
    ['hangs over the tail', card.steps.some((step) => step.code === 'hang-pendant' && step.args.overTail)],
    [`${hand} hand`, true],
    ['clasp on the right', card.hand.boardSide === 'right'],
    ['clasp on either side', card.hand.boardSide === null],
  ];
  return kinds.filter(([, holds]) => holds).map(([kind]) => kind);
}
