/** The one place that knows Astro's collections; everything else takes the plain data it gives. */
// eslint-disable-next-line @typescript-eslint/no-restricted-imports -- this file is the exception the rule is for.
import { getCollection } from 'astro:content';
import type { Component, Wire } from '#core/design/component.ts';
import type { Lang } from '#words/lang.ts';
import {
  newestFirst,
  wireKey,
  type Catalogue,
  type Guide,
  type Piece,
  type Shop,
} from './model/catalogue.ts';
import { restorePiece } from './model/stored.ts';

/** A guide with its Markdown made into HTML. */
export type GuidePage = Guide & { readonly html: string };

type Whole = Catalogue & { readonly pages: readonly GuidePage[] };

async function readAll(): Promise<Whole> {
  const [shops, componentEntries, wireEntries, pieceEntries, guideEntries] = await Promise.all([
    getCollection('shop'),
    getCollection('components'),
    getCollection('wires'),
    getCollection('pieces'),
    getCollection('guides'),
  ]);
  const shop = shops[0]?.data;
  if (shop === undefined) throw new Error('the content has no shop');
  const components: Record<string, Component> = {};
  const germanNames: Record<string, string> = {};
  const partNumbers: Record<string, string> = {};
  const trays: Record<string, string> = {};
  for (const { id, data } of componentEntries) {
    const { germanName, partNumber, tray, ...component } = data;
    components[id] = component;
    if (germanName !== null) germanNames[id] = germanName;
    if (partNumber !== null) partNumbers[id] = partNumber;
    if (tray !== null) trays[id] = tray;
  }
  const wires: Record<string, Wire> = {};
  for (const { id, data } of wireEntries) {
    const { germanName, partNumber, tray, ...wire } = data;
    wires[id] = wire;
    if (germanName !== null) germanNames[wireKey(id)] = germanName;
    if (partNumber !== null) partNumbers[wireKey(id)] = partNumber;
    if (tray !== null) trays[wireKey(id)] = tray;
  }
  const pieces = pieceEntries
    .map(({ data }) => restorePiece(data, wires, components, { germanNames, partNumbers }))
    .sort(newestFirst);
  const pages = guideEntries
    .map(({ data, rendered }) => ({ ...data, html: rendered?.html ?? '' }))
    .sort((one, other) => one.order - other.order);
  return {
    shop,
    components,
    germanNames,
    partNumbers,
    trays,
    wires,
    pieces,
    guides: pages,
    pages,
  };
}

/** Joined once for a build or a running bench; anew for every page while developing, when entries change. */
let whole: Promise<Whole> | null = null;

function all(): Promise<Whole> {
  if (import.meta.env.DEV) return readAll();
  whole ??= readAll();
  return whole;
}

export const readShop = async (): Promise<Shop> => (await all()).shop;

/** Newest first. */
export const readPieces = async (): Promise<readonly Piece[]> => (await all()).pieces;

/** Guides of one language, in their order. */
export async function readGuides(lang: Lang): Promise<readonly GuidePage[]> {
  return (await all()).pages.filter((page) => page.lang === lang);
}

/** Everything at once, as the terminal reads it too. */
export const readWhole = async (): Promise<Catalogue> => all();
