/** Everything that can be counted: components and wires, as the catalogue has them. */
import { componentNameIn, partNamesIn, wireKey, type Catalogue } from '#catalogue/model/catalogue.ts';
import type { Sold } from '#catalogue/model/supply.ts';
import { massOf } from '#core/design/mass/mass.ts';
import type { Lang } from '#words/lang.ts';

export type Thing = {
  /** A component's short name, or a wire's key. */
  readonly key: string;
  readonly id: string;
  readonly name: string;
  /** As on the bag; null where she wrote none. */
  readonly number: string | null;
  readonly tray: string | null;
  /** Counted in millimetres, and not by the piece. */
  readonly wire: boolean;
  /** Pieces, or mm of wire, below which it is to be bought; null for no mark. */
  readonly keep: number | null;
  readonly sold: Sold | null;
  /** Of one, grams, by which a weighed heap is reckoned; 0 for wire. */
  readonly massG: number;
  /** What its file says of stock; null where it says nothing, and for wire. */
  readonly inFile: number | null;
  /** Of one piece, or of a metre, as her files have it. */
  readonly costMinor: number;
};

/** All of them, from tray to tray: A2 before A10, what has none last. */
export function thingsOf(catalogue: Catalogue, lang: Lang): Thing[] {
  const wireNames = partNamesIn(catalogue, lang);
  const labels = (key: string) => ({
    number: catalogue.partNumbers[key] ?? null,
    tray: catalogue.trays[key] ?? null,
    keep: catalogue.supplies[key]?.keep ?? null,
    sold: catalogue.supplies[key]?.sold ?? null,
  });
  const parts = Object.values(catalogue.components).map((component): Thing => {
    const { id, stock, costMinor } = component;
    return {
      ...{ key: id, id, name: componentNameIn(catalogue, id, lang), wire: false, inFile: stock, costMinor },
      ...labels(id),
      massG: massOf(component).massG,
    };
  });
  const wires = Object.values(catalogue.wires).map(({ id, name, costMinorPerM }): Thing => {
    const key = wireKey(id);
    return {
      ...{ key, id, name: wireNames[key] ?? name, wire: true, inFile: null, massG: 0 },
      ...labels(key),
      costMinor: costMinorPerM,
    };
  });
  return [...parts, ...wires].toSorted((a, b) => byTray(a, b, lang));
}

type InTray = { readonly tray: string | null; readonly name: string };

/** Trays as a hand goes along them, then by name. */
export function byTray(a: InTray, b: InTray, lang: Lang): number {
  if ((a.tray === null) !== (b.tray === null)) return a.tray === null ? 1 : -1;
  const trays = (a.tray ?? '').localeCompare(b.tray ?? '', lang, { numeric: true });
  return trays === 0 ? a.name.localeCompare(b.name, lang) : trays;
}
