/** A coated steel wire as the maker writes it; several in one file, each under its short name. */
import type { z } from 'zod';
import { fields, perMetre, quantity, text, whole } from '../fields/field.ts';
import { wireSoldSchema } from './supply.ts';

export const wireSchema = fields({
  name: text(60),
  'name-de': text(60).optional(),
  /** What its reel is labelled with. */
  'part-number': text(24).optional(),
  /** Where the reel lies. */
  tray: text(16).optional(),
  /** Outside diameter, coating included. */
  diameter: quantity('length', 0.1, 2),
  /** Steel wires in it. */
  strands: whole(1, 133),
  /** As the seller states it; left out where nothing is stated. */
  break: quantity('force', 1, 5000).optional(),
  weight: quantity('massPerM', 0.01, 50),
  cost: perMetre,
  /** Less than that is to be bought. */
  keep: quantity('wireLength', 0.1, 10_000).optional(),
  sold: wireSoldSchema.optional(),
});

export type AuthoredWire = z.output<typeof wireSchema>;
