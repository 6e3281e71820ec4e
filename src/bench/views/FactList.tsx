/** Names with their values, as an order, a card's head and its wire tell them. */
export type Fact = {
  readonly label: string;
  readonly value: string;
  /** Something to mend before stringing. */
  readonly bad?: boolean;
};

type Props = {
  readonly facts: readonly Fact[];
  /** In one line, or with less space. */
  readonly set?: 'inline' | 'tight';
};

export function FactList({ facts, set }: Props) {
  return (
    <dl class={set === undefined ? 'facts' : `facts ${set}`}>
      {facts.map(({ label, value, bad }) => (
        <div class={bad === true ? 'bad' : undefined}>
          <dt>{label}</dt>
          <dd>
            <bdi>{value}</bdi>
          </dd>
        </div>
      ))}
    </dl>
  );
}
