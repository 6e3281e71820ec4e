/** From counts to the components on the wire, in stringing order. */
import type { Component } from '../components/component.ts';

/** One component where it stands. */
export type Placed = {
  readonly component: Component;
  /** Section id; `end` for crimps, covers and what stands outside them. */
  readonly section: string;
  /** `left` and `right` as the maker sees the board with the clasp end on the left; `centre` for the focal section. */
  readonly side: 'left' | 'centre' | 'right';
};
