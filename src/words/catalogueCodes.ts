/**
 * What can be wrong with an authored entry: one row a code, with what its
 * sentences need. Measures are millimetres; a list is written out already.
 */
export type CatalogueArgs = {
  // The file itself
  'folder-missing': { folder: string };
  'shop-missing': { file: string };
  'file-unreadable': { why: string };
  yaml: { why: string };
  'not-fields': Record<never, never>;
  'front-matter': Record<never, never>;
  // One field
  'missing-field': { field: string };
  'empty-field': { field: string };
  'unknown-field': { field: string; near: string; known: string };
  'wrong-form': { field: string; value: string; wanted: 'text' | 'list' | 'fields' };
  'not-one-of': { value: string; options: string };
  'not-yes-or-no': { value: string };
  'not-whole': { value: string; least: number; most: number };
  'not-a-measure': { value: string; example: string };
  'unit-missing': { value: string; units: string };
  'unit-wrong': { value: string; unit: string; units: string };
  'out-of-range': { value: string; least: string; most: string };
  'price-without-currency': { value: string };
  'not-money': { value: string };
  'currency-unknown': { value: string; currency: string };
  'currency-other': { value: string; currency: string };
  'not-a-date': { value: string };
  'not-https': { value: string };
  'not-a-colour': { value: string };
  'colour-unquoted': Record<never, never>;
  'not-an-id': { value: string };
  'not-an-email': { value: string };
  'not-a-bead-line': { value: string };
  'text-too-long': { length: number; most: number };
  // One entry
  'duplicate-id': { id: string; other: string };
  'duplicate-name': { name: string; other: string };
  'duplicate-part-number': { number: string; other: string };
  'size-or-both': { shape: string };
  'measure-needed': { field: string; kind: string };
  'field-not-for': { field: string; kind: string };
  'rounding-too-large': { roundingMm: number; mostMm: number };
  'hole-too-wide': { holeMm: number; acrossMm: number };
  'sections-or-strands': Record<never, never>;
  'strands-apart': { leastMm: number; mostMm: number };
  'counts-order': { fewest: number; usual: number; most: number };
  'focal-place': Record<never, never>;
  'lie-needed': { strands: number };
  // Between entries
  'unknown-material': { material: string; near: string };
  'unknown-component': { id: string; near: string };
  'unknown-wire': { id: string; near: string };
  'wrong-kind': { id: string; kind: string; wanted: string };
  'hole-too-small': { component: string; holeMm: number; needMm: number; wire: string };
  'end-hole-too-small': { component: string; holeMm: number; needMm: number; wire: string };
  /** `fitting` is the short name of one that would fit, or empty. */
  'crimp-too-tight': { crimp: string; insideMm: number; needMm: number; wire: string; fitting: string };
  'crimp-too-loose': { crimp: string; insideMm: number; mostMm: number; wire: string; fitting: string };
  'cover-not-fit': { cover: string; takesMm: number; crimp: string; closedMm: number; fitting: string };
  /** `fitting` is the short name of a ring that opens, or empty. */
  'ring-closed': { ring: string; hangs: string; fitting: string };
  ways: { clasp: string; ways: number; strands: number };
  'size-absurd': { kind: string; mm: number; leastMm: number; mostMm: number };
  'design-other': { code: string };
  'price-below-rule': { listedMinor: number; ruleMinor: number; currency: string };
  // Pictures
  'picture-outside': { file: string };
  'picture-missing': { file: string };
  'picture-format': { file: string };
  'picture-broken': { file: string };
  // Guides
  'guide-language': { language: string; known: string };
};

export type CatalogueCode = keyof CatalogueArgs;

/** What is wrong, and how to mend it; each a whole sentence. */
export type CatalogueSentence = { readonly what: string; readonly fix: string };

/** The sentences of one language, one for every code. */
export type CatalogueSentences = {
  readonly [Code in CatalogueCode]: (args: CatalogueArgs[Code]) => CatalogueSentence;
};
