/** A component that is fetched when it is first wanted. */
import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';

export type Loader<Props> = () => Promise<{ readonly default: ComponentType<Props> }>;

export type Loaded<Props> = {
  /** Null until it is there. */
  readonly Component: ComponentType<Props> | null;
  /** True where fetching it failed, as without a network; wanting it again tries again. */
  readonly failed: boolean;
};

export function useLoaded<Props>(load: Loader<Props>, wanted: boolean): Loaded<Props> {
  const [loaded, setLoaded] = useState<Loaded<Props>>({ Component: null, failed: false });
  useEffect(() => {
    if (!wanted || loaded.Component !== null) return;
    load().then(
      (module) => setLoaded({ Component: module.default, failed: false }),
      () => setLoaded({ Component: null, failed: true }),
    );
  }, [wanted]);
  return loaded;
}
