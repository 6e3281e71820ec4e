/**
 * What the shop is made of once it has been read: plain data, the same for the
 * build, the bench and the terminal. Measures are the core's (mm, g, N, minor
 * units); dates are ISO 8601 as far as they are known.
 */
import { componentsOf, type Alternatives } from '#core/design/alternatives.ts';
import type { Component, Wire } from '#core/design/component.ts';
import type { PostRules } from '#core/post/rules.ts';
import type { Rules } from '#core/design/rules.ts';
import type { Design } from '#core/design/design.ts';
import type { ShownUnit } from '#core/units/unit.ts';
import type { Lang } from '#words/lang.ts';
import type { OwnSteps } from '#words/teachStep.ts';
import type { Crop } from './crop.ts';
import type { Supply } from './supply.ts';

/** `available`: lies on the shelf in its listed size. `to-order`: made when asked for. `past`: not made any more. */
export const STATUSES = ['available', 'to-order', 'past'] as const;
export type Status = (typeof STATUSES)[number];

/** A piece's words in one language. `story` may hold several paragraphs, a blank line between. */
export type PieceTexts = { readonly name: string; readonly summary: string; readonly story: string };

/** A photograph beside the piece's entry. */
export type Picture = {
  /** Path within the content folder, with forward slashes. */
  readonly file: string;
  readonly format: 'jpeg' | 'png' | 'webp' | 'avif';
  /** What a person who doesn't see it should know, by language; English always. */
  readonly alt: { readonly en: string; readonly de: string | null };
  /** The part of it that is shown; null for all. */
  readonly crop: Crop | null;
};

/** What is written on a component or wire besides what is computed by: by its id, or by `wireKey`; only where she wrote any. */
export type Labels = {
  readonly germanNames: Readonly<Record<string, string>>;
  /** As on the bag: the seller's number, or her own. */
  readonly partNumbers: Readonly<Record<string, string>>;
};

/** Her own words of a tutorial in one language: before it begins, and in place of the usual ones of a step. */
export type TeachTexts = { readonly lead: string | null; readonly steps: OwnSteps };

/** A piece as a tutorial. */
export type Teach = {
  /** Whether the shop has a page of it. */
  readonly offered: boolean;
  readonly en: TeachTexts;
  /** null where she wrote nothing in German: then the usual German words stand, not her English ones. */
  readonly de: TeachTexts | null;
};

/** A piece, with the labels of its own wire and components. */
export type Piece = PieceTexts &
  Labels & {
    readonly id: string;
    /** German words; null where she wrote none, and English stands in. */
    readonly de: PieceTexts | null;
    readonly design: Design;
    /** What a buyer may choose instead of its clasp and pendant. */
    readonly alternatives: Alternatives;
    /** Price of the piece at its usual counts. */
    readonly listedMinor: number;
    readonly status: Status;
    /** When it was first made: `2024`, `2024-05` or `2024-05-17`. */
    readonly made: string;
    /** Since when the one that lies finished does, as `made`; null where she wrote nothing. */
    readonly liesSince: string | null;
    /** Twelve hexadecimal digits that change when the design, what may be chosen instead, the wire, a component's measures or the price do. */
    readonly revision: string;
    readonly pictures: readonly Picture[];
    /** null where she says nothing of a tutorial. */
    readonly teach: Teach | null;
  };

/** `track`: https address of a parcel's page with `{tracking}` in it; null for none. */
export type Carrier = { readonly name: string; readonly track: string | null };

/** How an order reaches the maker, and what happens to it then. */
type Orders = {
  readonly email: string;
  /** Path or address that takes a POSTed order; null where orders come by e-mail only. */
  readonly desk: string | null;
  /** https address of a form service that takes the desk's place and passes posts on by e-mail; null for none. */
  readonly form: string | null;
  /** Payment address with `{number}`, `{amount}` and `{currency}` in it; null for none. */
  readonly payment: string | null;
  /** Who carries parcels; the first is the usual one. */
  readonly carriers: readonly Carrier[];
  /** Weeks from agreement to sending, as she tells buyers. */
  readonly weeks: number;
  /** Months that a buyer's personal data is kept after the order is closed. */
  readonly keepMonths: number;
  /** Months that an invoice keeps its buyer's name and address, whatever is erased; null: they go with the buyer. */
  readonly keepInvoicesMonths: number | null;
  /** Hours that she strings in a week; null where she says none, and nothing is planned. */
  readonly hoursPerWeek: number | null;
};

/** How pieces reach a buyer. */
type Post = {
  readonly rules: PostRules;
  /** Where and when an order can be collected, by language; null where none can. */
  readonly collection: { readonly en: string; readonly de: string | null } | null;
  /** Sender, as printed on a label; null for the shop's name alone. */
  readonly returnTo: string | null;
};

/** Who issues invoices, and what they say of tax: by local rules, as she wrote it. */
export type Seller = {
  readonly name: string;
  readonly address: readonly string[];
  readonly taxNumber: string | null;
  /** Tax within the prices, hundredths of a percent; null where she isn't registered for it. */
  readonly taxHundredths: number | null;
  /** Her own sentence about tax, by language; null for the shop's usual one. */
  readonly taxText: { readonly en: string; readonly de: string | null } | null;
  /** What stands before the count in an invoice's number; `{year}` for the year. */
  readonly numberPrefix: string;
};

/** A text in a language, English where there is none; null where there is no text at all. */
export function inLang(
  text: { readonly en: string; readonly de: string | null } | null,
  lang: Lang,
): string | null {
  return text === null ? null : (text[lang] ?? text.en);
}

export type Shop = {
  readonly name: string;
  readonly maker: string;
  readonly place: string;
  /** Year the shop began. */
  readonly since: number;
  /** One line under the name, by language. */
  readonly line: { readonly en: string; readonly de: string | null };
  /** Where it stands on the web: https, with a slash at its end; a path is the folder it lies in. */
  readonly address: string;
  /** Unit a buyer sees before choosing one. */
  readonly unit: ShownUnit;
  readonly rules: Rules;
  readonly orders: Orders;
  /** What is bought beyond what is needed, in percent; from which length on an offcut of wire is kept, mm. */
  readonly stock: { readonly sparePercent: number; readonly offcutMm: number };
  /** Null where nothing is said: then no invoice can be issued. */
  readonly seller: Seller | null;
  /** null where buyers aren't asked. */
  readonly post: Post | null;
  /** What shops that sell on pay of a price, percent; null where she says nothing. */
  readonly wholesalePercent: number | null;
};

/** A page of advice, written in Markdown. */
export type Guide = {
  /** Same in every language: `measuring`. */
  readonly id: string;
  readonly lang: Lang;
  readonly title: string;
  readonly summary: string;
  /** Place in lists, smallest first. */
  readonly order: number;
  /** Markdown, without the front matter. */
  readonly body: string;
};

export type Catalogue = Labels & {
  readonly shop: Shop;
  readonly components: Readonly<Record<string, Component>>;
  readonly wires: Readonly<Record<string, Wire>>;
  /** Newest first, then by id. */
  readonly pieces: readonly Piece[];
  readonly guides: readonly Guide[];
  /** Where a component lies, by its id, or a wire, by `wireKey`; only where she wrote it. */
  readonly trays: Readonly<Record<string, string>>;
  /** How a component is bought, by its id, or a wire, by `wireKey`; only where she wrote any of it. */
  readonly supplies: Readonly<Record<string, Supply>>;
};

/** A wire's place among names: a wire and a component may share a short name, and none holds a stroke. */
export const wireKey = (id: string): string => `wire/${id}`;

/** Names that stand in for the English ones of components, by id, and of wires, by `wireKey`; none in English. */
export function partNamesIn(
  { germanNames }: Pick<Catalogue, 'germanNames'>,
  lang: Lang,
): Readonly<Record<string, string>> {
  return lang === 'de' ? germanNames : {};
}

/** A component's name in a language; its id where the catalogue has it no more. */
export const componentNameIn = (
  { components, germanNames }: Pick<Catalogue, 'components' | 'germanNames'>,
  id: string,
  lang: Lang,
): string => partNamesIn({ germanNames }, lang)[id] ?? components[id]?.name ?? id;

type Components = Readonly<Record<string, Component>>;

const underName = (component: Component, names: Readonly<Record<string, string>>): Component => ({
  ...component,
  name: names[component.id] ?? component.name,
});

/** The components under the names given, those without one as they are. */
export function namedComponents(components: Components, names: Readonly<Record<string, string>>): Components {
  const named = Object.entries(components).map(
    ([id, component]) => [id, underName(component, names)] as const,
  );
  return Object.fromEntries(named);
}

/** The design with its wire and components named in a language, for whatever shows their names. */
export function designIn(piece: Piece, lang: Lang): Design {
  const { design, germanNames } = piece;
  if (lang === 'en') return design;
  const { wire, components } = design;
  const name = germanNames[wireKey(wire.id)] ?? wire.name;
  return { ...design, wire: { ...wire, name }, components: namedComponents(components, germanNames) };
}

/** The same for what may be chosen instead. */
export function alternativesIn({ alternatives, germanNames }: Piece, lang: Lang): Alternatives {
  if (lang === 'en') return alternatives;
  const named = (component: Component): Component => underName(component, germanNames);
  return {
    clasps: alternatives.clasps.map(({ clasp, ring }) => ({
      clasp: named(clasp),
      ring: ring && named(ring),
    })),
    pendants: alternatives.pendants.map(named),
  };
}

/** Every component that the piece is made of, or may be. */
export function allComponents({ design, alternatives }: Pick<Piece, 'design' | 'alternatives'>): Components {
  const more = componentsOf(alternatives).map((component) => [component.id, component] as const);
  return { ...design.components, ...Object.fromEntries(more) };
}

/** The piece's words in a language, English where there are none. */
export function textsOf(piece: Piece, lang: Lang): PieceTexts {
  return lang === 'de' && piece.de !== null ? piece.de : piece;
}

const NOTHING_OWN: TeachTexts = { lead: null, steps: {} };

/** What she wrote of the piece's tutorial in a language. */
export const teachTextsOf = ({ teach }: Pick<Piece, 'teach'>, lang: Lang): TeachTexts =>
  teach?.[lang] ?? NOTHING_OWN;

/** Newest first; what was made at the same time goes by its short name. */
export function newestFirst(one: Piece, other: Piece): number {
  if (one.made !== other.made) return one.made < other.made ? 1 : -1;
  return one.id < other.id ? -1 : 1;
}
