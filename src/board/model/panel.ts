/** The trays as the panel beside the board shows them. */
import type { Component, ComponentKind } from '#core/design/component.ts';
import type { Design } from '#core/design/design.ts';
import { tally } from '#core/design/tally.ts';
import { usualCounts } from '#core/design/usualCounts.ts';
import type { BoardInput } from './input.ts';

/** What may lie on a strand. */
export const STRUNG: readonly ComponentKind[] = ['bead', 'spacer', 'cap', 'ring', 'crimp'];

export type PanelRow = {
  readonly component: Component;
  readonly name: string;
  readonly tray: string;
  /** What is left when this piece is strung; null where she doesn't count. */
  readonly left: number | null;
};

type Shelf = Pick<BoardInput, 'trays' | 'names' | 'partNumbers' | 'trayOf'>;

export const nameIn = ({ names, trays }: Pick<BoardInput, 'names' | 'trays'>, id: string): string =>
  names[id] ?? trays.components[id]?.name ?? id;

const plain = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();

/** All that a word may be found in. */
function textOf(shelf: Shelf, { id, name, kind, material, shape, look, acrossMm }: Component): string {
  const { names, partNumbers, trayOf } = shelf;
  const own = [name, names[id], id, partNumbers[id], trayOf[id], kind, material, shape, look.family];
  return plain([...own, `${acrossMm}mm ${acrossMm} mm`].filter((one) => one !== undefined).join(' '));
}

/** Each word begins a word of it somewhere; one inside a word comes later. */
function rank(text: string, words: readonly string[]): number {
  return words.reduce((sum, word) => {
    const at = text.indexOf(word);
    if (at < 0) return Infinity;
    return sum + (at === 0 ? 0 : /[\s-]/.test(text[at - 1] ?? ' ') ? 1 : 10);
  }, 0);
}

/**
 * Components whose name, number, tray, material or size every word is found in: the piece's own first, then those that
 * fit the words best, then by name.
 */
export function panelRows(
  shelf: Shelf,
  design: Design,
  words: readonly string[],
  kinds: readonly ComponentKind[] = STRUNG,
): PanelRow[] {
  const used = tally(design, usualCounts(design));
  const asked = words.map(plain);
  return Object.values(shelf.trays.components)
    .filter(({ kind }) => kinds.includes(kind))
    .map((component) => ({ component, at: rank(textOf(shelf, component), asked) }))
    .filter(({ at }) => at < Infinity)
    .map(({ component, at }) => {
      const count = used.get(component.id) ?? 0;
      const row: PanelRow = {
        component,
        name: nameIn(shelf, component.id),
        tray: shelf.trayOf[component.id] ?? '',
        left: component.stock === null ? null : component.stock - count,
      };
      return {
        row,
        at: at - (count > 0 ? 5 : 0),
        isFinding: component.kind === 'crimp' || component.kind === 'ring',
      };
    })
    .sort(
      (one, other) =>
        Number(one.isFinding) - Number(other.isFinding) ||
        one.at - other.at ||
        one.row.name.localeCompare(other.row.name),
    )
    .map(({ row }) => row);
}
