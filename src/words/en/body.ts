/** What the body chart says. */
import type { AssumptionCode } from '#core/body/assumptions.ts';
import type { FigureProblem } from '#core/body/figure.ts';
import type { Format } from '../format.ts';
import type { Sentences } from '../sentence.ts';
import { fromPit, pitBand } from './pit.ts';

/** The trade's names of lengths; common practice, no source. */
export type LengthName = 'collar' | 'choker' | 'princess' | 'matinee' | 'opera' | 'rope';

const problems: Sentences<FigureProblem> = {
  'under-two': () =>
    'For a child under two there is no size here: nothing round the neck of a baby. Please don’t order one.',
  'no-child': ({ mostYears }, f) => `From ${f.number(mostYears)} years on, choose a grown person.`,
  'girth-absurd': ({ mm, leastMm, mostMm }, f) =>
    `${f.length(mm)} is no girth of a neck: it lies between ${f.length(leastMm)} and ${f.length(mostMm)}.`,
  'height-absurd': ({ mm, leastMm, mostMm }, f) =>
    `${f.length(mm)} is no height: it lies between ${f.length(leastMm)} and ${f.length(mostMm)}.`,
};

const assumptions: Readonly<Record<AssumptionCode, string>> = {
  'chest-slope': 'the chest slopes by 20° (a round figure, not measured)',
  'zero-at-pit': 'a strand as long as the foot of the neck is round reaches just to the pit of the neck',
  'mean-neck': 'the neck is the average one',
  'mean-height': 'the height is the average one',
  pooled: 'women’s and men’s measures together',
  'adult-lines': 'a grown person’s proportions, made smaller',
};

export const body = {
  problems,
  assumptions,
  title: 'Worn',
  picture: (name: string): string => `${name} on a body`,
  whoLegend: 'Who will wear it?',
  who: { unstated: 'Not said', female: 'A woman', male: 'A man', child: 'A child' },
  neck: 'Neck girth',
  height: 'Height',
  age: 'Age in years',
  optional: 'If you know it',
  ageWrong: 'Write the age in years, for example 8.',
  landmarks: { pit: 'pit of the neck', bust: 'bust, somewhere here', navel: 'navel' },
  handle: 'Lowest point: drag it, or use the arrow keys',
  handleFixed: 'Lowest point',
  hint: 'Drag the lowest point, or touch the place where it should hang: the length follows, as far as the beads allow.',
  hangs: (f: Format, dropMm: number, leastMm: number, mostMm: number): string =>
    `Hangs about ${fromPit(f, dropMm)}; ${pitBand(f, leastMm, mostMm)}.`,
  pendantHangs: (f: Format, dropMm: number, leastMm: number, mostMm: number): string =>
    `The middle of the pendant hangs about ${fromPit(f, dropMm)}; ${pitBand(f, leastMm, mostMm)}.`,
  handleText: (f: Format, lengthMm: number, dropMm: number): string =>
    `${f.length(lengthMm)} long, ${fromPit(f, dropMm)}`,
  tooShort: (f: Format, neckBaseMm: number): string =>
    `Too short to close at the foot of this neck, which is about ${f.length(neckBaseMm)} round.`,
  onNeck: (f: Format, neckMm: number): string =>
    `Shown on a neck ${f.length(neckMm)} round, which this one closes round with an easy sit.`,
  unreachable: 'This piece can’t reach that place.',
  names: {
    collar: 'collar',
    choker: 'choker',
    princess: 'princess length',
    matinee: 'matinée length',
    opera: 'opera length',
    rope: 'rope',
  } satisfies Record<LengthName, string>,
  compare: 'Keep this length to compare',
  compared: 'Lengths compared',
  take: 'Go back',
  forgetShort: 'Forget',
  forget: (length: string): string => `Forget ${length}`,
  takeLength: (length: string): string => `Go back to ${length}`,
  estimate:
    'An estimate for a typical body of that neck. Bodies differ: hang a string where it should lie, measure the string, and order by finished length.',
  restsOn: (f: Format, reasons: readonly string[]): string => `It takes for granted: ${f.list(reasons)}.`,
  surveys:
    'Body measures: ANSUR II, 2012 (grown soldiers); Snyder and others, 1977 (children). The spread among everybody is wider.',
  childTitle: 'Before you order for a child',
  childCautions: [
    'A strand round the neck can catch and strangle. Not for sleep, play or climbing, and never without a grown person there.',
    'Beads and findings are small parts that can be swallowed or breathed in. Not for children under three, nor for any child who still puts things in the mouth.',
    'A strand on coated steel wire does not break when it catches.',
    'Rules for children’s jewellery differ from place to place: check those where you live, and if in doubt ask whoever looks after the child’s health.',
  ],
};
