/** The published form of a design and the core's own check of one say the same. */
import { describe, expect, test } from 'vitest';
import { validateDesign } from '#core/design/validate/validateDesign.ts';
import type { ValidationError } from '#core/design/validationError.ts';
import type { Design } from '#core/design/design.ts';
import { random, randomDesign, randomStrands } from '#tests/core/random.ts';
import { damage } from '#tests/support/damage.ts';
import { ALL } from '#tests/support/workshop.ts';
import { catalogueOf } from '#tests/support/catalogue.ts';
import { bySchema } from './terminal.ts';

const mistakesIn = bySchema('design-1');

const SHAPE: readonly ValidationError['code'][] = ['wrong-type', 'not-one-of', 'text-too-long'];

const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

const demo = catalogueOf().pieces.map(({ design }) => design);

describe('a design', () => {
  test('of the demo shop, of the workshop, and any random one has the published form', () => {
    expect(demo.length).toBeGreaterThan(40);
    const made = Array.from({ length: 200 }, (_, seed) => {
      const of = random(seed);
      const make = of.next() < 0.5 ? randomDesign : randomStrands;
      return make(of, of.pick(['necklace', 'bracelet', 'collar', 'anklet']), { sections: 3, repeats: 6 });
    });
    for (const design of [...demo, ...ALL, ...made]) {
      expect(mistakesIn(plain(design)), design.id).toEqual([]);
    }
  });

  test('that has not is refused by the core, and the other way round', () => {
    let refused = 0;
    let passed = 0;
    for (let seed = 1; seed <= 3000; seed += 1) {
      const of = random(seed);
      const broken = plain(damage(of, plain(of.pick(demo))));
      const mistakes = mistakesIn(broken);
      const fits = mistakes.length === 0;
      const problems = validateDesign(broken as Design);
      // That a component's id is its key no JSON Schema can say.
      const ofShape = problems.filter(({ code }) => SHAPE.includes(code));
      if (!fits) expect(problems, `seed ${seed}: ${JSON.stringify(mistakes)}`).not.toEqual([]);
      if (ofShape.length > 0) expect(fits, `seed ${seed}: ${JSON.stringify(ofShape)}`).toBe(false);
      if (fits) passed += 1;
      else refused += 1;
    }
    expect(refused).toBeGreaterThan(1000);
    expect(passed).toBeGreaterThan(20);
  });
});
