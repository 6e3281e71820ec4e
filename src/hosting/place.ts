/**
 * Where the way to a host lies: a folder of its own, outside content, releases
 * and order book, so that no backup, export or repository takes the secret along.
 */
import { resolve } from 'node:path';

/** CLASPWISE_HOSTING names another folder. */
export const hostingFolder = (): string => resolve(process.env.CLASPWISE_HOSTING ?? '.hosting');

/** Only its owner may look into it. */
export const FOLDER_MODE = 0o700;
export const FILE_MODE = 0o600;
