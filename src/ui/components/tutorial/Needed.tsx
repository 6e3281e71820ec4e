/** Before the first cut: what can hurt, the tools, and every bead, finding and length of wire with some to spare. */
import { goodsWords } from '#words/words.ts';
import type { Told } from './told.ts';

export function Cautions({ tutorial, words, lang }: Told) {
  const { cautions } = goodsWords(lang);
  return (
    <section class="mind" aria-labelledby="mind">
      <h2 id="mind">{words.cautions}</h2>
      <ul>
        {words.always.map((text) => (
          <li>{text}</li>
        ))}
        {tutorial.cautions.map((caution) => (
          <li>
            <strong>{cautions[caution].title}.</strong> {cautions[caution].text}
          </li>
        ))}
        <li>{words.local}</li>
      </ul>
    </section>
  );
}

export function Needed(told: Told) {
  const { tutorial, words } = told;
  return (
    <div class="needed">
      <section aria-labelledby="tools">
        <h2 id="tools">{words.tools}</h2>
        <ul>
          {tutorial.tools.map(({ tool, count }) => (
            <li>{words.toolName(tool, count)}</li>
          ))}
        </ul>
      </section>
      <section aria-labelledby="materials">
        <h2 id="materials">{words.materials}</h2>
        <Amounts {...told} />
      </section>
    </div>
  );
}

function Amounts({ tutorial: { materials }, words, format, nameOf }: Told) {
  const { components, wire, chainMm, links } = materials;
  const { part, count, spares } = words.columns;
  return (
    <table class="amounts" aria-labelledby="materials">
      <thead>
        <tr>
          <th scope="col">{part}</th>
          <th scope="col" class="number">
            {count}
          </th>
          <th scope="col" class="number">
            {spares}
          </th>
        </tr>
      </thead>
      <tbody>
        {components.map((one) => (
          <tr>
            <th scope="row">{nameOf(one.component)}</th>
            <td class="number">{format.number(one.count)}</td>
            <td class="number">{one.spares === 0 ? '' : format.number(one.spares)}</td>
          </tr>
        ))}
        <tr>
          <th scope="row">{words.wire(nameOf(wire.wire))}</th>
          <td colSpan={2}>
            {words.cuts(format, wire.cutsMm)}; {words.have(format.ruler(wire.haveMm, 'up'))}
          </td>
        </tr>
        {chainMm > 0 && (
          <tr>
            <th scope="row">{words.chain}</th>
            <td colSpan={2}>
              {links === null
                ? format.ruler(chainMm, 'up')
                : words.links(format, links, format.ruler(chainMm))}
            </td>
          </tr>
        )}
      </tbody>
    </table>
  );
}
