/** Hands at the board, by chance: whatever they do, some of it nonsense. */
import fc from 'fast-check';
import type { Action, Trays } from '#board/model/action.ts';

const index = fc.integer({ min: -1, max: 6 });
const place = fc.record({ strand: fc.integer({ min: 0, max: 2 }), section: index, part: index });
const span = fc
  .tuple(fc.integer({ min: 0, max: 2 }), fc.nat(6), fc.nat(6), fc.nat(4))
  .map(([strand, section, from, more]) => ({ strand, section, from, to: from + more }));
const name = fc.constantFrom('Run', 'End', 'Über der Mitte', 'Run 2', '…');
const repeats = fc.oneof(fc.integer({ min: -3, max: 12 }), fc.constantFrom(1200, NaN));
const count = fc.oneof(fc.integer({ min: 1, max: 9 }), fc.constantFrom(0, -4, 250, 3.4));

/** One action with what is in these trays, or isn't. */
export function anyAction(trays: Trays): fc.Arbitrary<Action> {
  const ids = Object.values(trays.components);
  const of = (...kinds: string[]): string[] =>
    ids.filter(({ kind }) => kinds.includes(kind)).map(({ id }) => id);
  const bead = fc.constantFrom(...of('bead', 'spacer', 'cap'), 'no-such-bead');
  const strand = fc.integer({ min: 0, max: 2 });
  const ends = fc.record(
    {
      clasp: fc.constantFrom(...of('clasp')),
      ring: fc.option(fc.constantFrom(...of('ring'))),
      crimp: fc.constantFrom(...of('crimp')),
      cover: fc.option(fc.constantFrom(...of('cover'))),
      loopMm: fc.double({ min: -1, max: 40, noNaN: true }),
      extenderMm: fc.double({ min: -1, max: 300, noNaN: true }),
    },
    { requiredKeys: [] },
  );
  const change = fc.record(
    {
      name,
      usual: repeats,
      fewest: repeats,
      most: repeats,
      role: fc.constantFrom('focal', 'body', 'filler'),
    },
    { requiredKeys: [] },
  );
  const hanging = fc.record({
    pendant: fc.constantFrom(...of('pendant')),
    rings: fc.array(fc.constantFrom(...of('ring')), { maxLength: 3 }),
  });
  return fc.oneof(
    {
      weight: 6,
      arbitrary: fc.record({ type: fc.constant('put'), after: place, component: bead, count, name }),
    },
    fc.record({ type: fc.constant('middle'), strand, component: bead, count, name }),
    fc.record({ type: fc.constant('begin'), strand, section: index, component: bead, name }),
    fc.record({ type: fc.constant('count'), at: place, count }),
    fc.record({ type: fc.constant('remove'), span }),
    fc.record({ type: fc.constant('replace'), span, component: bead }),
    fc.record({ type: fc.constant('move'), span, by: fc.constantFrom(1, -1) }),
    {
      weight: 3,
      arbitrary: fc.record({ type: fc.constant('repeat'), span, name, times: fc.option(repeats) }),
    },
    fc.record({ type: fc.constant('loosen'), strand, section: index }),
    { weight: 3, arbitrary: fc.record({ type: fc.constant('section'), strand, section: index, change }) },
    fc.record({ type: fc.constant('counts'), strand, counts: fc.array(repeats, { maxLength: 5 }) }),
    fc.record({ type: fc.constant('mirrored'), strand, mirrored: fc.boolean() }),
    fc.record({ type: fc.constant('add-strand'), like: strand }),
    fc.record({ type: fc.constant('remove-strand'), strand }),
    fc.record({
      type: fc.constant('lie'),
      lie: fc.constantFrom('side-by-side', 'nested'),
      gapMm: fc.double({ min: -5, max: 300, noNaN: true }),
    }),
    fc.record({
      type: fc.constant('kind'),
      kind: fc.constantFrom('necklace', 'bracelet', 'anklet', 'collar'),
    }),
    fc.record({
      type: fc.constant('wire'),
      wire: fc.constantFrom(...Object.keys(trays.wires), 'no-such-wire'),
    }),
    fc.record({ type: fc.constant('ends'), change: ends }),
    fc.record({ type: fc.constant('hanging'), hanging: fc.option(hanging) }),
    fc.record({ type: fc.constant('front'), oneSided: fc.boolean(), upright: fc.option(fc.boolean()) }),
    fc.record({ type: fc.constant('exchange'), from: bead, to: bead }),
  ) as fc.Arbitrary<Action>;
}
