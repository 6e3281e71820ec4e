import { describe, expect, it } from 'vitest';
import { validateDesign } from '#core/design/validate/validateDesign.ts';
import type { Component } from '#core/design/component.ts';
import { catalogueOf } from '#tests/support/catalogue.ts';
import { contentFolder } from './contentFolder.ts';

/** The component that these lines make. */
function made(lines: string, material = 'glass'): Component {
  const text = `thing:\n  name: Thing\n  material: ${material}\n  colour: '#123456'\n  cost: £0.10\n${lines
    .split('\n')
    .map((line) => `  ${line}`)
    .join('\n')}\n`;
  const { components } = catalogueOf(contentFolder([{ file: 'components/thing.yaml', write: text }]));
  return components['thing']!;
}

describe('defaults kind to the maker', () => {
  it('a ball needs its size and its hole', () => {
    expect(made('size: 8 mm\nhole: 1 mm')).toMatchObject({
      kind: 'bead',
      shape: 'ball',
      alongMm: 8,
      acrossMm: 8,
      roundingMm: 4,
      holeMm: 1,
      look: { family: 'glass', colour: '#123456', accent: null },
      massG: null,
      stock: null,
      ways: 1,
      handed: false,
      cautions: [],
    });
  });

  it('a tube is sharp, a rondelle round', () => {
    expect(made('shape: tube\nalong: 12 mm\nacross: 4 mm\nhole: 1 mm').roundingMm).toBe(0);
    expect(made('shape: rondelle\nalong: 4 mm\nacross: 6 mm\nhole: 1 mm').roundingMm).toBe(2);
  });

  it('a lobster clasp is worked by one hand, a toggle by none', () => {
    expect(made('kind: clasp\nshape: lobster\nalong: 10 mm\nacross: 6 mm').handed).toBe(true);
    expect(made('kind: clasp\nshape: toggle\nalong: 14 mm\nacross: 6 mm').handed).toBe(false);
  });

  it('a magnetic clasp and lead crystal warn of themselves', () => {
    expect(made('kind: clasp\nshape: magnetic\nalong: 13 mm\nacross: 7 mm').cautions).toEqual(['magnet']);
    expect(made('size: 4 mm\nhole: 0.9 mm', 'lead-crystal').cautions).toEqual(['lead']);
  });

  it('a pendant takes nothing of the wire', () => {
    expect(made('kind: pendant\nacross: 14 mm\nhang: 26 mm\nloop: through')).toMatchObject({
      alongMm: 0,
      hangMm: 26,
      shape: 'drop',
      loop: 'through',
      holeMm: 0,
    });
  });

  it('makes nothing that the core would refuse', () => {
    for (const { design } of catalogueOf().pieces) expect(validateDesign(design)).toEqual([]);
  });
});
