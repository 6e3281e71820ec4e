/** A form half filled in outlives the page, and goes once it is ordered or cleared. */
import { describe, expect, test } from 'vitest';
import { CAPS } from '#order/document.ts';
import { dropDraft, isUntouched, keepDraft, readDraft } from '#sizer/ordering/model/draft.ts';
import { DRAFT_KEY, begunFor } from '#sizer/ordering/model/draftText.ts';
import { EMPTY_FORM, type OrderForm } from '#sizer/ordering/model/form.ts';
import { memoryStore } from './support.ts';

const FORM: OrderForm = {
  ...EMPTY_FORM,
  name: 'Iris Moor',
  email: 'iris@exam',
  note: 'By Easter,\nif you can.',
  quantity: '2',
  way: 'collection',
  address: { ...EMPTY_FORM.address, line1: '3 Weir Row', town: 'Tenterholm' },
};

describe('a form half filled in', () => {
  test('comes back as it was left, without the field for robots', () => {
    const store = memoryStore();
    keepDraft(store, 'weir-light', 'sized', { ...FORM, trap: 'x' });
    expect(readDraft(store, 'weir-light')).toEqual(FORM);
    expect(begunFor(store, 'weir-light')).toBe('sized');
  });

  test('knows that it was for the finished piece', () => {
    const store = memoryStore();
    keepDraft(store, 'weir-light', 'ready', FORM);
    expect(begunFor(store, 'weir-light')).toBe('ready');
  });

  test('lends another piece who orders and where it goes, not how many or the note', () => {
    const store = memoryStore();
    keepDraft(store, 'weir-light', 'sized', FORM);
    expect(readDraft(store, 'ford')).toEqual({ ...FORM, note: '', quantity: '1' });
    expect(begunFor(store, 'ford')).toBe(null);
  });

  test('leaves nothing on the device once it is dropped', () => {
    const store = memoryStore();
    keepDraft(store, 'weir-light', 'sized', FORM);
    dropDraft(store);
    expect([...store.texts.keys()]).toEqual([]);
    expect(isUntouched(readDraft(store, 'weir-light'))).toBe(true);
  });

  test('keeps what is over a cap, so that the form can say so', () => {
    const store = memoryStore();
    const note = 'n'.repeat(CAPS.note + 100);
    keepDraft(store, 'weir-light', 'sized', { ...FORM, note });
    expect(readDraft(store, 'weir-light').note).toBe(note);
  });

  test.each(['', '7', 'null', '{', '[]', '{"piece":"p","form":7}', '{"piece":"p","form":{"name":3}}'])(
    'whatever else stands there (%s) is an empty form',
    (text) => {
      const store = memoryStore();
      store.write(DRAFT_KEY, text);
      expect(readDraft(store, 'p')).toEqual(EMPTY_FORM);
    },
  );
});
