import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { EXIT } from '../../src/command/size/exit.ts';
import { pendantNecklace } from '#tests/support/workshop.ts';
import { content, size } from './terminal.ts';

const shop = readFileSync(join(content, 'shop.yaml'), 'utf8');
const folder = mkdtempSync(join(tmpdir(), 'rules-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Only what the rules need: everything of the shop from its currency on, but for unit and orders. */
const alone = `currency: GBP\n${shop.slice(shop.indexOf('tolerance:'))}`;

function written(name: string, text: string): string {
  const file = join(folder, name);
  writeFileSync(file, text);
  return file;
}

/** Size with a file of rules; `from` is opened only where the shop is needed. */
const sizeWith = (rules: string, piece: string, asked: readonly string[], from = content) =>
  size([piece, ...asked, '--rules', rules], JSON.stringify(pendantNecklace), from);

describe('rules out of a file', () => {
  it('serve a design on standard input, and no content folder is opened', () => {
    const { code, out, err } = sizeWith(written('alone.yaml', alone), '-', ['--length', '17 in'], '/nowhere');
    expect([code, err]).toEqual([EXIT.fits, '']);
    expect(out).toContain('£');
  });

  it('may be a whole shop’s file, and say the currency and unit', () => {
    const euros = shop.replaceAll('£', '€').replace('GBP', 'EUR').replace('unit: in', 'unit: cm');
    const { code, out } = sizeWith(written('euro.yaml', euros), '-', ['--place', 'bust']);
    expect([EXIT.fits, EXIT.outside]).toContain(code);
    expect(out).toContain('€');
    expect(out).toMatch(/\d\s?cm/);
  });

  it('are what the answer goes by: tolerance, ease, price', () => {
    const asked = ['--wrist', '6 1/2 in', '--json'];
    const changed = alone
      .replace('bracelet: 3 mm', 'bracelet: 9 mm')
      .replace(
        'bracelet: { snug: 1/4 in, easy: 1/2 in, loose: 1 in }',
        'bracelet: { snug: 0 mm, easy: 20 mm, loose: 1 in }',
      );
    const { out } = sizeWith(written('changed.yaml', changed), 'focal', asked);
    const { sizing } = JSON.parse(out);
    expect(sizing.toleranceMm).toBe(9);
    expect(sizing.targetMm).toBeCloseTo(165.1 + 20, 6);
  });

  it.each([
    ['a slip in a name', alone.replace('  snag:', '  snagg:'), ['wire, snagg', 'Did you mean “snag”?']],
    ['nothing for a kind', alone.replace('  anklet: 4 mm\n', ''), ['tolerance, anklet']],
    ['no unit', alone.replace('tail: 1 in', 'tail: 1'), ['wire, tail']],
    ['two currencies', alone.replace('£1.50', '€1.50'), ['price, packing', '€1.50']],
    ['no YAML', 'tolerance: [', ['rules-slip.yaml:1']],
    ['a list', '- 1\n', ['rules-slip.yaml:1']],
  ])('name file, line and field of %s', (_, text, sentences) => {
    const { code, out, err } = sizeWith(written('rules-slip.yaml', text), '-', ['--length', '17 in']);
    expect([code, out]).toEqual([EXIT.unread, '']);
    expect(err).toMatch(/rules-slip\.yaml:\d+/);
    for (const sentence of sentences) expect(err).toContain(sentence);
  });

  it('a file that isn’t there, or of another currency than the piece', () => {
    const missing = sizeWith(join(folder, 'missing.yaml'), '-', ['--length', '17 in']);
    expect(missing.code).toBe(EXIT.unread);
    expect(missing.err).toContain('missing.yaml');
    const euros = written('euros.yaml', alone.replaceAll('£', '€').replace('GBP', 'EUR'));
    const other = sizeWith(euros, 'focal', ['--wrist', '6 1/2 in']);
    expect(other.code).toBe(EXIT.unread);
    expect(other.err).toContain('in EUR, but the piece’s costs are in GBP');
  });
});
