/** The page of a piece's tutorial at the bench: the form's face for her words, and the tutorial in the size she looks at. */
import type { Catalogue, Piece } from '#catalogue/model/catalogue.ts';
import type { Step, StepCode } from '#core/instructions/step.ts';
import { tutorialOf, type Tutorial } from '#ui/models/tutorial.ts';
import type { Lang } from '#words/lang.ts';
import { TEACH_PLACES } from '#words/teachStep.ts';
import { teachingWords } from '#words/words.ts';
import type { FormNode } from '../intake/contentForm/formTree.ts';
import { UNCOUNTED } from '../check/there.ts';
import type { FormFace } from './content/formFace.ts';
import type { Frame } from './frame.ts';
import { pieceSheet, type PieceSheet } from './pieceSheet.ts';

export type TutorialSheetOf = {
  readonly piece: Piece;
  readonly sheet: PieceSheet;
  /** null where nothing can be strung. */
  readonly tutorial: Tutorial | null;
};

/** The piece in the size of the address, a learner's beads not counted; null where the catalogue has no such piece. */
export function tutorialSheet(
  catalogue: Catalogue,
  id: string,
  query: URLSearchParams,
  frame: Frame,
): TutorialSheetOf | null {
  const piece = catalogue.pieces.find((one) => one.id === id);
  // What is taught is the piece as it stands, never as it was ordered once.
  const place = { frame, there: UNCOUNTED, book: null };
  const sheet = piece === undefined ? null : pieceSheet(catalogue, id, query, place);
  if (piece === undefined || sheet === null) return null;
  const { card, asked } = sheet;
  const tutorial =
    card === null ? null : tutorialOf(piece, frame.shop.rules, card.candidate, asked.hand, frame.lang);
  return { piece, sheet, tutorial };
}

/** The step and language that a field of the form is for; null for any other. */
function stepField(path: FormNode['path']): { readonly code: StepCode; readonly lang: Lang } | null {
  const [teach, ...rest] = path;
  const lang: Lang = rest[0] === 'de' ? 'de' : 'en';
  const [steps, code] = lang === 'de' ? rest.slice(1) : rest;
  return teach === 'teach' && steps === 'steps' && typeof code === 'string' && code in TEACH_PLACES
    ? { code: code as StepCode, lang }
    : null;
}

/**
 * The form's face with each step under its name, told as usual below it, and
 * only the steps that the piece has, or that she wrote something for.
 */
export function tutorialFace(face: FormFace, steps: readonly Step[]): FormFace {
  const first = new Map<StepCode, Step>();
  for (const step of steps) if (!first.has(step.code)) first.set(step.code, step);
  return {
    ...face,
    offered: (node) => {
      const field = stepField(node.path);
      const isTyped = node.node === 'value' && node.typed !== '';
      return face.offered(node) && (field === null || isTyped || steps.length === 0 || first.has(field.code));
    },
    label: (node) => {
      const field = stepField(node.path);
      return field === null ? face.label(node) : teachingWords(face.lang).names[field.code];
    },
    hint: (node) => {
      const field = stepField(node.path);
      if (field === null) return face.hint(node);
      const words = teachingWords(face.lang).bench;
      const step = first.get(field.code);
      const usually = step === undefined ? '' : words.usually(teachingWords(field.lang).usual(step));
      return usually + words.places(TEACH_PLACES[field.code].needed);
    },
  };
}
