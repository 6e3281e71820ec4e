/** The card that tells the wearer how to keep a piece and what to mind. */
import { careOf } from '#catalogue/facts/care.ts';
import { cautionsOf } from '#catalogue/facts/cautions.ts';
import type { Design } from '#core/design/design.ts';
import { benchCardWords, goodsWords } from '#words/words.ts';
import { formatList } from '#words/format.ts';
import { materialName } from '#words/goods.ts';
import type { Frame } from '../models/frame.ts';
import type { OrderDetail } from '../models/orderDetail.ts';

/** In the buyer's language: `frame` is hers. `design`: null where the piece is gone; then what always holds. */
export function CareSheet({
  detail,
  design,
  frame,
}: {
  detail: OrderDetail;
  design: Design | null;
  frame: Frame;
}) {
  const { lang, shop } = frame;
  const words = benchCardWords(lang).care;
  const goods = goodsWords(lang);
  const cautions = design === null ? [] : cautionsOf(design);
  return (
    <article class="slip" lang={lang}>
      <header>
        <p class="shop">{shop.name}</p>
      </header>
      <h1>{words.title(detail.pieceName)}</h1>
      <h2>{words.how}</h2>
      <ul>
        {careLines(design, frame).map((line) => (
          <li>{line}</li>
        ))}
      </ul>
      {cautions.length > 0 && (
        <>
          <h2>{words.safety}</h2>
          <ul>
            {cautions.map((caution) => (
              <li>
                <b>{goods.cautions[caution].title}.</b> {goods.cautions[caution].text}
              </li>
            ))}
          </ul>
          <p>{words.rules}</p>
        </>
      )}
      <p>{words.restring(shop.name, detail.entry.document.number)}</p>
    </article>
  );
}

function careLines(design: Design | null, { lang }: Frame): string[] {
  const goods = goodsWords(lang);
  const names = (materials: readonly string[]): string =>
    formatList(
      materials.map((material) => materialName(material, lang)),
      lang,
    );
  const care = design === null ? [] : careOf(design);
  return [...care.map(({ against, materials }) => goods.care[against](names(materials))), goods.careAlways];
}
