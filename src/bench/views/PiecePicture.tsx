/** The piece in small, so that the eye finds it before the name is read. */
import { underBase } from '#ui/site/base.ts';
import { CARD_BOX } from '#draw/drawings/card.ts';

type Props = { readonly piece: string; readonly width: number };

/** Empty beside a name: the picture says nothing that the name doesn't. */
export function PiecePicture({ piece, width }: Props) {
  const height = Math.round((width * CARD_BOX.height) / CARD_BOX.width);
  return (
    <img
      class="piece"
      src={underBase(`/bench/pictures/${piece}.svg`)}
      width={width}
      height={height}
      alt=""
      loading="lazy"
    />
  );
}
