import { describe, expect, it } from 'vitest';
import type { AssumptionCode } from '#core/body/assumptions.ts';
import { balanceOf } from '#core/instructions/balance.ts';
import type { Step } from '#core/instructions/step.ts';
import { usual } from '#core/sizing/usual.ts';
import { expand } from '#core/design/expand.ts';
import {
  card,
  design,
  pendantNecklace,
  twoStrands,
  unequalNecklace,
  withComponent,
} from '#tests/support/workshop.ts';
import { formatFor } from '#words/format.ts';
import { LANGS } from '#words/lang.ts';
import { sentenceOf } from '#words/sentence.ts';
import { stringingWords } from '#words/words.ts';

const guarded = { ...pendantNecklace, ends: { ...pendantNecklace.ends, guard: 'guard' } };
const narrow = withComponent(guarded, 'ball-8', { holeMm: 0.6 });
const name = (id: string) => `<${id}>`;

describe.each(LANGS)('at the bench in %s', (lang) => {
  const words = stringingWords(lang);
  const f = formatFor(lang, 'in', 'GBP');
  const whole = (text: string) => expect(text).not.toMatch(/undefined|NaN|\[object|Infinity/);

  /** Args that are ids, which the sentence names; a card has one crimp, so that closing it need not say which. */
  const IDS = ['clasp', 'wire', 'guard', 'finding', 'pendant', 'ring', 'above', 'below', 'cover'];

  it('every step is a sentence with its figures and names', () => {
    const all: Step[] = [
      ...card(guarded).steps,
      ...card(withComponent(narrow, 'drop', { loop: 'through' })).steps,
      ...card(twoStrands).steps,
      ...card({ ...design(), ends: { ...design().ends, ring: null, extenderMm: 40 } }).steps,
      ...card({ ...design(), ends: { ...design().ends, ring: null } }).steps,
      ...card({ ...design(), ends: { ...design().ends, extenderMm: 40 } }).steps,
      ...card({ ...pendantNecklace, hanging: { pendant: 'drop', rings: ['ring', 'ring', 'ring'] } }).steps,
      ...card(withComponent(pendantNecklace, 'ring', { joint: 'split' })).steps,
      ...card({ ...pendantNecklace, hanging: { pendant: 'drop', rings: [] } }).steps,
    ];
    let named = 0;
    for (const step of all) {
      const text = words.step(step, f, name);
      whole(text);
      expect(text).toMatch(/[.!]$/);
      for (const [key, value] of Object.entries(step.args)) {
        if (!IDS.includes(key) || typeof value !== 'string') continue;
        named += 1;
        expect(text).toContain(name(value));
      }
    }
    expect(named).toBeGreaterThan(all.length / 3);
    expect(new Set(all.map((step) => words.step(step, f, name))).size).toBeGreaterThan(40);
  });

  it('a tail in the way says what would fit', () => {
    const tail = card(narrow).strands[0]?.tails.clasp;
    const text = tail === undefined ? '' : words.tail(tail, f, name);
    whole(text);
    expect(text).toContain('<ball-8>');
    expect(text).toContain(lang === 'de' ? '0,96' : '0.96');
    expect(text).toContain(lang === 'de' ? '0,3 mm' : '0.3 mm');
    const free = card(guarded).strands[0]!.tails.ring;
    expect(words.tail(free, f, name)).not.toBe(text);
  });

  it('crimp, cover and guard read differently for every fit', () => {
    const { crimp, cover, guard } = card(guarded).ends;
    const crimps = (['fits', 'tight', 'loose'] as const).map((fit) =>
      words.crimp({ ...crimp, fit }, f, name),
    );
    expect(new Set(crimps).size).toBe(3);
    const covers = (['fits', 'tight', 'loose'] as const).map((fit) =>
      cover === null ? '' : words.cover({ ...cover, fit }, f, name),
    );
    expect(new Set(covers).size).toBe(3);
    const guards = [true, false].map((passes) =>
      guard === null ? '' : words.guard({ ...guard, passes }, f, name),
    );
    expect(new Set(guards).size).toBe(2);
    [...crimps, ...covers, ...guards].forEach(whole);
  });

  it('a pendant’s place and facing', () => {
    const { pendant } = card(guarded);
    if (pendant === null || pendant.facing === null) throw new Error('the necklace has a pendant');
    const places = [pendant, { ...pendant, centred: false }, { ...pendant, offMiddleMm: 4 }].map((one) =>
      words.centred(one, f),
    );
    const turns = [
      pendant.facing,
      { ...pendant.facing, faces: 'sideways', addRings: 1, rings: 2 } as const,
    ].map((one) => words.facing(one, f));
    expect(new Set([...places, ...turns]).size).toBe(5);
    [...places, ...turns].forEach(whole);
  });

  it('balance names the heavier side and where the middle lies', () => {
    const found = balanceOf(unequalNecklace, expand(unequalNecklace, usual(unequalNecklace))[0] ?? []);
    const text = words.balance(found, f);
    const turned = words.balance({ ...found, heavierG: -found.heavierG, offMm: -found.offMm }, f);
    expect(text).not.toBe(turned);
    whole(text);
  });

  it('doubts, assumptions and refusals each have a sentence', () => {
    const { caveats, assumptions, figureProblems, massBasis, flexibility } = words;
    const texts = [caveats, assumptions, massBasis, flexibility].flatMap((map) => Object.values<string>(map));
    expect(new Set(texts).size).toBe(texts.length);
    for (const text of texts) expect(text.length).toBeGreaterThan(3);
    const codes: AssumptionCode[] = [
      'chest-slope',
      'zero-at-pit',
      'mean-neck',
      'mean-height',
      'pooled',
      'adult-lines',
    ];
    expect(Object.keys(assumptions).sort()).toEqual(codes.sort());
    whole(sentenceOf(figureProblems, { code: 'under-two', ageYears: 1 }, f));
    whole(sentenceOf(figureProblems, { code: 'no-child', ageYears: 30, mostYears: 19 }, f));
    whole(sentenceOf(figureProblems, { code: 'girth-absurd', mm: 3, leastMm: 180, mostMm: 650 }, f));
    whole(sentenceOf(figureProblems, { code: 'height-absurd', mm: 3, leastMm: 800, mostMm: 2500 }, f));
  });

  it('a design in the workshop reads without a loose end', () => {
    const { strength } = card(design());
    strength.caveats.forEach((caveat) => whole(words.caveats[caveat]));
  });
});
