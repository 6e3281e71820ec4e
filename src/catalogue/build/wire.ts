/** From what the maker wrote to the core's wire. */
import type { Wire } from '#core/design/component.ts';
import type { Entry } from '../read/entry.ts';
import type { AuthoredWire } from '../schemas/wire.ts';

export function buildWire({ id, value }: Entry<AuthoredWire>): Wire {
  return {
    id,
    name: value.name,
    diameterMm: value.diameter,
    strands: value.strands,
    breakN: value.break ?? null,
    massGPerM: value.weight,
    costMinorPerM: value.cost.minor,
  };
}
