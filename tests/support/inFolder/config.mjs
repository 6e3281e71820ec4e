/** The settings of a build in a folder of its host: the shop's own, but for where its files and its cache go. */
import settings from '../../../astro.config.mjs';

export default { ...settings, outDir: './.cache/in-folder/dist', cacheDir: './.cache/in-folder/astro' };
