/** The piece can be strung: holes take the wire, the crimp grips, the clasp has room. */
import { validateDesign } from '#core/design/validate/validateDesign.ts';
import type { Component } from '#core/design/component.ts';
import { chooseCover, chooseCrimp, crimpFit, WIRES_IN_CRIMP } from '#core/design/ends/crimp.ts';
import { checkTails } from '#core/instructions/tail.ts';
import type { Rules } from '#core/design/rules.ts';
import { usual } from '#core/sizing/usual.ts';
import type { ValidationError } from '#core/design/validationError.ts';
import type { Design } from '#core/design/design.ts';
import { expand } from '#core/design/expand.ts';
import type { AuthoredStrand } from '../build/design.ts';
import type { Entry } from '../read/entry.ts';
import type { FieldPath, Problem } from '../read/problem.ts';
import type { AuthoredPiece } from '../schemas/piece.ts';

type Piece = Entry<AuthoredPiece>;

/** Where the maker wrote what the core names by its own path. */
function writtenAt(at: string, strands: readonly AuthoredStrand[]): FieldPath {
  const [head = '', ...rest] = at.split('.');
  if (head === 'ends') return ['closing', ...rest.map((field) => field.replace(/Mm$/, ''))];
  if (head === 'hanging')
    return rest[0] === 'pendant' ? ['pendant', 'hangs'] : ['pendant', 'rings', Number(rest[1])];
  if (head !== 'strands') return [];
  const [strand, , section, field, place] = rest;
  const path = strands[Number(strand)]?.path ?? ['strands'];
  if (section === undefined) return path;
  const inSection = [...path, Number(section)];
  if (field !== 'motif') return [...inSection, ...(field === undefined ? [] : [field])];
  return [...inSection, 'beads', ...(place === undefined ? [] : [Number(place)])];
}

/** All components of the shop, where a fitting one may lie. */
type Stock = Readonly<Record<string, Component>>;

const ofKind = (stock: Stock, kind: Component['kind']): Component[] =>
  Object.values(stock).filter((component) => component.kind === kind);

/** Short name of the shop's crimp that grips the design's wire, or ''. */
function fittingCrimp(stock: Stock, design: Design, rules: Rules): string {
  const { diameterMm } = design.wire;
  const found = chooseCrimp(ofKind(stock, 'crimp'), WIRES_IN_CRIMP, diameterMm, rules.wire.crimpPlayMm);
  return found?.fit === 'fits' ? found.crimp : '';
}

/** Short name of the shop's cover that closes over the design's crimp, or ''. */
function fittingCover(stock: Stock, design: Design): string {
  const crimp = design.components[design.ends.crimp];
  const found = crimp === undefined ? null : chooseCover(ofKind(stock, 'cover'), crimp);
  return found?.fit === 'fits' ? found.cover : '';
}

/** Short name of the shop's ring that opens and is most like a closed one: its metal first, then its length; or ''. */
function fittingRing(stock: Stock, design: Design, closed: string): string {
  const wanted = design.components[closed];
  const apart = ({ alongMm }: Component): number => Math.abs(alongMm - (wanted?.alongMm ?? 0));
  const other = ({ material }: Component): number => (material === wanted?.material ? 0 : 1);
  const [found] = ofKind(stock, 'ring')
    .filter(({ joint }) => joint === 'open' || joint === 'split')
    .sort((one, two) => other(one) - other(two) || apart(one) - apart(two));
  return found?.id ?? '';
}

/** Short name of a part in the shop that would fit where the design's own doesn't, or ''. */
function fittingFor(error: ValidationError, design: Design, rules: Rules, stock: Stock): string {
  if (error.code === 'crimp-too-tight') return fittingCrimp(stock, design, rules);
  if (error.code === 'cover-too-tight') return fittingCover(stock, design);
  return error.code === 'ring-closed' ? fittingRing(stock, design, error.ring) : '';
}

/** The doubled wire goes back through the end beads, at the usual counts. */
function assertTailsPass(
  entry: Piece,
  design: Design,
  strands: readonly AuthoredStrand[],
  rules: Rules,
): Problem[] {
  const seen = new Set<string>();
  return expand(design, usual(design)).flatMap((placed, index) => {
    const strung = placed.filter(({ section }) => section !== 'end');
    const components = strung.map(({ component }) => component);
    const { clasp, ring } = checkTails(components, design.wire.diameterMm, rules.wire.tailMm);
    return [clasp, ring].flatMap((check) => {
      const bead = check.blockedBy;
      if (bead === null || seen.has(bead.component)) return [];
      seen.add(bead.component);
      return [
        entry.problemAt(strands[index]?.path ?? [], {
          code: 'end-hole-too-small',
          component: bead.component,
          holeMm: bead.holeMm,
          needMm: check.needMm,
          wire: design.wire.id,
        }),
      ];
    });
  });
}

/** A remark where the crimp has more room than the shop's play. */
function noteLooseCrimp(entry: Piece, design: Design, rules: Rules, stock: Stock): Problem[] {
  const crimp = design.components[design.ends.crimp];
  if (crimp === undefined) return [];
  const { fit, insideMm, needMm } = crimpFit(
    crimp,
    WIRES_IN_CRIMP,
    design.wire.diameterMm,
    rules.wire.crimpPlayMm,
  );
  if (fit !== 'loose' || needMm === null) return [];
  const mostMm = needMm + rules.wire.crimpPlayMm;
  return [
    entry.problemAt(['closing', 'crimp'], {
      code: 'crimp-too-loose',
      crimp: crimp.id,
      insideMm,
      mostMm,
      wire: design.wire.id,
      fitting: fittingCrimp(stock, design, rules),
    }),
  ];
}

/** All that keeps the piece from being strung; `notes` are remarks that don't. */
export function assertStringable(
  entry: Piece,
  design: Design,
  strands: readonly AuthoredStrand[],
  rules: Rules,
  stock: Stock,
): { problems: Problem[]; notes: Problem[] } {
  const problems = validateDesign(design).map((error) => {
    const fitting = fittingFor(error, design, rules, stock);
    return entry.problemAt(writtenAt(error.at, strands), { code: 'design', error, fitting });
  });
  if (problems.length > 0) return { problems, notes: [] };
  return {
    problems: assertTailsPass(entry, design, strands, rules),
    notes: noteLooseCrimp(entry, design, rules, stock),
  };
}
