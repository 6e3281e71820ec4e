/**
 * `npm run benchmark`: what the computation costs on this machine. Seconds drift
 * from machine to machine; the ratios in one run are what counts.
 */
import { lieOf } from '#core/body/lie.ts';
import { figureOf } from '#core/body/figure.ts';
import { loadOf } from '#core/body/load.ts';
import { lengthForDrop } from '#core/body/place.ts';
import { strandLoop } from '#core/solver/measure.ts';
import { solveLoop } from '#core/geometry/loop.ts';
import { range } from '#core/sizing/range.ts';
import { size } from '#core/sizing/size.ts';
import { usual } from '#core/sizing/usual.ts';
import { expand } from '#core/design/expand.ts';
import type { Design } from '#core/design/design.ts';
import { benchDesign, benchRules } from './benchmarks/designs.ts';
import { againstHighs } from './benchmarks/highs.ts';
import { ms, table } from './benchmarks/table.ts';
import { exponent, time } from './benchmarks/timing.ts';

const COMPONENTS = [20, 60, 150];
const SECTIONS = [1, 2, 3, 4, 5, 6];
/** Pieces of a catalogue whose ranges are all wanted at build time. */
const CATALOGUE = 1000;

const print = (text: string): void => {
  process.stdout.write(`${text}\n\n`);
};

/** Wrists, or lengths, spread over what a design can be. */
function sizes(design: Design, count: number): number[] {
  const known = range(design, benchRules);
  if (known.status !== 'known') return [];
  const { leastAskedMm, mostAskedMm } = known.limits;
  return Array.from(
    { length: count },
    (_, at) => leastAskedMm + ((at + 0.5) / count) * (mostAskedMm - leastAskedMm),
  );
}

function fits(design: Design): (() => unknown)[] {
  const of = ({ necklace: 'length', bracelet: 'wrist', collar: 'neck', anklet: 'ankle' } as const)[
    design.kind
  ];
  return sizes(design, 21).map(
    (mm) => () =>
      size(design, benchRules, 4800, {
        measure: { of, mm },
        sit: 'easy',
        hand: 'right',
        pick: 'best',
        quantity: 1,
      }),
  );
}

function loops(): void {
  const timed = COMPONENTS.map((components) => {
    const design = benchDesign('bracelet', components, 4);
    const parts = strandLoop(design, 0, usual(design)[0] ?? [], 0);
    const timing = time(
      new Array(21).fill(() => solveLoop(parts)),
      50,
    );
    return { parts: parts.length, timing };
  });
  const [first, last] = [timed[0]!, timed.at(-1)!];
  const growth = exponent(first.parts, first.timing.medianMs, last.parts, last.timing.medianMs);
  print(
    `Loop solve, one strand with its closing\n${table(
      ['parts', 'median ms', 'p95 ms'],
      timed.map(({ parts, timing }) => [String(parts), ms(timing.medianMs), ms(timing.p95Ms)]),
    )}\ngrowth exponent ${growth.toFixed(2)}`,
  );
}

function fullFits(): void {
  for (const fitted of ['girth', 'length'] as const) {
    const rows = COMPONENTS.flatMap((components) =>
      SECTIONS.map((sections) => {
        // A hundred and fifty components are more than a wrist takes.
        const round = components > 100 ? 'collar' : 'bracelet';
        const design = benchDesign(fitted === 'girth' ? round : 'necklace', components, sections);
        const fit = time(fits(design));
        const ranged = time([() => range(design, benchRules)]);
        return [`${components}`, `${sections}`, ms(fit.medianMs), ms(fit.p95Ms), ms(ranged.medianMs)];
      }),
    );
    print(
      `Full fit to a ${fitted} (checks, limits, optimum, price, picture data) and its range\n${table(
        ['components', 'sections', 'fit median ms', 'fit p95 ms', 'range ms'],
        rows,
      )}`,
    );
  }
}

function catalogue(): void {
  const designs = Array.from({ length: CATALOGUE }, (_, at) =>
    benchDesign(at % 2 === 0 ? 'bracelet' : 'necklace', 20 + (at % 14) * 10, 1 + (at % 6)),
  );
  const { medianMs } = time([() => designs.map((design) => range(design, benchRules))], 1);
  print(`Range of a catalogue of ${CATALOGUE} pieces: ${(medianMs / 1000).toFixed(1)} s of one core`);
}

function lie(): void {
  const design = benchDesign('necklace', 150, 4);
  const load = loadOf(design, expand(design, usual(design))[0] ?? [], 0);
  const figure = figureOf({ sex: 'unstated', neckGirthMm: null, heightMm: null });
  if (!figure.ok) return;
  const there = time(
    new Array(21).fill(() => lieOf(load, figure.figure)),
    20,
  );
  const back = time(
    new Array(21).fill(() => lengthForDrop(load, figure.figure, 80)),
    20,
  );
  print(
    `Lie on the body\n${table(
      ['', 'median ms'],
      [
        ['a length → where it lies', ms(there.medianMs)],
        ['a place → its length', ms(back.medianMs)],
      ],
    )}`,
  );
}

loops();
fullFits();
catalogue();
lie();
print(await againstHighs());
