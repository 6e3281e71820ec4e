/** What a piece is found by besides the lists: strands, what hangs from it, cautions, sizes of its beads, its price. */
import type { Piece, Shop } from '#catalogue/model/catalogue.ts';
import { cautionsOf } from '#catalogue/facts/cautions.ts';
import { sharesOf } from '#catalogue/facts/facets.ts';
import { currencyDigits } from '#words/format.ts';
import type { Pair } from '../reading/vocabulary.ts';

/** A price as a filter's value, in whole units of the currency. */
export const costOf = (minor: number, currency: string): number => minor / 10 ** currencyDigits(currency);

/** Cautions that people ask for the absence of. */
const ASKED_CAUTIONS = ['nickel', 'lead', 'magnet'];
/** A seed bead's size as it is written in its name: 11/0. */
const SEED_SIZE = /\b\d{1,2}\/0\b/;

export function pairsOf(piece: Piece, shop: Shop): readonly Pair[] {
  const { design, listedMinor } = piece;
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
    // What can't be had any more costs nothing that anyone could pay.
    ...(piece.status === 'past' ? [] : [['cost', String(costOf(listedMinor, shop.rules.currency))] as const]),
  ];
}
