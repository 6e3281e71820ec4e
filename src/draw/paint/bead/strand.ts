/** Components where they stand. */
import type { Component } from '#core/design/component.ts';
import type { Spot } from '../../layout/spot.ts';
import { hash } from '../ink/seed.ts';
import { element, num } from '../../svg/text.ts';
import { coatsOf, type Coat } from './bead.ts';
import type { Ink } from '../ink/ink.ts';
import { halfTurn, lightOn } from '../ink/light.ts';
import { materials } from '../material/all.ts';
import { isIrregular, isRound, isTwoEnded } from '../shape/all.ts';
import type { Place } from '../ink/stamp.ts';
import { stampAll } from '../ink/stampAll.ts';

/** Tumbled chips differ in outline even where their material has no figure. */
const CHIP_VARIANTS = 4;

/** The largest seed bead whose light may come in coarse steps, mm: an 8/0 is about 3. */
const SEED_MM = 3.1;

/** Components side by side: coat by coat, all of a kind at once; caps last, whose petals reach over what they hold. */
export function paintSpots(ink: Ink, spots: readonly Spot[]): string {
  const layers: (readonly [Coat, Place])[][] = [];
  for (const spot of spots) {
    const place = { xMm: spot.xMm, yMm: spot.yMm, turnRad: shownTurn(spot) };
    const above = spot.component.shape === 'cap' ? 2 : 0;
    for (const [at, coat] of coatsAt(spot, place.turnRad).entries()) {
      (layers[above + at] ??= []).push([coat, place]);
    }
  }
  // A layer that nothing is on is a hole of the list, which `map` passes over.
  return layers.map((layer) => stampAll(ink, layer)).join('');
}

/** Components that are seen one before the other, at a slant: in the order given, later ones on top. */
export function paintPile(ink: Ink, spots: readonly Spot[]): string {
  return spots.map((spot) => paintPiled(ink, spot)).join('');
}

function paintPiled(ink: Ink, spot: Spot): string {
  const turnRad = shownTurn(spot);
  // A ball looks the same from everywhere; what is longer than round is seen shorter from aslant.
  const seenShare = spot.component.shape === 'ball' ? 1 : (spot.seenShare ?? 1);
  const hrefs = coatsAt(spot, turnRad).map((coat) => ink.symbol(coat.key, () => coat.paint(ink)));
  return hrefs.map((href) => useAt(href, spot.xMm, spot.yMm, turnRad, seenShare)).join('');
}

/** A `<use>` of a symbol, moved and turned; a whole degree is finer than the eye at any bead's size. */
export function useAt(href: string, xMm: number, yMm: number, turnRad: number, seenShare = 1): string {
  const degrees = num((turnRad * 180) / Math.PI, 0);
  const share = num(seenShare);
  if (degrees === '0' && share === '1') return element('use', { href, x: xMm, y: yMm });
  const squeeze = share === '1' ? '' : `scale(${share} 1)`;
  return element('use', {
    href,
    transform: `translate(${num(xMm)} ${num(yMm)})rotate(${degrees})${squeeze}`,
  });
}

function coatsAt({ component, index }: Spot, turnRad: number): Coat[] {
  const coarse = isIrregular(component) || component.acrossMm <= SEED_MM;
  return coatsOf(component, lightOn(turnRad, coarse), variantOf(component, index));
}

/** How far the painted component is turned: not at all where it makes no difference. */
function shownTurn({ component, turnRad, opensBack, side }: Spot): number {
  const directed = component.look.family === 'wood' || materials[component.look.family].clear;
  if (isRound(component) && !directed) return 0;
  if (isTwoEnded(component)) return halfTurn(turnRad);
  const isBack = component.shape === 'cap' ? opensBack : side === 'right';
  return wholeTurn(isBack ? turnRad + Math.PI : turnRad);
}

function wholeTurn(turnRad: number): number {
  return turnRad - 2 * Math.PI * Math.round(turnRad / (2 * Math.PI));
}

/** Which of the differing ones stands at this place: scattered, so that neighbours seldom match. */
export function variantOf(component: Component, index: number): number {
  const variants = isIrregular(component) ? CHIP_VARIANTS : materials[component.look.family].variants;
  return variants === 1 ? 0 : hash(`${component.id}/${index}`) % variants;
}
