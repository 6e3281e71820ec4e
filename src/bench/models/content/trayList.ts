/** Everything that lies in the trays, beads and findings and wires, from tray to tray. */
import { componentNameIn, partNamesIn, wireKey, type Catalogue } from '#catalogue/model/catalogue.ts';
import type { Component, ComponentKind } from '#core/design/component.ts';
import { goodsWords } from '#words/words.ts';
import type { Frame } from '../frame.ts';

export type TrayRow = {
  readonly id: string;
  readonly kind: ComponentKind | 'wire';
  readonly name: string;
  readonly number: string | null;
  /** Along and across, mm; of a wire its diameter twice. */
  readonly alongMm: number;
  readonly acrossMm: number;
  readonly holeMm: number;
  /** As the material is called. */
  readonly material: string;
  readonly stock: number | null;
};

export type Tray = { readonly name: string | null; readonly rows: readonly TrayRow[] };

type Written = TrayRow & { readonly tray: string | null };

function partRow(component: Component, catalogue: Catalogue, { lang }: Frame): Written {
  const { id, kind, alongMm, acrossMm, holeMm, hangMm, material, stock } = component;
  const said: Readonly<Record<string, string>> = goodsWords(lang).materials;
  return {
    ...{ id, kind, acrossMm, holeMm, stock },
    name: componentNameIn(catalogue, id, lang),
    number: catalogue.partNumbers[id] ?? null,
    tray: catalogue.trays[id] ?? null,
    alongMm: kind === 'pendant' ? hangMm : alongMm,
    material: said[material] ?? material,
  };
}

function wireRow(
  { id, name, diameterMm }: Catalogue['wires'][string],
  catalogue: Catalogue,
  { lang }: Frame,
): Written {
  const key = wireKey(id);
  return {
    ...{ id, kind: 'wire', holeMm: 0, stock: null, material: '' },
    name: partNamesIn(catalogue, lang)[key] ?? name,
    number: catalogue.partNumbers[key] ?? null,
    tray: catalogue.trays[key] ?? null,
    ...{ alongMm: diameterMm, acrossMm: diameterMm },
  };
}

/** Whether a row has every word asked for; `6 mm` finds what measures six. */
function matches(row: Written, words: readonly string[]): boolean {
  const { id, name, number, tray, material, alongMm, acrossMm } = row;
  const text = [id, name, number, tray, material].join(' ').toLowerCase();
  const measures = [alongMm, acrossMm].map((mm) => String(Math.round(mm * 10) / 10));
  return words.every((word) => {
    const figure = /^(\d+(?:[.,]\d+)?)(?:mm)?$/.exec(word)?.[1]?.replace(',', '.');
    return text.includes(word) || (figure !== undefined && measures.includes(figure));
  });
}

const wordsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .replace(/(\d) +mm\b/g, '$1mm')
    .split(/\s+/)
    .filter((word) => word !== '');

/** Trays as a hand goes along them, A2 before A10, what has none last; `text` narrows them. */
export function trayList(catalogue: Catalogue, text: string, frame: Frame): readonly Tray[] {
  const rows = [
    ...Object.values(catalogue.components).map((one) => partRow(one, catalogue, frame)),
    ...Object.values(catalogue.wires).map((one) => wireRow(one, catalogue, frame)),
  ].filter((row) => matches(row, wordsOf(text)));
  const names = [...new Set(rows.map(({ tray }) => tray))].sort((one, other) => {
    if (one === null || other === null) return one === other ? 0 : one === null ? 1 : -1;
    return one.localeCompare(other, frame.lang, { numeric: true });
  });
  return names.map((name) => ({
    name,
    rows: rows
      .filter(({ tray }) => tray === name)
      .map(({ tray: _tray, ...row }) => row)
      .sort((one, other) => one.name.localeCompare(other.name, frame.lang)),
  }));
}
