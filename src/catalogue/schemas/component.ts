/** A component as the maker writes it. Many live in one file, each under its short name. */
import type { z } from 'zod';
import { COMPONENT_CAUTIONS, COMPONENT_KINDS, JOINTS, LOOPS, SHAPES } from '#core/design/component.ts';
import {
  colour,
  fields,
  listOf,
  material,
  money,
  oneOf,
  quantity,
  text,
  whole,
  yesNo,
} from '../fields/field.ts';
import { soldSchema } from './supply.ts';

// A bead as long as a hand has the wrong unit.
const longestMm = 150;
const length = quantity('length', 0, longestMm);

export const componentSchema = fields({
  name: text(60),
  'name-de': text(60).optional(),
  /** What its bag is labelled with. */
  'part-number': text(24).optional(),
  /** Where it lies: the tray or drawer that pick lists go by. */
  tray: text(16).optional(),
  kind: oneOf(COMPONENT_KINDS).default('bead'),
  shape: oneOf(SHAPES).optional(),
  /** Length and width in one, where they are the same. */
  size: length.optional(),
  /** Length on the wire; of a clasp or ring, from bearing point to bearing point. */
  along: length.optional(),
  /** Width square to the wire. */
  across: length.optional(),
  /** Corner radius seen from the side; by shape where left out. */
  rounding: length.optional(),
  hole: length.optional(),
  material,
  colour,
  accent: colour.optional(),
  /** As weighed, one of them. */
  weight: quantity('mass', 0, 500).optional(),
  cost: money,
  stock: whole(0, 1_000_000).optional(),
  /** Fewer than so many are to be bought. */
  keep: whole(1, 1_000_000).optional(),
  sold: soldSchema.optional(),
  /** Crimps: outside diameter once closed. */
  closed: length.optional(),
  /** Covers: the largest closed crimp they go round. */
  takes: length.optional(),
  /** Clasps: worked by one hand at one side. */
  'one-handed': yesNo.optional(),
  /** Clasps: how many strands. */
  ways: whole(1, 12).optional(),
  /** Pendants: the way their loop lies. */
  loop: oneOf(LOOPS).optional(),
  /** Rings: whether they can be opened to take a loop. */
  joint: oneOf(JOINTS).optional(),
  /** Pendants: how far they hang, rings not counted. */
  hang: length.optional(),
  cautions: listOf(oneOf(COMPONENT_CAUTIONS)).optional(),
});

export type AuthoredComponent = z.output<typeof componentSchema>;
