/** What the bead board starts from: a piece as its file has it, or an empty strand of a kind, with all that lies in the trays. */
import { partNamesIn, type Catalogue } from '#catalogue/model/catalogue.ts';
import type { BoardInput } from '#board/model/input.ts';
import { settled } from '#board/model/settle.ts';
import { PIECE_KINDS, type Design, type PieceKind } from '#core/design/design.ts';
import type { Frame } from './frame.ts';

/** A piece that has no file yet. */
export type NewPiece = { readonly id: string; readonly name: string; readonly kind: PieceKind };

/** An empty strand, held together as the newest piece of its kind is; null where the shop has no wire at all. */
export function emptyDesign({ pieces, wires, components }: Catalogue, { id, kind }: NewPiece): Design | null {
  const model = (pieces.find(({ design }) => design.kind === kind) ?? pieces[0])?.design;
  const wire = model?.wire ?? Object.values(wires)[0];
  if (wire === undefined) return null;
  const none = { clasp: '', ring: null, crimp: '', cover: null, loopMm: 3, guard: null, extenderMm: 0 };
  const { clasp, ring, crimp, cover, loopMm, guard } = model?.ends ?? none;
  const empty: Design = {
    id,
    kind,
    strands: [{ id: 'strand', sections: [], mirrored: true }],
    lie: 'single',
    nestGapMm: 0,
    ends: { clasp, ring, crimp, cover, loopMm, guard, extenderMm: 0 },
    hanging: null,
    oneSided: false,
    wire,
    components: {},
  };
  return settled(empty, { components });
}

/** A new piece as an address asks for it; anything unknown at its usual. */
export function newPieceOf(id: string, query: URLSearchParams): NewPiece {
  const name = (query.get('name') ?? '').slice(0, 60).trim();
  return { id, name, kind: PIECE_KINDS.find((kind) => kind === query.get('kind')) ?? 'bracelet' };
}

export type OpenedPiece = {
  readonly id: string;
  readonly name: string;
  readonly design: Design;
  /** Of its file; null for none yet. */
  readonly digest: string | null;
  readonly listedMinor: number | null;
};

export function boardInput(catalogue: Catalogue, opened: OpenedPiece, { lang }: Frame): BoardInput {
  const { shop, components, wires, partNumbers, trays } = catalogue;
  const { id, name, design, digest, listedMinor } = opened;
  return {
    lang,
    unit: shop.unit,
    rules: shop.rules,
    piece: { id, name },
    digest,
    design,
    listedMinor,
    trays: { components, wires },
    names: partNamesIn(catalogue, lang),
    partNumbers,
    trayOf: trays,
  };
}
