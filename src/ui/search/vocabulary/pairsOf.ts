/** What a piece is found by besides the lists: strands, what hangs from it, cautions, its clasp's material, sizes of its beads. */
import type { Piece } from '#catalogue/model/catalogue.ts';
import { cautionsOf } from '#catalogue/facts/cautions.ts';
import { sharesOf } from '#catalogue/facts/facets.ts';
import { materialName } from '#words/goods.ts';
import type { Lang } from '#words/lang.ts';
import type { Pair } from '../reading/vocabulary.ts';

/** Cautions that people ask for the absence of. */
const ASKED_CAUTIONS = ['nickel', 'lead', 'magnet'];
/** Four are told from three; more are as many as four. */
const MOST_STRANDS = 4;
/** A seed bead's size as it is written in its name: 11/0. */
const SEED_SIZE = /\b\d{1,2}\/0\b/;

export function pairsOf({ design }: Piece, lang: Lang): readonly Pair[] {
  const { hanging, ends, strands } = design;
  const clasp = design.components[ends.clasp];
  const shown = sharesOf(design).map(({ component }) => component);
  const beads = shown.filter(({ kind }) => kind === 'bead');
  const has = [
    ...cautionsOf(design).filter((caution) => ASKED_CAUTIONS.includes(caution)),
    ...(hanging === null ? [] : ['pendant']),
    ...(shown.some(({ shape }) => shape === 'drop') ? ['drop'] : []),
    ...(ends.extenderMm > 0 ? ['extender'] : []),
    ...(clasp?.handed === true ? ['one-hand'] : []),
  ];
  const sizes = beads.flatMap(({ name, acrossMm, alongMm }) => [
    ...[acrossMm, alongMm].map((mm) => String(Math.round(mm))),
    ...(SEED_SIZE.exec(name) ?? []),
  ]);
  return [
    ['strands', String(Math.min(MOST_STRANDS, strands.length))],
    ...has.map((value): Pair => ['has', value]),
    ...(clasp === undefined ? [] : [['clasp', materialName(clasp.material, lang)] as const]),
    ...[...new Set(sizes)].map((value): Pair => ['bead', value]),
  ];
}
