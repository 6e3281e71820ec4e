/** Words for the measuring strip in tests and gallery. */
import { drawMeasuringStrip, type Paper } from '#draw/drawings/strip.ts';

export function sampleStrip(paper: Paper): string {
  return drawMeasuringStrip({
    title: 'Paper tape',
    description: 'Two paper tapes to cut out, a bar and a card outline',
    idPrefix: `tape-${paper}`,
    paper,
    words: {
      heading: 'A tape to print and cut out',
      steps: [
        'Print at 100 %, or "actual size".',
        "Lay a bank card on its outline, or a ruler along the bar. If they differ, don't use this page.",
        'Cut out the tape. Put it round the wrist, printed side out, snug and not tight.',
        'Read where the zero line meets the scale. For a neck, stick the second tape to the first.',
      ],
      bar: 'This bar is 100 mm long.',
      card: 'A bank card covers this outline exactly.',
      caution: 'A page that was fitted to the paper measures wrong.',
      first: 'zero line: read here',
      second: 'stick over the first, scale to scale',
    },
  });
}
