/** What a field asks for, beside its schema: forms are made of it, so that a new field needs no form of its own. */
import { z } from 'zod';
import type { ComponentKind } from '#core/design/component.ts';
import type { QuantityUnit } from '#words/catalogueCodes.ts';
import type { Dimension } from './quantity.ts';

/** One value. `most` of a text is its letters; a range is in the core's unit. */
export type FieldKind =
  | { readonly kind: 'text'; readonly most: number }
  | {
      readonly kind: 'quantity';
      readonly dimension: Dimension;
      readonly least: number;
      readonly most: number;
      /** The core's unit, which forms offer. */
      readonly unit: QuantityUnit;
    }
  | { readonly kind: 'money' }
  | { readonly kind: 'rate'; readonly per: 'hour' | 'm' }
  | { readonly kind: 'yesNo' }
  | { readonly kind: 'whole'; readonly least: number; readonly most: number }
  | { readonly kind: 'oneOf'; readonly options: readonly string[] }
  /** A part's short name. `of`: kinds of component that may stand there, or a wire. */
  | { readonly kind: 'idOf'; readonly of: readonly ComponentKind[] | 'wire' }
  | {
      readonly kind:
        | 'material'
        | 'country'
        | 'address'
        | 'taxRate'
        | 'numberPrefix'
        | 'colour'
        | 'email'
        | 'date'
        | 'beadLine';
    };

/** A list's `item` is the schema of each. */
type Meant = FieldKind | { readonly kind: 'list'; readonly item: unknown };

/** Which kind each schema of a field is. */
export const fieldKinds = z.registry<Meant>();
