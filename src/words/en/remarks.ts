/** Remarks on a piece that stop nothing: its price, and sizes often asked for that it doesn't come out at. */
import type { CatalogueError, CatalogueSentence, GapClosing } from '../catalogueCodes.ts';
import { formatLength, formatList, formatMoney } from '../format.ts';
import type { Sentences } from '../sentence.ts';
import { mm } from './design.ts';

type Remark = Extract<CatalogueError, { code: 'price-below-rule' | 'gaps' | 'gaps-none' }>;

const inches = (sizesMm: readonly number[]): string =>
  formatList(
    sizesMm.map((size) => formatLength(size, 'in', 'en')),
    'en',
  );

function remedy({ how, name }: GapClosing): string {
  switch (how.code) {
    case 'widen-section':
      return `let “${name}” go ${how.repeats > 0 ? 'up' : 'down'} to “${how.repeats > 0 ? 'most' : 'fewest'}: ${how.to}”`;
    case 'add-filler':
      return `add a filler close to the clasp of ${how.count === 1 ? 'none or 1' : `none to ${how.count}`} “${how.component}”`;
    case 'new-filler':
      return `add a filler close to the clasp of ${how.count === 1 ? 'none or one bead or spacer' : `none to ${how.count} beads or spacers`} ${mm(how.alongMm)} long`;
    case 'chain':
      return `let it out by a chain, “extender: ${mm(how.mm)}” under closing`;
    case 'nothing':
      return 'no small change was found';
  }
}

export const remarks: Sentences<Remark, [], CatalogueSentence> = {
  gaps: ({ of, sizesMm, closings }) => ({
    what: `It can’t be made within your tolerance for ${of === 'length' ? 'finished lengths' : 'wrists, at an easy sit,'} of ${inches(sizesMm)}.`,
    fix: `${closings.map((one) => `For ${inches(one.sizesMm)}: ${remedy(one)}.`).join(' ')} Sized with that, it fits. Or write in “gaps” why it stays as it is.`,
  }),
  'price-below-rule': ({ listedMinor, ruleMinor, currency }) => ({
    what: `The price is ${formatMoney(listedMinor, currency, 'en')}; by the shop’s rule the piece comes to ${formatMoney(ruleMinor, currency, 'en')}.`,
    fix: 'Raise the price, or change the rule in shop.yaml.',
  }),
  'gaps-none': () => ({
    what: 'It says why it leaves sizes out, but every size that is often asked for can be met.',
    fix: 'Take “gaps” away.',
  }),
};
