/** A part drawn by itself: one that lies in the trays, or one that is just being typed. */
import { buildComponent, isFieldOf } from '#catalogue/build/component.ts';
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import type { Entry } from '#catalogue/read/entry.ts';
import { fieldName } from '#catalogue/read/problem.ts';
import { componentSchema, type AuthoredComponent } from '#catalogue/schemas/component.ts';
import type { Component } from '#core/design/component.ts';
import type { Design } from '#core/design/design.ts';
import { CARD_BOX } from '#draw/drawings/card.ts';
import { drawPart } from '#draw/drawings/part.ts';
import { freshFields } from '../../intake/contentForm/formChanges.ts';
import { formTree } from '../../intake/contentForm/formTree.ts';
import { withTenMeasured } from '../../intake/contentForm/tenInARow.ts';
import { entryFields } from './entrySchemas.ts';

/** What a drawing of a part asks of a piece that has it: a guard at its clasp, a pendant that hangs. */
function alone(component: Component, { wires }: Catalogue): Design | null {
  const wire = Object.values(wires)[0];
  if (wire === undefined) return null;
  const { id } = component;
  return {
    id,
    kind: 'bracelet',
    strands: [],
    lie: 'single',
    nestGapMm: 0,
    ends: { clasp: id, ring: null, crimp: id, cover: null, loopMm: 3, guard: null, extenderMm: 0 },
    hanging: null,
    oneSided: false,
    wire,
    components: { [id]: component },
  };
}

const drawn = new WeakMap<Component, string>();

function draw(component: Component, catalogue: Catalogue): string | null {
  const known = drawn.get(component);
  if (known !== undefined) return known;
  const design = alone(component, catalogue);
  if (design === null) return null;
  const svg = drawPart(design, component, { title: component.name, description: '', idPrefix: 'part' });
  drawn.set(component, svg);
  return svg;
}

/** The drawing of a part of the trays as SVG; null where there is none of that name. */
export function partPicture(catalogue: Catalogue, id: string): string | null {
  const component = Object.hasOwn(catalogue.components, id) ? catalogue.components[id] : undefined;
  return component === undefined ? null : draw(component, catalogue);
}

/** Where there isn't enough to draw yet. */
export const EMPTY_PICTURE = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${CARD_BOX.width} ${CARD_BOX.height}"/>`;

/** What a drawing needs and doesn't show. */
const UNSEEN = { name: 'Drawn', cost: '0.00 GBP' } as const;
/** Taken where it isn't typed yet; a hole is drawn where it opens to the eye, and is never wider than half the part. */
const USUAL = {
  hole: '0.1 mm',
  closed: '1 mm',
  takes: '1 mm',
  hang: '20 mm',
  loop: 'through',
  material: 'glass',
  colour: '#8a8f91',
} as const;

/** The part as it is typed so far, read as its file would be; null where it isn't enough for a drawing. */
export function typedPart(form: URLSearchParams, currency: string): Component | null {
  const typed = freshFields(formTree(entryFields.component, {}, withTenMeasured(form)), currency);
  const { kind } = typed;
  const usual = Object.entries(USUAL).filter(([field]) => isFieldOf(field, String(kind ?? 'bead')));
  const data = { ...Object.fromEntries(usual), ...typed, ...UNSEEN };
  const parsed = componentSchema.safeParse(data);
  if (!parsed.success) return null;
  const entry: Entry<AuthoredComponent> = {
    ...{ id: 'drawn', file: '', place: '', value: parsed.data },
    problemAt: (path, error) => ({ file: '', line: 1, field: fieldName(path), error }),
  };
  return buildComponent(entry).component;
}

/** The drawing of what is typed so far; null where it isn't enough. */
export function typedPicture(form: URLSearchParams, catalogue: Catalogue): string | null {
  const component = typedPart(form, catalogue.shop.rules.currency);
  return component === null ? null : draw(component, catalogue);
}
