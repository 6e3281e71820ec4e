/** `node tests/draw/gallery.ts <folder>` writes every view of every sample as SVG, to be looked at. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { drawCard } from '#draw/drawings/card.ts';
import { drawEnds } from '#draw/drawings/ends.ts';
import { drawNumbered } from '#draw/drawings/numbered.ts';
import { drawBoard } from '#draw/drawings/board.ts';
import { drawLoop } from '#draw/drawings/loop.ts';
import { drawShare } from '#draw/drawings/share.ts';
import { drawStraight } from '#draw/drawings/straight.ts';
import { drawWrist } from '#draw/drawings/wrist.ts';
import { pieces, usualSequences } from './designs.ts';
import { sampleStrip } from './strip.ts';
import { drawOnBody } from './worn.ts';

const folder = process.argv[2];
if (folder === undefined) throw new Error('say which folder to write to, outside the project');
mkdirSync(folder, { recursive: true });

for (const design of pieces) {
  const sequences = usualSequences(design);
  const caption = (view: string) => ({
    title: `${design.id}, ${view}`,
    description: `${sequences.flat().length} components`,
    idPrefix: `${design.id}-${view}`,
  });
  const views: Record<string, string> = {
    straight: drawStraight(design, sequences, { ...caption('straight'), unit: 'cm' }),
    board: drawBoard(design, sequences, { ...caption('board'), unit: 'in', claspSide: 'left' }),
    loop: drawLoop(design, sequences, caption('loop')),
    wrist: drawWrist(design, sequences, {
      ...caption('wrist'),
      girthMm: 155,
      labels: { girth: 'wrist 15.5 cm', ease: '15 mm of ease', air: '5 mm of air' },
    }),
  };
  views['card'] = drawCard(design, sequences, caption('card'));
  views['share'] = drawShare(design, sequences, {
    ...caption('share'),
    name: `The ${design.id} one, at low water`,
    shop: 'Ninepin Beadwork',
  });
  const first = sequences[0] ?? [];
  views['numbered'] = drawNumbered(design, first, {
    ...caption('numbered'),
    mostRowMm: 260,
    spans: [
      { first: 1, last: 5 },
      { first: 6, last: 6 },
    ],
  });
  views['ends'] = drawEnds(design, first, {
    ...caption('ends'),
    tailMm: 25,
    labels: { clasp: 'clasp', loop: 'wire loop, left free', crimp: 'crimp', cover: 'cover', tail: 'tail' },
  });
  if (design.kind === 'necklace') {
    views['body'] = drawOnBody(design, `${design.id}, body`, `${design.id}-body`);
  }
  for (const [view, svg] of Object.entries(views)) {
    writeFileSync(join(folder, `${design.id}-${view}.svg`), svg);
    console.log(design.id, view, svg.length);
  }
}

for (const paper of ['a4', 'letter'] as const)
  writeFileSync(join(folder, `tape-${paper}.svg`), sampleStrip(paper));
