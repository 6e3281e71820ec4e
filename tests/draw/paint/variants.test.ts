import { expect, test } from 'vitest';
import { mixInk } from '#draw/paint/ink/ink.ts';
import { brightness, halfTurn, lightOn } from '#draw/paint/ink/light.ts';
import { paintSpots, variantOf } from '#draw/paint/bead/strand.ts';
import { COMPONENTS } from '../components.ts';

function named(id: string) {
  const found = COMPONENTS[id];
  if (found === undefined) throw new Error(`no component ${id}`);
  return found;
}

function painted(id: string, index: number): string {
  const ink = mixInk('p');
  const spot = { component: named(id), section: 's', side: 'left' as const, index, opensBack: false };
  paintSpots(ink, [{ ...spot, xMm: 0, yMm: 0, turnRad: 0 }]);
  return ink.definitions();
}

test('stones vary along a strand, each the same every time; glass is all alike', () => {
  const stones = Array.from({ length: 40 }, (_, index) => variantOf(named('jasper-8'), index));
  expect(new Set(stones).size).toBeGreaterThan(3);
  expect(new Set(Array.from({ length: 40 }, (_, index) => painted('jasper-8', index))).size).toBe(
    new Set(stones).size,
  );
  expect(painted('jasper-8', 5)).toBe(painted('jasper-8', 5));
  expect(painted('river-8', 1)).toBe(painted('river-8', 2));
});

test('chips vary in outline whatever they are made of', () => {
  const outlines = Array.from({ length: 20 }, (_, index) => painted('chip', index));
  expect(new Set(outlines).size).toBeGreaterThan(2);
});

test('the lamp stays up and to the left however a component is turned', () => {
  for (let turnRad = -3; turnRad <= 3; turnRad += 0.1) {
    const { x, y } = lightOn(turnRad);
    const pageX = x * Math.cos(turnRad) - y * Math.sin(turnRad);
    const pageY = x * Math.sin(turnRad) + y * Math.cos(turnRad);
    // −120° on the page; fifteen degrees either way are not seen.
    expect(pageX).toBeLessThan(-0.25);
    expect(pageY).toBeLessThan(-0.68);
  }
});

test('what faces the lamp is brightest, what is turned away darkest', () => {
  const light = lightOn(0);
  const facing = brightness(light, light.x * 0.66, light.y * 0.66, 0.75);
  expect(facing).toBeGreaterThan(0.98);
  expect(brightness(light, -light.x, -light.y, 0)).toBe(0);
});

test('half a turn is taken out of a turn', () => {
  expect(halfTurn(Math.PI)).toBeCloseTo(0, 12);
  expect(halfTurn(Math.PI * 0.75)).toBeCloseTo(-Math.PI / 4, 12);
});
