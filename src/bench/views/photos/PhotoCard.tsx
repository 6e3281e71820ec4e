/** One photograph: how it looks, what it says, which part is shown, its place. */
import { underBase } from '#ui/site/base.ts';
import { readCrop, type Crop } from '#catalogue/model/crop.ts';
import { photoWords } from '#words/words.ts';
import { CROP_FRAMES } from '../../photos/photoChange.ts';
import type { PhotoSheet } from '../../models/photoSheet.ts';
import { Trouble, WordFields } from './PhotoParts.tsx';

type Props = { readonly sheet: PhotoSheet; readonly at: number };

const WHOLE: Crop = { left: 0, top: 0, width: 1, height: 1 };
const PARTS = ['left', 'top', 'width', 'height'] as const;

const percent = (part: number): string => String(Math.round(part * 1000) / 10);

export function PhotoCard({ sheet, at }: Props) {
  const { id, digest, photos, attempt, frame } = sheet;
  const words = photoWords(frame.lang);
  const photo = photos[at];
  if (photo === undefined) return null;
  const action = underBase(`/bench/pieces/${id}/photos/`);
  const typed = attempt?.of === at ? attempt.form : null;
  const own = (
    <>
      <input type="hidden" name="digest" value={digest} />
      <input type="hidden" name="at" value={at} />
    </>
  );
  const title = words.place(at + 1, photos.length);
  return (
    <section class="photo" aria-labelledby={`photo-${at}`}>
      <h2 id={`photo-${at}`}>{title}</h2>
      <Trouble sheet={sheet} of={at} />
      {photo.size === null ? (
        <p class="warning">{words.fileGone(photo.file)}</p>
      ) : (
        <form method="post" action={action} class="photo-crop" data-crop>
          {own}
          <CropPicture sheet={sheet} at={at} />
          <details open={typed?.get('do') === 'crop'}>
            <summary>{words.crop}</summary>
            <p class="quiet">{words.cropHint}</p>
            <div class="row">
              {PARTS.map((part) => (
                <label>
                  {words.parts[part]}
                  <input
                    name={part}
                    inputMode="decimal"
                    size={5}
                    value={typed?.get(part) ?? percent((readCrop(photo.crop) ?? WHOLE)[part])}
                  />
                </label>
              ))}
              <button type="submit" name="do" value="crop">
                {words.saveCrop}
              </button>
            </div>
          </details>
        </form>
      )}
      {photo.size !== null && <FrameForms own={own} action={action} words={words} />}
      <form method="post" action={action} class="photo-form">
        {own}
        <WordFields
          words={words}
          alt={typed?.get('alt') ?? photo.alt}
          altDe={typed?.get('alt-de') ?? photo.altDe}
        />
        <button type="submit" name="do" value="words">
          {words.saveWords}
        </button>
      </form>
      <form method="post" action={action} class="row">
        {own}
        {at > 0 && (
          <button type="submit" name="do" value="earlier" aria-label={`${words.earlier}: ${title}`}>
            {words.earlier}
          </button>
        )}
        {at < photos.length - 1 && (
          <button type="submit" name="do" value="later" aria-label={`${words.later}: ${title}`}>
            {words.later}
          </button>
        )}
        <button type="submit" name="do" value="remove" aria-label={`${words.remove}: ${title}`}>
          {words.remove}
        </button>
        <small class="quiet">{words.removeHint}</small>
      </form>
    </section>
  );
}

type FrameProps = {
  readonly own: preact.JSX.Element;
  readonly action: string;
  readonly words: ReturnType<typeof photoWords>;
};

/** Parts that are often wanted, one press each. */
function FrameForms({ own, action, words }: FrameProps) {
  return (
    <form method="post" action={action} class="row">
      {own}
      <input type="hidden" name="do" value="crop" />
      {CROP_FRAMES.map((one) => (
        <button type="submit" name="frame" value={one}>
          {words.frames[one]}
        </button>
      ))}
    </form>
  );
}

/** The whole photograph, what isn't shown of it dimmed. Drawn over with a pointer where there is script. */
function CropPicture({ sheet, at }: Props) {
  const photo = sheet.photos[at];
  if (photo === undefined || photo.size === null) return null;
  const { width, height } = photo.size;
  const { left, top, width: across, height: down } = readCrop(photo.crop) ?? WHOLE;
  const path = `M0 0H1V1H0ZM${left} ${top}v${down}h${across}v${-down}Z`;
  return (
    <div class="crop-picture">
      <img
        src={underBase(`/bench/pieces/${sheet.id}/photos/${at}.webp`)}
        width={width}
        height={height}
        alt={photo.alt}
      />
      <svg viewBox="0 0 1 1" preserveAspectRatio="none" aria-hidden="true">
        <path d={path} fill-rule="evenodd" />
      </svg>
    </div>
  );
}
