/** What a piece is found by besides the lists: strands, what hangs from it, cautions, sizes of its beads. */
import type { Piece } from '#catalogue/model/catalogue.ts';
import { cautionsOf } from '#catalogue/facts/cautions.ts';
import { sharesOf } from '#catalogue/facts/facets.ts';
import type { Pair } from '../reading/vocabulary.ts';

/** Cautions that people ask for the absence of. */
const ASKED_CAUTIONS = ['nickel', 'lead', 'magnet'];
/** A seed bead's size as it is written in its name: 11/0. */
const SEED_SIZE = /\b\d{1,2}\/0\b/;

export function pairsOf({ design }: Piece): readonly Pair[] {
  const { hanging, ends, strands } = design;
  const shown = sharesOf(design).map(({ component }) => component);
  const beads = shown.filter(({ kind }) => kind === 'bead');
  const has = [
    ...cautionsOf(design).filter((caution) => ASKED_CAUTIONS.includes(caution)),
    ...(hanging === null ? [] : ['pendant']),
    ...(shown.some(({ shape }) => shape === 'drop') ? ['drop'] : []),
    ...(ends.extenderMm > 0 ? ['extender'] : []),
    ...(design.components[ends.clasp]?.handed === true ? ['one-hand'] : []),
  ];
  const sizes = beads.flatMap(({ name, acrossMm, alongMm }) => [
    ...[acrossMm, alongMm].map((mm) => String(Math.round(mm))),
    ...(SEED_SIZE.exec(name) ?? []),
  ]);
  return [
    ['strands', String(Math.min(3, strands.length))],
    ...has.map((value): Pair => ['has', value]),
    ...[...new Set(sizes)].map((value): Pair => ['bead', value]),
  ];
}
