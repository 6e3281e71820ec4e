/** What becomes of a damaged answer, field by field: the fault it is found by, or where else that field is judged. */
import type { Fault } from '#core/verify/candidate.ts';
import type { Sizing } from '#core/sizing/sizing.ts';

type Row =
  | {
      readonly code: Fault['code'];
      /** Where any other value of its type wouldn't be wrong, or no answer at all; a function is given the answer. */
      readonly as?: unknown;
    }
  | { readonly judgedBy: string };

const asked: Row = { judgedBy: 'what the buyer asked, handed back' };
const limits: Row = { judgedBy: 'tests/core/sizing/limits.test.ts' };
const help: Row = { judgedBy: 'tests/core/sizing/help.test.ts' };
const hand: Row = { judgedBy: 'tests/core/hand' };

/** A piece where there should be none. */
const bestOf = (sizing: Sizing): unknown => ('best' in sizing ? sizing.best : null);

export const FIELDS: Readonly<Record<string, Row>> = {
  status: { code: 'tolerance', as: ({ status }: Sizing) => (status === 'fits' ? 'near' : status) },
  'choice.measure.of': asked,
  'choice.measure.mm': { code: 'limits' },
  'choice.sit': asked,
  'choice.hand': asked,
  'choice.pick': { code: 'pick', as: 'below' },
  'choice.quantity': { code: 'stock', as: 1000 },
  fitted: { code: 'fitted', as: 'length' },
  targetMm: { code: 'error' },
  toleranceMm: { code: 'tolerance', as: 0 },
  'limits.leastMm': { code: 'limits' },
  'limits.mostMm': { code: 'limits' },
  'limits.leastAskedMm': { code: 'limits' },
  'limits.mostAskedMm': { code: 'limits' },
  'limits.leastBinds.*.strand': limits,
  'limits.leastBinds.*.section': limits,
  'limits.mostBinds.*.strand': limits,
  'limits.mostBinds.*.section': limits,
  'limits.mostStock.*': limits,
  'help.*.code': help,
  'help.*.strand': help,
  'help.*.component': help,
  'help.*.count': help,
  'help.*.sides': help,
  'help.*.offMm': help,
  'help.*.section': help,
  'help.*.repeats': help,
  'piece.counts.*.*': { code: 'sequence' },
  'piece.fittedMm': { code: 'fitted' },
  'piece.errorMm': { code: 'error' },
  'piece.withinTolerance': { code: 'tolerance' },
  'piece.finishedLengthMm': { code: 'length' },
  'piece.insideGirthMm': { code: 'girth' },
  'piece.chainUsedMm': { code: 'chain' },
  'piece.changes.*.strand': { code: 'changes' },
  'piece.changes.*.section': { code: 'changes' },
  'piece.changes.*.from': { code: 'changes' },
  'piece.changes.*.to': { code: 'changes' },
  'piece.changes.*.parts.*.component': { code: 'changes' },
  'piece.changes.*.parts.*.count': { code: 'changes' },
  'piece.priceMinor': { code: 'price' },
  'piece.massG': { code: 'mass' },
  'piece.sequences.*.*.component': { code: 'sequence' },
  'piece.sequences.*.*.section': { code: 'sequence' },
  'piece.sequences.*.*.side': { code: 'sequence' },
  'piece.sequences.*.*.covered': { code: 'sequence' },
  below: { code: 'side', as: bestOf },
  above: { code: 'side', as: bestOf },
  'hand.hand': hand,
  'hand.boardSide': hand,
  'hand.reason': hand,
  proven: { code: 'pick' },
  side: { code: 'side', as: 'below' },
};
