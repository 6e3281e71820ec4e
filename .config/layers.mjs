/**
 * The import directions of src/, in one place. A folder may import itself and
 * what its row names; `node` stands for Node's own modules, anything else that
 * isn't a folder of src/ for an npm package. ESLint's rules are made from this
 * table, and tests/architecture/ proves that each of them bites.
 */
export const layers = {
  core: {
    may: [],
    why: 'core computes: pure figures that must run anywhere, so it stands on nothing.',
  },
  words: {
    may: ['core'],
    why: 'words makes sentences of codes; the same everywhere, so it knows the codes and no more.',
  },
  draw: {
    may: ['core'],
    why: 'draw turns a strand into SVG text, alike in build, island, bench and print.',
  },
  order: {
    may: ['core', 'words'],
    why: 'order is the document both sides speak; neither the shop nor the bench belongs in it.',
  },
  catalogue: {
    may: [
      'core',
      'words',
      'order',
      'zod',
      'yaml',
      'fastest-levenshtein',
      '@astrojs/markdown-satteri',
      'mdast-util-from-markdown',
      'node',
    ],
    why: 'catalogue reads what the maker wrote; it knows no page and no browser.',
  },
  board: {
    may: ['core', 'words', 'draw', 'preact'],
    why: 'board is the bead board as an island of the bench: it gets plain data and opens no file.',
  },
  sizer: {
    may: ['core', 'words', 'draw', 'order', 'preact'],
    why: 'sizer is the island: every byte it imports is sent to a phone.',
  },
  ui: {
    may: [
      'core',
      'words',
      'draw',
      'order',
      'catalogue',
      'sizer',
      'preact',
      'astro',
      'sharp',
      'fastest-levenshtein',
      '@orama/stemmers',
      'node',
    ],
    why: 'ui is the public look; it must not hold a byte of the bench.',
  },
  release: {
    may: ['core', 'words', 'catalogue', 'ui', 'astro', 'node'],
    why: 'release makes, keeps and compares what is served; it knows no page and nobody who asks for it.',
  },
  hosting: {
    may: ['words', 'catalogue', 'release', 'ssh2', 'yazl', 'node'],
    why: 'hosting brings finished files elsewhere; it knows no page, and nobody who asks for it.',
  },
  bench: {
    may: [
      'release',
      'hosting',
      'core',
      'words',
      'draw',
      'order',
      'catalogue',
      'ui',
      'sizer',
      'board',
      'preact',
      'astro',
      'zod',
      'csv-parse',
      'html-to-text',
      'postal-mime',
      'sharp',
      'uqr',
      '@peculiar/asn1-schema',
      '@peculiar/asn1-x509',
      'node',
    ],
    why: "bench is the maker's side; only pages may stand on it.",
  },
  pages: {
    may: [
      'core',
      'words',
      'draw',
      'order',
      'catalogue',
      'sizer',
      'board',
      'ui',
      'release',
      'hosting',
      'bench',
      'preact',
      'astro',
      'node',
    ],
    why: 'pages only join address to view.',
  },
  command: {
    may: ['core', 'words', 'draw', 'order', 'catalogue', 'release', 'hosting', 'bench', 'node'],
    why: 'command is the terminal: it must run in plain Node without Astro.',
  },
};

/**
 * Inside a folder: its stages in reading order. Each may import those before it
 * and none after it; files that stand beside the stages may import all of them.
 */
export const stages = {
  core: [
    { name: 'units', why: 'units reads numbers and lengths as people write them; it stands on nothing.' },
    { name: 'post', why: 'post reckons what a parcel costs from its weight and value; it knows no piece.' },
    {
      name: 'geometry',
      why: 'geometry is the taut loop and its numbers; it knows outlines, not components.',
    },
    { name: 'design', why: 'design says what a piece is and when it is valid, before any size is chosen.' },
    { name: 'body', why: 'body lays a strand on a figure, whatever counts the strand has.' },
    { name: 'solver', why: 'solver finds the best counts for a target; it knows no buyer, price or hand.' },
    { name: 'sizing', why: 'sizing turns a choice into a piece; how that piece is strung comes after.' },
    { name: 'instructions', why: 'instructions are made of a sizing, and nothing is sized by them.' },
    { name: 'verify', why: 'verify checks all that comes before it, so nothing it checks may lean on it.' },
  ],
  draw: [
    { name: 'svg', why: 'svg writes text; it knows no bead and no picture.' },
    { name: 'layout', why: 'layout says where each part lies, and not how it looks.' },
    { name: 'paint', why: 'paint says how a part looks, whatever picture it is in.' },
    { name: 'drawings', why: 'drawings put laid and painted parts together; nothing is laid out by them.' },
  ],
  catalogue: [
    { name: 'model', why: 'model is the catalogue as data, however it was written.' },
    { name: 'fields', why: 'fields reads one value of an entry; what entries hold comes after.' },
    { name: 'schemas', why: 'schemas says what each entry may hold, and opens no file.' },
    { name: 'read', why: 'read takes files apart into entries; what they mean is made after.' },
    { name: 'build', why: 'build turns one entry into data; entries are held against each other after.' },
    { name: 'invariants', why: 'invariants hold across entries, however those came to be loaded.' },
    { name: 'load', why: 'load reads, builds and checks a whole folder of content.' },
    { name: 'write', why: 'write changes files that load reads; nothing is read by what was written.' },
    {
      name: 'released',
      why: 'released says where finished catalogues lie; nothing is read or checked by it.',
    },
    { name: 'facts', why: 'facts are read off finished pieces; no piece is made of them.' },
  ],
  board: [
    { name: 'styles', why: 'styles is looks only.' },
    { name: 'model', why: 'model is tested in Node: it has no browser and no markup.' },
    { name: 'adapters', why: 'adapters are the browser, behind what the model asks for.' },
    { name: 'parts', why: 'parts are what is seen and worked with; the entry joins them.' },
  ],
  sizer: [
    { name: 'styles', why: 'styles is looks only.' },
    { name: 'model', why: 'model is tested in Node: it has no browser and no markup.' },
    { name: 'adapters', why: 'adapters are the browser, behind what the model asks for.' },
    { name: 'controls', why: 'controls are used all over the island and know none of its parts.' },
    { name: 'drawing', why: 'drawing is fetched by itself, so it drags no form along.' },
    { name: 'ruler', why: 'ruler is fetched by itself, when somebody wants life size.' },
    { name: 'body', why: 'body is fetched by itself, when somebody looks at the chart.' },
    { name: 'ordering', why: 'ordering is fetched by itself, when somebody orders.' },
    { name: 'form', why: 'form joins the parts; whatever imported it would fetch them all.' },
    { name: 'slip', why: 'slip is a page of its own; a piece page needs none of it.' },
  ],
  ui: [
    { name: 'styles', why: 'styles is looks only.' },
    { name: 'site', why: 'site holds addresses and names of files, which everything writes.' },
    { name: 'models', why: 'models say what a page shows, and not how.' },
    { name: 'client', why: "client runs in the reader's browser: what it imports is sent to her." },
    { name: 'search', why: 'search finds pieces by their models; pages of results come after.' },
    { name: 'pictures', why: 'pictures makes image files; who shows them comes after.' },
    { name: 'build', why: 'build keeps pages of the last build, whatever is on them.' },
    { name: 'machines', why: 'machines is data for other programs, without a page around it.' },
    { name: 'components', why: 'components are parts of pages and know no page.' },
    { name: 'layouts', why: 'layouts stand round every page, so they know none.' },
    { name: 'views', why: 'views are whole pages; only addresses stand on them.' },
  ],
  bench: [
    { name: 'styles', why: 'styles is looks only.' },
    { name: 'http', why: 'http reads requests within bounds; it knows no order.' },
    { name: 'book', why: 'book keeps orders, however they came and whoever looks at them.' },
    { name: 'context', why: 'context opens book and settings once; who is served by them comes after.' },
    {
      name: 'tablets',
      why: 'tablets opens a door for the home network; what may be done there is decided after.',
    },
    { name: 'content', why: 'content is what the maker writes, live, whatever page she changes it on.' },
    { name: 'photos', why: 'photos takes photographs in and knows no page that asks for them.' },
    {
      name: 'check',
      why: "check sizes an order again from the maker's own copy; what is done about it comes after.",
    },
    {
      name: 'stock',
      why: 'stock says what there is and what of it is promised, whatever page or form asks.',
    },
    {
      name: 'publish',
      why: 'publish has releases made and says how they stand; it knows no order and no page.',
    },
    { name: 'letters', why: 'letters are drafts to a buyer, made of the order alone.' },
    { name: 'intake', why: 'intake reads what the maker sends in by form, file or mail.' },
    { name: 'desk', why: 'desk answers buyers, who see no page of the bench.' },
    { name: 'export', why: 'export hands out the book as files, without a page.' },
    { name: 'models', why: 'models say what a bench page shows, and not how.' },
    { name: 'access', why: 'access decides who is let in before any page is made.' },
    { name: 'views', why: 'views are whole bench pages; only addresses stand on them.' },
  ],
};
