/** What a piece's price is made of, as listed and in each size, and what it would be if something cost otherwise. */
import { componentNameIn, designIn, type Catalogue, type Piece } from '#catalogue/model/catalogue.ts';
import type { Measure } from '#core/design/choice.ts';
import type { Counts, Design } from '#core/design/design.ts';
import type { Rules } from '#core/design/rules.ts';
import { tally } from '#core/design/tally.ts';
import {
  earnedAt,
  priceStack,
  wholesaleMinor,
  type Earned,
  type PriceStack,
} from '#core/sizing/price/stack.ts';
import { costsByMaterial, withCosts } from '#core/sizing/price/tried.ts';
import { usual } from '#core/sizing/usual.ts';
import { sizeTable, type SizeRow } from '#ui/models/sizeRows.ts';
import type { Frame } from '../frame.ts';
import { readPriceQuery, type PriceQuery, type Tried } from './query.ts';

/** A price as it is, and as it would be; null where nothing is tried. */
export type Stacks = {
  readonly now: PriceStack;
  readonly tried: PriceStack | null;
};

/** What selling on leaves: at the wholesale price, without the shop's own fees. */
export type Wholesale = {
  readonly percent: number;
  readonly now: Earned;
  readonly tried: Earned | null;
};

export type SizePrice = SizeRow & Stacks;

export type PriceSheet = {
  readonly piece: Piece;
  /** Named in the maker's language. */
  readonly design: Design;
  readonly rules: Rules;
  readonly asked: PriceQuery;
  readonly listed: Stacks;
  readonly wholesale: Wholesale | null;
  /** null where the piece can't be sized; else what its sizes are told by, each with its price. */
  readonly sizes: { readonly of: Measure['of']; readonly rows: readonly SizePrice[] } | null;
  /** What a cost can be tried for: the piece's materials, the dearest first, and its components. */
  readonly materials: readonly { readonly material: string; readonly costMinor: number }[];
  readonly components: readonly { readonly id: string; readonly name: string; readonly costMinor: number }[];
};

function triedRules(rules: Rules, { labourMinorPerHour, feeHundredths, feeEachMinor }: Tried): Rules {
  const { price } = rules;
  return {
    ...rules,
    price: {
      ...price,
      labourMinorPerHour: labourMinorPerHour ?? price.labourMinorPerHour,
      fees: {
        hundredths: feeHundredths ?? price.fees?.hundredths ?? 0,
        eachMinor: feeEachMinor ?? price.fees?.eachMinor ?? 0,
      },
    },
  };
}

/** Design and rules as they would be. */
function tryOut(design: Design, rules: Rules, tried: Tried): { design: Design; rules: Rules } {
  const { cost } = tried;
  const counts = usual(design);
  return {
    design: cost === null ? design : withCosts(design, counts, cost.which, cost.percent),
    rules: triedRules(rules, tried),
  };
}

/** The sheet of a piece; null where the catalogue has no such piece. */
export function priceSheet(
  catalogue: Catalogue,
  id: string | undefined,
  query: URLSearchParams,
  { lang, shop }: Frame,
): PriceSheet | null {
  const piece = catalogue.pieces.find((one) => one.id === id);
  if (piece === undefined) return null;
  const { listedMinor, design } = piece;
  const { rules, wholesalePercent } = shop;
  const asked = readPriceQuery(query, rules.currency);
  const other = asked.tried === null ? null : tryOut(design, rules, asked.tried);
  const stacks = (counts: Counts): Stacks => ({
    now: priceStack(design, counts, rules, listedMinor),
    tried: other === null ? null : priceStack(other.design, counts, other.rules, listedMinor),
  });
  const listed = stacks(usual(design));
  const table = sizeTable(piece, rules, lang);
  return {
    piece,
    design: designIn(piece, lang),
    rules,
    asked,
    listed,
    wholesale: wholesalePercent === null ? null : wholesaleOf(piece, rules, wholesalePercent, other),
    sizes:
      table === null
        ? null
        : { of: table.of, rows: table.rows.map((row) => ({ ...row, ...stacks(row.candidate.counts) })) },
    materials: costsByMaterial(design, usual(design)),
    components: [...tally(design, usual(design))].map(([component, count]) => ({
      id: component,
      name: componentNameIn(catalogue, component, lang),
      costMinor: count * (design.components[component]?.costMinor ?? 0),
    })),
  };
}

function wholesaleOf(
  { design, listedMinor }: Piece,
  rules: Rules,
  percent: number,
  other: { readonly design: Design; readonly rules: Rules } | null,
): Wholesale {
  const counts = usual(design);
  const priceMinor = wholesaleMinor(listedMinor, percent);
  return {
    percent,
    now: earnedAt(design, counts, rules, priceMinor, false),
    tried: other === null ? null : earnedAt(other.design, counts, other.rules, priceMinor, false),
  };
}
