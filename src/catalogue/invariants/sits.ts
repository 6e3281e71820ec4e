/** A looser sit adds at least as much as a snugger one. */
import { SITS } from '#core/design/choice.ts';
import type { Entry } from '../read/entry.ts';
import type { Problem } from '../read/problem.ts';
import type { AuthoredRules } from '../schemas/shop.ts';

export function assertSitsInOrder(entry: Entry<AuthoredRules>): Problem[] {
  return Object.entries(entry.value.ease).flatMap(([kind, ease]) =>
    SITS.slice(1).flatMap((sit, index) => {
      const before = SITS[index]!;
      return ease[before] <= ease[sit]
        ? []
        : [entry.problemAt(['ease', kind, sit], { code: 'sits-order', sit, before })];
    }),
  );
}
