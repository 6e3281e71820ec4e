/** What the public pages say around the maker's own texts. English is the contract for the other languages. */
import type { PieceKind } from '#core/design/design.ts';
import type { Format } from '../format.ts';
import { fromPit } from './pit.ts';

type Status = 'available' | 'to-order' | 'past';

const plural = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

export const pages = {
  skip: 'Skip to the content',
  nav: {
    label: 'Shop',
    pieces: 'Pieces',
    past: 'Past',
    guides: 'Guides',
    about: 'About',
    find: 'Find',
    more: 'More of the shop',
  },
  trail: 'Where you are',
  home: 'Home',
  otherLanguage: 'Deutsch',
  unitLabel: 'Show lengths in',
  unitIn: 'inches',
  unitCm: 'cm',
  email: 'Write to the shop',
  kinds: { necklace: 'Necklace', bracelet: 'Bracelet', anklet: 'Anklet', collar: 'Collar' } satisfies Record<
    PieceKind,
    string
  >,
  kindsMany: {
    necklace: 'Necklaces',
    bracelet: 'Bracelets',
    anklet: 'Anklets',
    collar: 'Collars',
  } satisfies Record<PieceKind, string>,
  statuses: {
    available: 'Ready, or made to your size',
    'to-order': 'Made to order',
    past: 'Not made any more',
  } satisfies Record<Status, string>,
  pieces: (count: number) => plural(count, 'piece', 'pieces'),

  front: {
    title: (shop: string, place: string) =>
      `${shop}: necklaces and bracelets strung to your size in ${place}`,
    newest: 'Off the bead board lately',
    all: 'See every piece',
    how: 'How ordering to size works',
    steps: {
      measure: {
        title: 'Put a tape round your wrist',
        text: 'Or your neck, or lay out a necklace that you like. Write down what the tape says and add nothing to it.',
      },
      size: {
        title: 'See the piece come out at your size',
        text: 'Beads are added or left out towards the clasp, and the middle stays as it was made. You see exactly that piece, its length and its price, before you order.',
      },
      hand: {
        title: 'Say which hand works the clasp',
        text: 'It is strung for you, with the clasp on the side your hand goes to, and sent when it has been tried and checked.',
      },
    },
    howMore: 'More about ordering',
  },

  list: {
    title: 'All pieces',
    lead: 'Everything that can be made now. Each is shown at its usual size, and each can be strung to yours.',
    past: 'Past pieces',
    pastLead:
      'Pieces that aren’t made any more, mostly because the beads ran out. They are kept here for those who own one, and to show what can be done.',
    page: (page: number, of: number) => `Page ${page} of ${of}`,
    pagesLabel: 'Pages of this list',
    previous: 'Previous page',
    next: 'Next page',
    by: 'Look through by',
    byKind: 'Kind',
    byMaterial: 'Material',
    byColour: 'Colour',
    byBead: 'Bead',
    byYear: 'Year',
    materials: 'Pieces by material',
    materialsLead: 'What the beads, pendants and findings are made of.',
    material: (material: string) => `Pieces with ${material}`,
    colours: 'Pieces by colour',
    coloursLead: 'By the colours that are most of a piece.',
    colour: (colour: string) => `Pieces in ${colour}`,
    beads: 'Pieces by bead',
    beadsLead: 'Every bead, spacer, pendant and clasp in use, with the pieces it is in.',
    bead: (bead: string) => `Pieces with: ${bead}`,
    year: (year: string) => `Pieces first made in ${year}`,
    yearsTitle: 'Pieces by year',
    yearsLead: 'Newest first.',
    kindsTitle: 'Pieces by kind',
    kindsLead:
      'Necklaces hang, collars and bracelets go round. Each list holds what can be had now, then what can’t any more.',
    kind: (kind: string) => `${kind} made to size`,
    described: {
      pieces: (title: string, names: readonly string[], more: number) =>
        `${title}: ${names.join(', ')}${more > 0 ? ` and ${more} more` : ''}.`,
      from: (price: string) => `Strung to your size, from ${price}.`,
      past: 'Not made any more, kept here to look at and to ask about.',
    },
    none: 'Nothing here at the moment.',
  },

  piece: {
    price: 'Price at the usual size',
    straight: (name: string) => `${name}, laid straight`,
    made: 'First made',
    status: 'Now',
    kind: 'Kind',
    length: 'Finished length',
    lengths: 'Finished lengths',
    chain: (mm: string, length: string) =>
      `A chain of ${length} (${mm}) beside the clasp lets it out: close it at any link.`,
    inside: 'Inside girth',
    closing: 'Closing',
    wire: 'Strung on',
    weight: 'Weight',
    grams: (grams: string) => `about ${grams} g`,
    hand: 'Which hand',
    handMatters:
      'It is worn one way round and its clasp is worked from one side, so tell us which hand does your clasp.',
    handEither: 'Either hand will do.',
    madeOf: 'What it is made of',
    partNumber: (number: string) => `No. ${number}`,
    part: 'Part',
    count: 'How many',
    size: 'Size',
    partWeight: 'Each',
    atUsual: 'At the usual size. Weights are worked out from size and material.',
    sizes: 'Sizes it can be made in',
    sizesLead: {
      girth: (body: string, ease: string) =>
        `By the girth of the ${body}, tape snug and nothing added. These are for an easy sit, ${ease} more than the girth.`,
      length: 'By finished length, clasp included.',
    },
    sizesBetween: 'Sizes in between are possible too; the sizing above works out any of them.',
    body: { wrist: 'wrist', ankle: 'ankle', neck: 'neck' },
    sizeFor: { girth: 'Girth', length: 'Length asked', shortest: 'Shortest strand asked' },
    comesOut: 'Comes out at',
    comeOut: 'Strands come out at',
    /** What the extender chain lets it be worn at. */
    onChain: (from: string, to: string): string => `from ${from} to ${to} by its chain`,
    changes: 'What changes',
    tablePrice: 'Price',
    usual: 'as shown',
    change: (count: number, name: string) =>
      count > 0 ? `${count} more: ${name}` : `${-count} fewer: ${name}`,
    offBy: (by: string) => `${by} off`,
    readyLead: (length: string): string => `One lies here finished, ${length} long:`,
    readyMail: 'Order it by e-mail, as it lies there',
    insteadLead: {
      clasp: 'Instead of its clasp you can have:',
      pendant: 'Instead of its pendant you can have:',
    },
    insteadMail: 'Name it in your e-mail; length and price of your size come out a little different with it.',
    order: 'Order by e-mail',
    ask: 'Ask about this piece',
    post: {
      title: 'What posting costs',
      elsewhere: 'Everywhere else',
      band: (weight: string, price: string): string => `up to ${weight} ${price}`,
      free: (from: string): string => `free from ${from}`,
      note: 'By the weight of the parcel, packed. If you order by e-mail, write where it should go.',
      collect: (where: string): string => `Or you collect it ${where}.`,
    },
    pastNote:
      'This piece isn’t made any more. You can still try it at your size, and ask whether something like it could be made.',
    weeks: (weeks: number) =>
      `Strung for you and sent within ${plural(weeks, 'week', 'weeks')} of agreeing on it.`,
    noScript:
      'Sizing needs JavaScript. Without it, choose from the table of sizes on this page and order by e-mail.',
    sentWithin: (weeks: number) => `Sent within ${plural(weeks, 'week', 'weeks')}`,
    worn: 'Where it lies',
    wornNote:
      'An estimate for a typical body. A string hung round your own neck is always the better measure.',
    wornOn: (f: Format, lengthMm: number, dropMm: number) =>
      `At ${f.length(lengthMm)} its lowest point lies about ${fromPit(f, dropMm)}.`,
    wornRound: (girth: string) => `Closed round a girth of ${girth}, with an easy sit.`,
    wornWrist: 'The beads that stand out most decide how much room is inside.',
    wornInFront: 'Seen along the arm, the strands stand one behind another; the first is in front.',
    landmarks: { pit: 'pit of the neck', bust: 'bust, about', navel: 'navel' },
    care: 'Care',
    cautions: 'Cautions',
    sameBeads: 'With the same beads',
    share: (name: string, kind: string) => `${name}, ${kind}, drawn bead for bead`,
    pictureAlt: (name: string, kind: string, parts: string) => `${name}: ${kind} of ${parts}.`,
    dataLink: 'This piece as data (JSON)',
  },

  guides: {
    title: 'Guides',
    lead: 'On measuring, giving, wearing and looking after beadwork.',
    more: 'Also',
  },

  find: {
    title: 'Find a piece',
    label: 'Words',
    hint: 'A kind, a colour, a stone, a size, a price, a name: bracelet under £40, for a 17 cm wrist, something purple',
    submit: 'Find',
    fits: 'Can be made to my size',
    fitsOf: 'Measured',
    fitsValue: 'Measure',
    of: {
      wrist: 'round the wrist',
      ankle: 'round the ankle',
      neck: 'round the neck',
      length: 'as a necklace’s length',
    },
    fitsBad: 'Write a measure such as 6½ in or 16.5 cm.',
    fitsNote: 'Remembered on this device only.',
    filters: 'Narrow it down',
    any: 'any',
    names: {
      kind: 'Kind',
      material: 'Material',
      colour: 'Colour',
      closing: 'Closing',
      price: 'Price',
      length: 'Usual length',
      year: 'Year',
      status: 'To be had',
    },
    sort: 'Order',
    sorts: {
      best: 'Best match',
      newest: 'Newest first',
      cheapest: 'Lowest price first',
      dearest: 'Highest price first',
      shortest: 'Shortest first',
    },
    clear: 'Start again',
    count: (count: number) => (count === 1 ? '1 piece found' : `${count} pieces found`),
    none: 'No piece matches all of that. Take a filter away, or try a more general word.',
    noneFits:
      'Nothing matches at that size. Take a filter away, or write to the shop: a design can often be altered.',
    more: 'Show more',
    loading: 'Looking…',
    failed: 'The search couldn’t be loaded. Try again, or use the lists below.',
    withoutScript: 'Or look through the lists',
    noScript:
      'Looking for words is done in your browser and needs JavaScript. Everything in the shop stands in these lists too.',
    under: (money: string) => `under ${money}`,
    between: (from: string, to: string) => `${from} to ${to}`,
    over: (money: string) => `${money} and over`,
  },

  lineSheet: {
    title: 'Line sheet',
    lead: 'For shops and galleries: every piece that can be ordered now, to print or to save as a PDF.',
    retail: 'Retail price',
    sizes: 'Sizes',
    reference: 'Reference',
    print: 'Print this sheet',
    terms: 'Trade terms, smallest orders and delivery by agreement: please write.',
    date: (date: string) => `As of ${date}`,
  },

  data: {
    title: 'For machines and for the curious',
    lead: 'The catalogue can be read by programs. You are welcome to use it; please say where it comes from.',
    jsonTitle: 'One piece as JSON',
    jsonText:
      'Add .json to a piece’s address without its last slash. Lengths are millimetres, masses grams, prices whole minor units of the currency (pence for GBP).',
    fields: 'Fields',
    field: 'Field',
    meaning: 'Meaning',
    rows: {
      id: 'The piece’s name in addresses.',
      revision: 'Changes whenever the design, a measure or the price does.',
      name: 'Name, by language.',
      summary: 'One sentence, by language.',
      kind: 'necklace, bracelet, anklet or collar.',
      status: 'available, to-order or past.',
      made: 'When it was first made: year, month or day.',
      price: 'Price at the usual size: amountMinor and currency (ISO 4217).',
      finishedLengthMm: 'Closed piece laid straight, clasp included, at the usual size.',
      insideGirthMm: 'Largest cylinder that it passes round, at the usual size.',
      massG: 'Worked out from measures and densities.',
      fits: 'What it can be made for: of (wrist, ankle, neck or length) and, in mm, every stretch from least to most.',
      parts: 'Components with count, material and measures, and the part number where there is one.',
      address: 'Page of the piece.',
    },
    others: 'Other addresses',
    feed: 'New pieces as an Atom feed',
    sitemap: 'Every page, as a sitemap',
    order: 'The form of an order, as a JSON Schema',
    design: 'The form of a design, as a JSON Schema',
  },

  notFound: {
    title: 'That page isn’t here',
    text: 'It may have been renamed, or the address has a slip in it. Pieces that aren’t made any more are still kept among the past ones.',
  },
  feed: { title: (shop: string) => `New pieces from ${shop}` },
};
