/** The drawing of what a step comes to. */
import type { Stage } from '#core/instructions/stages.ts';
import { drawCutWire } from '#draw/drawings/cutWire.ts';
import { drawEndStage } from '#draw/drawings/endStage.ts';
import { drawLoop } from '#draw/drawings/loop.ts';
import { drawPendantStage } from '#draw/drawings/pendantStage.ts';
import type { TeachingWords } from '#words/words.ts';
import type { Tutorial } from './tutorial.ts';

/** @param label the wire's length as it is written; @param description the step's own sentence */
export function drawStage(
  { design, candidate, card }: Tutorial,
  stage: Stage,
  words: TeachingWords['stages'],
  { label, description, idPrefix }: { label: (mm: number) => string; description: string; idPrefix: string },
): string {
  const caption = { title: words[stage.picture], description, idPrefix };
  const sequenceOf = (strand: number) => candidate.sequences[strand] ?? [];
  switch (stage.picture) {
    case 'wire':
      return drawCutWire(design, { ...caption, label: label(stage.lengthMm) });
    case 'end': {
      const tails = card.strands[stage.strand]?.tails;
      const tailMm = tails?.[stage.end].reachMm ?? 0;
      return drawEndStage(design, sequenceOf(stage.strand), {
        ...caption,
        ...stage.look,
        end: stage.end,
        tailMm,
      });
    }
    case 'joined':
    case 'hung':
      return drawPendantStage(design, sequenceOf(0), { ...caption, hung: stage.picture === 'hung' });
    case 'closed':
      return drawLoop(design, candidate.sequences, caption);
  }
}
