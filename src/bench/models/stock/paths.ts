/** Where a thing's page of stock lies. */
import type { Thing } from '../../stock/things.ts';

export const stockPath = ({ id, wire }: Pick<Thing, 'id' | 'wire'>): `/${string}` =>
  wire ? `/bench/stock/wires/${id}/` : `/bench/stock/parts/${id}/`;

/** Where what it is can be changed. */
export const trayPath = ({ id, wire }: Pick<Thing, 'id' | 'wire'>): `/${string}` =>
  wire ? `/bench/wires/${id}/` : `/bench/trays/${id}/`;
