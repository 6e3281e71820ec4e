/** The mark that tells one state of a piece from another. */
import { createHash } from 'node:crypto';
import type { Component } from '#core/components/component.ts';
import type { Design } from '#core/strand/design.ts';

/** JSON with the keys in order, so that the order of writing doesn't matter. */
function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null';
  const rows = Object.entries(value)
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([key, inner]) => `${JSON.stringify(key)}:${canonical(inner)}`);
  return `{${rows.join(',')}}`;
}

/** What a buyer gets of a component: neither its name, nor how many are left, nor what it cost the maker. */
function asBought({ name: _name, stock: _stock, costMinor: _cost, ...rest }: Component): object {
  return rest;
}

/**
 * Twelve hexadecimal digits over the design and the listed price. Changes with
 * anything a buyer could see or wear; not with stock, costs or wording.
 */
export function revisionOf(design: Design, listedMinor: number): string {
  const components = Object.fromEntries(
    Object.entries(design.components).map(([id, component]) => [id, asBought(component)]),
  );
  const { name: _name, costMinorPerM: _cost, ...wire } = design.wire;
  const strands = design.strands.map(({ sections, ...strand }) => ({
    ...strand,
    sections: sections.map(({ name: _section, ...rest }) => rest),
  }));
  return createHash('sha256')
    .update(canonical({ design: { ...design, components, wire, strands }, listedMinor }))
    .digest('hex')
    .slice(0, 12);
}
