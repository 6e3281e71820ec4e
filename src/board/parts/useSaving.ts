/** The way to the file and back: asks, and keeps what was answered until something else is done. */
import { useState } from 'preact/hooks';
import { openPreview, sendSave } from '../adapters/send.ts';
import { requestFor, type About, type SaveAnswer } from '../model/saving.ts';
import type { Board } from './useBoard.ts';

type Refused = Exclude<SaveAnswer, { readonly ok: true }>;

export type Saving = {
  readonly busy: boolean;
  /** What stood in the way last; null for nothing. `no-answer`: the bench can't be reached. */
  readonly refused: Refused | 'no-answer' | null;
  readonly save: () => void;
  /** Saves into the file as it is now, whatever was changed there. */
  readonly saveOver: () => void;
  /** Opens the piece's page in the shop as it would be, without saving anything. */
  readonly preview: () => void;
};

/** @param previewPage address that a preview is posted to */
export function useSaving(board: Board, about: About | null, previewPage: string): Saving {
  const [busy, setBusy] = useState(false);
  const [refused, setRefused] = useState<Saving['refused']>(null);
  const send = async (digest: string | null): Promise<void> => {
    setBusy(true);
    const { at } = board.work.history;
    const answer = await sendSave(requestFor(board.design, digest, about));
    setBusy(false);
    setRefused(answer === null ? 'no-answer' : answer.ok ? null : answer);
    if (answer?.ok === true) board.saved(answer.digest, at);
  };
  return {
    busy,
    refused,
    save: () => void send(board.work.digest),
    preview: () => openPreview(previewPage, requestFor(board.design, board.work.digest, about)),
    saveOver: () => {
      if (refused !== null && refused !== 'no-answer' && refused.code === 'changed-meanwhile') {
        void send(refused.digest);
      }
    },
  };
}
