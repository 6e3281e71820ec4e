/** Sentences for the maker about an entry that can’t be read as it stands. */
import type { CatalogueSentences, QuantityUnit } from '../catalogueCodes.ts';
import { formatMoney } from '../format.ts';
import { sentenceOf } from '../sentence.ts';
import { designMending, designProblems, mm, number } from './design.ts';
import { remarks } from './remarks.ts';
import { contentFile } from './contentFile.ts';
import { shopFile } from './shopFile.ts';
import { teachFile } from './teachFile.ts';

const perhaps = (near: string): string => (near === '' ? '' : `Did you mean “${near}”? `);
const forms = { text: 'a text', list: 'a list', fields: 'fields of its own, indented below it' };
const wouldFit = (fitting: string): string => (fitting === '' ? '' : `“${fitting}” would fit. `);

const UNIT: Readonly<Record<QuantityUnit, string>> = {
  ...{ mm: 'mm', m: 'm', g: 'g', 'g/m': 'g/m', N: 'N', '%': '%' },
  ...{ min: 'min', weeks: 'weeks', 'hours a week': 'hours a week', months: 'months' },
};

export const catalogue: CatalogueSentences = {
  'folder-missing': ({ folder }) => ({
    what: `There is no folder ${folder}.`,
    fix: 'Name the folder that holds shop.yaml, components, wires, pieces and guides.',
  }),
  'shop-missing': ({ file }) => ({
    what: `The shop has no ${file}.`,
    fix: `Write ${file} with the shop’s name, currency, allowances and how orders arrive.`,
  }),
  ...contentFile,
  'not-fields': () => ({
    what: 'The entry has no fields.',
    fix: 'Write one field on each line, as in “name: Weir Light”.',
  }),
  'missing-field': ({ field }) => ({
    what: `“${field}” is missing.`,
    fix: `Add a line “${field}: …”.`,
  }),
  'empty-field': ({ field }) => ({
    what: `“${field}” has nothing after it.`,
    fix: `Write its value on the same line, or take “${field}” away.`,
  }),
  'unknown-field': ({ field, near, known }) => ({
    what: `“${field}” isn’t a field here.`,
    fix: `${perhaps(near)}The fields are: ${known}.`,
  }),
  'wrong-form': ({ field, value, wanted }) => ({
    what: `“${field}” is “${value}”, but should be ${forms[wanted]}.`,
    fix:
      wanted === 'list'
        ? `Write each on a line of its own, with a dash before it.`
        : `Write “${field}” as ${forms[wanted]}.`,
  }),
  'not-one-of': ({ value, options }) => ({
    what: `“${value}” isn’t one of the choices.`,
    fix: `Write one of: ${options}.`,
  }),
  'not-yes-or-no': ({ value }) => ({
    what: `“${value}” is neither yes nor no.`,
    fix: 'Write yes or no.',
  }),
  'not-whole': ({ value, least, most }) => ({
    what: `“${value}” isn’t a whole number from ${least} to ${most}.`,
    fix: `Write a whole number from ${least} to ${most}, in figures.`,
  }),
  'not-a-measure': ({ value, example }) => ({
    what: `“${value}” isn’t a measure.`,
    fix: `Write a number and its unit, as in “${example}”.`,
  }),
  'unit-missing': ({ value, units }) => ({
    what: `“${value}” has no unit.`,
    fix: `Write the unit after it: ${units}.`,
  }),
  'unit-wrong': ({ value, unit, units }) => ({
    what: `“${value}” has the unit “${unit}”, which doesn’t measure this.`,
    fix: `Use one of: ${units}.`,
  }),
  'out-of-range': ({ value, least, most, unit }) => ({
    what: `“${value}” is outside what can be: ${number(least)} to ${number(most)} ${UNIT[unit]}.`,
    fix: 'Check the figure and its unit.',
  }),
  'price-without-currency': ({ value }) => ({
    what: `“${value}” is a price without a currency.`,
    fix: `Write the currency with it, as in “£${value}” or “${value} GBP”.`,
  }),
  'not-money': ({ value }) => ({
    what: `“${value}” isn’t an amount of money.`,
    fix: 'Write it with a point and no more decimals than the currency has, as in “£48.00” or “48.00 GBP”.',
  }),
  'currency-unknown': ({ value, currency }) => ({
    what: `“${value}” is in ${currency}, a currency not known here.`,
    fix: 'Use one of GBP, EUR, USD, CHF, SEK, NOK, DKK, PLN, CAD, AUD, NZD, JPY.',
  }),
  'currency-other': ({ value, currency }) => ({
    what: `“${value}” isn’t in the shop’s currency, ${currency}.`,
    fix: `Write the amount in ${currency}, or change the currency in shop.yaml.`,
  }),
  'not-a-date': ({ value }) => ({
    what: `“${value}” isn’t a date.`,
    fix: 'Write the year, year and month, or the day: 2024, 2024-05 or 2024-05-17.',
  }),
  ...shopFile,
  ...teachFile,
  'not-a-colour': ({ value }) => ({
    what: `“${value}” isn’t a colour.`,
    fix: "Write # and six digits or letters a to f, in quotes, as in '#4a5866'.",
  }),
  'colour-unquoted': () => ({
    what: 'The colour has no quotes, and everything after # is taken for a remark.',
    fix: "Put quotes round it, as in '#4a5866'.",
  }),
  'not-an-id': ({ value }) => ({
    what: `“${value}” can’t be a short name.`,
    fix: 'Use small letters a to z, figures and single hyphens, as in “slate-6”, at most 48 in all.',
  }),
  'not-an-email': ({ value }) => ({
    what: `“${value}” isn’t an e-mail address.`,
    fix: 'Write it as in “orders@shop.example”.',
  }),
  'not-a-bead-line': ({ value }) => ({
    what: `“${value}” doesn’t say which component and how many.`,
    fix: 'Write how many and the short name, as in “2 slate-6”, or the short name alone for one.',
  }),
  'text-too-long': ({ length, most }) => ({
    what: `The text has ${length} characters; there is room for ${most}.`,
    fix: 'Shorten it.',
  }),
  'duplicate-id': ({ id, other }) => ({
    what: `“${id}” is there twice; the other is in ${other}.`,
    fix: 'Give one of them another short name.',
  }),
  'duplicate-name': ({ name, other }) => ({
    what: `The name “${name}” is there twice; the other is in ${other}.`,
    fix: 'Give one of them another name, so that buyers can tell them apart.',
  }),
  'duplicate-part-number': ({ number, other }) => ({
    what: `The part number “${number}” is there twice; the other is in ${other}.`,
    fix: 'Look at the bags, and give each the number on its own.',
  }),
  'size-or-both': ({ shape }) => ({
    what: `The measures of this ${shape} aren’t complete.`,
    fix: 'Write “size” alone if it is as long as it is wide; else “along” (its length on the wire) and “across” (its width), and no “size”.',
  }),
  'sold-unclear': ({ by, from }) => ({
    what: `How many are in a ${by} isn’t said.`,
    fix:
      from === 'pieces'
        ? 'Write “pieces”, as many as there are in one.'
        : `Write “pieces”, or its “${from}” with its unit, by which they are reckoned.`,
  }),
  'measure-needed': ({ field, kind }) => ({
    what: `A ${kind} needs “${field}”.`,
    fix: `Measure it and add a line “${field}: … mm”.`,
  }),
  'choice-needed': ({ field, kind, options }) => ({
    what: `A ${kind} needs “${field}”.`,
    fix: `Add a line “${field}: …” with one of: ${options}.`,
  }),
  'field-not-for': ({ field, kind }) => ({
    what: `“${field}” means nothing for a ${kind}.`,
    fix: 'Take the line away, or check the kind.',
  }),
  'rounding-too-large': ({ roundingMm, mostMm }) => ({
    what: `A rounding of ${mm(roundingMm)} is more than half of the component.`,
    fix: `Write at most ${mm(mostMm)}, or leave it out.`,
  }),
  'hole-too-wide': ({ holeMm, acrossMm }) => ({
    what: `A hole of ${mm(holeMm)} doesn’t leave anything of a component ${mm(acrossMm)} across.`,
    fix: 'Check both measures.',
  }),
  'sections-or-strands': () => ({
    what: 'The piece has either no beads, or both “sections” and “strands”.',
    fix: 'Write “sections” for one strand, “strands” with sections in each for several.',
  }),
  'strands-apart': ({ leastMm, mostMm }) => ({
    what: `The strands don’t come to one size: one is never below ${mm(leastMm)}, another never above ${mm(mostMm)}.`,
    fix: 'Let “fewest” and “most” of the strands reach the same sizes.',
  }),
  'counts-order': ({ fewest, usual, most }) => ({
    what: `Fewest ${fewest}, usual ${usual} and most ${most} aren’t in rising order.`,
    fix: 'See to it that fewest is not above usual, and usual not above most.',
  }),
  'focal-place': () => ({
    what: 'A focal section stands in the middle, so it comes first in a mirrored strand, and once.',
    fix: 'Move it to the top of the sections with usual, fewest and most left out, or take “role: focal” away.',
  }),
  'lie-needed': ({ strands }) => ({
    what: `${strands} strands, but nothing says how they lie.`,
    fix: 'Add “lie: side-by-side” or “lie: nested”.',
  }),
  'unknown-material': ({ material, near }) => ({
    what: `The material “${material}” isn’t known.`,
    fix: `${perhaps(near)}Use a name from the list of materials, and “weight” for what it weighs.`,
  }),
  'unknown-component': ({ id, near }) => ({
    what: `There is no component “${id}”.`,
    fix: `${perhaps(near)}Add it to a file in components, or use one that is there.`,
  }),
  'unknown-wire': ({ id, near }) => ({
    what: `There is no wire “${id}”.`,
    fix: `${perhaps(near)}Add it to a file in wires, or use one that is there.`,
  }),
  'end-hole-too-small': ({ component, holeMm, needMm, wire }) => ({
    what: `“${component}” stands at an end, where the wire “${wire}” runs back doubled: its hole is ${mm(holeMm)}, and ${mm(needMm)} is needed.`,
    fix: 'Put beads with larger holes next to the crimp, or take a thinner wire.',
  }),
  'crimp-too-loose': ({ crimp, insideMm, mostMm, wire, fitting }) => ({
    what: `The crimp “${crimp}” is ${mm(insideMm)} inside, too loose on the wire “${wire}” doubled: at most ${mm(mostMm)}.`,
    fix: `${wouldFit(fitting)}Take a smaller crimp or a thicker wire, or allow more crimp play in shop.yaml.`,
  }),
  'size-absurd': ({ kind, mm: size, leastMm, mostMm }) => ({
    what: `Made with its usual counts this ${kind} measures ${mm(size)}; one that somebody can wear lies between ${mm(leastMm)} and ${mm(mostMm)}.`,
    fix: 'Check the counts, and whether they are for one side or for the whole.',
  }),
  design: ({ error, fitting }) => ({
    what: sentenceOf(designProblems, error),
    fix: `${wouldFit(fitting)}${designMending[error.code] ?? 'Check the counts and measures at this place.'}`,
  }),
  ...remarks,
  'instead-twice': ({ id }) => ({
    what: `“${id}” is the one the piece is listed with, or stands here twice.`,
    fix: 'Leave this line out: what the piece is listed with can always be had.',
  }),
  'instead-of-nothing': ({ pendant }) => ({
    what: `“${pendant}” can’t hang instead of a pendant, for the piece has none.`,
    fix: 'Give the piece a pendant of its own under pendant, or leave this one out.',
  }),
  'instead-needs-ring': ({ clasp }) => ({
    what: `“${clasp}” closes into a ring, and neither it nor the piece names one.`,
    fix: 'Write a ring beside it, as in “clasp: lobster-12-brass, ring: ring-6-brass”.',
  }),
  'not-a-country': ({ value }) => ({
    what: `“${value}” isn’t a country’s two letters.`,
    fix: `${value.toUpperCase() === 'UK' ? 'Great Britain and Northern Ireland are GB. ' : ''}Write the two capitals of ISO 3166-1, as in GB, DE or US, or “everywhere else” for all that no other group names.`,
  }),
  'post-nothing': () => ({
    what: 'There is a “post” without groups of countries and without a place to collect from.',
    fix: 'Add “groups” with what posting costs, or “collection” with where and when; or take “post” away, and buyers aren’t asked.',
  }),
  'no-bands': () => ({
    what: 'This group of countries has no weight bands, so nothing can be posted there.',
    fix: 'Add “bands”, each with “up-to: 250 g” and “price: £4.20”; or take the group away.',
  }),
  'country-twice': ({ country, group, other }) => ({
    what: `“${country}” stands in group ${group}, and in group ${other} already.`,
    fix: 'Leave it in the group whose prices hold for it.',
  }),
  'bands-overlap': ({ fromG, toG, endG }) => ({
    what: `The band from ${number(fromG)} to ${number(toG)} g overlaps the one before it, which goes up to ${number(endG)} g: a parcel would have two prices.`,
    fix: `Write the bands lightest first; this one goes on from ${number(endG)} g, so “up-to” must be more, and “from” can be left out.`,
  }),
  'bands-gap': ({ endG, fromG }) => ({
    what: `No band holds parcels between ${number(endG)} and ${number(fromG)} g: they would have no price.`,
    fix: `Write “from: ${number(endG)} g”, or leave “from” out: a band begins where the last one ends.`,
  }),
  'band-empty': ({ fromG, toG }) => ({
    what: `The band begins at ${number(fromG)} g and ends at ${number(toG)} g, so nothing fits into it.`,
    fix: 'Check both weights, or leave “from” out.',
  }),
  'band-cheaper': ({ minor, beforeMinor, currency }) => ({
    what: `This band costs ${formatMoney(minor, currency, 'en')}, less than the lighter one before it at ${formatMoney(beforeMinor, currency, 'en')}.`,
    fix: 'Check both prices; a heavier parcel costs as much or more.',
  }),
  'bands-end': ({ piece, weightG, mostG, countries }) => ({
    what: `“${piece}” at its longest weighs ${number(weightG)} g packed, but the last band for ${countries} ends at ${number(mostG)} g.`,
    fix: 'Add a band for heavier parcels, or raise “up-to” of the last one.',
  }),
  'picture-outside': ({ file }) => ({
    what: `The picture “${file}” lies outside the content folder.`,
    fix: 'Put it beside the piece and write its file name only.',
  }),
  'picture-missing': ({ file }) => ({
    what: `The picture “${file}” isn’t there.`,
    fix: 'Check its name, capitals included, or put the file beside the piece.',
  }),
  'picture-format': ({ file }) => ({
    what: `“${file}” isn’t a JPEG, PNG, WebP or AVIF picture.`,
    fix: 'Save it as JPEG and name that file.',
  }),
  'picture-broken': ({ file }) => ({
    what: `The picture “${file}” is broken: its end is missing.`,
    fix: 'Copy it again from the camera.',
  }),
  'picture-crop': ({ value }) => ({
    what: `“${value}” isn’t a part of the picture.`,
    fix: 'Write four percentages: from the left, from the top, width and height, as in 10% 0% 80% 100%.',
  }),
  'guide-language': ({ language, known }) => ({
    what: `The shop isn’t written in “${language}”.`,
    fix: `Put the guide into a folder named after one of: ${known}.`,
  }),
};
