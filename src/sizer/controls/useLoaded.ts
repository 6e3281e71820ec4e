/** A module that is fetched when it is first wanted. */
import { useEffect, useState } from 'preact/hooks';
import type { ComponentType } from 'preact';

export type Loader<Module> = () => Promise<Module>;
/** A module whose default export is a component. */
export type ComponentModule<Props> = { readonly default: ComponentType<Props> };

export type Loaded<Module> = {
  /** Null until it is there. */
  readonly module: Module | null;
  /** True where fetching it failed, as without a network; wanting it again tries again. */
  readonly failed: boolean;
};

export function useLoaded<Module>(load: Loader<Module>, wanted: boolean): Loaded<Module> {
  const [loaded, setLoaded] = useState<Loaded<Module>>({ module: null, failed: false });
  useEffect(() => {
    if (!wanted || loaded.module !== null) return;
    load().then(
      (module) => setLoaded({ module, failed: false }),
      () => setLoaded({ module: null, failed: true }),
    );
  }, [wanted]);
  return loaded;
}
