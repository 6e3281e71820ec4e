/** What the bead board starts from: a piece as its file has it, or an empty strand of a kind, with all that lies in the trays. */
import { designIn } from '#catalogue/build/designIn.ts';
import { partNamesIn, type Catalogue } from '#catalogue/model/catalogue.ts';
import type { BoardInput } from '#board/model/input.ts';
import { requestFor } from '#board/model/saving.ts';
import { settled } from '#board/model/settle.ts';
import { PIECE_KINDS, type Design, type PieceKind } from '#core/design/design.ts';
import type { Snapshot } from '../book/snapshot.ts';
import type { Opened } from '../content/entry.ts';
import type { Frame } from './frame.ts';

/** A piece that has no design yet. */
export type NewPiece = {
  readonly id: string;
  readonly name: string;
  readonly kind: PieceKind;
};

/** An empty strand, held together as the newest piece of its kind is; null where the shop has no wire at all. */
export function emptyDesign({ pieces, wires, components }: Catalogue, { id, kind }: NewPiece): Design | null {
  const model = (pieces.find(({ design }) => design.kind === kind) ?? pieces[0])?.design;
  const wire = model?.wire ?? Object.values(wires)[0];
  if (wire === undefined) return null;
  const none = {
    clasp: '',
    ring: null,
    crimp: '',
    cover: null,
    loopMm: 3,
    guard: null,
    extenderMm: 0,
  };
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

const kindOf = (written: unknown): PieceKind => PIECE_KINDS.find((kind) => kind === written) ?? 'bracelet';

/** A new piece as an address asks for it; anything unknown at its usual. */
function newPieceOf(id: string, query: URLSearchParams): NewPiece {
  const name = (query.get('name') ?? '').slice(0, 60).trim();
  return { id, name, kind: kindOf(query.get('kind')) };
}

/** What a piece whose file is gone was called and is. */
const ofVersion = (version: Snapshot | null): Partial<NewPiece> =>
  version === null ? {} : { name: version.name, kind: version.design.kind };

type Written = { readonly name?: unknown; readonly kind?: unknown };

/**
 * @param catalogue as it lies there now
 * @param opened the piece's file; null where there is none yet
 * @param query what a new piece is called and is
 * @param version the piece as it was ordered once, to be laid on the board; null for the file's own
 * @returns null where nothing can be strung for want of a wire
 */
export function boardInput(
  catalogue: Catalogue,
  id: string,
  opened: Opened | null,
  query: URLSearchParams,
  { lang, shop }: Frame,
  version: Snapshot | null = null,
): BoardInput | null {
  const { components, wires, partNumbers, trays, pieces } = catalogue;
  const { name, kind } = (opened?.data ?? {}) as Written;
  const fresh =
    opened === null
      ? { ...newPieceOf(id, query), ...ofVersion(version) }
      : { id, name: String(name ?? id), kind: kindOf(kind) };
  const design =
    (opened === null ? null : designIn(id, opened.data, catalogue)) ?? emptyDesign(catalogue, fresh);
  if (design === null) return null;
  return {
    lang,
    unit: shop.unit,
    rules: shop.rules,
    piece: { id, name: fresh.name },
    digest: opened?.digest ?? null,
    design,
    version: version === null ? null : requestFor(version.design, null, null).design,
    listedMinor: pieces.find((piece) => piece.id === id)?.listedMinor ?? null,
    trays: { components, wires },
    names: partNamesIn(catalogue, lang),
    partNumbers,
    trayOf: trays,
  };
}
