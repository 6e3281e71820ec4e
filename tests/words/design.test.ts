/** What is wrong with a design, read as the maker would: one sentence for each code. */
import { describe, expect, test } from 'vitest';
import type { ValidationError } from '#core/design/validationError.ts';
import { designProblems as german } from '#words/de/design.ts';
import { designProblems as english } from '#words/en/design.ts';
import { sentenceOf } from '#words/sentence.ts';

type Fault = ValidationError extends infer One ? (One extends unknown ? Omit<One, 'at'> : never) : never;

const SAID: readonly (readonly [Fault, string, string])[] = [
  [
    { code: 'link-without-chain', linkMm: 4 },
    'A link of 4 mm is named, but there is no chain.',
    'Ein Glied von 4 mm ist genannt, aber keine Kette.',
  ],
  [
    { code: 'chain-too-short', chainMm: 3, linkMm: 4 },
    'The chain of 3 mm is shorter than one of its links, 4 mm.',
    'Die Kette von 3 mm ist kürzer als eines ihrer Glieder, 4 mm.',
  ],
  [
    { code: 'chain-not-whole', chainMm: 50, linkMm: 4, links: 12 },
    'The chain of 50 mm isn’t a whole number of links of 4 mm: 12 make 48 mm, 13 make 52 mm.',
    'Die Kette von 50 mm hat keine ganze Zahl von Gliedern zu 4 mm: 12 sind 48 mm, 13 sind 52 mm.',
  ],
  [{ code: 'wrong-type', wanted: 'number' }, 'A number belongs here.', 'Hier gehört eine Zahl hin.'],
  [
    { code: 'wrong-type', wanted: 'id' },
    'A name that isn’t empty belongs here.',
    'Hier gehört ein Name, der nicht leer ist, hin.',
  ],
  [
    { code: 'not-one-of', options: ['in-plane', 'through'] },
    'One of these belongs here: in-plane, through.',
    'Hier gehört eines von diesen hin: in-plane, through.',
  ],
  [
    { code: 'text-too-long', length: 1201, most: 200 },
    'The text has 1,201 characters; there is room for 200.',
    'Der Text hat 1.201 Zeichen; Platz ist für 200.',
  ],
  [
    { code: 'out-of-range', value: 0.05, least: 0.1, most: 3, unit: 'mm' },
    '0.05 mm is outside what can be: 0.1 to 3 mm.',
    '0,05 mm liegt außerhalb des Möglichen: 0,1 bis 3 mm.',
  ],
  [
    { code: 'out-of-range', value: 13, least: 1, most: 12, unit: 'none' },
    '13 is outside what can be: 1 to 12.',
    '13 liegt außerhalb des Möglichen: 1 bis 12.',
  ],
  [
    { code: 'out-of-range', value: -1, least: 0, most: 10_000_000, unit: 'minor' },
    '-1 pence or cents is outside what can be: 0 to 10,000,000 pence or cents.',
    '-1 Pence oder Cent liegt außerhalb des Möglichen: 0 bis 10.000.000 Pence oder Cent.',
  ],
  [
    { code: 'too-many-entries', count: 13, most: 12 },
    'There are 13 entries here; there is room for 12.',
    'Hier stehen 13 Einträge; Platz ist für 12.',
  ],
  [
    { code: 'id-differs', component: 'slate-8', key: 'slate-6' },
    'The component calls itself “slate-8”, but is listed as “slate-6”.',
    'Das Teil nennt sich „slate-8“, ist aber als „slate-6“ eingetragen.',
  ],
  [
    { code: 'no-length', component: 'slate-6' },
    '“slate-6” takes no length on the wire; only a clasp, a ring or a pendant may.',
    '„slate-6“ nimmt auf dem Draht keine Länge ein; das dürfen nur Verschluss, Ring und Anhänger.',
  ],
  [{ code: 'no-width', component: 'slate-6' }, '“slate-6” has no width.', '„slate-6“ hat keine Breite.'],
  [
    { code: 'rounding-too-large', component: 'slate-6', roundingMm: 3.456, mostMm: 3 },
    '“slate-6” has a rounding of 3.46 mm, more than half of it, which is 3 mm.',
    '„slate-6“ hat eine Rundung von 3,46 mm, mehr als die Hälfte des Teils, die 3 mm misst.',
  ],
  [
    { code: 'hole-too-wide', component: 'slate-6', holeMm: 7, acrossMm: 6 },
    'A hole of 7 mm leaves nothing of “slate-6”, which is 6 mm across.',
    'Ein Loch von 7 mm lässt von „slate-6“ nichts übrig, das 6 mm breit ist.',
  ],
  [
    { code: 'unknown-material', component: 'slate-6', material: 'cheese' },
    '“slate-6” is made of “cheese”, a material whose weight isn’t known.',
    '„slate-6“ ist aus „cheese“, einem Material, dessen Gewicht nicht bekannt ist.',
  ],
  [
    { code: 'unknown-component', component: 'slate-6' },
    'There is no component “slate-6”.',
    'Das Teil „slate-6“ gibt es nicht.',
  ],
  [
    { code: 'wrong-kind', component: 'slate-6', kind: 'bead', kinds: ['clasp'] },
    '“slate-6” is a bead, which can’t stand here; a clasp can.',
    '„slate-6“ ist eine Perle und kann hier nicht stehen; ein Verschluss kann es.',
  ],
  [
    { code: 'wrong-kind', component: 'drop', kind: 'pendant', kinds: ['bead', 'spacer', 'cap'] },
    '“drop” is a pendant, which can’t stand here; a bead, a spacer or a bead cap can.',
    '„drop“ ist ein Anhänger und kann hier nicht stehen; eine Perle, ein Zwischenteil oder eine Perlkappe kann es.',
  ],
  [{ code: 'no-strand' }, 'The piece has no strand.', 'Das Stück hat keinen Strang.'],
  [{ code: 'strand-empty' }, 'This strand has nothing on it.', 'Auf diesem Strang ist nichts.'],
  [
    { code: 'strand-too-long', count: 3004, most: 3000 },
    'This strand takes up to 3,004 components; more than 3,000 can’t be computed.',
    'Dieser Strang nimmt bis zu 3.004 Teile auf; mehr als 3.000 lassen sich nicht berechnen.',
  ],
  [
    { code: 'section-twice', section: 'run' },
    'The section “run” is there twice on this strand.',
    'Den Abschnitt „run“ gibt es auf diesem Strang zweimal.',
  ],
  [
    { code: 'section-empty', section: 'run' },
    'The section “run” has no beads.',
    'Der Abschnitt „run“ hat keine Perlen.',
  ],
  [
    { code: 'counts-order', section: 'run', fewest: 9, usual: 8, most: 40 },
    'The section “run” has fewest 9, usual 8 and most 40, which aren’t in rising order.',
    'Im Abschnitt „run“ steigen fewest 9, usual 8 und most 40 nicht an.',
  ],
  [
    { code: 'focal-changes', section: 'eye', fewest: 0, most: 1 },
    'The focal section “eye” goes from 0 to 1, but a focal stays as it is.',
    'Das Mittelstück „eye“ geht von 0 bis 1; ein Mittelstück bleibt aber, wie es ist.',
  ],
  [
    { code: 'focal-not-once', section: 'eye', usual: 2 },
    'In the middle of a mirrored strand the focal section “eye” stands once, not 2 times.',
    'In der Mitte eines gespiegelten Strangs steht das Mittelstück „eye“ einmal, nicht 2-mal.',
  ],
  [
    { code: 'focal-not-first', section: 'eye' },
    'The focal section “eye” stands in the middle of a mirrored strand, so it comes first.',
    'Das Mittelstück „eye“ steht in der Mitte eines gespiegelten Strangs, also kommt es zuerst.',
  ],
  [
    { code: 'lie-single', strands: 2 },
    'A piece of 2 strands lies side-by-side or nested, not single.',
    'Ein Stück mit 2 Strängen liegt „side-by-side“ oder „nested“, nicht „single“.',
  ],
  [
    { code: 'ways', clasp: 'lobster', ways: 1, strands: 2 },
    'The clasp “lobster” takes one strand; the piece has 2.',
    'Der Verschluss „lobster“ fasst einen Strang; das Stück hat 2.',
  ],
  [
    { code: 'hole-too-small', component: 'pearl', holeMm: 0.6, needMm: 0.97, wire: 'soft-19' },
    'The hole of “pearl” is 0.6 mm; the wire “soft-19” needs 0.97 mm.',
    'Das Loch von „pearl“ misst 0,6 mm; der Draht „soft-19“ braucht 0,97 mm.',
  ],
  [
    { code: 'crimp-too-tight', crimp: 'crimp-2', insideMm: 0.9, needMm: 0.97, wire: 'soft-19' },
    'The crimp “crimp-2” is 0.9 mm inside; the wire “soft-19” doubled needs 0.97 mm.',
    'Die Quetschperle „crimp-2“ misst innen 0,9 mm; der doppelte Draht „soft-19“ braucht 0,97 mm.',
  ],
  [
    { code: 'cover-too-tight', cover: 'cover-3', takesMm: 1.5, crimp: 'crimp-2', closedMm: 1.6 },
    'The cover “cover-3” takes 1.5 mm; the crimp “crimp-2” is 1.6 mm once closed.',
    'Die Hülle „cover-3“ fasst 1,5 mm; die Quetschperle „crimp-2“ misst geschlossen 1,6 mm.',
  ],
  [
    { code: 'ring-closed', ring: 'ring-6', hangs: 'drop' },
    '“ring-6” is a closed ring: “drop” can’t be hung on it.',
    '„ring-6“ ist ein geschlossener Ring: „drop“ lässt sich nicht einhängen.',
  ],
];

describe('a fault of a design', () => {
  test.each(SAID)('%j', (fault, inEnglish, inGerman) => {
    const error = { ...fault, at: '' };
    expect(sentenceOf(english, error)).toBe(inEnglish);
    expect(sentenceOf(german, error)).toBe(inGerman);
  });

  test('none is left unsaid', () => {
    expect(new Set(SAID.map(([{ code }]) => code))).toEqual(new Set(Object.keys(english)));
  });
});
