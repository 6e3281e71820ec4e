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

/** One problem of the core's in the catalogue's own codes, at the maker's own line. */
function retell(
  entry: Piece,
  design: Design,
  path: FieldPath,
  { code, args }: ValidationError,
  stock: Stock,
  rules: Rules,
): Problem {
  const text = (name: string): string => String(args[name] ?? '');
  const figure = (name: string): number => Number(args[name] ?? 0);
  const wire = design.wire.id;
  switch (code) {
    case 'hole-too-small':
      return entry.complain(path, code, {
        component: text('component'),
        holeMm: figure('holeMm'),
        needMm: figure('needMm'),
        wire,
      });
    case 'crimp-too-small':
      return entry.complain(path, 'crimp-too-tight', {
        crimp: text('component'),
        insideMm: figure('holeMm'),
        needMm: figure('needMm'),
        wire,
        fitting: fittingCrimp(stock, design, rules),
      });
    case 'cover-wrong':
      return entry.complain(path, 'cover-not-fit', {
        cover: text('component'),
        takesMm: figure('takesMm'),
        crimp: text('crimp'),
        closedMm: figure('closedMm'),
        fitting: fittingCover(stock, design),
      });
    case 'ring-closed':
      return entry.complain(path, code, {
        ring: text('component'),
        hangs: text('hangs'),
        fitting: fittingRing(stock, design, text('component')),
      });
    case 'wrong-kind':
      return entry.complain(path, code, { id: text('component'), kind: text('kind'), wanted: text('kinds') });
    case 'ways':
      return entry.complain(path, code, {
        clasp: design.ends.clasp,
        ways: figure('ways'),
        strands: figure('strands'),
      });
    default:
      return entry.complain(path, 'design-other', { code: args['why'] === undefined ? code : text('why') });
  }
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
        entry.complain(strands[index]?.path ?? [], 'end-hole-too-small', {
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
    entry.complain(['closing', 'crimp'], 'crimp-too-loose', {
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
  const problems = validateDesign(design).map((one) =>
    retell(entry, design, writtenAt(one.at, strands), one, stock, rules),
  );
  if (problems.length > 0) return { problems, notes: [] };
  return {
    problems: assertTailsPass(entry, design, strands, rules),
    notes: noteLooseCrimp(entry, design, rules, stock),
  };
}
