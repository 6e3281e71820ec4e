/** How a thing is bought, as the maker writes it beside it. */
import { SOLD_BY, WIRE_SOLD_BY } from '../model/supply.ts';
import { fields, money, oneOf, quantity, text, whole } from '../fields/field.ts';

const seller = {
  /** Of one strand, pack, bag or spool. */
  price: money,
  supplier: text(60).optional(),
  /** The supplier's number, where it isn't the one on the bag. */
  number: text(24).optional(),
};

export const soldSchema = fields({
  by: oneOf(SOLD_BY),
  /** In one of it. */
  pieces: whole(1, 100_000).optional(),
  /** Of a strand as it is sold: its pieces are reckoned from it. */
  length: quantity('length', 10, 5000).optional(),
  /** Of what is in a bag: its pieces are reckoned from it. */
  weight: quantity('mass', 0.1, 50_000).optional(),
  ...seller,
});

export const wireSoldSchema = fields({
  by: oneOf(WIRE_SOLD_BY).default('spool'),
  length: quantity('wireLength', 0.5, 10_000),
  ...seller,
});
