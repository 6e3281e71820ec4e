/** What may lag a frame behind the hands, so that nothing they do waits for it. */
import { useEffect, useState } from 'preact/hooks';

/** The value as it was before the last change was painted; then the value. */
export function useLater<Value extends object>(value: Value): Value {
  const [later, setLater] = useState(value);
  useEffect(() => {
    const painted = setTimeout(() => setLater(value));
    return () => clearTimeout(painted);
  }, [value]);
  return later;
}
