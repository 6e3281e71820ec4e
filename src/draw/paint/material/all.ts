/** Every material by its family. */
import type { Look } from '#core/design/component.ts';
import { glass } from './glass.ts';
import type { Material } from './material.ts';
import { metal } from './metal.ts';
import { pearl } from './pearl.ts';
import { shell } from './shell.ts';
import { stone } from './stone.ts';
import { wood } from './wood.ts';

export const materials: Readonly<Record<Look['family'], Material>> = {
  glass,
  stone,
  pearl,
  metal,
  wood,
  shell,
};
