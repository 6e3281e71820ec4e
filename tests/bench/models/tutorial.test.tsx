/** The tutorial at the bench: her words in the form, and how it reads in the size she looks at. */
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { formTree, type FormNode } from '#bench/intake/contentForm/formTree.ts';
import { tutorialFields, entryFields } from '#bench/models/content/entrySchemas.ts';
import type { FormFace } from '#bench/models/content/formFace.ts';
import { tutorialFace, tutorialSheet } from '#bench/models/tutorialSheet.ts';
import { TutorialSheet } from '#ui/components/tutorial/TutorialSheet.tsx';
import { catalogue, frame } from '../shop.ts';

const sheetOf = (id: string, query = '') => tutorialSheet(catalogue, id, new URLSearchParams(query), frame);

/** Stands in for the whole form's face, of which a tutorial's takes only these. */
const plainFace = {
  lang: 'en',
  offered: () => true,
  label: ({ path }: Pick<FormNode, 'path'>) => path.join('.'),
  hint: () => null,
} as unknown as FormFace;

const flat = (nodes: readonly FormNode[]): FormNode[] =>
  nodes.flatMap((node) => (node.node === 'group' ? [node, ...flat(node.nodes)] : [node]));

describe('the form', () => {
  it('asks for the tutorial alone, which the form of words and price leaves out', () => {
    expect(tutorialFields.map(({ name }) => name)).toEqual(['teach']);
    expect(entryFields.piece.map(({ name }) => name)).not.toContain('teach');
  });

  it('has the steps that the piece has, each with its usual words and what they must say', () => {
    const steps = sheetOf('banked-fire')!.tutorial!.card.steps;
    const face = tutorialFace(plainFace, steps);
    const nodes = flat(formTree(tutorialFields, {}, null));
    const field = (key: string) => nodes.find((node) => node.key === key)!;
    expect(face.offered(field('teach.steps.crimp'))).toBe(true);
    expect(face.offered(field('teach.steps.hang-pendant'))).toBe(false);
    expect(face.offered(field('teach.de.steps.hang-pendant'))).toBe(false);
    expect(face.offered(field('teach.lead'))).toBe(true);
    expect(face.label(field('teach.steps.cut-wire'))).toBe('Cutting the wire');
    expect(face.hint(field('teach.steps.cut-wire'))).toContain('As usual: “Cut {length} of {wire}.');
    expect(face.hint(field('teach.de.steps.cut-wire'))).toContain('Schneiden Sie {length} Draht ab');
    expect(face.hint(field('teach.steps.cut-wire'))).toContain('Keep {length}');
    const typed = formTree(tutorialFields, { teach: { steps: { 'hang-pendant': 'Hang it.' } } }, null);
    expect(face.offered(flat(typed).find(({ key }) => key === 'teach.steps.hang-pendant')!)).toBe(true);
  });
});

describe('how it reads', () => {
  const page = (id: string, query = ''): string => {
    const tutorial = sheetOf(id, query)!.tutorial!;
    return renderToString(<TutorialSheet tutorial={tutorial} lang="en" unit="in" currency="GBP" />);
  };

  it('has her words in place of the usual ones, with the size’s figures in them', () => {
    const shown = page('banked-fire');
    expect(shown).toContain('people who have never held a crimping tool');
    expect(shown).toContain('as in the picture, the clasp on the left. Lamp or daylight');
    expect(shown).not.toContain('{');
    expect(shown).toContain('Count 51, out loud');
    expect(page('banked-fire', 'size=180+mm&hand=left')).toContain('the clasp on the right');
  });

  it('has a drawing for each stage, every id of which is the page’s only one', () => {
    for (const id of ['banked-fire', 'wash-day', 'two-locks']) {
      const shown = page(id);
      expect(shown.match(/class="stage"/g)!.length).toBeGreaterThan(9);
      const ids = [...shown.matchAll(/\bid="([^"]+)"/g)].map(([, one]) => one);
      expect(ids.filter((one, at) => ids.indexOf(one) !== at)).toEqual([]);
    }
  });

  it('has cautions where they apply, and defers to the rules of the place', () => {
    expect(page('banked-fire')).toContain('Cut ends of steel wire fly');
    expect(page('banked-fire')).toContain('differ by country');
    const magnetic = catalogue.pieces.find(({ design }) =>
      Object.values(design.components).some(({ cautions }) => cautions.includes('magnet')),
    )!;
    expect(page(magnetic.id)).toContain('heart pacemaker');
    expect(page('banked-fire')).not.toContain('heart pacemaker');
  });

  it('there is none of a piece that isn’t there', () => {
    expect(sheetOf('no-such-piece')).toBeNull();
  });
});
