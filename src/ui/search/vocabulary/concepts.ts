/** What can be asked for by name, and which values of the index's filters it means. */
import { materials as facts } from '#catalogue/model/materials.ts';
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import type { PieceKind } from '#core/design/design.ts';
import type { Material } from '#core/design/mass/density.ts';
import { currencyDigits } from '#words/format.ts';
import { INCH_MM } from '#core/units/unit.ts';
import { colourName, closingName, materialName } from '#words/goods.ts';
import { LANGS, type Lang } from '#words/lang.ts';
import { goodsWords, pageWords, searchWords, type SearchWords } from '#words/words.ts';
import { lengthBand, priceBorders } from '../bands.ts';
import { priceName } from '../priceName.ts';
import { SPAN_MM } from '../marks.ts';
import type { Concept, Pair } from '../reading/vocabulary.ts';

type Term = keyof SearchWords['terms'];

const KINDS = ['necklace', 'bracelet', 'anklet', 'collar'] as const satisfies readonly PieceKind[];
const WOODS = ['boxwood', 'olive-wood', 'beech', 'oak', 'walnut', 'ebony', 'lignum-vitae'] as const;
/** Look like stone, and aren't what anyone means by it. */
const NOT_STONE: readonly string[] = ['porcelain', 'earthenware'];
const COLOURS = [
  ...(['white', 'grey', 'black', 'brown', 'red', 'pink'] as const),
  ...(['orange', 'yellow', 'green', 'blue', 'purple'] as const),
];
const CLOSINGS = {
  lobster: 'lobster',
  springRing: 'spring-ring',
  toggle: 'toggle',
  hook: 'hook',
  box: 'box',
  magnetic: 'magnetic',
} as const;

const ofFamily = (family: string): Material[] =>
  (Object.keys(facts) as Material[]).filter(
    (key) => facts[key].family === family && !NOT_STONE.includes(key),
  );

/** From here on a necklace is called long, and of these usual lengths short (common practice, no source). */
const LONG_MM = 560;
const SHORT_MM: readonly number[] = [13 * INCH_MM, 16 * INCH_MM];

/** What this share of the pieces costs at most is called cheap, or dear from the other end; at a border of the bands. */
const END_SHARE = 1 / 8;

/** Prices at one end, with what to call them. */
function priceEnd(
  { pieces, shop }: Pick<Catalogue, 'pieces' | 'shop'>,
  lang: Lang,
  end: 'least' | 'most',
): Pick<Concept, 'cost' | 'label'> {
  const { currency } = shop.rules;
  const { find } = pageWords(lang);
  const sold = pieces.filter(({ status }) => status !== 'past').map(({ listedMinor }) => listedMinor);
  const within = (border: number): number[] =>
    sold.filter((minor) => (end === 'least' ? minor <= border : minor >= border));
  const borders = end === 'least' ? priceBorders(currency) : priceBorders(currency).toReversed();
  const border = borders.find((one) => within(one).length >= Math.max(1, sold.length * END_SHARE)) ?? 0;
  const units = border / 10 ** currencyDigits(currency);
  const name = priceName(border, currency, lang);
  return {
    cost: end === 'least' ? { least: 0, most: units } : { least: units, most: null },
    label: end === 'least' ? find.under(name) : find.over(name),
  };
}

/** Everything that can be asked for, in a language's own values. */
export function conceptsOf(catalogue: Pick<Catalogue, 'pieces' | 'shop'>, lang: Lang): readonly Concept[] {
  const page = pageWords(lang);
  const named = searchWords(lang).names as Readonly<Partial<Record<Term, string>>>;
  const material = (...codes: readonly string[]): Pair[] =>
    codes.map((code) => ['material', materialName(code, lang)]);
  const colour = (code: string): Pair => ['colour', colourName(code, lang)];
  const kinds = (...of: readonly PieceKind[]): Pair[] => of.map((kind) => ['kind', page.kindsMany[kind]]);
  const has = (value: string): Pair => ['has', value];
  const strands = (...counts: readonly string[]): Pair[] => counts.map((count) => ['strands', count]);
  const length = (bands: readonly string[]): Pair[] => bands.map((band) => ['length', band]);
  const cheap = priceEnd(catalogue, lang, 'least');
  const dear = priceEnd(catalogue, lang, 'most');
  const years = [...new Set(catalogue.pieces.map(({ made }) => made.slice(0, 4)))].sort();

  const concept = (
    key: Term,
    any: readonly Pair[],
    more: Partial<Pick<Concept, 'not' | 'label' | 'sort' | 'fits' | 'cost' | 'caution'>> = {},
  ): Concept => {
    const inLang = <Part extends 'terms' | 'loose'>(part: Part, of: Lang): string =>
      (searchWords(of)[part] as Readonly<Partial<Record<Term, string>>>)[key] ?? '';
    return {
      group: any[0]?.[0] ?? '',
      any,
      not: more.not ?? false,
      fits: more.fits ?? null,
      cost: more.cost ?? null,
      label: more.label ?? named[key] ?? any[0]?.[1] ?? '',
      sort: more.sort ?? null,
      caution: more.caution ?? null,
      terms: { en: inLang('terms', 'en'), de: inLang('terms', 'de') },
      // Less sure as they are, they are understood in the page's language alone.
      loose: { en: '', de: '', [lang]: inLang('loose', lang) },
    };
  };

  const special: readonly Concept[] = [
    ...KINDS.map((kind) => concept(kind, kinds(kind))),
    concept('wood', material(...WOODS)),
    concept('stone', material(...ofFamily('stone'))),
    concept('crystal', material('lead-crystal', 'quartz')),
    concept('metal', material(...ofFamily('metal'))),
    concept('ceramic', material('porcelain', 'earthenware')),
    concept('jade', material('jadeite', 'nephrite')),
    concept('glass', material('glass', 'borosilicate', 'lead-crystal')),
    concept('plastic', material('acrylic', 'resin')),
    concept('silver', [...material('silver', 'fine-silver'), colour('silver')]),
    concept('gold', [...material('gold', 'gold-14k', 'gold-18k'), colour('gold')]),
    concept('copper', [...material('copper'), colour('copper')]),
    concept('pearl', material('pearl')),
    concept('shell', material('shell')),
    concept('agate', material('chalcedony')),
    concept('clay', material('earthenware')),
    concept('silverMetal', material('silver', 'fine-silver')),
    concept('goldMetal', material('gold', 'gold-14k', 'gold-18k')),
    ...COLOURS.map((key) => concept(key, [colour(key)])),
    ...(Object.keys(CLOSINGS) as (keyof typeof CLOSINGS)[]).map((key) =>
      concept(key, [['closing', closingName(CLOSINGS[key], lang)]]),
    ),
    concept('ready', [['status', page.statuses.available]]),
    concept('toOrder', [['status', page.statuses['to-order']]]),
    concept('past', [['status', page.statuses.past]]),
    concept('oneStrand', strands('1')),
    concept('twoStrands', strands('2')),
    concept('threeStrands', strands('3')),
    concept('fourStrands', strands('4')),
    concept('manyStrands', strands('2', '3', '4')),
    concept('pendant', [has('pendant')]),
    concept('drop', [has('pendant'), has('drop')]),
    concept('extender', [has('extender')]),
    concept('nickel', [has('nickel')]),
    concept('noNickel', [has('nickel')], { not: true }),
    concept('lead', [has('lead')]),
    concept('noLead', [has('lead')], { not: true }),
    concept('noMagnet', [has('magnet')], { not: true }),
    concept('child', [has('magnet'), has('lead'), ...kinds('necklace', 'collar')], {
      not: true,
      caution: searchWords(lang).said.child,
    }),
    concept('oneHand', [has('one-hand')]),
    concept('long', [], { fits: { of: 'length', leastMm: LONG_MM, mostMm: SPAN_MM.length[1] } }),
    concept('short', length(SHORT_MM.map((mm) => lengthBand(mm, lang)))),
    concept('newest', [['year', years.at(-1) ?? '']], { sort: 'newest' }),
    concept('cheap', [], { ...cheap, sort: 'cheapest' }),
    concept('dear', [], { ...dear, sort: 'dearest' }),
  ];
  // A material's own name; what also bears a common name stands above, and that reading wins.
  const plain = (Object.keys(facts) as Material[]).map((code): Concept => {
    const name = (of: Lang): string =>
      [goodsWords(of).materials[code].replace(/\s*\(.*\)/, ''), searchWords(of).materials[code] ?? ''].join(
        ', ',
      );
    return {
      group: 'material',
      any: material(code),
      not: false,
      fits: null,
      cost: null,
      label: materialName(code, lang),
      sort: null,
      caution: null,
      terms: Object.fromEntries(LANGS.map((of) => [of, name(of)])) as Concept['terms'],
      loose: { en: '', de: '' },
    };
  });
  return [...special, ...plain];
}
