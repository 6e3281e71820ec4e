/** What `--found` found, as text for a person at a terminal. */
import type { Fitted } from '#core/design/choice.ts';
import type { Design, Strand } from '#core/design/design.ts';
import type { Format } from '#words/format.ts';
import { terminalWords } from '#words/words.ts';
import { isFar } from './measured.ts';
import type { StrandFound } from './measured.ts';
import { nameOf } from './names.ts';
import type { Subject } from './subject.ts';

/** What one repeat of each section holds, and whether it is counted on one side only. */
function holdLines(design: Design, { sections, mirrored }: Strand, f: Format): string[] {
  const { found } = terminalWords(f.lang);
  const name = nameOf(design);
  return sections.map((section) => {
    const parts = section.motif.map(({ component, count }) => found.part(f, count, name(component)));
    return `  ${found.holds(section.name, parts, mirrored && section.role !== 'focal')}`;
  });
}

function strandLines(design: Design, of: Fitted, one: StrandFound, f: Format) {
  const { strand, mm, explanations } = one;
  const { found } = terminalWords(f.lang);
  const said = (counts: readonly number[]) =>
    strand.sections.map(({ name }, index) => `${name} ${f.number(counts[index] ?? 0)}`).join(', ');
  const percent = (share: number) => Math.round(share * 100);
  const likely = explanations.filter(({ share }) => percent(share) > 0);
  const fewer = explanations.length - likely.length;
  const [nearest] = explanations.toSorted((a, b) => Math.abs(a.offMm) - Math.abs(b.offMm));
  const rows =
    nearest !== undefined && isFar(of, one)
      ? [found.far(said(nearest.counts), f.length(nearest.measuresMm))]
      : [
          ...likely.map(({ counts, measuresMm, share }) => {
            return `  ${found.row(percent(share), said(counts), f.length(measuresMm))}`;
          }),
          ...(fewer > 0 ? [`  ${found.fewer(f, fewer)}`] : []),
        ];
  return [found.measured(of, f.length(mm)), ...rows, found.legend, ...holdLines(design, strand, f)];
}

/** Strand by strand: the counts, likeliest first, then what is counted. */
export function foundText(
  { name, design }: Subject,
  of: Fitted,
  results: readonly StrandFound[],
  f: Format,
): string {
  const { found, heading, strand } = terminalWords(f.lang);
  const blocks = results.map((one, index) => [
    ...(results.length > 1 ? [strand(f, index + 1)] : []),
    ...strandLines(design, of, one, f),
  ]);
  return [[heading(name, design.kind), found.heading], ...blocks]
    .map((block) => block.join('\n'))
    .join('\n\n');
}
