/**
 * A tutorial's print followed by hands that know nothing else: every step, part
 * and count is read off the sheet, and the piece comes out as it was sized. Of
 * lengths the sheet has what a ruler shows; they are held against the exact ones.
 */
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import type { Hand } from '#core/design/choice.ts';
import type { Row } from '#core/instructions/rows.ts';
import type { Step } from '#core/instructions/step.ts';
import { tally } from '#core/design/tally.ts';
import { TutorialSheet } from '#ui/components/tutorial/TutorialSheet.tsx';
import { linkedSizes, taughtPiece, tutorialOf, type Tutorial } from '#ui/models/tutorial.ts';
import type { Piece } from '#catalogue/model/catalogue.ts';
import { teachingWords } from '#words/words.ts';
import { catalogueOf } from '#tests/support/catalogue.ts';
import { carryOut } from './hands/carryOut.ts';
import { printedOf, type Printed, type PrintedStrand } from './tutorial/printed.ts';
import { mmOf, readStep, type Known } from './tutorial/readStep.ts';

const { shop, pieces } = catalogueOf();
const pieceOf = (id: string): Piece => pieces.find((piece) => piece.id === id)!;
const plain = teachingWords('en').plain;

/** As fine as the sheet writes a length: half a millimetre, to the nearest or up. */
const PRINTED_MM = 0.5001;

type Followed = { readonly tutorial: Tutorial; readonly printed: Printed };

function printOf(piece: Piece, askedMm: number | null, hand: Hand): Followed {
  const candidate = taughtPiece(piece, shop.rules, askedMm);
  if (candidate === null) throw new Error(`${piece.id} has no size ${askedMm}`);
  const tutorial = tutorialOf(piece, shop.rules, candidate, hand, 'en');
  const html = renderToString(<TutorialSheet tutorial={tutorial} lang="en" unit="in" currency="GBP" />);
  return { tutorial, printed: printedOf(html) };
}

/** Ids by printed names: full ones, and findings by their kind. */
function namesOf({ design }: Tutorial): (name: string) => string {
  const ids = new Map<string, string>([[design.wire.name, design.wire.id]]);
  for (const { id, name } of Object.values(design.components)) {
    expect(ids.has(name), `two parts called ${name}`).toBe(false);
    ids.set(name, id);
  }
  const { crimp, cover, clasp, ring } = design.ends;
  for (const [name, id] of [
    [plain.crimp, crimp],
    [plain.cover, cover],
    [plain.clasp, clasp],
    [plain.ring, ring !== null && design.components[ring]?.kind === 'ring' ? ring : null],
    [plain.pendant, design.hanging?.pendant ?? null],
  ] as const) {
    if (id !== null) ids.set(name, id);
  }
  return (name) => {
    const id = ids.get(name);
    if (id === undefined) throw new RangeError(`nothing is called “${name}”`);
    return id;
  };
}

/** The strand's list as the sheet has it: `3 × [ 2 A · B ]`. */
function rowsOf({ list }: PrintedStrand, idOf: (name: string) => string): Row[] {
  const row = (kind: Row['kind'], component: string, count: number): Row => ({
    ...{ kind, component, count, section: null, side: 'left' },
    ...{ runningCount: 0, eachMm: 0, fromMm: 0, toMm: 0 },
  });
  return list.flatMap(({ numbers, text }): Row[] => {
    const [, times = '1', body = ''] = /^(?:(\d+) × )?(.*)$/.exec(text) ?? [];
    const parts = body.replace(/^\[ (.*) \]$/, '$1').split(' · ');
    if (numbers === '') {
      // What closes an end has no numbers either, and is in no row that is strung.
      const hung = /^(.+?)(?: on .+|, by its own loop)$/.exec(parts[0] ?? '')?.[1];
      return parts.length === 1 && hung !== undefined ? [row('pendant', idOf(hung), 1)] : [];
    }
    return Array.from({ length: Number(times) }, () =>
      parts.map((part) => {
        const [, count = '1', name = ''] = /^(?:(\d+) )?(.*)$/.exec(part) ?? [];
        return row('strung', idOf(name), Number(count));
      }),
    ).flat();
  });
}

/** The sheet's figure where it is as near as a ruler shows, in the exact one's place; else a complaint. */
function exactly(step: Step, args: Readonly<Record<string, unknown>>): Record<string, unknown> {
  const exact: Readonly<Record<string, unknown>> = step.args;
  const seen = step.code === 'draw-up' ? new Set(['slackMm', 'roomMm']) : new Set<string>();
  return Object.fromEntries(
    Object.entries(args).map(([name, value]) => {
      const wanted = exact[name];
      if (!name.endsWith('Mm') || typeof value !== 'number' || typeof wanted !== 'number')
        return [name, value];
      // Slack that can't be seen is told as none; room for a cover is seen by the cover itself.
      const by =
        seen.has(name) && (name === 'roomMm' ? value > 0 === wanted > 0 : wanted < 1) ? Infinity : PRINTED_MM;
      return [name, Math.abs(value - wanted) <= by ? wanted : value];
    }),
  );
}

/** The printed sheet carried out; null where the piece hangs there as it was sized. */
function follow({ tutorial, printed }: Followed, hand: Hand): string | null {
  const { design, candidate, card } = tutorial;
  const idOf = namesOf(tutorial);
  const rows = printed.strands.map((strand) => rowsOf(strand, idOf));
  const rings = design.hanging?.rings ?? [];
  let at = 0;
  const steps = printed.strands.flatMap((strand, index): Step[] => {
    const last = Math.max(...strand.list.map(({ numbers }) => Number(/(\d+)$/.exec(numbers)?.[1] ?? 0)));
    const known: Known = { design, idOf, rings, last };
    let end: 'clasp' | 'ring' = 'clasp';
    let threaded = 0;
    return strand.steps.map((sentence) => {
      const isThreading = sentence.startsWith('Thread ');
      if (isThreading) threaded += 1;
      if (threaded === 2) end = 'ring';
      const { code, args } = readStep(sentence, end, known);
      const step = card.steps[at];
      at += 1;
      if (step?.code !== code) throw new Error(`“${sentence}” is no ${step?.code}`);
      const whole = ['cut-wire', 'thread-end'].includes(code) || step.strand !== null;
      return { code, strand: whole ? index : null, args: exactly(step, args) } as Step;
    });
  });
  const read = {
    ...card,
    steps,
    strands: card.strands.map((strand, index) => ({ ...strand, rows: rows[index] ?? [] })),
  };
  return carryOut({ design, rules: shop.rules, candidate, hand, card: read });
}

describe('hands that have nothing but the printed tutorial', () => {
  it.each(pieces.map((piece) => piece.id))('string %s as shown', (id) => {
    for (const hand of ['right', 'left'] as const) {
      expect(follow(printOf(pieceOf(id), null, hand), hand)).toBeNull();
    }
  });

  // Offered ones; a pendant on a ring; two strands; one that runs without a mirror; one with a better side.
  it.each(['banked-fire', 'wash-day', 'two-locks', 'weir-light', 'beck-and-leat'])(
    'string %s in every size',
    (id) => {
      const piece = pieceOf(id);
      const sizes = linkedSizes(piece, shop.rules, 'en');
      expect(sizes.length).toBeGreaterThan(3);
      for (const { askedMm } of sizes) {
        expect(follow(printOf(piece, askedMm, 'right'), 'right'), `${askedMm} mm`).toBeNull();
      }
    },
  );

  it.each([
    ['a bead too few', (text: string) => text.replace('String beads 10 to 51', 'String beads 10 to 50')],
    [
      'another end',
      (text: string) => text.replace('Thread the crimp, then the clasp', 'Thread the crimp, then the ring'),
    ],
    ['a tail that is cut at another bead', (text: string) => text.replace('leaves bead 9', 'leaves bead 8')],
    [
      'a wire a centimetre short',
      (text: string) =>
        text.replace(/^Cut .+? \((\d+)(?:\.5)? mm\)/, (_, mm: string) => `Cut 1 in (${Number(mm) - 30} mm)`),
    ],
  ])('stop at %s', (_, damage) => {
    const { tutorial, printed } = printOf(pieceOf('banked-fire'), null, 'right');
    const strands = printed.strands.map((strand) => ({ ...strand, steps: strand.steps.map(damage) }));
    expect(JSON.stringify(strands)).not.toBe(JSON.stringify(printed.strands));
    expect(follow({ tutorial, printed: { ...printed, strands } }, 'right')).not.toBeNull();
  });
});

describe('what the sheet says to lay ready', () => {
  it.each(pieces.map((piece) => piece.id))('is all that %s takes, and wire for it', (id) => {
    const { tutorial, printed } = printOf(pieceOf(id), null, 'right');
    const { design, candidate, card } = tutorial;
    const idOf = namesOf(tutorial);
    const said = new Map(
      printed.amounts
        .filter(([what = '']) => !what.startsWith('Wire: ') && what !== 'Chain')
        .map(([what = '', count]) => [idOf(what), Number(count)]),
    );
    expect(said).toEqual(new Map(tally(design, candidate.counts)));
    const [, wire = ''] = printed.amounts.find(([what = '']) => what.startsWith('Wire: ')) ?? [];
    const cutsMm = card.strands.map(({ cut }) => cut.totalMm);
    const [cuts = '', have = ''] = wire.split('; have ');
    for (const mm of cutsMm) expect(cuts).toMatch(new RegExp(`\\(${Math.ceil(2 * mm - 0.002) / 2} mm\\)`));
    expect(mmOf(have)).toBeGreaterThanOrEqual(
      cutsMm.reduce((sum, mm) => sum + mm, Math.max(...cutsMm)) - 0.001,
    );
  });

  it('are the tools that the steps take up', () => {
    const toolsOf = (id: string) => printOf(pieceOf(id), null, 'right').printed.tools.join();
    expect(toolsOf('banked-fire')).toContain('Crimping pliers');
    expect(toolsOf('banked-fire')).not.toContain('Split-ring');
    expect(toolsOf('wash-day')).toContain('Split-ring pliers');
    for (const { id } of pieces) expect(toolsOf(id)).toContain('Eye protection');
  });
});
