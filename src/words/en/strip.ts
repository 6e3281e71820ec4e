/** A paper tape to print: its page, and what stands on the sheet. */
export const strip = {
  title: 'Measuring strip',
  lead: 'A paper tape to print and cut out, in inches and millimetres, for when no soft tape is in the house.',
  paperLabel: 'Paper',
  papers: { a4: 'A4', letter: 'US Letter' },
  print: 'Print this sheet',
  size: 'Print at 100 % (“actual size”), never “fit to page”.',
  otherPaper: 'It prints on one sheet. If your paper is the other size, choose that first.',
  picture: 'One sheet: two paper tapes to cut out, a bar 100 mm long and the outline of a bank card.',
  sheet: {
    heading: 'A tape to print and cut out',
    steps: [
      'Print at 100 %, also called “actual size”. Switch off “fit to page”.',
      'Check the sheet: lay a bank card on its outline, or a ruler along the bar. If either differs, don’t measure with this page.',
      'Cut along the dashed lines. Leave scissors and scraps to nobody small.',
      'Lay the tape round, scale outward: touching all round, pressing nowhere. Read where the zero line meets the scale, and add nothing.',
      'For a neck, stick the second tape over the end of the first, scale on scale. Try it laid loosely; take it off as soon as you have read it.',
    ],
    bar: 'This bar is 100 mm long.',
    card: 'A bank card (ISO/IEC 7810 ID-1, 85.60 × 53.98 mm) covers this outline exactly.',
    caution: 'A page that was fitted to the paper measures wrong. Check before you cut.',
    first: 'zero line: read here',
    second: 'stick over the first, scale on scale',
  },
};
