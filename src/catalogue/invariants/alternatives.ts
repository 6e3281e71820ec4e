/** What a buyer may choose instead can be strung, worn and closed as well as what the piece is listed with. */
import type { ChosenParts } from '#core/design/choice.ts';
import { designWith, type Alternatives } from '#core/design/alternatives.ts';
import { validateDesign } from '#core/design/validate/validateDesign.ts';
import type { Design } from '#core/design/design.ts';
import type { Rules } from '#core/design/rules.ts';
import type { Entry } from '../read/entry.ts';
import type { FieldPath, Problem } from '../read/problem.ts';
import type { AuthoredPiece } from '../schemas/piece.ts';
import { assertTogether, assertWearable } from './sizes.ts';

type Piece = Entry<AuthoredPiece>;

/** One choice: which parts, and where in the entry it stands. */
type Offer = { readonly chosen: ChosenParts; readonly path: FieldPath; readonly part: FieldPath };

function offersOf({ clasps, pendants }: Alternatives): Offer[] {
  return [
    ...clasps.map(({ clasp }, index) => {
      const path = ['instead', 'clasps', index];
      return { chosen: { clasp: clasp.id, pendant: '' }, path, part: [...path, 'clasp'] };
    }),
    ...pendants.map(({ id }, index) => {
      const path = ['instead', 'pendants', index];
      return { chosen: { clasp: '', pendant: id }, path, part: path };
    }),
  ];
}

/** A problem for each part that is the listed one, or named twice. */
function twice(entry: Piece, { ends, hanging }: Design, offers: readonly Offer[]): Problem[] {
  const seen = new Set([ends.clasp, hanging?.pendant ?? '']);
  return offers.flatMap(({ chosen, part }) => {
    const id = chosen.clasp + chosen.pendant;
    if (seen.has(id)) return [entry.problemAt(part, { code: 'instead-twice', id })];
    seen.add(id);
    return [];
  });
}

/** Where the maker wrote the part that the core finds fault with. */
function writtenAt(at: string, { path, part }: Offer): FieldPath {
  return at === 'ends.ring' && path !== part ? [...path, 'ring'] : part;
}

function problemsOf(entry: Piece, design: Design, alternatives: Alternatives, rules: Rules, offer: Offer) {
  const { chosen, path, part } = offer;
  if (chosen.pendant !== '' && design.hanging === null) {
    return [entry.problemAt(path, { code: 'instead-of-nothing', pendant: chosen.pendant })];
  }
  const swapped = designWith(design, alternatives, chosen);
  if (swapped === null) {
    return [entry.problemAt(part, { code: 'instead-needs-ring', clasp: chosen.clasp })];
  }
  const errors = validateDesign(swapped);
  if (errors.length > 0) {
    return errors.map((error) =>
      entry.problemAt(writtenAt(error.at, offer), { code: 'design', error, fitting: '' }),
    );
  }
  return [...assertWearable(entry, swapped, part), ...assertTogether(entry, swapped, rules, part)];
}

/** All that keeps a part from being chosen. The piece as listed is sound already. */
export function assertAlternatives(
  entry: Piece,
  design: Design,
  alternatives: Alternatives,
  rules: Rules,
): Problem[] {
  const offers = offersOf(alternatives);
  return [
    ...twice(entry, design, offers),
    ...offers.flatMap((offer) => problemsOf(entry, design, alternatives, rules, offer)),
  ];
}
