/** How a learner tells the steps of a tutorial apart by what they say. */
import type { StepCode } from '#core/instructions/step.ts';

/** What a sentence says: the step, with parts and figures as far as they are printed. */
export type Reading = { readonly code: StepCode; readonly args: Readonly<Record<string, unknown>> };

/** Each step by its own words; where the demo shop's maker wrote hers, by those too. */
export const WAYS_READ: readonly (readonly [StepCode, RegExp])[] = [
  ['wear-eye-protection', /^Put eye protection on/],
  ['try-clasp', /^Open and close the (?<clasp>.+?) a few times\./],
  [
    'join-chain',
    /^Take (?:(?<links>\d+) links, )?(?<length>.+?) of chain\..* hang it on (?<held>.+?) and turn it shut\.$/,
  ],
  [
    'join-ring',
    /^(?:Take the (?<open>.+?) between two pliers.* Put (?<things>.+) on it and turn it shut|Lift an end of the (?<split>.+?) with the split-ring pliers and work (?<turned>.+) round it till)/,
  ],
  [
    'check-facing',
    /^Hold it up as it will hang and look: the (?<pendant>.+?) (?<how>faces front|turns sideways)/,
  ],
  ['lay-out', /^(?:Lay all the beads out|Set the big bead at zero)/],
  ['cut-wire', /^Cut (?<length>.+?\)) of (?<wire>.+)\. Hold both sides/],
  ['thread-end', /^Thread (?<things>.+), in this order\.$/],
  [
    'lead-back',
    /^Lead the wire back through the crimp(?: and the last (?:(?<one>bead)|(?<beads>\d+) beads))?(?:, till (?<out>.+?) stand out)?\. The loop is to be (?<loop>.+?mm\)?) (?:round (?<round>.+?)|for the clasp to close in); leave/,
  ],
  [
    'check-loop',
    /^Look into the crimp: both wires lie side by side and don’t cross(?:, and (?<free>.+?) swings freely)?\./,
  ],
  ['crimp', /^Squeeze the crimp twice/],
  ['close-cover', /^Set the (?<cover>.+?) over the crimp/],
  ['cut-tail', /^Away from your face, cut the tail flush (?:where it leaves bead (?<bead>\d+)|at the crimp)/],
  [
    'string-beads',
    /^String bead(?:s (?<first>\d+) to (?<last>\d+)| (?<alone>\d+))(?<over> over wire and tail together.*)?\.$/,
  ],
  ['hang-pendant', /^Here the (?<pendant>.+?) hangs: thread (?<by>its own loop|its ring|its top ring),/],
  ['draw-up', /^Draw the wire up: leave (?:no slack that you can see|(?<slack>.+?) bare at the last bead)\./],
  ['measure', /^Lay it straight and measure all of it,.*?: (?<length>.+?mm\)?)\. If it isn’t/],
  ['check-pattern', /^Count (?<count>\d+)\b/],
  [
    'check-closed',
    /^Close it: (?<length>.+?mm\)?)(?:\.| before the chain(?:, as this size asks|; in its (?<link>\d+)(?:st|nd|rd|th) link, as this size asks: (?<at>.+?mm\)?)|; (?<used>.+?) down the chain, as this size asks: .+?); (?:by the last link|in the last link, the (?<links>\d+)(?:st|nd|rd|th)): (?<end>.+?mm\)?)\.)/,
  ],
];
