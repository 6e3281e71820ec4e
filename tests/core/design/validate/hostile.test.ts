import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as caps from '#core/design/caps.ts';
import { changed, codes, found } from '#tests/support/validated.ts';
import { ALL, COMPONENTS, design } from '#tests/support/workshop.ts';

describe('hostile input', () => {
  const runs = process.env['CLASPWISE_THOROUGH'] === '1' ? 200_000 : 1000;

  it('any JSON at all comes back as problems, never as a throw', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const problems = found(value);
        expect(problems.length).toBeGreaterThan(0);
        expect(problems.length).toBeLessThanOrEqual(caps.MOST_PROBLEMS);
      }),
      { numRuns: runs },
    );
  });

  /** Every path of a design, for damage at random. */
  function paths(value: unknown, at = ''): string[] {
    if (typeof value !== 'object' || value === null) return [at];
    const below = Object.entries(value).flatMap(([key, entry]) =>
      paths(entry, at === '' ? key : `${at}.${key}`),
    );
    return at === '' ? below : [at, ...below];
  }
  const everywhere = ALL.map((piece) => ({ piece, all: paths(piece) }));

  it('a design damaged anywhere is judged, never thrown at', () => {
    let wrong = 0;
    const junk = fc.oneof(
      fc.jsonValue(),
      fc.double(),
      fc.constantFrom(undefined, -0, 1e308, '__proto__', 'constructor'),
    );
    fc.assert(
      fc.property(fc.nat(everywhere.length - 1), fc.nat(), junk, (which, pick, value) => {
        const { piece, all } = everywhere[which] ?? { piece: design(), all: [] };
        const path = all[pick % all.length] ?? 'id';
        const problems = found(changed(piece, path, value));
        expect(problems.length).toBeLessThanOrEqual(caps.MOST_PROBLEMS);
        if (problems.length > 0) wrong += 1;
      }),
      { numRuns: runs },
    );
    // Junk in a name or a colour may do no harm.
    expect(wrong).toBeGreaterThan(0.8 * runs);
  });

  it('tells no more than its cap', () => {
    const table = Object.fromEntries(Array.from({ length: 200 }, (_, n) => [`c${n}`, null]));
    expect(found({ ...design(), components: table })).toHaveLength(caps.MOST_PROBLEMS);
  });

  it('a name every object has is no component', () => {
    const tricky = JSON.parse(JSON.stringify(design()).replaceAll('"ball-8"', '"__proto__"'));
    expect(codes(tricky)).toContain('wrong-type strands.0.sections.0.motif.0.component');
    expect(COMPONENTS['ball-8']).toBeDefined();
  });
});
