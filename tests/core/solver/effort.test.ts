/**
 * How much the searches look at: figures that are the same on every machine,
 * where a time is not. A bound that holds less still finds the same answers,
 * but looks at more, and that shows here.
 */
import { expect, test } from 'vitest';
import { toNm } from '#core/solver/outcome.ts';
import type { Measure } from '#core/solver/measure.ts';
import type { Search } from '#core/solver/questions.ts';
import { searchOf } from '#core/solver/search.ts';
import { jobOf } from '#core/sizing/job.ts';
import type { Design, PieceKind } from '#core/design/design.ts';
import { focalBracelet, necklace, rules, stocked, tubeBracelet } from '../designs.ts';
import { random, randomDesign } from '../random.ts';

/** Up to four sections that change, with up to ten repeats each. */
const made = (seed: number, kind: PieceKind, sections = 4): Design =>
  randomDesign(random(seed), kind, { sections, repeats: 10 });

/** A hundredth more may be somebody else's rounding. */
const MORE = 1.01;

const QUESTIONS = {
  within: (search: Search, targetNm: number) => search.within({ targetNm, toleranceNm: toNm(0.5) }),
  below: (search: Search, targetNm: number) => search.nearest(targetNm, 'below'),
  above: (search: Search, targetNm: number) => search.nearest(targetNm, 'above'),
  between: (search: Search, targetNm: number) => search.between(targetNm, targetNm + toNm(0.2)),
} as const;

type Effort = readonly [dear: number, cheap: number];
type Efforts = Readonly<Record<keyof typeof QUESTIONS, Effort>>;

/** Efforts of each question, asked at 21 targets from the strand's smallest to its largest, evenly. */
function effortsOf(search: Search, soFar: () => Effort): Efforts {
  const [least, most] = [search.nearest(0, 'above'), search.nearest(1e14, 'below')];
  if (least === null || most === null) throw new Error('the strand must reach somewhere');
  const leastNm = least.span.lowNm;
  const stepNm = (most.span.highNm - leastNm) / 20;
  const askAll = (ask: (typeof QUESTIONS)[keyof typeof QUESTIONS]): Effort => {
    const [dear, cheap] = soFar();
    for (let at = 0; at <= 20; at += 1) ask(search, Math.round(leastNm + at * stepNm));
    const [dearer, cheaper] = soFar();
    return [dearer - dear, cheaper - cheap];
  };
  const { within, below, above, between } = QUESTIONS;
  return { within: askAll(within), below: askAll(below), above: askAll(above), between: askAll(between) };
}

/** Questions that took more than they may. */
const tooMuch = (efforts: Efforts, most: Efforts): string[] =>
  Object.entries(most).flatMap(([question, [dear, cheap]]) => {
    const [itsDear, itsCheap] = efforts[question as keyof Efforts];
    return itsDear > MORE * dear || itsCheap > MORE * cheap ? [`${question}: ${itsDear}, ${itsCheap}`] : [];
  });

const CASES: readonly (readonly [string, Design, Efforts])[] = [
  [
    'a focal bracelet',
    focalBracelet,
    { within: [41, 1436], below: [55, 2573], above: [67, 2517], between: [19, 991] },
  ],
  [
    'a tube bracelet',
    tubeBracelet,
    { within: [138, 911], below: [89, 974], above: [93, 944], between: [74, 453] },
  ],
  [
    'a bracelet of counted beads',
    stocked(focalBracelet, { six: 13 }),
    { within: [30, 1533], below: [52, 2137], above: [71, 2182], between: [15, 928] },
  ],
  [
    'three sections',
    made(3, 'bracelet'),
    { within: [338, 3301], below: [195, 3716], above: [194, 3664], between: [153, 1466] },
  ],
  [
    'sharp parts',
    made(6, 'bracelet'),
    { within: [13, 1624], below: [84, 2171], above: [64, 2097], between: [5, 598] },
  ],
  [
    'two sections',
    made(7, 'bracelet'),
    { within: [266, 1501], below: [103, 1048], above: [112, 1042], between: [92, 471] },
  ],
  [
    'a pendant necklace',
    necklace,
    { within: [21, 0], below: [1036, 1556], above: [1024, 1256], between: [426, 397] },
  ],
  [
    'lengths of two sections',
    made(4, 'necklace'),
    { within: [4044, 1887], below: [2343, 1834], above: [2374, 1504], between: [1015, 450] },
  ],
  [
    'lengths of three sections',
    made(12, 'necklace'),
    { within: [21, 0], below: [537, 800], above: [528, 848], between: [190, 216] },
  ],
  [
    'lengths of counted beads',
    made(6, 'necklace', 5),
    { within: [2518, 1264], below: [2454, 1886], above: [2385, 1507], between: [1091, 520] },
  ],
  [
    'few counted beads',
    made(13, 'necklace', 5),
    { within: [182, 210], below: [484, 354], above: [484, 402], between: [273, 192] },
  ],
  [
    'a change that costs nothing',
    made(18, 'necklace', 5),
    { within: [463, 465], below: [3647, 5546], above: [3644, 4570], between: [1096, 991] },
  ],
  [
    'wide ranges',
    made(14, 'necklace', 5),
    { within: [21, 0], below: [4170, 6034], above: [4108, 5016], between: [1425, 1379] },
  ],
  [
    'wide ranges of counted beads',
    made(17, 'necklace', 5),
    { within: [7200, 3524], below: [6074, 4646], above: [6025, 3813], between: [2077, 906] },
  ],
];

test.each(CASES)('how often a measure is asked for, and how often a bound of it: %s', (_, design, most) => {
  const { strands, shared } = jobOf(design, rules, 1).joint;
  const { measure, within } = strands[0]!;
  let measured = 0;
  let bounded = 0;
  const counted =
    (measuring: Measure['least']): Measure['least'] =>
    (counts) => {
      bounded += 1;
      return measuring(counts);
    };
  const search = searchOf(within(shared).problem, {
    ...measure,
    of: (counts) => {
      measured += 1;
      return measure.of(counts);
    },
    least: counted(measure.least),
    most: counted(measure.most),
  });
  const efforts = effortsOf(search, () => [measured, bounded]);
  expect(tooMuch(efforts, most)).toEqual([]);
});
