/** Components where they stand, painted with shared symbols. */
import type { Component } from '#core/components/component.ts';
import type { Spot } from '../place/spot.ts';
import { hash } from '../seed/seed.ts';
import { element, num } from '../svg/text.ts';
import { paintBead } from './bead.ts';
import type { Ink } from './ink.ts';
import { halfTurn, lightOn } from './light.ts';
import { materials } from './material/all.ts';
import { isIrregular, isRound, isTwoEnded } from './shape/all.ts';

/** Tumbled chips differ in outline even where their material has no figure. */
const CHIP_VARIANTS = 4;

/** One `<use>` a spot, in the order given: later ones lie on top. */
export function paintSpots(ink: Ink, spots: readonly Spot[]): string {
  return spots.map((spot) => paintSpot(ink, spot)).join('');
}

export function paintSpot(ink: Ink, spot: Spot): string {
  const { component } = spot;
  const turnRad = shownTurn(spot);
  const variant = variantOf(component, spot.index);
  const light = lightOn(turnRad);
  const key = [component.id, variant, num(light.x), num(light.y)].join(' ');
  const href = ink.symbol(key, () => paintBead(ink, component, light, variant));
  // A ball looks the same from everywhere; what is longer than round is seen shorter from aslant.
  const seenShare = component.shape === 'ball' ? 1 : (spot.seenShare ?? 1);
  return useAt(href, spot.xMm, spot.yMm, turnRad, seenShare);
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

/** How far the painted symbol is turned: not at all where it makes no difference. */
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
