/** Sections as the maker named them. An id is unique within its strand only, so a section is looked up by both. */
import type { Design } from '#core/design/design.ts';
import type { Help, SectionAt } from '#core/sizing/sizing.ts';
import type { Format } from './format.ts';
import { sentenceOf } from './sentence.ts';
import type { SizedWords } from './words.ts';

/** The section's name; its id where the design has no such section. */
export function sectionName(design: Design, { strand, section }: SectionAt): string {
  return design.strands[strand]?.sections.find(({ id }) => id === section)?.name ?? section;
}

/** What to call something that lies on one strand: its own name, and the strand's number where there are several. */
function onStrand(design: Design, strand: number, name: string, words: SizedWords, f: Format): string {
  return design.strands.length > 1 ? words.onStrand(f, name, strand + 1) : name;
}

/** The sections' names, each with its strand where there are several. */
export function sectionNames(
  design: Design,
  sections: readonly SectionAt[],
  words: SizedWords,
  f: Format,
): string[] {
  return sections.map((at) => onStrand(design, at.strand, sectionName(design, at), words, f));
}

/** Components of a section, each once: buyers don't know the maker's names of sections. */
function beadsOf(design: Design, { strand, section }: SectionAt): string[] {
  const motif = design.strands[strand]?.sections.find(({ id }) => id === section)?.motif ?? [];
  return [...new Set(motif.map(({ component }) => component))];
}

/** What would help, with the component's or section's name and its strand where there are several. */
export function helpSentence(design: Design, help: Help, words: SizedWords, f: Format): string {
  const named = (id: string): string => design.components[id]?.name ?? id;
  const plain =
    help.code === 'widen-section' ? f.list(beadsOf(design, help).map(named)) : named(help.component);
  const name = 'strand' in help ? onStrand(design, help.strand, plain, words, f) : plain;
  return sentenceOf(words.help, { ...help, name }, f);
}
