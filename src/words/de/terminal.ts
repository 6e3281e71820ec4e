/** Was das Terminal sagt. */
import type { MeasureOf } from '#core/design/choice.ts';
import type { PieceKind } from '#core/design/design.ts';
import type { ValidationError } from '#core/design/validationError.ts';
import type { terminal as en } from '../en/terminal.ts';
import { sentenceOf } from '../sentence.ts';
import { designProblems } from './design.ts';
import { fromPit, pitBand } from './pit.ts';
import { numbered } from '../numbered.ts';

const KINDS: Readonly<Record<PieceKind, string>> = {
  necklace: 'Halskette',
  bracelet: 'Armband',
  anklet: 'Fußkettchen',
  collar: 'Halsband',
};

const OF: Readonly<Record<MeasureOf, string>> = {
  wrist: 'Handgelenk',
  ankle: 'Knöchel',
  neck: 'Hals',
  length: 'Fertige Länge',
};
const SITS = { snug: 'eng', easy: 'bequem', loose: 'weit' };
const HANDS = { left: 'linken', right: 'rechten' };
const SIDES = { left: 'linke', right: 'rechte' };

const perhaps = (near: string): string => (near === '' ? '' : `Meinten Sie „${near}“? `);

const PARTS: Readonly<Record<string, string>> = { clasp: 'Verschluss', ring: 'Ring', pendant: 'Anhänger' };

const choices = (known: readonly string[]): string =>
  known.length === 0 ? 'Unter den Teilen ist keines dieser Art.' : `Es gibt: ${known.join(', ')}.`;

const designProblemLine = (problem: ValidationError): string =>
  `  ${problem.at === '' ? 'Der Entwurf' : problem.at}: ${sentenceOf(designProblems, problem)}`;

export const terminal: typeof en = {
  help: `Ein Stück auf Maß rechnen.

  npm run -s size -- <Stück> [Angaben]
  npm run -s size -- - [Angaben] < entwurf.json   (public/schema/design-1.json)

Was gewünscht ist (eins davon)
  --wrist, --ankle, --neck  Umfang am Körper: "6 1/2 in", 16,5cm, 165mm
  --length                  fertige Länge mit Verschluss
  --place                   wie weit unter der Halsgrube, oder pit, bust, navel
  --aim                     strand oder pendant: was dort liegen soll

Ein fertiges Stück, dessen Anzahlen nirgends stehen (stattdessen)
  --found        seine Länge mit Verschluss: gibt die Anzahlen, die sie erklären
  --found-girth  sein innerer Umfang, ebenso
                 für jeden Strang einmal, oder einmal für alle nebeneinander;
                 --json beschreibt public/schema/size-found.json

Wer es trägt (für --place und wo eine Kette liegt)
  --neck   Umfang, neben --place oder --length
  --sex    female, male oder unstated (unstated)
  --height Körpergröße
  --age    eines Kindes, in Jahren, ab zwei

Wie
  --sit       snug, easy oder loose (easy)
  --hand      left oder right: die Hand am Verschluss (right)
  --pick      best, below oder above: welches der nächsten Stücke (best)
  --quantity  gewünschte Stücke (1)

Mit anderen Teilen als angeboten (Namen wie in content/components)
  --clasp    ein anderer Verschluss; hat er zwei Hälften, entfällt der Ring
  --ring     ein anderer Ring gegenüber dem Verschluss
  --pendant  ein anderer Anhänger an denselben Ringen, oder none für keinen

Die Antwort
  --unit     in oder cm (wie das Maß geschrieben war)
  --lang     en oder de (en)
  --card     mit der Werkkarte
  --json     als JSON; public/schema/size-answer.json beschreibt es
  --content  ein anderer Inhaltsordner
  --rules    eine Datei mit Regeln statt denen des Ladens: tolerance, ease,
             wire, minutes, price und currency, geschrieben wie in
             content/shop.yaml

Der Befehl endet mit
  0  innerhalb der Toleranz, oder die Anzahlen sind gefunden
  1  etwas Unvorhergesehenes
  2  die Befehlszeile ist nicht lesbar
  3  nur in der Nähe: die nächsten Stücke oder Anzahlen stehen da
  4  außerhalb dessen, was das Stück sein kann: die Grenzen stehen da
  5  abgelehnt: mit dem Maß oder dem Entwurf lässt sich so nicht rechnen
  6  Katalog, Stück, Regeln oder Eingabe sind nicht lesbar
`,
  found: {
    heading: 'Anzahlen, die das fertige Stück erklären, wahrscheinlichste zuerst',
    measures: ({ option, given, strands, nested }) =>
      `Das Stück hat ${strands === 1 ? 'einen Strang' : `${strands} Stränge`}, --${option} steht aber ${given}-mal da. ${strands === 1 ? `Geben Sie --${option} einmal an.` : `Geben Sie --${option} für jeden Strang einmal an, in der Reihenfolge des Entwurfs${nested ? ': Sie hängen untereinander, jeder hat sein eigenes Maß' : ', oder einmal für alle'}.`}`,
    measured: (of, measure) =>
      of === 'length' ? `Gemessen: ${measure} lang` : `Gemessen: ${measure} innen herum`,
    far: (counts, measures) =>
      `Keine Anzahlen in der Nähe der üblichen erklären das. Messen Sie noch einmal, oder prüfen Sie, ob es dieses Stück ist. Die nächsten, ${counts}, hätten ${measures}.`,
    row: (percent, counts, measures) => `${`${percent} %`.padStart(5)}  ${counts}: ${measures}`,
    fewer: (f, count) => `und ${f.number(count)} weitere, jede unwahrscheinlicher als 1 zu 200`,
    legend: 'Jeweils eins davon ist:',
    part: (f, count, name) => (count === 1 ? name : `${f.number(count)} × ${name}`),
    holds: (name, parts, oneSide) =>
      `${name}: ${parts.join(' + ')}${oneSide ? ' (gezählt auf einer Seite der Mitte)' : ''}`,
  },
  content: {
    notes: (count) => `${count} zum Ansehen:`,
    problems: (count) => `${count} zu verbessern:`,
    nothing: (pieces, components, guides) =>
      `Nichts zu verbessern. Stücke: ${pieces}, Teile: ${components}, Ratgeber: ${guides}.`,
  },
  seeHelp: 'Mehr mit --help.',
  usage: {
    'unknown-option': ({ option, near }) =>
      `Eine Angabe ${option} gibt es nicht. ${perhaps(near === '' ? '' : `--${near}`)}`.trim(),
    'no-value': ({ option }) => `Nach --${option} fehlt die Angabe.`,
    'not-a-flag': ({ option }) => `--${option} steht allein, nichts dahinter.`,
    'no-piece': () => 'Nennen Sie ein Stück, oder - für einen Entwurf auf der Standardeingabe.',
    'too-many-pieces': ({ pieces }) =>
      `Nennen Sie ein Stück, nicht ${pieces.length}: ${pieces.join(', ')}. Ein Maß mit Leerzeichen braucht Anführungszeichen.`,
    'no-measure': () => 'Sagen Sie, was gewünscht ist: --wrist, --ankle, --neck, --length oder --place.',
    'not-beside': ({ options, beside }) =>
      `${options.map((option) => `--${option}`).join(' und ')} ${options.length === 1 ? 'passt' : 'passen'} nicht zu --${beside}: Die Anzahlen eines fertigen Stücks hängen davon nicht ab. Bitte weglassen.`,
    'only-beside': ({ option, beside }) => `--${option} sagt nur neben --${beside} etwas.`,
    'too-many-measures': ({ options }) =>
      `Gewünscht ist ein Maß, da sind aber ${options.map((option) => `--${option}`).join(' und ')}.`,
    'not-one-of': ({ option, value, choices }) =>
      `--${option} ist „${value}“, möglich sind: ${choices.join(', ')}.`,
    'bad-number': ({ option, value }) => `--${option} ist „${value}“, es muss eine Zahl sein.`,
    'bad-measure': ({ option }, sentence) => `--${option}: ${sentence}`,
  },
  subject: {
    catalogue: ({ report }) => report,
    'no-such-piece': ({ piece, near, pieces }) =>
      `Es gibt kein Stück „${piece}“. ${perhaps(near)}Es gibt: ${pieces.join(', ')}.`,
    'no-such-part': ({ part, written, near, known }) =>
      `--${part}: Ein Teil „${written}“ gibt es nicht. ${perhaps(near)}${choices(known)}`,
    'wrong-part': ({ part, written, known }) =>
      `--${part}: „${written}“ ist kein ${PARTS[part] ?? part}. ${choices(known)}`,
    'clasp-needs-ring': ({ clasp, known }) =>
      `--clasp: „${clasp}“ schließt an einem Ring, und das Stück hat keinen. Nennen Sie einen mit --ring. ${choices(known)}`,
    'rules-currency': ({ file, written, shop }) =>
      `${file}  currency\n  Die Regeln rechnen in ${written}, die Kosten des Stücks in ${shop}.\n  Schreibe die Beträge und „currency“ der Regeln in ${shop}.`,
    'not-json': ({ message }) => `Die Standardeingabe ist kein JSON: ${message}`,
    'input-too-long': ({ most }) =>
      `Die Standardeingabe hat mehr als ${most} Zeichen; so viele braucht kein Entwurf.`,
    design: ({ problems }) =>
      ['Der Entwurf lässt sich so nicht auffädeln:', ...problems.map(designProblemLine)].join('\n'),
  },
  place: {
    'place-not-for': ({ kind }) => `Eine Stelle am Körper gilt für eine Halskette; dies ist: ${KINDS[kind]}.`,
    'place-not-known': ({ place }) =>
      `Für ein Kind ist diese Stelle (${place}) nicht bekannt; geben Sie an, wie weit unter der Halsgrube.`,
    'place-out-of-reach': (f, dropMm) =>
      `Kein Strang, der um diesen Hals schließt, liegt ${f.length(dropMm)} unter der Halsgrube.`,
  },
  sizedBy: (options) => `Das Maß gibt man mit ${options.map((option) => `--${option}`).join(' oder ')} an.`,
  heading: (name, kind) => `${name} (${KINDS[kind]})`,
  asked: (of, text, sit, hand) =>
    `${OF[of]} ${text}${sit === null ? '' : `, Sitz ${SITS[sit]}`}, Verschluss mit der ${HANDS[hand]} Hand`,
  reached: (f, dropMm, aim, lengthMm) =>
    `Damit ${aim === 'pendant' ? 'die Mitte des Anhängers' : 'die tiefste Perle'} ${f.length(dropMm)} unter der Halsgrube liegt, muss die Kette etwa ${f.length(lengthMm)} lang sein. Eine Schätzung: Eine Schnur um den Hals ist sicherer.`,
  landmarkBand: (f, leastMm, mostMm) =>
    `Bei neun von zehn Menschen liegt diese Stelle zwischen ${f.length(leastMm)} und ${f.length(mostMm)} unter der Halsgrube.`,
  child:
    'Für ein Kind: Perlen und Verschlussteile sind Kleinteile, und Stahldraht gibt nicht nach, wenn eine Kette hängen bleibt. Nie für Kinder unter drei Jahren, nie im Schlaf, nie unbeaufsichtigt beim Spielen. Vor dem Herstellen und Verkaufen die Regeln am Ort prüfen.',
  nearest: 'Das Nächste, was sich machen lässt:',
  pickWith: 'Auswahl mit --pick below oder --pick above.',
  range: (f, { leastMm, mostMm }, fitted) =>
    `Möglich von ${f.length(leastMm)} bis ${f.length(mostMm)} (${fitted === 'length' ? 'fertige Länge' : 'innerer Umfang'}).`,
  change: (f, section, from, to) => `${section}: ${f.number(to)} statt ${f.number(from)}`,
  swap: (part, from, to) =>
    to === null
      ? `Ohne ${PARTS[part] ?? part}: ${from ?? ''}.`
      : from === null
        ? `Mit ${PARTS[part] ?? part}: ${to}.`
        : `${to} statt ${from}.`,
  swapPrice: (f, listedMinor, moreMinor) =>
    `Wie angeboten, in der üblichen Größe, kostet es ${f.money(listedMinor)}; dieses kostet ${moreMinor === 0 ? 'dasselbe' : `${f.money(Math.abs(moreMinor))} ${moreMinor > 0 ? 'mehr' : 'weniger'}`}.`,
  lies: (f, dropMm, leastMm, mostMm) =>
    `Die tiefste Perle liegt etwa ${fromPit(f, dropMm)}; ${pitBand(f, leastMm, mostMm)}.`,
  pendantLies: (f, dropMm) => `Die Mitte des Anhängers liegt etwa ${fromPit(f, dropMm)}.`,
  tooShort: 'Für einen solchen Hals ist die Kette zu kurz zum Schließen.',
  card: 'An der Werkbank',
  board: (side) =>
    side === null
      ? 'Verschluss: gleich auf welcher Seite des Bretts.'
      : `Verschluss: ${SIDES[side]} Seite des Bretts.`,
  wire: (f, name, cutMm) => `${name}: ${f.ruler(cutMm, 'up')} abschneiden.`,
  row: (f, last, count, name, toMm) =>
    `${numbered(f, last, count)}${f.number(count)} × ${name}, bis ${f.ruler(toMm)}`,
  tailAt: {
    clasp: (sentence) => `Am Verschluss: ${sentence}`,
    ring: (sentence) => `Am anderen Ende: ${sentence}`,
  },
  bareLoop: 'Drahtschlaufe',
  pull: (f, factor, wanted, enough) =>
    `Der Draht trägt das ${f.number(factor, 1)}-Fache von Zug und Ruck; verlangt ist das ${f.number(wanted, 1)}-Fache${enough ? '' : ': ZU WENIG'}.`,
  costs: (f, { beadsMinor, findingsMinor, wireMinor, packingMinor, labourMinor, minutes }) =>
    `Es kostet: Perlen ${f.money(beadsMinor)}, Verschlussteile ${f.money(findingsMinor)}, Draht ${f.money(wireMinor)}, Verpackung ${f.money(packingMinor)}, ${f.number(minutes)} Minuten Arbeit ${f.money(labourMinor)}.`,
  strand: (f, number) => `Strang ${f.number(number)}`,
};
