/** Two strands whose sections share an id and differ in name: each is called by its own strand's. */
import { expect, test } from 'vitest';
import type { Help } from '#core/sizing/sizing.ts';
import { formatFor } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import { helpSentence, sectionName, sectionNames } from '#words/sectionName.ts';
import { sizingWords } from '#words/words.ts';
import { design, section, strand, withComponent } from '#tests/support/workshop.ts';

const upper = strand([section('run', [['ball-8', 1]], { name: 'Agate run' })], { id: 'upper' });
const lower = strand([section('run', [['ball-4', 1]], { name: 'Pearl run' })], { id: 'lower' });
const two = withComponent(design({ lie: 'nested', strands: [upper, lower] }), 'ball-3', {
  name: 'Silver round',
});
const one = design({ strands: [lower] });

const BOTH = [
  { strand: 0, section: 'run' },
  { strand: 1, section: 'run' },
];
const names = (lang: Lang) => sectionNames(two, BOTH, sizingWords(lang), formatFor(lang, 'cm', 'GBP'));
const helps = (lang: Lang, help: Help, of = two) =>
  helpSentence(of, help, sizingWords(lang), formatFor(lang, 'cm', 'GBP')).replaceAll('\u00a0', ' ');

test('a section is looked up on its own strand, and called by its id where it has no name', () => {
  expect(BOTH.map((at) => sectionName(two, at))).toEqual(['Agate run', 'Pearl run']);
  expect(sectionName(two, { strand: 2, section: 'run' })).toBe('run');
});

test('of several strands each section says its strand, of one it doesn’t', () => {
  expect(names('en')).toEqual(['Agate run (strand 1)', 'Pearl run (strand 2)']);
  expect(names('de')).toEqual(['Agate run (Strang 1)', 'Pearl run (Strang 2)']);
  const format = formatFor('en', 'cm', 'GBP');
  expect(sectionNames(one, [{ strand: 0, section: 'run' }], sizingWords('en'), format)).toEqual([
    'Pearl run',
  ]);
});

test('a help says which strand it is for; stock is the whole piece’s', () => {
  const widen: Help = { code: 'widen-section', strand: 1, section: 'run', repeats: 2, offMm: 1 };
  expect(helps('en', widen)).toContain(
    'With a little more of ball-4 (strand 2) than the maker usually strings',
  );
  expect(helps('de', widen)).toContain('Mit etwas mehr von ball-4 (Strang 2), als');
  expect(helps('en', { ...widen, strand: 0 }, one)).toContain('With a little more of ball-4 than');
  const add: Help = { code: 'add-component', strand: 0, component: 'ball-3', count: 2, sides: 2, offMm: 1 };
  expect(helps('en', add)).toContain('With 2 more of “Silver round (strand 1)” on each side it would');
  expect(helps('en', { code: 'more-stock', component: 'ball-3', count: 2 })).toBe(
    'If the maker can get 2 more of “Silver round”, it is possible.',
  );
});
