/** The whole catalogue as one file of a release keeps it: plain JSON, pieces without copies of their parts. */
import type { Component, Wire } from '#core/design/component.ts';
import { newestFirst, wireKey, type Catalogue, type Guide, type Shop } from './catalogue.ts';
import type { Supply } from './supply.ts';
import {
  labelsOf,
  restorePiece,
  storePiece,
  type StoredComponent,
  type StoredPiece,
  type StoredWire,
} from './stored.ts';

/** A guide with its Markdown made into HTML. */
export type GuidePage = Guide & { readonly html: string };

export type StoredCatalogue = {
  readonly shop: Shop;
  readonly components: readonly StoredComponent[];
  readonly wires: readonly StoredWire[];
  readonly pieces: readonly StoredPiece[];
  readonly guides: readonly GuidePage[];
};

/** The catalogue with its guides as pages. */
export type Whole = Omit<Catalogue, 'guides'> & { readonly guides: readonly GuidePage[] };

export function storeCatalogue(catalogue: Catalogue, guides: readonly GuidePage[]): StoredCatalogue {
  const { shop, components, wires, pieces } = catalogue;
  return {
    shop,
    components: Object.values(components).map((one) => ({ ...one, ...labelsOf(one.id, catalogue) })),
    wires: Object.values(wires).map((one) => ({ ...one, ...labelsOf(wireKey(one.id), catalogue) })),
    pieces: pieces.map(storePiece),
    guides,
  };
}

/** Labels that were written, by a key of what bears them. */
type Written = Record<string, string>;

/** The catalogue again, pieces newest first, guides in their order. Throws where a part of a piece is missing. */
export function restoreCatalogue(stored: StoredCatalogue): Whole {
  const germanNames: Written = {};
  const partNumbers: Written = {};
  const trays: Written = {};
  const supplies: Record<string, Supply> = {};
  const keep = (
    key: string,
    { germanName, partNumber, tray, supply }: StoredComponent | StoredWire,
  ): void => {
    if (germanName !== null) germanNames[key] = germanName;
    if (partNumber !== null) partNumbers[key] = partNumber;
    if (tray !== null) trays[key] = tray;
    if (supply !== null) supplies[key] = supply;
  };
  const components: Record<string, Component> = {};
  for (const one of stored.components) {
    const { germanName: _name, partNumber: _number, tray: _tray, supply: _supply, ...component } = one;
    components[one.id] = component;
    keep(one.id, one);
  }
  const wires: Record<string, Wire> = {};
  for (const one of stored.wires) {
    const { germanName: _name, partNumber: _number, tray: _tray, supply: _supply, ...wire } = one;
    wires[one.id] = wire;
    keep(wireKey(one.id), one);
  }
  const pieces = stored.pieces
    .map((piece) => restorePiece(piece, wires, components, { germanNames, partNumbers }))
    .sort(newestFirst);
  const guides = stored.guides.toSorted((one, other) => one.order - other.order);
  const labels = { germanNames, partNumbers, trays, supplies };
  return { shop: stored.shop, components, ...labels, wires, pieces, guides };
}
