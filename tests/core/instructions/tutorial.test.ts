/** What a tutorial adds to the card: tools, amounts with spares, and a picture for what changes. */
import { describe, expect, it } from 'vitest';
import { materialsOf } from '#core/instructions/materials.ts';
import { stagesOf } from '#core/instructions/stages.ts';
import { toolsOf } from '#core/instructions/tools.ts';
import { tally } from '#core/design/tally.ts';
import { randomWork } from '#tests/judges/hands/designs.ts';
import type { Work } from '#tests/judges/hands/carryOut.ts';

const works = Array.from({ length: 400 }, (_, seed) => randomWork(seed + 1)).filter(
  (work): work is Work => work !== null,
);

describe('of random pieces', () => {
  it('there are enough', () => expect(works.length).toBeGreaterThan(150));

  it('amounts are the piece’s own, in one line each, with something to spare of what breaks', () => {
    for (const { design, candidate, card } of works) {
      const { components, wire } = materialsOf(design, candidate.counts, card.strands);
      expect(new Map(components.map(({ component, count }) => [component, count]))).toEqual(
        new Map(tally(design, candidate.counts)),
      );
      for (const { component, count, spares } of components) {
        expect(Number.isInteger(spares) && spares >= 0).toBe(true);
        const { kind } = design.components[component]!;
        if (kind === 'crimp') expect(spares).toBe(2);
        if (kind === 'bead' && count > 1) expect(spares).toBe(Math.ceil(count / 20));
      }
      const all = wire.cutsMm.reduce((sum, mm) => sum + mm, 0);
      expect(wire.cutsMm).toEqual(card.strands.map(({ cut }) => cut.totalMm));
      expect(wire.haveMm).toBeCloseTo(all + Math.max(...wire.cutsMm), 9);
    }
  });

  it('tools are there for what the steps do, and no others', () => {
    for (const { card } of works) {
      const tools = new Map(toolsOf(card.steps).map(({ tool, count }) => [tool, count]));
      const joins = card.steps.filter(({ code }) => code === 'join-ring' || code === 'join-chain');
      const isCut = (step: (typeof joins)[number]): boolean =>
        step.code === 'join-chain' || (step.code === 'join-ring' && step.args.joint === 'open');
      const isSplit = joins.some((step) => step.code === 'join-ring' && step.args.joint === 'split');
      expect(tools.get('eye-protection')).toBe(1);
      expect(tools.get('crimping-pliers')).toBe(1);
      expect(tools.get('pliers') ?? 0).toBe(joins.some(isCut) ? 2 : card.ends.coverId === null ? 0 : 1);
      expect(tools.has('split-ring-pliers')).toBe(isSplit);
    }
  });

  it('each end is seen threaded, looped, crimped, covered where it is, and cut, in the hands’ order', () => {
    for (const { card } of works) {
      const stages = stagesOf(card.steps);
      expect(stages).toHaveLength(card.steps.length);
      card.strands.forEach((_, strand) => {
        for (const end of ['clasp', 'ring'] as const) {
          const looks = stages.flatMap((stage) =>
            stage?.picture === 'end' && stage.strand === strand && stage.end === end ? [stage.look] : [],
          );
          expect(looks[0]).toMatchObject({ looped: false, crimp: 'open', tail: 'none' });
          expect(looks[1]).toMatchObject({ looped: true, crimp: 'open' });
          expect(looks.at(-1)).toMatchObject({
            looped: true,
            crimp: card.ends.coverId === null ? 'closed' : 'covered',
            tail: 'cut',
          });
          // A crimp that is closed is never open again, a tail that is cut never there.
          const crimps = looks.map(({ crimp }) => ['open', 'closed', 'covered'].indexOf(crimp));
          expect(crimps).toEqual(crimps.toSorted((one, other) => one - other));
          const firstCut = looks.findIndex(({ tail }) => tail === 'cut');
          for (const { tail } of looks.slice(firstCut)) expect(tail).toBe('cut');
        }
      });
      expect(stages.some((stage) => stage?.picture === 'closed')).toBe(true);
      expect(stages.some((stage) => stage?.picture === 'hung')).toBe(card.pendant !== null);
    }
  });
});
