/** Beside the fields of a part: how it is drawn, the length of one out of ten, and its short name while it is new. */
import { underBase } from '#ui/site/base.ts';
import { CARD_BOX } from '#draw/drawings/card.ts';
import { TEN } from '../../intake/contentForm/tenInARow.ts';
import type { FormFace } from '../../models/content/formFace.ts';
import { ID } from '../../models/content/newEntry.ts';
import { Notes } from './ContentField.tsx';

const WIDTH = 300;
const HEIGHT = Math.round((WIDTH * CARD_BOX.height) / CARD_BOX.width);

/** @param query fields as typed so far */
export function Drawn({ query, face }: { readonly query: string; readonly face: FormFace }) {
  const { words } = face;
  return (
    <figure class="drawn">
      <img
        src={underBase(`/bench/part-pictures/?${query}`)}
        width={WIDTH}
        height={HEIGHT}
        alt={words.drawn}
        data-drawn=""
      />
      <figcaption>
        <span class="quiet">{words.drawn}</span>
        <button type="submit" name="do" value="show" data-show="">
          {words.showFields}
        </button>
      </figcaption>
    </figure>
  );
}

export function Ten({ face }: { readonly face: FormFace }) {
  const { words } = face;
  return (
    <div class="field ten">
      <label for={`f-${TEN}`}>
        {words.ten}
        <small class="quiet"> (mm)</small>
      </label>
      <input id={`f-${TEN}`} name={TEN} autocomplete="off" aria-describedby={`f-${TEN}-hint`} />
      <Notes of={TEN} face={face} hint={words.tenHint} />
    </div>
  );
}

export function ShortName({ typed, face }: { readonly typed: string; readonly face: FormFace }) {
  const { words } = face;
  const wrong = face.problems(ID).length > 0;
  return (
    <div class="field">
      <label for={`f-${ID}`}>{words.shortName}</label>
      <input
        id={`f-${ID}`}
        name={ID}
        value={typed}
        autocomplete="off"
        aria-describedby={`f-${ID}-hint${wrong ? ` f-${ID}-wrong` : ''}`}
        aria-invalid={wrong ? true : undefined}
      />
      <Notes of={ID} face={face} hint={words.shortNameHint} />
    </div>
  );
}
