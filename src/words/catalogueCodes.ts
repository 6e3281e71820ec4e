/**
 * What can be wrong with an authored entry: one row a code, with what its
 * sentences need. Measures are millimetres; a list is written out already.
 */
import type { Measure } from '#core/design/choice.ts';
import type { Remedy } from '#core/sizing/gaps/remedies.ts';
import type { MeasureError, ValidationError } from '#core/design/validationError.ts';
import type { Sit } from '#core/design/choice.ts';
import type { Sentences } from './sentence.ts';

/** The units that ranges are told in. */
export type QuantityUnit = 'mm' | 'm' | 'g' | 'g/m' | 'N' | '%' | 'min' | 'weeks' | 'hours a week' | 'months';

/** What closes gaps, each proven by sizing the changed design. `name`: of the section that goes further, up or down to `to`. */
export type GapClosing = {
  readonly sizesMm: readonly number[];
  readonly name: string;
  readonly how:
    | { readonly code: 'widen-section'; readonly repeats: number; readonly to: number }
    | Exclude<Remedy, { readonly code: 'widen-section' }>
    | { readonly code: 'nothing' };
};

export type CatalogueError =
  // The file itself
  | { readonly code: 'folder-missing'; readonly folder: string }
  | { readonly code: 'shop-missing'; readonly file: string }
  | { readonly code: 'file-unreadable'; readonly why: string }
  | { readonly code: 'file-too-large'; readonly kilobytes: number; readonly most: number }
  | { readonly code: 'file-not-utf8' }
  /** As `U+0007`. */
  | { readonly code: 'invisible-sign'; readonly sign: string }
  | { readonly code: 'other-ending'; readonly ending: string; readonly wanted: string }
  | { readonly code: 'yaml'; readonly why: string }
  | { readonly code: 'tab-indent' | 'colon-inside' | 'yaml-references' }
  | { readonly code: 'too-many-fields'; readonly most: number }
  | { readonly code: 'field-twice'; readonly field: string }
  | { readonly code: 'not-fields' }
  | { readonly code: 'front-matter' }
  // One field
  | { readonly code: 'missing-field'; readonly field: string }
  | { readonly code: 'empty-field'; readonly field: string }
  | { readonly code: 'unknown-field'; readonly field: string; readonly near: string; readonly known: string }
  | {
      readonly code: 'wrong-form';
      readonly field: string;
      readonly value: string;
      readonly wanted: 'text' | 'list' | 'fields';
    }
  | { readonly code: 'not-one-of'; readonly value: string; readonly options: string }
  | { readonly code: 'not-yes-or-no'; readonly value: string }
  | { readonly code: 'not-whole'; readonly value: string; readonly least: number; readonly most: number }
  | { readonly code: 'not-a-measure'; readonly value: string; readonly example: string }
  | { readonly code: 'unit-missing'; readonly value: string; readonly units: string }
  | { readonly code: 'unit-wrong'; readonly value: string; readonly unit: string; readonly units: string }
  | {
      readonly code: 'out-of-range';
      readonly value: string;
      readonly least: number;
      readonly most: number;
      readonly unit: QuantityUnit;
    }
  | { readonly code: 'price-without-currency'; readonly value: string }
  | { readonly code: 'not-money'; readonly value: string }
  | { readonly code: 'money-marks'; readonly value: string; readonly meant: string }
  | { readonly code: 'currency-unknown'; readonly value: string; readonly currency: string }
  | { readonly code: 'currency-other'; readonly value: string; readonly currency: string }
  | { readonly code: 'not-a-date'; readonly value: string }
  | { readonly code: 'not-https'; readonly value: string }
  | { readonly code: 'place-missing'; readonly value: string; readonly place: string }
  | { readonly code: 'not-a-tax' | 'not-a-prefix' | 'not-a-shop-address'; readonly value: string }
  | { readonly code: 'not-a-colour'; readonly value: string }
  | { readonly code: 'colour-unquoted' }
  | { readonly code: 'not-an-id'; readonly value: string }
  | { readonly code: 'not-an-email'; readonly value: string }
  | { readonly code: 'not-a-bead-line'; readonly value: string }
  | { readonly code: 'text-too-long'; readonly length: number; readonly most: number }
  // One entry
  | { readonly code: 'duplicate-id'; readonly id: string; readonly other: string }
  | { readonly code: 'duplicate-name'; readonly name: string; readonly other: string }
  | { readonly code: 'duplicate-part-number'; readonly number: string; readonly other: string }
  | { readonly code: 'size-or-both'; readonly shape: string }
  | { readonly code: 'measure-needed'; readonly field: string; readonly kind: string }
  | {
      readonly code: 'choice-needed';
      readonly field: string;
      readonly kind: string;
      readonly options: string;
    }
  /** `from`: what its pieces could be reckoned from. */
  | { readonly code: 'sold-unclear'; readonly by: string; readonly from: string }
  | { readonly code: 'field-not-for'; readonly field: string; readonly kind: string }
  | MeasureError
  | { readonly code: 'sections-or-strands' }
  | { readonly code: 'strands-apart'; readonly leastMm: number; readonly mostMm: number }
  | { readonly code: 'counts-order'; readonly fewest: number; readonly usual: number; readonly most: number }
  | { readonly code: 'focal-place' }
  | { readonly code: 'lie-needed'; readonly strands: number }
  // Between entries
  | { readonly code: 'unknown-material'; readonly material: string; readonly near: string }
  | { readonly code: 'unknown-component'; readonly id: string; readonly near: string }
  | { readonly code: 'unknown-wire'; readonly id: string; readonly near: string }
  | {
      readonly code: 'end-hole-too-small';
      readonly component: string;
      readonly holeMm: number;
      readonly needMm: number;
      readonly wire: string;
    }
  /** `fitting` is the short name of one that would fit, or empty. */
  | {
      readonly code: 'crimp-too-loose';
      readonly crimp: string;
      readonly insideMm: number;
      readonly mostMm: number;
      readonly wire: string;
      readonly fitting: string;
    }
  | {
      readonly code: 'size-absurd';
      readonly kind: string;
      readonly mm: number;
      readonly leastMm: number;
      readonly mostMm: number;
    }
  /** The core's own check of the finished design. `fitting` is the short name of a part that would fit, or empty. */
  | { readonly code: 'design'; readonly error: ValidationError; readonly fitting: string }
  | {
      readonly code: 'price-below-rule';
      readonly listedMinor: number;
      readonly ruleMinor: number;
      readonly currency: string;
    }
  /** What prices end on, and the step they are rounded up to. */
  | { readonly code: 'ending-beyond-step'; readonly ending: string; readonly step: string }
  // Sizes often asked for that can't be met, as a buyer measures; at an easy sit
  | {
      readonly code: 'gaps';
      readonly of: Measure['of'];
      readonly sizesMm: readonly number[];
      readonly closings: readonly GapClosing[];
    }
  | { readonly code: 'gaps-none' }
  // Her own words of a tutorial; `known`: places that the step has, listed
  | { readonly code: 'teach-place-missing'; readonly place: string }
  | { readonly code: 'teach-place-unknown'; readonly place: string; readonly known: string }
  // What may be chosen instead
  | { readonly code: 'instead-twice'; readonly id: string }
  | { readonly code: 'instead-of-nothing'; readonly pendant: string }
  | { readonly code: 'instead-needs-ring'; readonly clasp: string }
  // The shop's rules
  | { readonly code: 'sits-order'; readonly sit: Sit; readonly before: Sit }
  // Posting; weights in grams
  | { readonly code: 'not-a-country'; readonly value: string }
  | { readonly code: 'post-nothing' }
  | { readonly code: 'no-bands' }
  | {
      readonly code: 'country-twice';
      readonly country: string;
      readonly group: number;
      readonly other: number;
    }
  /** The band before it ends at `endG`. */
  | { readonly code: 'bands-overlap'; readonly fromG: number; readonly toG: number; readonly endG: number }
  | { readonly code: 'bands-gap'; readonly endG: number; readonly fromG: number }
  | { readonly code: 'band-empty'; readonly fromG: number; readonly toG: number }
  | {
      readonly code: 'band-cheaper';
      readonly minor: number;
      readonly beforeMinor: number;
      readonly currency: string;
    }
  /** The heaviest piece with its packing. */
  | {
      readonly code: 'bands-end';
      readonly piece: string;
      readonly weightG: number;
      readonly mostG: number;
      readonly countries: string;
    }
  // Pictures
  | { readonly code: 'picture-outside'; readonly file: string }
  | { readonly code: 'picture-missing'; readonly file: string }
  | { readonly code: 'picture-format'; readonly file: string }
  | { readonly code: 'picture-broken'; readonly file: string }
  | { readonly code: 'picture-crop'; readonly value: string }
  // Guides
  | { readonly code: 'guide-language'; readonly language: string; readonly known: string }
  | { readonly code: 'html-in-guide'; readonly tag: string }
  | { readonly code: 'link-scheme'; readonly address: string };

/** What is wrong, and how to mend it; each a whole sentence. */
export type CatalogueSentence = { readonly what: string; readonly fix: string };

/** The sentences of one language, one for every code. */
export type CatalogueSentences = Sentences<CatalogueError, [], CatalogueSentence>;
