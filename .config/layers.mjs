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
    may: ['core', 'zod'],
    why: 'order is the document both sides speak; neither the shop nor the bench belongs in it.',
  },
  catalogue: {
    may: ['core', 'words', 'order', 'zod', 'yaml', 'node'],
    why: 'catalogue reads what the maker wrote; it knows no page and no browser.',
  },
  sizer: {
    may: ['core', 'words', 'draw', 'order', 'preact'],
    why: 'sizer is the island: every byte it imports is sent to a phone.',
  },
  ui: {
    may: ['core', 'words', 'draw', 'order', 'catalogue', 'sizer', 'preact', 'astro', 'sharp', 'node'],
    why: 'ui is the public look; it must not hold a byte of the bench.',
  },
  bench: {
    may: ['core', 'words', 'draw', 'order', 'catalogue', 'ui', 'sizer', 'preact', 'astro', 'zod', 'node'],
    why: "bench is the maker's side; only pages may stand on it.",
  },
  pages: {
    may: ['core', 'words', 'draw', 'order', 'catalogue', 'sizer', 'ui', 'bench', 'preact', 'astro', 'node'],
    why: 'pages only join address to view.',
  },
  command: {
    may: ['core', 'words', 'draw', 'order', 'catalogue', 'node'],
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
};
