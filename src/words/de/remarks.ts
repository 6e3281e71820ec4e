/** Remarks on a piece that stop nothing, in German. */
import type { GapClosing } from '../catalogueCodes.ts';
import { remarks as english } from '../en/remarks.ts';
import { formatLength, formatList, formatMoney } from '../format.ts';
import { mm } from './design.ts';

const sizes = (sizesMm: readonly number[]): string =>
  formatList(
    sizesMm.map((size) => `${formatLength(size, 'cm', 'de')} (${formatLength(size, 'in', 'de')})`),
    'de',
  );

const none = (count: number): string => `0 bis ${count}`;

function remedy({ how, name }: GapClosing): string {
  switch (how.code) {
    case 'widen-section':
      return `lassen Sie „${name}“ ${how.repeats > 0 ? 'bis zu' : 'hinab bis'} „${how.repeats > 0 ? 'most' : 'fewest'}: ${how.to}“ zu`;
    case 'add-filler':
      return `fügen Sie nahe am Verschluss einen Füller (filler) aus ${none(how.count)} × „${how.component}“ ein`;
    case 'new-filler':
      return `fügen Sie nahe am Verschluss einen Füller (filler) aus ${none(how.count)} Perlen oder Zwischenteilen von ${mm(how.alongMm)} Länge ein`;
    case 'chain':
      return `geben Sie eine Verlängerungskette dazu, „extender: ${mm(how.mm)}“ unter closing`;
    case 'nothing':
      return 'keine kleine Änderung hilft';
  }
}

export const remarks: typeof english = {
  gaps: ({ of, sizesMm, closings }) => ({
    what: `Es trifft ${of === 'length' ? 'fertige Längen' : 'bequem getragen Handgelenke'} von ${sizes(sizesMm)} nicht innerhalb Ihrer Toleranz.`,
    fix: `${closings.map((one) => `Für ${sizes(one.sizesMm)}: ${remedy(one)}.`).join(' ')} Damit berechnet, passt es. Oder schreiben Sie unter „gaps“, warum es so bleibt.`,
  }),
  'price-below-rule': ({ listedMinor, ruleMinor, currency }) => ({
    what: `Der Preis ist ${formatMoney(listedMinor, currency, 'de')}; nach der Regel des Ladens kommt das Stück auf ${formatMoney(ruleMinor, currency, 'de')}.`,
    fix: 'Heben Sie den Preis an oder ändern Sie die Regel in shop.yaml.',
  }),
  'gaps-none': () => ({
    what: 'Es sagt, warum es Größen auslässt, aber jede oft gefragte Größe ist möglich.',
    fix: 'Nehmen Sie „gaps“ weg.',
  }),
};
