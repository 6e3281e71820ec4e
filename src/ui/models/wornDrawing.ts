/** A piece as it is worn at the length it has in the shop, with what the drawing says in words. */
import type { Piece } from '#catalogue/model/catalogue.ts';
import { figureOf, type Figure } from '#core/body/figure.ts';
import { lieOf, type Lie } from '#core/body/lie.ts';
import { loadOf } from '#core/body/load.ts';
import type { Rules } from '#core/design/rules.ts';
import type { Candidate } from '#core/sizing/sizing.ts';
import { drawBody, type WornStrand } from '#draw/drawings/body.ts';
import { airMm, drawWrist } from '#draw/drawings/wrist.ts';
import { formatFor, formatLength } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import { pageWords, sizingWords } from '#words/words.ts';
import type { Described } from './described.ts';

/** `note` stands under it. */
export type WornDrawing = Described & { readonly note: string };

/** Nothing is known of the reader: the mean of women and men, and a spread to match. */
const TYPICAL = { sex: 'unstated', neckGirthMm: null, heightMm: null } as const;

const canBeDrawn = (lie: Lie): lie is WornStrand['lie'] => lie.status === 'on-neck' || lie.status === 'hangs';

function onBody(
  piece: Piece,
  name: string,
  rules: Rules,
  asShown: Candidate,
  figure: Figure,
  lang: Lang,
): WornDrawing {
  const words = pageWords(lang).piece;
  const unit = lang === 'de' ? 'cm' : 'in';
  const strands = asShown.sequences.flatMap((sequence, index) => {
    const lie = lieOf(loadOf(piece.design, sequence, index), figure);
    return canBeDrawn(lie) ? [{ sequence, lie }] : [];
  });
  const lowest = Math.max(...strands.map(({ lie }) => lie.pendantDropMm ?? lie.dropMm));
  const format = formatFor(lang, unit, rules.currency);
  const description = words.wornOn(format, asShown.finishedLengthMm, lowest);
  const svg = drawBody(piece.design, strands, {
    title: name,
    description,
    idPrefix: 'worn',
    figure,
    sex: TYPICAL.sex,
    unit,
    labels: words.landmarks,
  });
  return { svg, alt: `${name}. ${description}`, note: `${description} ${words.wornNote}` };
}

/** Round the girth that it fits with an easy sit. */
function onWrist(piece: Piece, name: string, rules: Rules, asShown: Candidate, lang: Lang): WornDrawing {
  const words = pageWords(lang).piece;
  const girthMm = asShown.insideGirthMm - rules.easeMm[piece.design.kind].easy;
  const unit = lang === 'de' ? 'cm' : 'in';
  const round = words.wornRound(formatLength(girthMm, unit, lang));
  const description = asShown.sequences.length > 1 ? `${round} ${words.wornInFront}` : round;
  const svg = drawWrist(piece.design, asShown.sequences, {
    title: name,
    description,
    idPrefix: 'worn',
    girthMm,
    labels: sizingWords(lang).wristLabels(
      formatFor(lang, unit, rules.currency),
      piece.design.kind,
      girthMm,
      asShown.insideGirthMm - girthMm,
      airMm(asShown.insideGirthMm, girthMm),
    ),
  });
  return { svg, alt: `${name}. ${description}`, note: `${description} ${words.wornWrist}` };
}

export function wornDrawing(
  piece: Piece,
  name: string,
  rules: Rules,
  asShown: Candidate,
  lang: Lang,
): WornDrawing {
  if (piece.design.kind !== 'necklace') return onWrist(piece, name, rules, asShown, lang);
  const body = figureOf(TYPICAL);
  if (!body.ok) throw new RangeError(`got ${body.problem.code} for a typical body, expected a figure`);
  return onBody(piece, name, rules, asShown, body.figure, lang);
}
