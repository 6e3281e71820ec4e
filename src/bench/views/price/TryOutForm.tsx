/** The form of what is tried out: asked by the address alone, so that it can be gone back from and needs no script. */
import { underBase } from '#ui/site/base.ts';
import { goodsWords } from '#words/words.ts';
import { PRICE_FIELDS, type PriceField } from '../../models/pricing/query.ts';
import type { PriceProps } from './priceProps.ts';

export function TryOutForm(props: PriceProps) {
  const { sheet, frame, words } = props;
  const said = words.tryOut;
  const { piece, rules, asked, listed } = sheet;
  const path = underBase(`/bench/pieces/${piece.id}/price/`);
  const { labourMinorPerHour, fees } = rules.price;
  const { format } = frame;
  const { now, tried } = listed;
  const isTyped = PRICE_FIELDS.some((name) => asked.typed[name] !== '');
  return (
    <section aria-labelledby="try-out">
      <h2 id="try-out">{said.title}</h2>
      <p>{said.lead}</p>
      <Problems {...props} />
      <form class="hand" method="get" action={path}>
        <div class="fields">
          <CostChoice {...props} />
          <Input {...props} name="by" label={said.by} hint={said.byHint} />
          <Input {...props} name="wage" label={said.wage} hint={said.now(format.money(labourMinorPerHour))} />
          <Input
            {...props}
            name="share"
            label={said.share}
            hint={said.now(format.number((fees?.hundredths ?? 0) / 100, 2))}
          />
          <Input
            {...props}
            name="each"
            label={said.each}
            hint={said.now(format.money(fees?.eachMinor ?? 0))}
          />
        </div>
        <p class="row">
          <button type="submit" class="main">
            {said.show}
          </button>
          {isTyped && <a href={path}>{said.clear}</a>}
        </p>
      </form>
      {tried !== null && (
        <p class="noted" role="status">
          {said.result(
            format,
            { rule: now.ruleMinor, hour: now.earned.perHourMinor },
            { rule: tried.ruleMinor, hour: tried.earned.perHourMinor },
          )}
        </p>
      )}
    </section>
  );
}

/** What can't be read, each leading to its field. */
function Problems({ sheet: { asked }, words }: PriceProps) {
  const { problems, wrong } = words.tryOut;
  const found = PRICE_FIELDS.flatMap((name) => {
    const code = asked.problems[name];
    return code === undefined ? [] : [{ name, text: problems[name][code] }];
  });
  if (found.length === 0) return null;
  return (
    <section class="warning" role="alert" aria-labelledby="wrong">
      <h3 id="wrong">{wrong}</h3>
      <ul>
        {found.map(({ name, text }) => (
          <li>
            <a href={`#price-${name}`}>{text}</a>
          </li>
        ))}
      </ul>
    </section>
  );
}

const attributes = (name: PriceField, isWrong: boolean) => ({
  id: `price-${name}`,
  name,
  ...(isWrong && { 'aria-invalid': true }),
});

type InputProps = PriceProps & {
  readonly name: Exclude<PriceField, 'of'>;
  readonly label: string;
  readonly hint: string;
};

function Input({ sheet: { asked }, name, label, hint }: InputProps) {
  return (
    <div class="field">
      <label for={`price-${name}`}>{label}</label>
      <input
        {...attributes(name, asked.problems[name] !== undefined)}
        value={asked.typed[name]}
        maxLength={60}
        inputMode={name === 'by' ? 'text' : 'decimal'}
        autocomplete="off"
        aria-describedby={`price-${name}-hint`}
      />
      <small class="hint quiet" id={`price-${name}-hint`}>
        {hint}
      </small>
    </div>
  );
}

function CostChoice({ sheet, frame, words }: PriceProps) {
  const said = words.tryOut;
  const { materials } = goodsWords(frame.lang);
  const { money } = frame.format;
  const chosen = sheet.asked.typed.of;
  const option = (value: string, label: string) => (
    <option value={value} selected={value === chosen}>
      {label}
    </option>
  );
  const called = (material: string): string =>
    (materials as Readonly<Record<string, string>>)[material] ?? material;
  return (
    <div class="field">
      <label for="price-of">{said.of}</label>
      <select {...attributes('of', sheet.asked.problems.of !== undefined)}>
        {option('', said.nothing)}
        <optgroup label={said.groups.kinds}>
          {(['all', 'beads', 'findings', 'wire'] as const).map((kind) => option(kind, said.kinds[kind]))}
        </optgroup>
        <optgroup label={said.groups.materials}>
          {sheet.materials.map(({ material, costMinor }) =>
            option(`material:${material}`, said.costing(called(material), money(costMinor))),
          )}
        </optgroup>
        <optgroup label={said.groups.components}>
          {sheet.components.map(({ id, name, costMinor }) =>
            option(`component:${id}`, said.costing(name, money(costMinor))),
          )}
        </optgroup>
      </select>
    </div>
  );
}
