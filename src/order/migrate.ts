/**
 * Reading documents of any age. Each later version adds one step here, from the
 * one before it to itself; steps are never changed once released, and a sample
 * of every version stays in `tests/fixtures/orders/`.
 */
import { checkOrder } from './check.ts';
import { AS_LISTED, FORMAT, VERSION, type OrderDocument } from './document.ts';

/** A document of any version, not yet checked. */
type Unchecked = Readonly<Record<string, unknown>>;

const isRecord = (value: unknown): value is Unchecked => typeof value === 'object' && value !== null;

/** `steps[n]` makes a document of version n + 1 from one of version n. What it can't account for it leaves to the check. */
const steps: Readonly<Record<number, (old: Unchecked) => Unchecked>> = {
  // Version 1 asked for no address and reckoned no postage.
  1: (old) => ({
    delivery: { by: 'unsaid' },
    ...old,
    version: 2,
    shown: typeof old.shown === 'object' ? { postageMinor: 0, ...old.shown } : old.shown,
  }),
  // Version 2 was always strung for the buyer, with the parts that the piece is listed with.
  2: (old) => ({ made: 'to-measure', instead: AS_LISTED, ...old, version: 3 }),
  // Version 3 told the longest strand alone.
  3: (old) => ({
    ...old,
    version: 4,
    shown: isRecord(old.shown) ? { strandsMm: [], ...old.shown } : old.shown,
  }),
};

export type DocumentProblem =
  | { readonly code: 'not-an-order' }
  | { readonly code: 'newer-version'; readonly version: number }
  | { readonly code: 'unknown-version'; readonly version: string }
  | { readonly code: 'wrong-field'; readonly field: string };

export type ReadDocument =
  | { readonly ok: true; readonly document: OrderDocument }
  | { readonly ok: false; readonly problem: DocumentProblem };

/** A document of a version there has been, in today's; unchecked, as one of an erased buyer must be. */
export function migrate(value: Unchecked): Unchecked {
  let document = value;
  for (let at = Number(value.version); at < VERSION; at += 1) document = steps[at]?.(document) ?? document;
  return document;
}

/** Reads parsed JSON as an order document of this or an older version, or refuses by name. */
export function readDocument(value: unknown): ReadDocument {
  if (typeof value !== 'object' || value === null || !('format' in value) || value.format !== FORMAT) {
    return { ok: false, problem: { code: 'not-an-order' } };
  }
  const version = 'version' in value ? value.version : undefined;
  if (typeof version !== 'number' || !Number.isInteger(version)) {
    return { ok: false, problem: { code: 'wrong-field', field: 'version' } };
  }
  if (version < 1) return { ok: false, problem: { code: 'unknown-version', version: String(version) } };
  if (version > VERSION) return { ok: false, problem: { code: 'newer-version', version } };
  const document = migrate(value as Unchecked);
  const field = checkOrder(document);
  if (field !== null) return { ok: false, problem: { code: 'wrong-field', field } };
  return { ok: true, document: document as OrderDocument };
}
