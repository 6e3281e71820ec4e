/**
 * How much the searches look at: figures that are the same on every machine,
 * where a time is not. A bound that holds less still finds the same answers,
 * but looks at more, and that shows here.
 */
import { expect, test, vi } from 'vitest';
import { boxSearch } from '#core/solver/boxSearch.ts';
import { strandLimits } from '#core/solver/fit.ts';
import { lengthSearch } from '#core/solver/lengthSearch.ts';
import type { Measure } from '#core/solver/measure.ts';
import { toNm } from '#core/solver/outcome.ts';
import type { Search } from '#core/solver/questions.ts';
import { jobOf } from '#core/sizing/job.ts';
import type { Design, PieceKind } from '#core/design/design.ts';
import { focalBracelet, necklace, rules, stocked, tubeBracelet } from '../designs.ts';
import { random, randomDesign } from '../random.ts';

const looked = vi.hoisted(() => ({ judged: 0, weighed: 0 }));

vi.mock('#core/solver/outcome.ts', async (original) => {
  const outcome = await original<typeof import('#core/solver/outcome.ts')>();
  const judge: typeof outcome.judge = (...given) => {
    looked.judged += 1;
    return outcome.judge(...given);
  };
  return { ...outcome, judge };
});

vi.mock('#core/solver/lengthTable.ts', async (original) => {
  const table = await original<typeof import('#core/solver/lengthTable.ts')>();
  const weightOf: typeof table.weightOf = (...given) => {
    looked.weighed += 1;
    return table.weightOf(...given);
  };
  return { ...table, weightOf };
});

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
  const limits = strandLimits(search);
  if (limits === null) throw new Error('the strand must reach somewhere');
  const leastNm = limits.least.span.lowNm;
  const stepNm = (limits.most.span.highNm - leastNm) / 20;
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

test.each<[string, Design, Efforts]>([
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
    'counted beads',
    stocked(focalBracelet, { six: 13 }),
    { within: [30, 1533], below: [52, 2137], above: [71, 2182], between: [15, 928] },
  ],
  [
    'three sections',
    made(3, 'bracelet'),
    { within: [338, 3301], below: [195, 3716], above: [194, 3664], between: [153, 1466] },
  ],
  [
    'lengths, by boxes',
    made(4, 'necklace'),
    { within: [12, 2118], below: [49, 2127], above: [62, 2118], between: [7, 475] },
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
    'lengths of three sections, by boxes',
    made(12, 'necklace'),
    { within: [39, 530], below: [33, 904], above: [35, 864], between: [21, 216] },
  ],
])('by boxes, how often a measure is asked for and how often a bound of it: %s', (_, design, most) => {
  const { problem, measure } = jobOf(design, rules, 1).strand(0, []);
  let measured = 0;
  let bounded = 0;
  const counted =
    (measuring: Measure['least']): Measure['least'] =>
    (counts) => {
      bounded += 1;
      return measuring(counts);
    };
  const search = boxSearch(problem, {
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

test.each<[string, Design, Efforts]>([
  [
    'a pendant necklace',
    necklace,
    { within: [990, 0], below: [21, 425], above: [21, 451], between: [5, 105] },
  ],
  [
    'three sections',
    made(3, 'necklace', 5),
    { within: [297, 0], below: [21, 292], above: [21, 322], between: [6, 101] },
  ],
  [
    'two sections',
    made(5, 'necklace', 5),
    { within: [290, 0], below: [21, 172], above: [21, 227], between: [6, 59] },
  ],
  [
    'counted beads',
    made(6, 'necklace', 5),
    { within: [6, 138], below: [21, 437], above: [21, 415], between: [5, 83] },
  ],
  [
    'few counted beads',
    made(13, 'necklace', 5),
    { within: [22, 369], below: [15, 135], above: [15, 993], between: [21, 312] },
  ],
  [
    'a change that costs nothing',
    made(18, 'necklace', 5),
    { within: [21, 442], below: [21, 394], above: [21, 422], between: [13, 269] },
  ],
  [
    'wide ranges',
    made(14, 'necklace', 5),
    { within: [2760, 0], below: [21, 1406], above: [21, 1412], between: [5, 286] },
  ],
  [
    'wide ranges of counted beads',
    made(17, 'necklace', 5),
    { within: [11, 249], below: [21, 649], above: [21, 642], between: [11, 238] },
  ],
])('by lengths, how many pieces are judged and how many choices weighed: %s', (_, design, most) => {
  const { problem, measure } = jobOf(design, rules, 1).strand(0, []);
  const search = lengthSearch(problem, measure, measure.eachNm!);
  const efforts = effortsOf(search, () => [looked.judged, looked.weighed]);
  expect(tooMuch(efforts, most)).toEqual([]);
});
