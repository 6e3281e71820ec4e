/** Modules that are fetched when they are first wanted. */
import { useLayoutEffect, useState } from 'preact/hooks';

export type Loader<Module> = () => Promise<Module>;

export type Loaded<Module> = {
  /** Null until it is there. */
  readonly module: Module | null;
  /** True where fetching it failed, as without a network; wanting it again tries again. */
  readonly failed: boolean;
};

/** Two modules fetched at once, as a component and its words. */
export const both =
  <One, Other>(one: Loader<One>, other: Loader<Other>): Loader<One & Other> =>
  async () => {
    const [first, second] = await Promise.all([one(), other()]);
    return { ...first, ...second };
  };

export function useLoaded<Module>(load: Loader<Module>, wanted: boolean): Loaded<Module> {
  const [loaded, setLoaded] = useState<Loaded<Module>>({ module: null, failed: false });
  // Not after the next picture on the screen: what is there already is shown in it.
  useLayoutEffect(() => {
    if (!wanted || loaded.module !== null) return;
    load().then(
      (module) => setLoaded({ module, failed: false }),
      () => setLoaded({ module: null, failed: true }),
    );
  }, [wanted]);
  return loaded;
}
