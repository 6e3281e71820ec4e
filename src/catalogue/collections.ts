/**
 * The catalogue that pages are made of: of the release that is being made while
 * the shop is built, of the one that is served while it runs, and as it lies in
 * the content folder while developing.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Lang } from '#words/lang.ts';
import type { Catalogue, Piece, Shop } from './model/catalogue.ts';
import {
  restoreCatalogue,
  type GuidePage,
  type StoredCatalogue,
  type Whole,
} from './model/storedCatalogue.ts';
import { CATALOGUE_FILE, READ_FROM } from './released/place.ts';

export type { GuidePage };

/** The catalogue of one release, read once: its files don't change. */
let kept: { readonly folder: string; readonly whole: Whole } | null = null;

async function all(): Promise<Whole> {
  if (import.meta.env.DEV) return (await import('./load/live.ts')).liveCatalogue();
  const folder = process.env[READ_FROM];
  if (folder === undefined) throw new Error('Nothing has been built yet. Fix: npm run build.');
  if (kept?.folder !== folder) {
    const stored = JSON.parse(readFileSync(join(folder, CATALOGUE_FILE), 'utf8')) as StoredCatalogue;
    kept = { folder, whole: restoreCatalogue(stored) };
  }
  return kept.whole;
}

export const readShop = async (): Promise<Shop> => (await all()).shop;

/** Newest first. */
export const readPieces = async (): Promise<readonly Piece[]> => (await all()).pieces;

/** Guides of one language, in their order. */
export async function readGuides(lang: Lang): Promise<readonly GuidePage[]> {
  return (await all()).guides.filter((page) => page.lang === lang);
}

/** Everything at once, as the terminal reads it too. */
export const readWhole = async (): Promise<Catalogue> => all();
