/**
 * What buyers type, and what should come of it. Kept beside the tests that ask them of the
 * pure search and of the built page. Made up from memory; no list of what people type is published.
 */
import type { ColourFamily } from '#catalogue/facts/colour.ts';
import type { PieceKind } from '#core/design/design.ts';
import type { Lang } from '#words/lang.ts';

export type Expected = {
  readonly lang: Lang;
  readonly words: string;
  /** Every piece found is of one of these kinds. */
  readonly kinds?: readonly PieceKind[];
  /** Every piece found costs no more, and no less, in whole pounds. */
  readonly most?: number;
  readonly least?: number;
  /** Every piece found shows this colour. */
  readonly colour?: ColourFamily;
  /** Parts of the marks that are shown. */
  readonly marks?: readonly string[];
  /** Ids that must be, and mustn't be, among what is found. */
  readonly finds?: readonly string[];
  readonly misses?: readonly string[];
  /** How many are found, where that is known. */
  readonly count?: number;
  /** Nothing is found, for one of these reasons. */
  readonly nothing?: 'unknown' | 'elsewhere' | 'too little' | 'no piece';
  /** It is said that nothing here is small, medium or large. */
  readonly rough?: boolean;
  /** The word was put right to this. */
  readonly corrected?: string;
};

const ask = (lang: Lang, words: string, expected: Omit<Expected, 'lang' | 'words'>): Expected => ({
  lang,
  words,
  ...expected,
});
const en = (words: string, expected: Omit<Expected, 'lang' | 'words'>): Expected =>
  ask('en', words, expected);
const de = (words: string, expected: Omit<Expected, 'lang' | 'words'>): Expected =>
  ask('de', words, expected);

const BRACELET = ['bracelet'] as const;
const NECKLACE = ['necklace'] as const;
const ANKLET = ['anklet'] as const;
const COLLAR = ['collar'] as const;

const ENGLISH: readonly Expected[] = [
  en('less than thirty pounds', { most: 30, marks: ['up to £30'] }),
  en('bracelet under thirty-five', { kinds: BRACELET, most: 35, marks: ['up to £35'] }),
  en('between thirty and forty pounds', { least: 30, most: 40 }),
  en('under a hundred and twenty pounds', { most: 120, marks: ['up to £120'] }),
  en('necklace over two hundred quid', { kinds: NECKLACE, least: 200 }),
  en('six and a half inch wrist', { marks: ['for a wrist of 6½ in'], kinds: BRACELET }),
  en('necklace of twenty to twenty two inches', { kinds: NECKLACE, marks: ['20 in to 22 in long'] }),
  en('wrist of seven', { marks: ['for a wrist of 7 in'] }),
  en('forty days', { finds: ['forty-days'] }),
  en('Two Locks', { finds: ['two-locks'] }),
  en('extra small wrist', { nothing: 'too little', rough: true }),
  en('size medium', { nothing: 'too little', rough: true }),
  en('size S bracelet', { kinds: BRACELET, rough: true }),
  en('XL necklace', { kinds: NECKLACE, rough: true }),
  en('bracelet for a small wrist', { kinds: BRACELET, rough: true }),
  en('braclet', { kinds: BRACELET, corrected: 'bracelet' }),
  en('bracelets', { kinds: BRACELET }),
  en('BRACELET', { kinds: BRACELET }),
  en('neckless', { kinds: NECKLACE, corrected: 'necklace' }),
  en('neckalce', { kinds: NECKLACE, corrected: 'necklace' }),
  en('neck lace', { kinds: NECKLACE }),
  en('choker', { kinds: COLLAR, finds: ['collar-of-rain', 'plum-rain'] }),
  en('ankle bracelet', { kinds: ANKLET, finds: ['ford'] }),
  en('earings', { nothing: 'elsewhere' }),
  en('silver earrings', { nothing: 'elsewhere' }),
  en('ring', { nothing: 'elsewhere' }),
  en('stretch bracelet', { nothing: 'elsewhere' }),
  en('zeppelin', { nothing: 'unknown' }),
  en('purple zeppelin', { nothing: 'unknown' }),
  en('boat', { nothing: 'unknown' }),
  en('asdfgh', { nothing: 'unknown' }),
  en('amethyst necklace', { nothing: 'unknown' }),
  en('bead', { nothing: 'too little' }),
  en('gift for mum', { nothing: 'too little' }),
  en('the', { nothing: 'too little' }),
  en('🙂', { nothing: 'too little' }),
  en('mens bracelet', { kinds: BRACELET }),
  en('wood', { finds: ['haymaking', 'overlooker', 'ropewalk'], misses: ['weir-light'] }),
  en('wooden bracelets', { kinds: BRACELET, finds: ['haymaking'], misses: ['ropewalk'] }),
  en('pendant', { finds: ['harvest-moon', 'loom-shuttle'], misses: ['weir-light'] }),
  en('drop', { finds: ['spring-line'], misses: ['low-pressure'] }),
  en('toggle', { finds: ['tide-table', 'bottle-row'], misses: ['weir-light'] }),
  en('T-bar clasp', { finds: ['tide-table'], misses: ['weir-light'] }),
  en('spring ring', { finds: ['harvest-moon', 'millrace'], misses: ['weir-light'] }),
  en('magentic clasp', { corrected: 'magnetic', finds: ['lodestone-lane'], count: 1 }),
  en('two strands', { finds: ['long-force', 'two-locks'], misses: ['selvedge', 'weir-light'] }),
  en('3 strand bracelet', { kinds: BRACELET, finds: ['selvedge'], count: 1 }),
  en('multi-strand', { finds: ['long-force', 'selvedge'], misses: ['weir-light'] }),
  en('nickel free', { finds: ['weir-light'], misses: ['harvest-moon', 'selvedge', 'amber-gale'] }),
  en('no nickel', { finds: ['weir-light'], misses: ['harvest-moon'] }),
  en('magnet free bracelet', { kinds: BRACELET, misses: ['lodestone-lane'] }),
  en('necklace without pearls', { kinds: NECKLACE, misses: ['still-pool', 'peach-house'] }),
  en('left handed clasp', { finds: ['weir-light'], misses: ['tide-table'] }),
  en('18 inch necklace', { kinds: NECKLACE, marks: ['18 in'], finds: ['thaw'] }),
  en('16-18 inch necklace', { kinds: NECKLACE, marks: ['16 in to 18 in'] }),
  en('necklace longer than 24 inches', { kinds: NECKLACE, finds: ['ropewalk'], misses: ['thaw'] }),
  en('something long', { kinds: NECKLACE, finds: ['ropewalk'], misses: ['peach-house'] }),
  en('for a 17 cm wrist', { kinds: BRACELET, marks: ['17 cm'], finds: ['tide-table'] }),
  en('7 inch', { kinds: BRACELET, marks: ['7 in'] }),
  en('17cm', { kinds: BRACELET, marks: ['17 cm'] }),
  en('17,5 cm wrist', { kinds: BRACELET, marks: ['17.5 cm'] }),
  en('size 7', { kinds: BRACELET, marks: ['7 in'] }),
  en('7 1/2 inch bracelet', { kinds: BRACELET, marks: ['7½ in'] }),
  en('bracelet for 6½" wrist', { kinds: BRACELET, marks: ['6½ in'] }),
  en('wirst 16cm', { kinds: BRACELET, corrected: 'wrist', marks: ['16 cm'] }),
  en('collar 14 inch', { kinds: COLLAR, marks: ['14 in'] }),
  en('necklace for a 15 inch neck', { kinds: NECKLACE, marks: ['neck of 15 in'] }),
  en('6mm beads', { marks: ['6 mm'], finds: ['tide-table'] }),
  en('bracelet under £40', { kinds: BRACELET, most: 40, finds: ['haymaking'], misses: ['selvedge'] }),
  en('£30-£50', { least: 30, most: 50, finds: ['ford'] }),
  en('between £50 and £80', { least: 50, most: 80 }),
  en('over £100', { least: 100, finds: ['wash-day'] }),
  en('bracelet 40 pounds or less', { kinds: BRACELET, most: 40 }),
  en('necklaces up to 60', { kinds: NECKLACE, most: 60, finds: ['thaw'] }),
  en('around £50', { least: 40, most: 60 }),
  en('cheap bracelets', { kinds: BRACELET, most: 50 }),
  en('something purple', { colour: 'purple', finds: ['plum-rain'] }),
  en('blue green', { colour: 'green', finds: ['millrace'], misses: ['tarn'] }),
  en('green or blue bracelet', { kinds: BRACELET, finds: ['weir-light', 'indigo-vat'] }),
  en('dark green glass', { colour: 'green', finds: ['weir-light'] }),
  en('navy blue', { colour: 'blue', finds: ['tarn'] }),
  en('turqoise', { corrected: 'turquoise', finds: ['kingfisher-minute'], count: 1 }),
  en('haematite', { finds: ['lodestone-lane', 'sluice'], count: 2 }),
  en('mother of pearl', { finds: ['ford'], misses: ['still-pool'] }),
  en('lapislazuli', { finds: ['tarn'], count: 1 }),
  en('silverbracelet', { kinds: BRACELET, misses: ['weir-light'] }),
  en('ready to send', { finds: ['thaw', 'haymaking'], misses: ['tarn', 'ropewalk'] }),
  // A piece that lies there is sent as it is: its own size counts, not what it could be made to.
  en('ready to send bracelet 17 cm wrist', {
    kinds: BRACELET,
    finds: ['lantern-eve'],
    misses: ['slack-water', 'first-frost', 'haymaking'],
  }),
  en('20 in necklace ready to send', { kinds: NECKLACE, nothing: 'no piece' }),
  en('matinee', { kinds: NECKLACE, finds: ['thaw'] }),
  en('multicoloured', { nothing: 'too little' }),
  en('in stock', { finds: ['thaw'], misses: ['tarn'] }),
  en('sold', { finds: ['ropewalk'], misses: ['thaw'] }),
  en('2024', { finds: ['millrace'], misses: ['thaw'] }),
  en('weir light', { finds: ['weir-light'], count: 1 }),
  en('weirlight', { finds: ['weir-light'], count: 1 }),
  en('copper beech', { finds: ['copper-beech'], count: 1 }),
  en('Bell at Six', { finds: ['bell-at-six'], count: 1 }),
  en('fullers earth', { finds: ['fullers-earth'], count: 1 }),
  en('tenter hooks', { finds: ['tenterhooks'], count: 1 }),
  en('G134', { finds: ['spring-line'], misses: ['weir-light'] }),
  en('<b>silver</b>', { finds: ['thaw'], misses: ['weir-light'] }),
  en('Halskette silber', { kinds: NECKLACE, misses: ['still-pool'] }),
  en('black bracelet under £20', { kinds: BRACELET, nothing: 'no piece' }),
];

const GERMAN: readonly Expected[] = [
  de('Armband unter fünfundvierzig Pfund', { kinds: BRACELET, most: 45 }),
  de('unter vierzig Euro', { most: 40 }),
  de('zwischen dreißig und vierzig Pfund', { least: 30, most: 40 }),
  de('Armband für siebzehneinhalb cm Handgelenk', { kinds: BRACELET, marks: ['17,5 cm'] }),
  de('Kette Größe M', { kinds: NECKLACE, rough: true }),
  de('Armband für ein schmales Handgelenk', { kinds: BRACELET, rough: true }),
  de('Armband', { kinds: BRACELET }),
  de('armbaender', { kinds: BRACELET }),
  de('armbannd', { kinds: BRACELET, corrected: 'Armband' }),
  de('Halskete', { kinds: NECKLACE, corrected: 'Halskette' }),
  de('Halskette 45 cm', { kinds: NECKLACE, marks: ['45 cm'], finds: ['thaw'] }),
  de('Kette 45 cm lang', { kinds: NECKLACE, marks: ['45 cm'] }),
  de('lange Kette', { kinds: NECKLACE, finds: ['ropewalk'], misses: ['peach-house'] }),
  de('Kette kürzer als 45 cm', { kinds: NECKLACE, marks: ['bis 45 cm'] }),
  de('silber', { finds: ['thaw'], misses: ['weir-light'] }),
  de('unter 40 Euro', { most: 40 }),
  de('Armband für 16 cm Handgelenk unter 50 £', { kinds: BRACELET, most: 50, marks: ['16 cm'] }),
  de('Kette zwischen 50 und 100 £', { kinds: NECKLACE, least: 50, most: 100 }),
  de('ab 100 £', { least: 100, finds: ['wash-day'] }),
  de('bis 50 £', { most: 50 }),
  de('günstig', { most: 50 }),
  de('blau grün', { colour: 'blue', finds: ['millrace'], misses: ['tarn'] }),
  de('grüne oder blaue Armbänder', { kinds: BRACELET, finds: ['weir-light', 'indigo-vat'] }),
  de('dunkelblaues Armband', { kinds: BRACELET, colour: 'blue', finds: ['indigo-vat'] }),
  de('etwas Lila', { colour: 'purple', finds: ['plum-rain'] }),
  de('weiss', { colour: 'white', finds: ['thaw'] }),
  de('WEIẞ', { colour: 'white', finds: ['thaw'] }),
  de('17,5 cm Handgelenk', { kinds: BRACELET, marks: ['17,5 cm'] }),
  de('Größe 17', { kinds: BRACELET, marks: ['17 cm'] }),
  de('Handgelenk 17', { kinds: BRACELET, marks: ['17 cm'] }),
  de('Halsband 36 cm', { kinds: COLLAR, marks: ['36 cm'] }),
  de('Knöchel 23 cm', { kinds: ANKLET, marks: ['23 cm'] }),
  de('Fusskettchen', { kinds: ANKLET }),
  de('Choker', { kinds: COLLAR }),
  de('Perlenkette', { kinds: NECKLACE, finds: ['still-pool'], misses: ['tarn'] }),
  de('Perlenarmbnad', { nothing: 'no piece', corrected: 'Armband' }),
  de('Holzkette', { kinds: NECKLACE, finds: ['ropewalk'], misses: ['thaw'] }),
  de('Glasperlenarmband', { kinds: BRACELET, finds: ['weir-light'], misses: ['low-pressure'] }),
  de('Süßwasserperlen', { finds: ['still-pool'], misses: ['thaw'] }),
  de('6 mm Perlen', { marks: ['6 mm'], finds: ['tide-table'] }),
  de('tuerkis', { finds: ['kingfisher-minute'], count: 1 }),
  de('Bergkristall', { finds: ['rose-window'], misses: ['first-frost'] }),
  de('Bernstein', { finds: ['amber-gale'], misses: ['thaw'] }),
  de('Knebelverschluss', { finds: ['tide-table'], misses: ['weir-light'] }),
  de('nickelfrei', { finds: ['weir-light'], misses: ['harvest-moon'] }),
  de('ohne Nickel', { finds: ['weir-light'], misses: ['harvest-moon'] }),
  de('ohne Magnet', { finds: ['weir-light'], misses: ['lodestone-lane'] }),
  de('zweireihig', { finds: ['long-force'], misses: ['weir-light'] }),
  de('2-reihig', { finds: ['long-force'], misses: ['weir-light'] }),
  de('anhaenger', { finds: ['harvest-moon'], misses: ['weir-light'] }),
  de('für Linkshänder', { finds: ['weir-light'], misses: ['tide-table'] }),
  de('sofort lieferbar', { finds: ['thaw'], misses: ['tarn'] }),
  de('sofort lieferbar Armband 17 cm', {
    kinds: BRACELET,
    finds: ['lantern-eve'],
    misses: ['slack-water', 'haymaking'],
  }),
  de('Kette mit Verlängerung', { kinds: NECKLACE, finds: ['smoke-over-low-row'], count: 1 }),
  de('auf Lager', { finds: ['thaw'], misses: ['tarn'] }),
  de('verkauft', { finds: ['ropewalk'], misses: ['thaw'] }),
  de('Herrenarmband', { kinds: BRACELET }),
  de('Geschenk für Mama', { nothing: 'too little' }),
  de('Ohrringe', { nothing: 'elsewhere' }),
  de('ohringe', { nothing: 'elsewhere', corrected: 'Ohrringe' }),
  de('Zeppelin', { nothing: 'unknown' }),
  de('silver bracelet', { kinds: BRACELET, misses: ['weir-light'] }),
  de('Letzte Spule', { finds: ['last-bobbin'], count: 1 }),
  de('letztespule', { finds: ['last-bobbin'], count: 1 }),
];

export const QUERIES: readonly Expected[] = [...ENGLISH, ...GERMAN];
