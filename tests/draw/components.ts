/** Components for the drawing tests and the gallery: made up, with measures such as real ones have. */
import type { Component, Look, Wire } from '#core/design/component.ts';
import { BLANK } from '#tests/support/blank.ts';

export const wire: Wire = {
  id: 'wire-49',
  name: 'Steel wire',
  diameterMm: 0.48,
  strands: 49,
  breakN: 116,
  massGPerM: 0.8,
  costMinorPerM: 60,
};

export const looks = {
  river: { family: 'glass', colour: '#2f7f8c', accent: null },
  amber: { family: 'glass', colour: '#c9781e', accent: null },
  lined: { family: 'glass', colour: '#bcd6cf', accent: '#b5485e' },
  clear: { family: 'glass', colour: '#dfe8ea', accent: null },
  black: { family: 'glass', colour: '#16161a', accent: null },
  jasper: { family: 'stone', colour: '#a4502f', accent: '#e0b48a' },
  slate: { family: 'stone', colour: '#5a6672', accent: '#c9d2d8' },
  lapis: { family: 'stone', colour: '#243f8c', accent: '#c9a64a' },
  pearl: { family: 'pearl', colour: '#f1ebe2', accent: '#e2b9c0' },
  greyPearl: { family: 'pearl', colour: '#8e919c', accent: '#7f9c8e' },
  silver: { family: 'metal', colour: '#c4c7cc', accent: null },
  gold: { family: 'metal', colour: '#d3a73f', accent: null },
  copper: { family: 'metal', colour: '#b9714a', accent: null },
  olive: { family: 'wood', colour: '#a97c4b', accent: '#6d4524' },
  ebony: { family: 'wood', colour: '#4b3428', accent: '#241812' },
  nacre: { family: 'shell', colour: '#eee7da', accent: '#d9c2d8' },
} as const satisfies Record<string, Look>;

/** A component of any kind; a ball's measures follow from its size. */
export function component(id: string, more: Partial<Component>): Component {
  return { ...BLANK, id, name: id, ...more };
}

export function ballOf(id: string, sizeMm: number, look: Look, more: Partial<Component> = {}): Component {
  return component(id, { alongMm: sizeMm, acrossMm: sizeMm, roundingMm: sizeMm / 2, look, ...more });
}

export const findings = [
  component('crimp', {
    kind: 'crimp',
    shape: 'tube',
    alongMm: 2,
    acrossMm: 2,
    roundingMm: 0.2,
    holeMm: 1.3,
    look: looks.silver,
    closedMm: 1.8,
  }),
  ballOf('cover', 3, looks.silver, { kind: 'cover', holeMm: 1, closedMm: 1.8 }),
  component('ring', {
    kind: 'ring',
    shape: 'ring',
    alongMm: 4,
    acrossMm: 6,
    roundingMm: 0.8,
    holeMm: 0,
    look: looks.silver,
  }),
  component('lobster', {
    kind: 'clasp',
    shape: 'lobster',
    alongMm: 12,
    acrossMm: 7,
    roundingMm: 1,
    holeMm: 0,
    look: looks.silver,
    handed: true,
  }),
  component('spring', {
    kind: 'clasp',
    shape: 'spring-ring',
    alongMm: 9,
    acrossMm: 7,
    roundingMm: 1,
    holeMm: 0,
    look: looks.gold,
    handed: true,
  }),
  component('toggle', {
    kind: 'clasp',
    shape: 'toggle',
    alongMm: 18,
    acrossMm: 14,
    roundingMm: 1,
    holeMm: 0,
    look: looks.copper,
  }),
  component('hook', {
    kind: 'clasp',
    shape: 'hook',
    alongMm: 18,
    acrossMm: 8,
    roundingMm: 1,
    holeMm: 0,
    look: looks.silver,
  }),
  component('box', {
    kind: 'clasp',
    shape: 'box',
    alongMm: 14,
    acrossMm: 12,
    roundingMm: 1,
    holeMm: 0,
    look: looks.gold,
    ways: 2,
  }),
  component('magnet', {
    kind: 'clasp',
    shape: 'magnetic',
    alongMm: 12,
    acrossMm: 6,
    roundingMm: 1,
    holeMm: 0,
    look: looks.silver,
    cautions: ['magnet'],
  }),
];

export const beads = [
  ballOf('river-8', 8, looks.river),
  ballOf('river-4', 4, looks.river),
  ballOf('amber-10', 10, looks.amber),
  ballOf('lined-6', 6, looks.lined),
  ballOf('clear-8', 8, looks.clear),
  ballOf('black-8', 8, looks.black),
  ballOf('jasper-8', 8, looks.jasper),
  ballOf('lapis-6', 6, looks.lapis),
  ballOf('slate-22', 22, looks.slate),
  ballOf('pearl-7', 7, looks.pearl),
  ballOf('grey-pearl-9', 9, looks.greyPearl),
  ballOf('seed-2', 2.2, looks.gold, { kind: 'spacer', alongMm: 1.6, roundingMm: 0.8 }),
  ballOf('silver-4', 4, looks.silver, { kind: 'spacer' }),
  ballOf('olive-12', 12, looks.olive),
  component('rondelle', { shape: 'rondelle', alongMm: 4, acrossMm: 8, roundingMm: 1.8, look: looks.amber }),
  component('bicone', { shape: 'bicone', alongMm: 5, acrossMm: 6, roundingMm: 0, look: looks.river }),
  component('bicone-clear', { shape: 'bicone', alongMm: 8, acrossMm: 8, roundingMm: 0, look: looks.clear }),
  component('tube', { shape: 'tube', alongMm: 16, acrossMm: 5, roundingMm: 0, look: looks.slate }),
  component('tube-gold', { shape: 'tube', alongMm: 20, acrossMm: 2.4, roundingMm: 0.2, look: looks.gold }),
  component('cube', { shape: 'cube', alongMm: 7, acrossMm: 7, roundingMm: 0.6, look: looks.lapis }),
  component('cube-wood', { shape: 'cube', alongMm: 9, acrossMm: 9, roundingMm: 0.8, look: looks.ebony }),
  component('chip', { shape: 'chip', alongMm: 5, acrossMm: 8, roundingMm: 1.5, look: looks.jasper }),
  component('coin', { shape: 'coin', alongMm: 14, acrossMm: 14, roundingMm: 2, look: looks.nacre }),
  component('drop', { shape: 'drop', alongMm: 12, acrossMm: 7, roundingMm: 2, look: looks.lined }),
  component('cap', {
    kind: 'cap',
    shape: 'cap',
    alongMm: 3,
    acrossMm: 7,
    roundingMm: 0.5,
    look: looks.silver,
  }),
  component('heishi', {
    kind: 'spacer',
    shape: 'ring',
    alongMm: 1.5,
    acrossMm: 5,
    roundingMm: 0.5,
    look: looks.copper,
  }),
  component('pendant', {
    kind: 'pendant',
    shape: 'drop',
    alongMm: 3,
    acrossMm: 16,
    roundingMm: 1,
    holeMm: 0,
    look: looks.jasper,
    loop: 'in-plane',
    hangMm: 30,
    massG: 6,
  }),
];

export const COMPONENTS = Object.fromEntries([...findings, ...beads].map((one) => [one.id, one]));
