/** Her own words of a step say what the size decides, and have no other places. */
import type { StepCode } from '#core/instructions/step.ts';
import { placesIn, TEACH_PLACES } from '#words/teachStep.ts';
import type { Entry } from '../read/entry.ts';
import type { FieldPath, Problem } from '../read/problem.ts';
import type { AuthoredPiece } from '../schemas/piece.ts';

type PieceEntry = Pick<Entry<AuthoredPiece>, 'value' | 'problemAt'>;

function assertStep(entry: PieceEntry, path: FieldPath, step: StepCode, words: string): Problem[] {
  const { needed, offered } = TEACH_PLACES[step];
  const there = placesIn(words);
  const known = [...needed, ...offered];
  const missing = needed.filter((place) => !there.includes(place));
  const strange = there.filter((place) => !known.includes(place));
  return [
    ...missing.map((place) => entry.problemAt(path, { code: 'teach-place-missing', place } as const)),
    ...strange.map((place) => {
      const listed = known.map((one) => `{${one}}`).join(', ');
      return entry.problemAt(path, { code: 'teach-place-unknown', place, known: listed } as const);
    }),
  ];
}

export function assertTeach(entry: PieceEntry): Problem[] {
  const { teach } = entry.value;
  const texts = [
    { path: ['teach', 'steps'], steps: teach?.steps },
    { path: ['teach', 'de', 'steps'], steps: teach?.de?.steps },
  ];
  return texts.flatMap(({ path, steps }) =>
    Object.entries(steps ?? {}).flatMap(([step, words]) =>
      words === undefined ? [] : assertStep(entry, [...path, step], step as StepCode, words),
    ),
  );
}
