/** Findings as sentences. */
import type { Design } from '#core/design/design.ts';
import type { Finding, Where } from './answers.ts';
import type { Talk } from './talk.ts';

/** An end that nothing has been chosen for yet: its own sentence, once. */
export const isMissingPart = (finding: Finding): boolean =>
  finding.code === 'design' &&
  finding.where === 'closing' &&
  (finding.error.code === 'wrong-type' || finding.error.code === 'unknown-component');

export function findingSentence(finding: Finding, { words, said, f, nameOf, wrong }: Talk): string {
  switch (finding.code) {
    case 'design':
      if (isMissingPart(finding)) return words.findings.emptyParts;
      return finding.error.code === 'strand-empty' ? words.findings.empty : wrong(finding.error);
    case 'tail':
      return words.findings.tail(nameOf(finding.component), finding.holeMm, finding.needMm, f);
    case 'stock':
      return words.findings.stock(nameOf(finding.component), finding.have, finding.need, f);
    case 'price':
      return words.findings.price(f.money(finding.ruleMinor));
    case 'crimp':
      return said.crimp(finding.card.ends.crimp, f, nameOf);
    case 'cover':
      return finding.card.ends.cover === null ? '' : said.cover(finding.card.ends.cover, f, nameOf);
    case 'guard':
      return finding.card.ends.guard === null ? '' : said.guard(finding.card.ends.guard, f, nameOf);
    case 'facing': {
      const facing = finding.card.pendant?.facing ?? null;
      return facing === null ? '' : said.facing(facing, f);
    }
    case 'leans':
      return finding.card.pendant === null ? '' : said.centred(finding.card.pendant, f);
    case 'balance':
      return said.balance(finding.card.balance, f);
    case 'weak':
      return words.findings.weak;
  }
}

/** What a finding is about, as she calls it. */
export function whereName(design: Design, where: Where, { words, nameOf }: Talk): string {
  if (typeof where === 'string') return words.findings.place[where];
  const section = design.strands[where.strand]?.sections[where.section];
  const component = section?.motif[where.part]?.component;
  if (component !== undefined) return nameOf(component);
  return section?.name ?? words.findings.place.piece;
}

/** The same said once. */
export function findingsSaid(findings: readonly Finding[], talk: Talk): { finding: Finding; text: string }[] {
  const told = new Map<string, { finding: Finding; text: string }>();
  for (const finding of findings) {
    const text = findingSentence(finding, talk);
    if (!told.has(text)) told.set(text, { finding, text });
  }
  return [...told.values()];
}
