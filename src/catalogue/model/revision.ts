/** The mark that tells one state of a piece from another. */
import { createHash } from 'node:crypto';
import { componentsOf, type Alternatives } from '#core/design/alternatives.ts';
import type { Component } from '#core/design/component.ts';
import type { Design } from '#core/design/design.ts';

/** JSON with the keys in order, so that the order of writing doesn't matter. */
function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null';
  const rows = Object.entries(value)
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([key, inner]) => `${JSON.stringify(key)}:${canonical(inner)}`);
  return `{${rows.join(',')}}`;
}

/** A component as canonical text is the same for every piece that holds it, so it is written once. */
const written = new WeakMap<Component, string>();

/** What a buyer gets of a component: neither its name, nor how many are left, nor its cost, nor how a ring was opened. */
function asBought(component: Component): string {
  const known = written.get(component);
  if (known !== undefined) return known;
  const { name: _name, stock: _stock, costMinor: _cost, joint: _joint, ...rest } = component;
  const text = canonical(rest);
  written.set(component, text);
  return text;
}

/** Names of strands and sections are the maker's own; the rest is what the piece is. */
function withoutNames({ strands, ...design }: Omit<Design, 'wire' | 'components'>): object {
  const bare = strands.map(({ sections, ...strand }) => ({
    ...strand,
    sections: sections.map(({ name: _name, ...section }) => section),
  }));
  return { ...design, strands: bare };
}

/** As lines, none where nothing may be chosen, so that such pieces keep their mark. */
function offered(alternatives: Alternatives): string[] {
  const { clasps, pendants } = alternatives;
  if (clasps.length + pendants.length === 0) return [];
  const ids = {
    clasps: clasps.map(({ clasp, ring }) => [clasp.id, ring?.id ?? null]),
    pendants: pendants.map(({ id }) => id),
  };
  return [canonical(ids), ...componentsOf(alternatives).map((one) => `${one.id}:${asBought(one)}`)];
}

/**
 * Twelve hexadecimal digits over the design, what may be chosen instead, and the listed price. Changes with
 * anything a buyer could see or wear; not with stock, costs or wording.
 */
export function revisionOf(design: Design, alternatives: Alternatives, listedMinor: number): string {
  const { components, wire, ...rest } = design;
  const { name: _name, costMinorPerM: _cost, ...bareWire } = wire;
  const parts = Object.keys(components)
    .sort()
    .map((id) => `${id}:${asBought(components[id]!)}`);
  return createHash('sha256')
    .update(
      [
        canonical(withoutNames(rest)),
        canonical(bareWire),
        ...parts,
        ...offered(alternatives),
        listedMinor,
      ].join('\n'),
    )
    .digest('hex')
    .slice(0, 12);
}
