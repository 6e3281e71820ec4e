/**
 * How much the searches look at: figures that are the same on every machine,
 * where a time is not. A bound that holds less still finds the same answers,
 * but looks at more, and that shows here.
 */
import { expect, test, vi } from 'vitest';
import { boxSearch } from '#core/solver/boxSearch.ts';
import { strandLimits } from '#core/solver/fit.ts';
import { lengthSearch } from '#core/solver/lengthSearch.ts';
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
    { within: [73, 2143], below: [157, 4775], above: [109, 4609], between: [40, 1559] },
  ],
  [
    'a tube bracelet',
    tubeBracelet,
    { within: [22, 1049], below: [37, 1298], above: [44, 1262], between: [9, 454] },
  ],
  [
    'counted beads',
    stocked(focalBracelet, { six: 13 }),
    { within: [62, 2462], below: [108, 3926], above: [120, 3916], between: [31, 1468] },
  ],
  [
    'three sections',
    made(3, 'bracelet'),
    { within: [43, 3596], below: [101, 5672], above: [89, 5612], between: [19, 1543] },
  ],
  [
    'lengths, by boxes',
    made(4, 'necklace'),
    { within: [12, 2728], below: [53, 3584], above: [71, 3755], between: [7, 630] },
  ],
  [
    'sharp parts',
    made(6, 'bracelet'),
    { within: [24, 2333], below: [93, 3641], above: [84, 3679], between: [12, 844] },
  ],
  [
    'two sections',
    made(7, 'bracelet'),
    { within: [26, 1644], below: [44, 1311], above: [37, 1287], between: [7, 484] },
  ],
  [
    'lengths of three sections, by boxes',
    made(12, 'necklace'),
    { within: [39, 612], below: [39, 1610], above: [44, 1572], between: [21, 285] },
  ],
])('by boxes, how often a measure is asked for, finely and roughly: %s', (_, design, most) => {
  const { problem, measure } = jobOf(design, rules, 1).strand(0, []);
  let finely = 0;
  let roughly = 0;
  const search = boxSearch(problem, {
    ...measure,
    of: (counts) => {
      finely += 1;
      return measure.of(counts);
    },
    rough: (counts) => {
      roughly += 1;
      return measure.rough(counts);
    },
  });
  const efforts = effortsOf(search, () => [finely, roughly]);
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
