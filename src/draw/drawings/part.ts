/** One component by itself, as it lies on the bench: a few beads in a row, a clasp, what hangs. */
import type { Component } from '#core/design/component.ts';
import type { Design } from '#core/design/design.ts';
import { groundFor, paintGround } from '../paint/ground.ts';
import { paintClosing } from '../paint/finding/all.ts';
import { mixInk, type Ink } from '../paint/ink/ink.ts';
import { hangLengthMm, paintHanging } from '../paint/pendant.ts';
import { paintShadows } from '../paint/shadow.ts';
import { paintSpots } from '../paint/bead/strand.ts';
import type { Spot } from '../layout/spot.ts';
import { svgDocument, type Caption } from '../svg/document.ts';
import { element, num } from '../svg/text.ts';
import { CARD_BOX } from './card.ts';

/** A row is about this long, mm, and has no more beads than can be told apart. */
const ROW_MM = 22;
const ROW_MOST = 9;

/** Shares of the picture that a part may fill, across and down. */
const FILL_X = 0.66;
const FILL_Y = 0.72;

/** A bead and its shadow, over the bead. */
const SHADOWED = 1.35;

/** Never shown larger than this, in units of the picture a millimetre: small findings stay small beside large beads. */
const LARGEST = 22;

/**
 * A component on a ground of its own.
 * @param design a piece that has it
 */
export function drawPart(design: Design, component: Component, caption: Caption): string {
  const ink = mixInk(caption.idPrefix);
  // A pendant takes no length of the wire, but it is seen.
  const seen = { ...component, alongMm: Math.max(component.alongMm, component.hangMm) };
  const ground = paintGround(ink, CARD_BOX, groundFor([seen]));
  const { painted, widthMm, heightMm } = paintPart(ink, design, component);
  const scale = Math.min(LARGEST, (CARD_BOX.width * FILL_X) / widthMm, (CARD_BOX.height * FILL_Y) / heightMm);
  const middle = `translate(${num(CARD_BOX.width / 2)} ${num(CARD_BOX.height / 2)})scale(${num(scale, 3)})`;
  const placed = element('g', { transform: middle }, painted);
  return svgDocument(caption, CARD_BOX, ink.definitions(), ground + placed);
}

type Painted = { readonly painted: string; readonly widthMm: number; readonly heightMm: number };

/** Round the origin. */
function paintPart(ink: Ink, design: Design, component: Component): Painted {
  if (component.kind === 'clasp' || component.kind === 'ring') return paintFinding(ink, design, component);
  if (component.kind === 'pendant') return paintPendant(ink, design, component);
  const { alongMm, acrossMm } = component;
  // Caps come in pairs, as far apart as the bead they would hold.
  const isCap = component.kind === 'cap';
  const count = isCap ? 2 : Math.min(ROW_MOST, Math.max(1, Math.round(ROW_MM / alongMm)));
  const stepMm = isCap ? alongMm + acrossMm : alongMm;
  const spots = rowOf(component, count, stepMm);
  return {
    painted: paintShadows(ink, spots) + paintSpots(ink, spots),
    widthMm: (count - 1) * stepMm + alongMm,
    heightMm: acrossMm * SHADOWED,
  };
}

function rowOf(component: Component, count: number, stepMm: number): Spot[] {
  return Array.from({ length: count }, (_, index) => ({
    component,
    section: '',
    side: 'centre' as const,
    index,
    opensBack: index > 0,
    xMm: (index - (count - 1) / 2) * stepMm,
    yMm: 0,
    turnRad: 0,
  }));
}

function paintFinding(ink: Ink, design: Design, component: Component): Painted {
  const kind = component.kind === 'clasp' ? 'clasp' : 'ring';
  const spot = { kind, component, alongMm: component.alongMm, xMm: 0, yMm: 0, turnRad: 0 } as const;
  return {
    painted: paintClosing(ink, design, spot),
    widthMm: component.alongMm,
    heightMm: component.acrossMm,
  };
}

function paintPendant(ink: Ink, design: Design, component: Component): Painted {
  const alone: Design = { ...design, hanging: { rings: [], pendant: component.id } };
  const heightMm = hangLengthMm(alone);
  return {
    painted: paintHanging(ink, alone, 0, -heightMm / 2),
    widthMm: component.acrossMm,
    heightMm,
  };
}
