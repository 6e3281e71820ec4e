/** The design after what a hand did at the board. The core's own `Design` is the only model of a piece here. */
import { LEAST_LINK_MM, MOST_IN_ROW, MOST_RINGS } from '#core/design/caps.ts';
import { wholeLinks } from '#core/design/chain.ts';
import type { Design, Ends, Section } from '#core/design/design.ts';
import type { Action, Done, Trays } from './action.ts';
import { addStrand, exchange, removeStrand, setEnds, setMirrored } from './onPiece.ts';
import * as on from './onStrand.ts';
import { changeSection, loosen, repeat } from './repeats.ts';
import { held } from './place.ts';
import { settled } from './settle.ts';

/** Least and most mm of a loop, a chain and a gap, as a file may have them. */
const LOOP_MM = [0.5, 30] as const;
const CHAIN_MM = [1, 200] as const;
const MOST_LINK_MM = 30;
const GAP_MM = 200;

type OnStrand = Extract<
  Action,
  {
    type:
      'put' | 'middle' | 'begin' | 'count' | 'remove' | 'replace' | 'move' | 'repeat' | 'loosen' | 'section';
  }
>;

const strandOf = (action: OnStrand): number => {
  if ('span' in action) return action.span.strand;
  if ('after' in action) return action.after.strand;
  return 'at' in action ? action.at.strand : action.strand;
};

const counted = (component: string, count: number) => ({
  component,
  count: Math.min(MOST_IN_ROW, Math.max(1, Math.round(count))),
});

function onStrand(sections: readonly Section[], action: OnStrand): on.Laid {
  switch (action.type) {
    case 'put':
      return on.put(sections, action.after, counted(action.component, action.count), action.name);
    case 'middle':
      return on.putMiddle(sections, action.strand, counted(action.component, action.count), action.name);
    case 'begin':
      return on.beginSection(sections, action);
    case 'count':
      return on.setCount(sections, action.at, counted('', action.count).count);
    case 'remove':
      return on.remove(sections, action.span);
    case 'replace':
      return on.replace(sections, action.span, action.component);
    case 'move':
      return on.move(sections, action.span, action.by);
    case 'repeat':
      return repeat(sections, action.span, action.name, action.times);
    case 'loosen':
      return loosen(sections, action.strand, action.section);
    case 'section':
      return changeSection(sections, action.strand, action.section, action.change);
  }
}

function onPiece(design: Design, action: Exclude<Action, OnStrand>, trays: Trays): Design {
  switch (action.type) {
    case 'counts':
      return withCounts(design, action.strand, action.counts);
    case 'mirrored': {
      const strand = design.strands[action.strand];
      if (strand === undefined) return design;
      const changed = setMirrored(strand, action.mirrored);
      return { ...design, strands: design.strands.with(action.strand, changed) };
    }
    case 'add-strand':
      return addStrand(design, action.like);
    case 'remove-strand':
      return removeStrand(design, action.strand);
    case 'lie': {
      const nestGapMm = action.lie === 'nested' ? between(action.gapMm, 0, GAP_MM) : 0;
      return { ...design, lie: action.lie, nestGapMm };
    }
    case 'lay': {
      const { wire, ...laid } = action.design;
      return { ...laid, id: design.id, wire: trays.wires[wire] ?? design.wire, components: {} };
    }
    case 'kind':
      return { ...design, kind: action.kind };
    case 'wire': {
      const wire = trays.wires[action.wire];
      return wire === undefined ? design : { ...design, wire };
    }
    case 'ends': {
      const { linkMm: _linkMm, ...before } = design.ends;
      const ends = { ...design.ends, ...action.change };
      const sound = { loopMm: between(ends.loopMm, ...LOOP_MM), ...chainOf(ends) };
      return setEnds({ ...design, ends: before }, { ...withoutLink(action.change), ...sound }, trays);
    }
    case 'hanging': {
      const { hanging } = action;
      return { ...design, hanging: hanging && { ...hanging, rings: hanging.rings.slice(0, MOST_RINGS) } };
    }
    case 'front': {
      const { upright: _before, ...rest } = design;
      const { oneSided, upright } = action;
      return { ...rest, oneSided, ...(upright !== null && { upright }) };
    }
    case 'exchange':
      return exchange(design, action.from, action.to);
  }
}

/** Parts of a millimetre that a file tells apart. */
const FINENESS = 10_000;

function between(value: number, least: number, most: number): number {
  if (!Number.isFinite(value)) return least;
  return Math.round(Math.min(most, Math.max(least, value)) * FINENESS) / FINENESS;
}

const chainMm = (mm: number): number => (mm >= CHAIN_MM[0] ? between(mm, ...CHAIN_MM) : 0);

/** A chain in whole links; without a chain, or with links too short for a clasp, nothing is said of links. */
function chainOf({ extenderMm, linkMm = 0 }: Ends): Pick<Ends, 'extenderMm' | 'linkMm'> {
  const wholeMm = chainMm(extenderMm);
  if (wholeMm === 0 || linkMm < LEAST_LINK_MM) return { extenderMm: wholeMm };
  const eachMm = between(linkMm, LEAST_LINK_MM, Math.min(MOST_LINK_MM, wholeMm));
  return { extenderMm: wholeLinks(wholeMm, eachMm) * eachMm, linkMm: eachMm };
}

function withoutLink({ linkMm: _linkMm, ...rest }: Partial<Ends>): Partial<Ends> {
  return rest;
}

/** Usual counts of a strand's sections, each with the others making room for it. */
function withCounts(design: Design, at: number, counts: readonly number[]): Design {
  const strand = design.strands[at];
  if (strand === undefined) return design;
  const sections = strand.sections.reduce(
    (all, _, section) => changeSection(all, at, section, { usual: counts[section] ?? 0 }).sections,
    strand.sections,
  );
  return { ...design, strands: design.strands.with(at, { ...strand, sections }) };
}

const STRAND_ACTIONS: readonly Action['type'][] = [
  ...([
    'put',
    'middle',
    'begin',
    'count',
    'remove',
    'replace',
    'move',
    'repeat',
    'loosen',
    'section',
  ] as const),
];

const isOnStrand = (action: Action): action is OnStrand => STRAND_ACTIONS.includes(action.type);

/** Every component that an action brings is in the trays. */
function isKnown(action: Action, { components }: Trays): boolean {
  if ('component' in action) return action.component in components;
  return action.type !== 'exchange' || action.to in components;
}

/**
 * Does one thing to a design. Total: what can't be done leaves it as it is.
 * @returns a settled design, and the runs that are in hand then; null where those don't change.
 */
export function reduce(design: Design, action: Action, trays: Trays): Done {
  const unchanged: Done = { design, span: null };
  if (!isKnown(action, trays)) return unchanged;
  if (!isOnStrand(action)) return { design: settled(onPiece(design, action, trays), trays), span: null };
  const at = strandOf(action);
  const strand = design.strands[at];
  if (strand === undefined || (action.type === 'middle' && !strand.mirrored)) return unchanged;
  const { sections, span } = onStrand(strand.sections, action);
  if (sections === strand.sections) return unchanged;
  const laid = settled({ ...design, strands: design.strands.with(at, { ...strand, sections }) }, trays);
  return { design: laid, span: held(laid, span) };
}
