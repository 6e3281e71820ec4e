/** From what the maker wrote to a piece of the shop, with every invariant held against it. */
import type { Component, Wire } from '#core/design/component.ts';
import type { Rules } from '#core/design/rules.ts';
import type { Labels, Piece } from '../model/catalogue.ts';
import { labelsFor } from '../model/stored.ts';
import type { Entry } from '../read/entry.ts';
import type { Problem } from '../read/problem.ts';
import { revisionOf } from '../model/revision.ts';
import type { AuthoredPiece } from '../schemas/piece.ts';
import { assertComponentsExist, assertWireExists } from '../invariants/components.ts';
import { assertCountsInOrder, assertFocalPlace } from '../invariants/counts.ts';
import { assertCurrency } from '../invariants/currency.ts';
import { noteGaps } from '../invariants/gaps.ts';
import { noteLowPrice } from '../invariants/price.ts';
import { assertAlternatives } from '../invariants/alternatives.ts';
import { assertTeach } from '../invariants/teach.ts';
import { assertStringable } from '../invariants/stringable.ts';
import { assertTogether, assertWearable } from '../invariants/sizes.ts';
import { buildAlternatives, buildDesign, strandsOf, type AuthoredStrand } from '../build/design.ts';
import { buildTeach } from '../build/teach.ts';
import { namedComponents, namedInstead } from '../build/naming.ts';
import type { Photographs } from '../build/pictures.ts';

/** What pieces are made of, and the rules they are held against. */
export type Stock = {
  readonly components: Readonly<Record<string, Component>>;
  readonly labels: Labels;
  readonly wires: Readonly<Record<string, Wire>>;
  /** Short names that exist, those of broken entries too. */
  readonly knownComponents: ReadonlySet<string>;
  readonly knownWires: ReadonlySet<string>;
  /** Whether sizes that can't be met are looked for too. */
  readonly gaps: boolean;
  /** Null where the shop couldn't be read. */
  readonly rules: Rules | null;
};

function textsOf(value: AuthoredPiece): Pick<Piece, 'name' | 'summary' | 'story' | 'de'> {
  const { name, summary, story, de } = value;
  return { name, summary, story, de: de === undefined ? null : { ...de, name: de.name ?? name } };
}

/** Problems of the writing alone, before anything is looked up. */
function writing(entry: Entry<AuthoredPiece>, strands: readonly AuthoredStrand[] | null): Problem[] {
  if (strands === null) return [entry.problemAt([], { code: 'sections-or-strands' })];
  const lies =
    strands.length > 1 && entry.value.lie === undefined
      ? [entry.problemAt(['strands'], { code: 'lie-needed', strands: strands.length })]
      : [];
  return [...lies, ...assertCountsInOrder(entry), ...assertFocalPlace(entry, strands)];
}

/** The piece, or all that is wrong with it. `notes` are remarks that stop nothing. */
export function buildPiece(
  entry: Entry<AuthoredPiece>,
  stock: Stock,
  { pictures, problems: unseen }: Photographs,
): { piece: Piece | null; problems: Problem[]; notes: Problem[] } {
  const { value, id } = entry;
  const strands = strandsOf(value);
  const problems = [
    ...writing(entry, strands),
    ...assertComponentsExist(entry, stock.knownComponents),
    ...assertWireExists(entry, stock.knownWires),
    ...assertCurrency(entry, ['price'], value.price, stock.rules?.currency ?? null),
    ...assertTeach(entry),
    ...unseen,
  ];
  const wire = stock.wires[value.wire];
  // A component that is there but broken has its problem already; one is enough.
  const named = [...namedComponents(value), ...namedInstead(value)];
  const whole = named.every((one) => stock.components[one.id] !== undefined);
  if (problems.length > 0 || strands === null || wire === undefined || !whole || stock.rules === null) {
    return { piece: null, problems, notes: [] };
  }
  const design = buildDesign(id, value, strands, wire, stock.components);
  const strung = assertStringable(entry, design, strands, stock.rules, stock.components);
  if (strung.problems.length > 0) return { piece: null, ...strung };
  const alternatives = buildAlternatives(value, stock.components);
  const sizes = [
    ...assertWearable(entry, design),
    ...assertTogether(entry, design, stock.rules),
    ...assertAlternatives(entry, design, alternatives, stock.rules),
  ];
  const piece: Piece = {
    id,
    ...textsOf(value),
    design,
    alternatives,
    ...labelsFor({ design, alternatives }, stock.labels),
    listedMinor: value.price.minor,
    status: value.status,
    made: value.made,
    liesSince: value['lies-since'] ?? null,
    revision: revisionOf(design, alternatives, value.price.minor),
    pictures,
    teach: buildTeach(value.teach),
  };
  return {
    piece: sizes.length > 0 ? null : piece,
    problems: sizes,
    notes: [
      ...strung.notes,
      ...noteLowPrice(entry, design, stock.rules),
      ...(stock.gaps ? noteGaps(entry, design, stock.rules) : []),
    ],
  };
}
