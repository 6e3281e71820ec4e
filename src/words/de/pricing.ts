/** Woraus sich der Preis eines Stücks zusammensetzt, wie es an der Werkbank steht. */
import type { pricing as english } from '../en/pricing.ts';
import type { StackLine } from '#core/sizing/price/stack.ts';
import type { Format } from '../format.ts';

const LINES: Readonly<Record<StackLine, string>> = {
  beads: 'Perlen',
  findings: 'Zubehör',
  wire: 'Draht',
  'mark-up': 'Aufschlag auf Material',
  labour: 'Ihre Arbeit',
  packing: 'Verpackung',
  fees: 'Gebühren',
  rounding: 'Aufrundung',
  own: 'Von Ihnen gesetzt',
};

const share = (hundredths: number, f: Format): string => `${f.number(hundredths / 100, 2)} %`;

export const pricing: typeof english = {
  title: (piece) => `Preis von ${piece}`,
  lead: 'Woraus sich der Preis zusammensetzt, was davon für Ihre Stunden bleibt, und wie er wäre, wenn etwas anderes kostete. Am Laden ändert sich hier nichts.',
  stack: 'Woraus sich der Preis zusammensetzt',
  columns: { line: 'Posten', how: 'Woher', now: 'Jetzt', tried: 'Dann', more: 'Unterschied' },
  lines: LINES,
  how: {
    findings: 'Verschluss, Quetschen, Hüllen, Ringe, Anhänger',
    wire: (f, mm) => `${f.length(mm)} abgeschnitten, mit allen Enden`,
    'mark-up': (f, percent) =>
      percent === 0 ? 'nach Ihrer Regel keiner' : `${f.number(percent)} % auf das, was Material Sie kostet`,
    labour: (time, hour) => `${time} zu ${hour} die Stunde`,
    packing: 'nach Ihrer Regel',
    fees: (f, fees) => {
      if (fees === undefined || (fees.hundredths === 0 && fees.eachMinor === 0)) {
        return 'keine; was das Verkaufen kostet, steht unter Laden und Regeln, Preise';
      }
      const parts = [
        ...(fees.hundredths === 0 ? [] : [`${share(fees.hundredths, f)} vom Preis`]),
        ...(fees.eachMinor === 0 ? [] : [`${f.money(fees.eachMinor)} jedes Mal`]),
      ];
      return parts.join(' und ');
    },
    rounding: (f, step, ending) =>
      ending === 0
        ? `auf die nächsten ${f.money(step)}`
        : `auf die nächsten ${f.money(ending)} über einem Vielfachen von ${f.money(step)}`,
    own: {
      above: 'was Sie über Ihre Regel hinaus verlangen',
      below: 'was Sie unter Ihrer Regel verlangen',
      none: 'genau Ihre Regel',
    },
  },
  ruled: 'Nach Ihrer Regel',
  asked: 'In Ihrem Laden',
  drawn: (parts) => `Der Preis als Balken: ${parts}`,
  time: (minutes, f) => {
    const hours = Math.floor(minutes / 60);
    const rest = `${f.number(minutes - 60 * hours, 1)} min`;
    return hours === 0 ? rest : `${f.number(hours)} h ${rest}`;
  },
  earned: {
    title: 'Was es einbringt',
    columns: {
      where: 'Verkauft',
      price: 'Preis',
      material: 'Material',
      packing: 'Verpackung',
      fees: 'Gebühren',
      left: 'Bleibt davon',
      perHour: 'Je Stunde',
    },
    where: { shop: 'in Ihrem Laden', wholesale: (percent) => `im Großhandel, zu ${percent} %` },
    tried: 'dann',
    estimate: (time) =>
      `Eine Schätzung. Die Stunden kommen aus Ihrer eigenen Regel, ${time} für dieses Stück, nicht von der Uhr; Werkzeug, Heizung, Steuern und die Stunden am Schreibtisch sind nicht darin.`,
    noWholesale:
      'Soll der Großhandel danebenstehen, schreiben Sie unter Laden und Regeln, Preise, was Wiederverkäufer von Ihrem Preis zahlen.',
    wholesaleShort: 'Zum Großhandelspreis bringt eine Stunde weniger ein, als Sie für sie ansetzen.',
    wholesaleNothing: 'Der Großhandelspreis deckt nicht einmal Material und Verpackung.',
  },
  sizes: {
    title: 'Jede Größe',
    lead: 'Andere Größen kosten, was Sie für das gezeigte Stück verlangen, und was ihr Material und ihre Arbeit mehr sind.',
    columns: {
      size: 'Größe',
      changes: 'Ändert',
      ruled: 'Nach Ihrer Regel',
      price: 'Preis',
      left: 'Bleibt davon',
      perHour: 'Je Stunde',
    },
    tried: { price: 'Preis, dann', perHour: 'Je Stunde, dann' },
  },
  tryOut: {
    title: 'Was wäre, wenn',
    lead: 'Silber um ein Fünftel teurer, ein besserer Lohn, ein Marktplatz, der seinen Teil nimmt: Was bleibt, wie es ist, lassen Sie leer.',
    of: 'Das kostet etwas anderes',
    by: 'Um so viele Prozent mehr oder weniger',
    byHint: '20 oder −10',
    wage: 'Ihre Stunde',
    share: 'Gebühren, Prozent vom Preis',
    each: 'Gebühren, jedes Mal',
    now: (value) => `jetzt ${value}`,
    nothing: 'Nichts',
    groups: { kinds: 'Material', materials: 'Woraus es ist', components: 'Eines davon' },
    kinds: { all: 'Alles Material', beads: 'Perlen', findings: 'Zubehör', wire: 'Draht' },
    costing: (name, cost) => `${name}, davon für ${cost}`,
    show: 'Rechnen',
    clear: 'Wie es ist',
    problems: {
      of: {
        missing: 'Wählen Sie, was etwas anderes kostet.',
        unreadable: 'Wählen Sie, was etwas anderes kostet.',
      },
      by: {
        missing: 'Schreiben Sie, um wie viele Prozent.',
        unreadable: 'Schreiben Sie es in Prozent, etwa 20 oder −10: von −90 bis 900.',
      },
      wage: {
        missing: '',
        unreadable: 'Schreiben Sie einen Betrag in der Währung Ihres Ladens, etwa 18,50.',
      },
      share: { missing: '', unreadable: 'Schreiben Sie es in Prozent von 0 bis 60, etwa 6,5.' },
      each: { missing: '', unreadable: 'Schreiben Sie einen Betrag in der Währung Ihres Ladens, etwa 0,30.' },
    },
    wrong: 'Das lässt sich noch nicht rechnen:',
    result: (f, now, then) => {
      const hour = (minor: number | null): string => (minor === null ? '–' : f.money(minor));
      const rule =
        now.rule === then.rule
          ? `Nach Ihrer Regel käme es weiter auf ${f.money(then.rule)}.`
          : `Nach Ihrer Regel käme es auf ${f.money(then.rule)} statt ${f.money(now.rule)}.`;
      return now.hour === then.hour
        ? `${rule} Zum heutigen Preis bringt eine Stunde weiter ${hour(then.hour)}.`
        : `${rule} Zum heutigen Preis bringt eine Stunde ${hour(then.hour)} statt ${hour(now.hour)}.`;
    },
  },
};
