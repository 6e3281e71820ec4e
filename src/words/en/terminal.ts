/** What the terminal says. English is the contract. */
import type { Costs } from '#core/sizing/price/costs.ts';
import type { Limits } from '#core/sizing/sizing.ts';
import type { ValidationError } from '#core/design/validationError.ts';
import type { PieceKind } from '#core/design/design.ts';
import type { Hand, MeasureOf, Sit } from '#core/design/choice.ts';
import type { Format } from '../format.ts';
import { sentenceOf } from '../sentence.ts';
import { designProblems } from './design.ts';
import { fromPit, pitBand } from './pit.ts';
import { numbered } from '../numbered.ts';

const KINDS: Readonly<Record<PieceKind, string>> = {
  necklace: 'necklace',
  bracelet: 'bracelet',
  anklet: 'anklet',
  collar: 'collar',
};

const OF: Readonly<Record<MeasureOf, string>> = {
  wrist: 'Wrist',
  ankle: 'Ankle',
  neck: 'Neck',
  length: 'Finished length',
};

const perhaps = (near: string): string => (near === '' ? '' : `Did you mean “${near}”? `);

const choices = (part: string, known: readonly string[]): string =>
  known.length === 0 ? `There is no ${part} among the components.` : `There are: ${known.join(', ')}.`;

const designProblemLine = (problem: ValidationError): string =>
  `  ${problem.at === '' ? 'The design' : problem.at}: ${sentenceOf(designProblems, problem)}`;

export const terminal = {
  help: `Size a piece.

  npm run -s size -- <piece> [options]
  npm run -s size -- - [options] < design.json   (public/schema/design-1.json)

What is wanted (one of them)
  --wrist, --ankle, --neck  girth of the body: "6 1/2 in", 16.5cm, 165mm
  --length                  finished length, clasp included
  --place                   a drop below the pit of the neck, or pit, bust, navel
  --aim                     strand or pendant: what is to lie at the place

A finished piece whose counts aren’t written down (instead)
  --found        its length, clasp included: gives the counts that explain it
  --found-girth  its inside girth, likewise
                 once for each strand, or once for all strands side by side;
                 --json is described by public/schema/size-found.json

Who wears it (for --place, and where a necklace lies)
  --neck   girth, beside --place or --length
  --sex    female, male or unstated (unstated)
  --height of the wearer
  --age    of a child, in years, from two

How
  --sit       snug, easy or loose (easy)
  --hand      left or right: the hand that works the clasp (right)
  --pick      best, below or above: which of the nearest pieces (best)
  --quantity  pieces wanted (1)

With other parts than it is listed with (names as in content/components)
  --clasp    another clasp; of one with two halves the ring goes too
  --ring     another ring opposite the clasp
  --pendant  another pendant on the same rings, or none

The answer
  --unit     in or cm (as the measure was written)
  --lang     en or de (en)
  --card     with the bench card
  --json     as JSON; public/schema/size-answer.json describes it
  --content  another content folder
  --rules    a file of rules instead of the shop’s: tolerance, ease, wire,
             minutes, price and currency, written as in content/shop.yaml

It ends with
  0  within tolerance, or the counts are found
  1  something unforeseen
  2  the command line can’t be read
  3  only near: the nearest pieces, or the nearest counts, are given
  4  outside what the piece can be: its limits are given
  5  refused: the size or the design can’t be worked with, or not so
  6  the catalogue, the piece, the rules or the input can’t be read
`,
  found: {
    heading: 'Counts that explain the finished piece, likeliest first',
    measures: (found: {
      readonly option: string;
      readonly given: number;
      readonly strands: number;
      readonly nested: boolean;
    }) =>
      `The piece has ${found.strands} strand${found.strands === 1 ? '' : 's'}, but --${found.option} is given ${found.given === 1 ? 'once' : `${found.given} times`}. ${found.strands === 1 ? `Give --${found.option} once.` : `Give --${found.option} once for each strand, in the order of the design${found.nested ? ': they hang one below the other, each with a measure of its own' : ', or once for all'}.`}`,
    measured: (of: 'length' | 'girth', measure: string) =>
      of === 'length' ? `Measured ${measure} long` : `Measured ${measure} round the inside`,
    far: (counts: string, measures: string) =>
      `No counts near the usual ones explain that. Measure again, or check that it is this piece. The nearest, ${counts}, would measure ${measures}.`,
    row: (percent: number, counts: string, measures: string) =>
      `${`${percent}%`.padStart(4)}  ${counts}: ${measures}`,
    fewer: (f: Format, count: number) => `and ${f.number(count)} more, each less likely than 1 in 200`,
    legend: 'Where one of each is:',
    part: (f: Format, count: number, name: string) => (count === 1 ? name : `${f.number(count)} × ${name}`),
    holds: (name: string, parts: readonly string[], oneSide: boolean) =>
      `${name}: ${parts.join(' + ')}${oneSide ? ' (counted on one side of the middle)' : ''}`,
  },
  /** Of the content check. */
  content: {
    notes: (count: number): string => `${count} worth a look:`,
    problems: (count: number): string => `${count} to mend:`,
    nothing: (pieces: number, components: number, guides: number): string =>
      `Nothing to mend. Pieces: ${pieces}, components: ${components}, guides: ${guides}.`,
  },
  seeHelp: 'Try --help.',
  usage: {
    'unknown-option': ({ option, near }: { readonly option: string; readonly near: string }) =>
      `There is no option ${option}. ${perhaps(near === '' ? '' : `--${near}`)}`.trim(),
    'no-value': ({ option }: { readonly option: string }) => `--${option} needs a value after it.`,
    'not-a-flag': ({ option }: { readonly option: string }) => `--${option} stands alone, nothing after it.`,
    'no-piece': () => 'Name a piece, or - for a design on standard input.',
    'too-many-pieces': ({ pieces }: { readonly pieces: readonly string[] }) =>
      `Name one piece, not ${pieces.length}: ${pieces.join(', ')}. A measure with a space needs quotes.`,
    'no-measure': () => 'Say what is wanted: --wrist, --ankle, --neck, --length or --place.',
    'not-beside': ({ options, beside }: { readonly options: readonly string[]; readonly beside: string }) =>
      `${options.map((option) => `--${option}`).join(' and ')} can’t stand beside --${beside}: the counts of a finished piece don’t depend on that. Leave ${options.length === 1 ? 'it' : 'them'} out.`,
    'only-beside': ({ option, beside }: { readonly option: string; readonly beside: string }) =>
      `--${option} says something only beside --${beside}.`,
    'too-many-measures': ({ options }: { readonly options: readonly string[] }) =>
      `One measure is wanted, but there are ${options.map((option) => `--${option}`).join(' and ')}.`,
    'not-one-of': (found: {
      readonly option: string;
      readonly value: string;
      readonly choices: readonly string[];
    }) => `--${found.option} is “${found.value}”, but has to be one of: ${found.choices.join(', ')}.`,
    'bad-number': ({ option, value }: { readonly option: string; readonly value: string }) =>
      `--${option} is “${value}”, but has to be a number.`,
    'bad-measure': ({ option }: { readonly option: string }, sentence: string) => `--${option}: ${sentence}`,
  },
  subject: {
    catalogue: ({ report }: { readonly report: string }): string => report,
    'no-such-piece': ({
      piece,
      near,
      pieces,
    }: {
      readonly piece: string;
      readonly near: string;
      readonly pieces: readonly string[];
    }) => `There is no piece “${piece}”. ${perhaps(near)}There are: ${pieces.join(', ')}.`,
    'no-such-part': (found: {
      readonly part: string;
      readonly written: string;
      readonly near: string;
      readonly known: readonly string[];
    }) =>
      `--${found.part}: there is no component “${found.written}”. ${perhaps(found.near)}${choices(found.part, found.known)}`,
    'wrong-part': (found: {
      readonly part: string;
      readonly written: string;
      readonly known: readonly string[];
    }) => `--${found.part}: “${found.written}” isn’t a ${found.part}. ${choices(found.part, found.known)}`,
    'clasp-needs-ring': ({ clasp, known }: { readonly clasp: string; readonly known: readonly string[] }) =>
      `--clasp: “${clasp}” closes on a ring, and the piece has none. Name one with --ring. ${choices('ring', known)}`,
    'rules-currency': ({
      file,
      written,
      shop,
    }: {
      readonly file: string;
      readonly written: string;
      readonly shop: string;
    }) =>
      `${file}  currency\n  The rules reckon in ${written}, but the piece’s costs are in ${shop}.\n  Write the rules’ amounts and “currency” in ${shop}.`,
    'not-json': ({ message }: { readonly message: string }) => `Standard input isn’t JSON: ${message}`,
    'input-too-long': ({ most }: { readonly most: number }) =>
      `Standard input has more than ${most} characters; no design needs as many.`,
    design: ({ problems }: { readonly problems: readonly ValidationError[] }) =>
      ['The design can’t be strung as it is:', ...problems.map(designProblemLine)].join('\n'),
  },
  place: {
    'place-not-for': ({ kind }: { readonly kind: PieceKind }): string =>
      `A place on the body is for a necklace; this is a ${KINDS[kind]}.`,
    'place-not-known': ({ place }: { readonly place: string }) =>
      `Where a child’s ${place} lies isn’t known; give a drop below the pit of the neck instead.`,
    'place-out-of-reach': (f: Format, dropMm: number) =>
      `No strand that closes round this neck lies ${f.length(dropMm)} below its pit.`,
  },
  sizedBy: (options: readonly string[]): string =>
    `It is sized by ${options.map((option) => `--${option}`).join(' or ')}.`,
  heading: (name: string, kind: PieceKind): string => `${name} (${KINDS[kind]})`,
  asked: (of: MeasureOf, text: string, sit: Sit | null, hand: Hand): string =>
    `${OF[of]} ${text}${sit === null ? '' : `, sitting ${sit}`}, clasp worked by the ${hand} hand`,
  reached: (f: Format, dropMm: number, aim: 'strand' | 'pendant', lengthMm: number): string =>
    `To lie ${f.length(dropMm)} below the pit of the neck (${aim === 'pendant' ? 'the pendant’s middle' : 'the lowest bead'}) it has to be about ${f.length(lengthMm)} long. An estimate: a string round the neck is surer.`,
  landmarkBand: (f: Format, leastMm: number, mostMm: number): string =>
    `For nine people in ten that place lies between ${f.length(leastMm)} and ${f.length(mostMm)} below the pit.`,
  child:
    'For a child: beads and findings are small parts, and steel wire doesn’t give way when a necklace catches. Never on a child under three, never asleep or at play unwatched. Check the rules where you live before you make or sell one.',
  nearest: 'The nearest that can be made:',
  pickWith: 'Take one with --pick below or --pick above.',
  range: (f: Format, { leastMm, mostMm }: Limits, fitted: 'length' | 'girth'): string =>
    `It can be made from ${f.length(leastMm)} to ${f.length(mostMm)} (${fitted === 'length' ? 'finished length' : 'inside girth'}).`,
  change: (f: Format, section: string, from: number, to: number): string =>
    `${section}: ${f.number(to)} instead of ${f.number(from)}`,
  swap: (part: 'clasp' | 'ring' | 'pendant', from: string | null, to: string | null): string =>
    to === null
      ? `Without its ${part}, ${from ?? ''}.`
      : from === null
        ? `With a ${part}: ${to}.`
        : `${to} instead of ${from}.`,
  swapPrice: (f: Format, listedMinor: number, moreMinor: number): string =>
    `As listed, in its usual size, it costs ${f.money(listedMinor)}; this one costs ${moreMinor === 0 ? 'the same' : `${f.money(Math.abs(moreMinor))} ${moreMinor > 0 ? 'more' : 'less'}`}.`,
  lies: (f: Format, dropMm: number, leastMm: number, mostMm: number): string =>
    `Its lowest bead lies about ${fromPit(f, dropMm)}; ${pitBand(f, leastMm, mostMm)}.`,
  pendantLies: (f: Format, dropMm: number): string =>
    `The middle of the pendant lies about ${fromPit(f, dropMm)}.`,
  tooShort: 'For a neck like that it is too short to close.',
  card: 'At the bench',
  board: (side: 'left' | 'right' | null): string =>
    side === null ? 'Clasp: either side of the board.' : `Clasp: ${side} side of the board.`,
  wire: (f: Format, name: string, cutMm: number): string => `${name}: cut ${f.ruler(cutMm, 'up')}.`,
  /** `last`: number of the row's last component, counted from the clasp; null for findings, which aren't counted. */
  row: (f: Format, last: number | null, count: number, name: string, toMm: number): string =>
    `${numbered(f, last, count)}${f.number(count)} × ${name}, to ${f.ruler(toMm)}`,
  tailAt: {
    clasp: (sentence: string): string => `At the clasp: ${sentence}`,
    ring: (sentence: string): string => `At the other end: ${sentence}`,
  },
  bareLoop: 'wire loop',
  pull: (f: Format, factor: number, wanted: number, enough: boolean): string =>
    `The wire bears ${f.number(factor, 1)} times pull and snag; the shop wants ${f.number(wanted, 1)}${enough ? '' : ': NOT ENOUGH'}.`,
  costs: (
    f: Format,
    { beadsMinor, findingsMinor, wireMinor, packingMinor, labourMinor, minutes }: Costs,
  ): string =>
    `It costs: beads ${f.money(beadsMinor)}, findings ${f.money(findingsMinor)}, wire ${f.money(wireMinor)}, packing ${f.money(packingMinor)}, ${f.number(minutes)} minutes of work ${f.money(labourMinor)}.`,
  strand: (f: Format, number: number): string => `Strand ${f.number(number)}`,
};
