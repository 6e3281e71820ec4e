/** Her words of a piece's tutorial. */
import type { OwnSteps } from '#words/teachStep.ts';
import type { Teach, TeachTexts } from '../model/catalogue.ts';
import type { AuthoredPiece } from '../schemas/piece.ts';

type Authored = NonNullable<AuthoredPiece['teach']>;

/** Steps that she left empty are no keys, so that the same words are the same data. */
function textsOf({ lead, steps }: Pick<Authored, 'lead' | 'steps'>): TeachTexts {
  const own = Object.entries(steps ?? {}).filter(([, words]) => words !== undefined);
  return { lead: lead ?? null, steps: Object.fromEntries(own) as OwnSteps };
}

export function buildTeach(value: AuthoredPiece['teach']): Teach | null {
  if (value === undefined) return null;
  const { offered, de } = value;
  return { offered, en: textsOf(value), de: de === undefined ? null : textsOf(de) };
}
