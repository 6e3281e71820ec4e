import { describe, expect, it } from 'vitest';
import { toCsv } from '#bench/export/csv.ts';
import type { Entry } from '#bench/book/entry.ts';
import type { AllOrders } from '#bench/book/search.ts';
import { posted, sample } from '../../order/orders.ts';
import { readCsv } from './readCsv.ts';

const entry = (buyer: Partial<typeof sample.buyer>): Entry => ({
  document: { ...sample, buyer: { ...sample.buyer, ...buyer } },
  receivedAt: '2026-11-25T19:00:00.000Z',
  way: 'desk',
  state: 'new',
  dueOn: null,
  snapshotId: null,
  agreed: null,
  agreedSnapshotId: null,
  version: 1,
  erasedAt: null,
  damaged: false,
});

const all = (...entries: Entry[]): AllOrders => ({ entries, unreadable: [], altered: new Set() });

/** Of its column. */
const NOTE = -2;

describe('CSV', () => {
  it('has a heading, a line an order, and gives back what it was given', () => {
    const note = 'She said "blue", not green;\nor grey, perhaps';
    const [head = [], row = []] = readCsv(toCsv(all(entry({ note }))));
    const record = Object.fromEntries(head.map((name, at) => [name, row[at]]));
    expect(record).toMatchObject({
      number: 'TX2-FYF-HTV',
      note,
      price: '64.50',
      size_mm: '165.1',
      name: 'Iris Møller',
    });
    expect(head).toHaveLength(row.length);
  });

  it('has address and postage in columns of their own, and what they come to', () => {
    const [head = [], row = []] = readCsv(toCsv(all({ ...entry({}), document: { ...posted, quantity: 2 } })));
    expect(Object.fromEntries(head.map((name, at) => [name, row[at]]))).toMatchObject({
      ...{ price: '129.00', postage: '8.20', total: '137.20', delivery: 'post' },
      ...{ to_name: 'Solveig Møller', to_line1: 'Reepschlägergasse 7', to_line2: 'Hinterhaus' },
      ...{ to_town: 'Stapelmünde', to_region: '', to_postcode: '24999', to_country: 'DE' },
    });
  });

  it.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\n=1', ' =1+1', '＝1', "=cmd|'/C calc'!A0", '|calc'])(
    'keeps %j from being a formula',
    (note) => {
      const row = readCsv(toCsv(all(entry({ note }))))[1] ?? [];
      expect(row.at(NOTE)).toBe(`'${note}`);
    },
  );

  it('has a line for an order that can’t be read, and says of each whether it is whole', () => {
    const lost = { number: 'TX2-FYF-HTW', receivedAt: '2026-11-25T20:00:00.000Z', erasedAt: null };
    const entries = [entry({}), { ...entry({}), damaged: true }];
    const altered = new Set<string>();
    const unreadable = [
      { ...lost, state: 'agreed' as const },
      { ...lost, state: null, erasedAt: lost.receivedAt },
    ];
    const [head = [], ...rows] = readCsv(toCsv({ entries, unreadable, altered }));
    const column = (name: string) => rows.map((row) => row[head.indexOf(name)]);
    expect(column('damage')).toEqual(['', 'altered', 'unreadable', 'erased']);
    expect(column('number').slice(2)).toEqual([lost.number, lost.number]);
    expect(column('state').slice(2)).toEqual(['agreed', '']);
    expect(column('price').slice(2)).toEqual(['', '']);
    expect(rows.every((row) => row.length === head.length)).toBe(true);
  });

  it('leaves plain texts and numbers as they are', () => {
    const row = readCsv(toCsv(all(entry({ note: 'a-b' }))))[1] ?? [];
    expect(row.at(NOTE)).toBe('a-b');
    expect(row[8]).toBe('165.1');
  });
});
