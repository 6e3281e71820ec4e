/**
 * Digests of what the book keeps beside the documents that came in: of an order its state, days, money, papers,
 * parcels, notes and time at the board; of a thing its lines of stock. Each is noted in the write that changes what
 * it is of. One that no longer fits stays as it is through all later writes, until the maker has looked.
 */
import { createHash } from 'node:crypto';
import type { DatabaseSync } from 'node:sqlite';

/** `order`: by its number. `stock`: by the thing's key. */
export type KeptKind = 'order' | 'stock';

/** Values of one row with their types, so that none can pass for another, whatever a disk makes of them. */
const told = (columns: readonly string[]): string =>
  columns.map((column) => `typeof(${column}) || ':' || hex(${column})`).join(` || ',' || `);

/** All rows of a table that belong to a key, by their first column, of which none comes twice. */
const rowsOf = (table: string, key: string, columns: readonly [string, ...string[]]): string =>
  `coalesce((SELECT group_concat(${told(columns)}, ';' ORDER BY ${columns[0]}) FROM ${table}
    WHERE ${table}.${key}), '')`;

const OF_ORDER = 'number = orders.number';

/** SQL for the digests of one kind. `from` gives all its keys, each once, as `key`; `one` that which is handed in. */
type Sql = { readonly from: string; readonly one: string; readonly key: string; readonly digest: string };

/** Where `sha256` is known to the connection. */
export const KEPT: Readonly<Record<KeptKind, Sql>> = {
  order: {
    from: 'orders',
    one: '(SELECT * FROM orders WHERE number = ?) AS orders',
    key: 'number',
    digest: `sha256(${[
      told([
        ...[
          'received_at',
          'way',
          'state',
          'due_on',
          'snapshot',
          'version',
          'erased_at',
          'agreed_minor',
          'agreed_snapshot',
        ],
        // A document with a digest of its own is told by that.
        ...['agreed_currency', 'delivery', 'CASE WHEN orders.digest IS NULL THEN document END'],
      ]),
      rowsOf('event', OF_ORDER, ['id', 'at', 'kind', 'text']),
      rowsOf('payment', OF_ORDER, ['id', 'kind', 'minor', 'currency', 'day', 'way', 'at', 'struck_at']),
      rowsOf('invoice', OF_ORDER, ['invoice', 'kind', 'corrects', 'issued_at', 'content', 'erased_at']),
      rowsOf('parcel', OF_ORDER, ['id', 'carrier', 'tracking', 'sent_on', 'at']),
      rowsOf('board_time', OF_ORDER, ['save', 'day', 'seconds']),
    ].join(` || '|' || `)})`,
  },
  stock: {
    from: '(SELECT DISTINCT thing FROM movement) AS things',
    one: '(SELECT ? AS thing) AS things',
    key: 'thing',
    digest: `sha256(${rowsOf('movement', 'thing = things.thing', [
      'id',
      ...['kind', 'amount', 'offcut', 'counted', 'entered', 'number', 'strikes', 'at', 'who', 'note'],
    ])})`,
  },
};

/** SQL for the keys of a kind whose digest doesn't fit; in books of before there were any none is missed. */
export const unkeptSql = (kind: KeptKind): string => {
  const { from, key, digest } = KEPT[kind];
  return `SELECT ${key} AS key FROM ${from} JOIN kept_digest ON kind = '${kind}' AND of = ${key}
    WHERE kept_digest.digest <> ${digest} ORDER BY ${key}`;
};

/** Makes `sha256` known to a connection. */
export function knowDigest(db: DatabaseSync): void {
  db.function('sha256', { deterministic: true }, (text) =>
    createHash('sha256').update(String(text)).digest('hex'),
  );
}

/** Notes digests of all that a book of before holds, as it stands now: whether it was right then, nobody can tell. */
export function trustAll(db: DatabaseSync): void {
  for (const [kind, { from, key, digest }] of Object.entries(KEPT)) {
    db.exec(
      `INSERT OR REPLACE INTO kept_digest (kind, of, digest) SELECT '${kind}', ${key}, ${digest} FROM ${from}`,
    );
  }
}
